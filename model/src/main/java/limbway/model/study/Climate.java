package limbway.model.study;

import limbway.model.weather.Weather;

/**
 * What an animal has to bear in the open.
 *
 * @param weather temperature, wind and sun
 * @param sunlitWayW power at which an animal values full sun on its back on the way, on the hottest of days [W], 0 or more;
 *     0 where the sun on the way is not minded
 */
public record Climate(Weather weather, double sunlitWayW) {

    /**
     * Checks the discomfort.
     *
     * @throws IllegalArgumentException naming the value if it is below 0
     */
    public Climate {
        if (!(sunlitWayW >= 0)) {
            throw new IllegalArgumentException("climate: sunlitWayW = " + sunlitWayW + ", allowed 0 or more");
        }
    }
}
