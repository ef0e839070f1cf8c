package limbway.model.weather;

import java.time.Instant;

import limbway.model.enclosure.Site;

/** What the weather of a site is like, at every moment of a year. */
public interface Weather {

    /**
     * The weather at one moment.
     *
     * @param site where
     * @param moment when
     * @return temperature, wind and sunlight
     */
    Conditions at(Site site, Instant moment);

    /**
     * Where the figures come from, for reports.
     *
     * @return a phrase such as "monthly normals under a clear sky"
     */
    String origin();
}
