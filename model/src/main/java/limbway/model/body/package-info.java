/**
 * Age-sex classes of apes: mass, reach, leap, grip and speeds, each number with its source or the word "unverified".
 *
 * <p>Knows only how to state a parameter. Start at {@link limbway.model.body.BodyCatalogue}.
 */
package limbway.model.body;
