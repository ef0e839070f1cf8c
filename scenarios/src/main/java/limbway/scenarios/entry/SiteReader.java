package limbway.scenarios.entry;

import java.time.DateTimeException;
import java.time.Instant;
import java.time.ZoneId;
import java.util.Locale;
import java.util.Optional;
import java.util.TreeSet;

import limbway.model.enclosure.Site;
import limbway.scenarios.format.MappingNode;
import limbway.scenarios.problem.Problem;
import limbway.scenarios.problem.Problems;
import limbway.scenarios.problem.Wording;

/** Reads the entry {@code site}. */
public final class SiteReader {

    /** Clocks by law and by the sun differ by up to three and a half hours on inhabited land. */
    private static final double MOST_HOURS_OFF = 4;

    private static final Instant ANY_MOMENT = Instant.parse("2026-01-01T00:00:00Z");

    private final Problems problems;

    /**
     * A reader of the site.
     *
     * @param problems where mistakes go
     */
    public SiteReader(Problems problems) {
        this.problems = problems;
    }

    /**
     * Reads the site.
     *
     * @param node the entry
     * @return the site, or empty if a problem was added
     */
    public Optional<Site> read(MappingNode node) {
        Fields fields = Fields.of(node, Form.SITE, problems);
        double latitudeDeg = fields.number(Quantity.LATITUDE);
        double longitudeDeg = fields.number(Quantity.LONGITUDE);
        String name = fields.words("time-zone", "a name such as Asia/Kuching or UTC", "UTC");
        ZoneId zone = zone(name).orElse(null);
        if (zone == null) {
            fields.fault(Problem.at(
                            fields.find("time-zone").orElse(node).place(), "unknown time zone " + Wording.quote(name))
                    .allowed("a name of the IANA time zone list, for example Asia/Kuching")
                    .mend(problems.didYouMean(name, new TreeSet<>(ZoneId.getAvailableZoneIds()), "")));
        }
        return fields.build(() -> new Site(latitudeDeg, longitudeDeg, zone));
    }

    /**
     * A remark on clocks that run far from the sun, which is more often a slip than meant.
     *
     * @param site the site
     * @return one sentence, or empty where the time zone fits the longitude
     */
    public static Optional<String> remark(Site site) {
        double clockHours = site.zone().getRules().getStandardOffset(ANY_MOMENT).getTotalSeconds() / 3600.0;
        double hours = Math.abs(Math.IEEEremainder(clockHours - site.longitudeDeg() / 15, 24));
        return hours <= MOST_HOURS_OFF
                ? Optional.empty()
                : Optional.of(String.format(
                        Locale.ROOT,
                        "The clocks of time zone %s are %.1f hours from the sun at longitude %s: check the site, because the"
                                + " animals wake and sleep by the sun and are fed by the clock.",
                        site.zone(),
                        hours,
                        Wording.number(site.longitudeDeg())));
    }

    private static Optional<ZoneId> zone(String name) {
        try {
            return Optional.of(ZoneId.of(name));
        } catch (DateTimeException e) {
            return Optional.empty();
        }
    }
}
