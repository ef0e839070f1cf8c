package limbway.scenarios.entry;

import java.time.DateTimeException;
import java.time.ZoneId;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeSet;
import java.util.regex.Pattern;

import limbway.model.enclosure.Horizon;
import limbway.model.enclosure.Site;
import limbway.scenarios.format.MappingNode;
import limbway.scenarios.format.NumberText;
import limbway.scenarios.format.ScalarNode;
import limbway.scenarios.problem.Problem;
import limbway.scenarios.problem.Problems;
import limbway.scenarios.problem.Wording;

/** Reads the entry {@code site}. */
public final class SiteReader {

    /** For example EST or AEST: what is near to it in letters is far away on the map. */
    private static final Pattern ABBREVIATION = Pattern.compile("[A-Z]{3,4}");

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
        Optional<ZoneId> zone = zone(fields);
        double elevationM = fields.number("elevation", Quantity.SITE_ELEVATION).orElse(0);
        Optional<Horizon> horizon = fields.read("horizon", new HorizonReader(problems)::read);
        OptionalDouble latitudeDeg = OptionalDouble.empty();
        OptionalDouble longitudeDeg = OptionalDouble.empty();
        if (!areSwappedByRange(fields)) {
            latitudeDeg = fields.number("latitude", Quantity.LATITUDE);
            longitudeDeg = fields.number("longitude", Quantity.LONGITUDE);
        }
        if (zone.isEmpty() || latitudeDeg.isEmpty() || longitudeDeg.isEmpty()) {
            return Optional.empty();
        }
        ZoneFit fit = new ZoneFit(latitudeDeg.getAsDouble(), longitudeDeg.getAsDouble(), zone.get());
        fit.slip(
                        fields.find("latitude").orElseThrow().place(),
                        fields.find("time-zone").orElseThrow().place())
                .ifPresent(fields::fault);
        return fields.build(() ->
                new Site(fit.latitudeDeg(), fit.longitudeDeg(), fit.zone(), elevationM, horizon.orElse(Horizon.LEVEL)));
    }

    /** A latitude that can only be a longitude, beside a longitude that can be a latitude. */
    private boolean areSwappedByRange(Fields fields) {
        OptionalDouble latitudeDeg = plain(fields, "latitude");
        OptionalDouble longitudeDeg = plain(fields, "longitude");
        if (latitudeDeg.isEmpty()
                || longitudeDeg.isEmpty()
                || Quantity.LATITUDE.allows(latitudeDeg.getAsDouble())
                || !Quantity.LONGITUDE.allows(latitudeDeg.getAsDouble())
                || !Quantity.LATITUDE.allows(longitudeDeg.getAsDouble())) {
            return false;
        }
        fields.fault(ZoneFit.swapped(
                        fields.find("latitude").orElseThrow().place(),
                        "latitude and longitude are swapped",
                        latitudeDeg.getAsDouble(),
                        longitudeDeg.getAsDouble())
                .allowed("latitude " + Quantity.LATITUDE.range() + ", longitude " + Quantity.LONGITUDE.range()));
        return true;
    }

    private static OptionalDouble plain(Fields fields, String key) {
        Optional<NumberText> number = fields.find(key)
                .filter(ScalarNode.class::isInstance)
                .flatMap(node -> NumberText.of(((ScalarNode) node).text()))
                .filter(text -> Quantity.LATITUDE.isWrittenIn(text.unit()));
        return number.isPresent() ? OptionalDouble.of(number.get().value()) : OptionalDouble.empty();
    }

    /**
     * A remark on clocks that run far from the sun, where that may be meant.
     *
     * @param site the site
     * @return one sentence, or empty where the time zone fits the longitude
     */
    public static Optional<String> remark(Site site) {
        return new ZoneFit(site.latitudeDeg(), site.longitudeDeg(), site.zone()).remark();
    }

    private Optional<ZoneId> zone(Fields fields) {
        return fields.read("time-zone", node -> new Values(problems)
                .words(node, "time-zone of site", "a name such as Asia/Kuching or UTC")
                .flatMap(name -> {
                    Optional<ZoneId> zone = zone(name);
                    if (zone.isEmpty()) {
                        problems.add(Problem.at(node.place(), "unknown time zone " + Wording.quote(name))
                                .allowed("a name of the IANA time zone list, for example Asia/Kuching")
                                .mend(zoneMend(name)));
                    }
                    return zone;
                }));
    }

    private String zoneMend(String name) {
        String names = "write a name such as America/New_York, not an abbreviation";
        return ABBREVIATION.matcher(name).matches()
                ? names
                : problems.didYouMean(name, new TreeSet<>(ZoneId.getAvailableZoneIds()), names);
    }

    private static Optional<ZoneId> zone(String name) {
        try {
            return Optional.of(ZoneId.of(name));
        } catch (DateTimeException e) {
            return Optional.empty();
        }
    }
}
