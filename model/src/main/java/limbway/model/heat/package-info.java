/**
 * How hot a member of the structure gets, and how hot it is for an animal that sits in sun or shade.
 *
 * <p>Knows weather and shade, no animal's needs: those are the business of the day. Start with
 * {@link limbway.model.heat.OperativeTemperature} for places and {@link limbway.model.heat.HeatSettings} for what is assumed.
 */
package limbway.model.heat;
