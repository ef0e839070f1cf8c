/**
 * Temperature, wind and sunlight through a year.
 *
 * <p>Knows a site and the sun. Start with {@link limbway.model.weather.Weather}.
 */
package limbway.model.weather;
