/**
 * How heavy a body a support bears before it may break, and how materials wear: warnings only, never a structural
 * calculation. Whether a structure may stand is decided by licensed people under the local code.
 *
 * <p>Knows enclosure, geometry, parameter and, of energy, gravity and the sections of members. Start at
 * {@link limbway.model.strength.BearingLoad}.
 */
package limbway.model.strength;
