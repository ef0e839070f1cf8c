/**
 * Temperature, wind and sunlight through a year.
 *
 * <p>Knows a site and the sun. Start with {@link limbway.model.weather.Weather};
 * {@link limbway.model.weather.MonthlyWeather} makes it from monthly means,
 * {@link limbway.model.weather.HourlyWeather} from a year of hours.
 */
package limbway.model.weather;
