package limbway.scenarios.entry;

import java.time.DateTimeException;
import java.time.MonthDay;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import limbway.model.enclosure.Foliage;
import limbway.model.enclosure.Foliage.Season;
import limbway.scenarios.entry.SupportEntry.CrownSize;
import limbway.scenarios.format.Node;
import limbway.scenarios.format.ScalarNode;
import limbway.scenarios.problem.Problem;
import limbway.scenarios.problem.Problems;
import limbway.scenarios.problem.Wording;

/** Reads the crown of a tree and its leaves. */
final class FoliageReader {

    /** Keys that say how thick the leaves are and when they are there. */
    static final List<String> KEYS = List.of(Quantity.LEAF_AREA_INDEX.key(), "leaves");

    private static final String EVERGREEN = "evergreen";
    private static final String ALLOWED =
            EVERGREEN + ", or the first and last day in leaf: {from: \"04-15\", to: \"10-31\"}";
    private static final Pattern DAY = Pattern.compile("(\\d{1,2})-(\\d{1,2})");

    private final Problems problems;
    private final Values values;

    FoliageReader(Problems problems) {
        this.problems = problems;
        this.values = new Values(problems);
    }

    /** The crown of a tree, whose keys for radius and base are there; mistakes are faults of the fields. */
    CrownSize size(Fields fields, double heightM) {
        double radiusM = fields.number(Quantity.CROWN_RADIUS);
        double baseM = fields.number(Quantity.CROWN_BASE);
        if (baseM >= heightM) {
            fields.fault(Problem.at(
                            fields.find(Quantity.CROWN_BASE.key()).orElseThrow().place(),
                            "crown of " + fields.what() + " begins above its top")
                    .found(Wording.measure(baseM, "m"))
                    .allowed("below the height, " + Wording.measure(heightM, "m")));
        }
        return new CrownSize(radiusM, baseM, foliage(fields));
    }

    private Foliage foliage(Fields fields) {
        double index = fields.number(Quantity.LEAF_AREA_INDEX.key(), Quantity.LEAF_AREA_INDEX)
                .orElse(Foliage.EVERGREEN.leafAreaIndex());
        Optional<Season> season =
                fields.find("leaves").filter(FoliageReader::isEvergreen).isPresent()
                        ? Optional.empty()
                        : fields.read("leaves", node -> season(node, "leaves of " + fields.what()));
        return new Foliage(index, season);
    }

    private static boolean isEvergreen(Node node) {
        return node instanceof ScalarNode scalar && scalar.text().strip().equalsIgnoreCase(EVERGREEN);
    }

    private Optional<Season> season(Node node, String what) {
        if (node instanceof ScalarNode) {
            problems.add(Problem.at(node.place(), what + " do not say when they are there")
                    .found(node.shown())
                    .allowed(ALLOWED));
            return Optional.empty();
        }
        return values.mapping(node, what).flatMap(mapping -> {
            Fields fields = Fields.of(mapping, Form.LEAVES, problems);
            Optional<MonthDay> from = fields.read("from", day -> day(day, "first day of " + what));
            Optional<MonthDay> to = fields.read("to", day -> day(day, "last day of " + what));
            return fields.build(() -> new Season(from.orElseThrow(), to.orElseThrow()));
        });
    }

    private Optional<MonthDay> day(Node node, String what) {
        String allowed = "month and day, for example \"04-15\" for the 15th of April";
        Optional<String> text = values.words(node, what, allowed);
        if (text.isEmpty()) {
            return Optional.empty();
        }
        Matcher parts = DAY.matcher(text.get());
        boolean shaped = parts.matches();
        Optional<MonthDay> day = shaped ? monthDay(parts.group(1), parts.group(2)) : Optional.empty();
        if (day.isEmpty()) {
            boolean swapped = shaped && monthDay(parts.group(2), parts.group(1)).isPresent();
            problems.add(Problem.at(node.place(), what + " is no day of the year")
                    .found(Wording.quote(text.get()))
                    .allowed(allowed)
                    .mend(swapped ? "write the month first: \"" + parts.group(2) + "-" + parts.group(1) + "\"" : ""));
        }
        return day;
    }

    private static Optional<MonthDay> monthDay(String month, String day) {
        try {
            return Optional.of(MonthDay.of(Integer.parseInt(month), Integer.parseInt(day)));
        } catch (DateTimeException e) {
            return Optional.empty();
        }
    }
}
