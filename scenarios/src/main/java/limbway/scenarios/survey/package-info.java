/**
 * Trees from a measured table: stem maps as foresters make them.
 *
 * <p>A row becomes the same kind of entry that a keeper writes for a trunk, so everything later treats both alike. What
 * the table does not say is worked out by {@link limbway.scenarios.survey.Allometry}, every coefficient of which is a
 * parameter. Start at {@link limbway.scenarios.survey.SurveyReader}.
 */
package limbway.scenarios.survey;
