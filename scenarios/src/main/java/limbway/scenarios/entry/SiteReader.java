package limbway.scenarios.entry;

import java.time.DateTimeException;
import java.time.ZoneId;
import java.util.Optional;
import java.util.TreeSet;

import limbway.model.enclosure.Site;
import limbway.scenarios.format.MappingNode;
import limbway.scenarios.problem.Problem;
import limbway.scenarios.problem.Problems;
import limbway.scenarios.problem.Wording;

/** Reads the entry {@code site}. */
public final class SiteReader {

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

    private static Optional<ZoneId> zone(String name) {
        try {
            return Optional.of(ZoneId.of(name));
        } catch (DateTimeException e) {
            return Optional.empty();
        }
    }
}
