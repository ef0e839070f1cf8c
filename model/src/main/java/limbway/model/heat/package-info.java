/**
 * How hot a member of the structure gets, and how hot it is for an animal that sits in sun or shade.
 *
 * <p>Knows weather and shade, no animal's needs: those are the business of the day.
 */
package limbway.model.heat;
