package limbway.model.weather;

import java.time.Instant;

import limbway.model.enclosure.Site;

/**
 * Other weather made warmer or colder by the same amount at every moment; wind and sun stay.
 *
 * @param other the weather that is changed
 * @param warmerK added to the temperature of the air [K]
 */
public record ShiftedWeather(Weather other, double warmerK) implements Weather {

    /**
     * Changed weather of one moment.
     *
     * @throws IllegalArgumentException if the air gets colder than -90 or hotter than 60 °C
     */
    @Override
    public Conditions at(Site site, Instant moment) {
        Conditions now = other.at(site, moment);
        return new Conditions(now.airC() + warmerK, now.windMPerS(), now.irradiance());
    }

    @Override
    public String origin() {
        return other.origin() + ", " + (warmerK < 0 ? -warmerK + " K colder" : warmerK + " K warmer");
    }
}
