package limbway.reports.patterns;

import java.util.List;
import java.util.Optional;

import limbway.sim.experiment.statistics.Interval;

/** Computes patterns and writes them as tables. */
final class PatternTable {

    private static final String HEADER = """
            | no. | pattern and what is measured | published | inside if | ours (95 %) | needs and energy alone | verdict | terms |
            |---|---|---|---|---|---|---|---|
            """;

    private final Lives usual;
    private final Lives alone;

    PatternTable(Lives usual) {
        this.usual = usual;
        this.alone = usual.withoutWorth();
    }

    String render(List<Pattern> patterns) {
        StringBuilder table = new StringBuilder(HEADER);
        for (Pattern pattern : patterns) {
            boolean inside = true;
            StringBuilder rows = new StringBuilder();
            for (Part part : pattern.parts()) {
                Optional<Interval> ours = Interval.of(part.measurement().of(usual));
                Optional<Interval> energyAlone = Interval.of(part.measurement().of(alone));
                boolean met = ours.isPresent() && part.band().holds(ours.get());
                inside &= met;
                if (pattern.parts().size() > 1) {
                    rows.append(row(
                            "",
                            part.words(),
                            part.published(),
                            part.band().text(part.unit()),
                            text(part, ours),
                            text(part, energyAlone),
                            met ? "inside" : "missed",
                            ""));
                }
            }
            table.append(head(pattern, inside)).append(rows);
        }
        return table.toString();
    }

    private String head(Pattern pattern, boolean inside) {
        String verdict = inside ? "**inside**" : "**missed**";
        String number = Integer.toString(pattern.number());
        if (pattern.parts().size() > 1) {
            return row(
                    number, "**" + pattern.words() + "**", pattern.source(), "all", "", "", verdict, pattern.terms());
        }
        Part part = pattern.parts().get(0);
        return row(
                number,
                "**" + pattern.words() + "**: " + part.words(),
                part.published() + " (" + pattern.source() + ")",
                part.band().text(part.unit()),
                text(part, Interval.of(part.measurement().of(usual))),
                text(part, Interval.of(part.measurement().of(alone))),
                verdict,
                pattern.terms());
    }

    private static String text(Part part, Optional<Interval> found) {
        if (found.isEmpty()) {
            return "did not happen";
        }
        Unit unit = part.unit();
        Interval interval = found.get();
        String mean = unit.number(interval.mean());
        return interval.halfWidth().isEmpty()
                ? mean + unit.sign()
                : mean + " (" + unit.number(interval.lo().getAsDouble()) + " to "
                        + unit.number(interval.hi().getAsDouble()) + ")" + unit.sign();
    }

    private static String row(String... cells) {
        return "| " + String.join(" | ", cells) + " |\n";
    }
}
