/**
 * How hot a member of the structure gets, and how hot it is for an animal that sits in sun or shade.
 *
 * <p>Knows weather and how much light reaches a point, no animal's needs: those are the business of the day. Start with
 * {@link limbway.model.heat.OperativeTemperature} for places, {@link limbway.model.heat.MemberTemperatures} for the supports
 * of an enclosure, {@link limbway.model.heat.HotHour} for metal, paint, wood and rope side by side, and
 * {@link limbway.model.heat.HeatSettings} for what is assumed.
 */
package limbway.model.heat;
