/**
 * What comes from files of measurements: trees from stem maps as foresters make them, and the weather of a year.
 *
 * <p>A row becomes the same kind of entry that a keeper writes for a trunk, so everything later treats both alike. What
 * the table does not say is worked out by {@link limbway.scenarios.survey.Allometry}, every coefficient of which is a
 * parameter. Start at {@link limbway.scenarios.survey.SurveyReader}. Weather
 * files (EPW) are read by {@link limbway.scenarios.survey.WeatherReader}, which fills no gap and corrects no unit.
 */
package limbway.scenarios.survey;
