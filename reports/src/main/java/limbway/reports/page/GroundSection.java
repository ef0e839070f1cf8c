package limbway.reports.page;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import limbway.model.explain.GroundReason;
import limbway.model.explain.flip.Flip;
import limbway.reports.chart.DataTable;
import limbway.reports.chart.GroundPairsChart;
import limbway.reports.chart.TwoWaysChart;
import limbway.reports.measure.Measures;
import limbway.reports.measure.PairUse;
import limbway.reports.measure.RouteCard;
import limbway.reports.measure.SmallestFlip;
import limbway.reports.words.ChangeLine;
import limbway.reports.words.Figures;
import limbway.reports.words.FlipText;
import limbway.reports.words.PageText;
import limbway.reports.words.ReasonText;
import limbway.sim.habitat.Habitat;

/** Where the ground is used, and why. */
final class GroundSection {

    private static final int MOST_ROWS = 20;
    private static final int MOST_REMEDIES = 5;

    /** Bodies that go over the ground between the same places for the same kind of reason share a row. */
    private record Row(String from, String to, String because) {}

    private GroundSection() {}

    static void write(Html html, Report report) {
        Measures measures = report.measures();
        html.element("h2 id=\"ground\"", "Where and why the ground is used");
        if (measures.groundUse().isEmpty()) {
            html.paragraph("The ground was not used on any trip.");
            return;
        }
        html.paragraph("What uses the ground most, and what to try:").list(Remedies.of(measures, MOST_REMEDIES));
        flip(html, report);
        html.figure(GroundPairsChart.of(measures));
        html.paragraph(PageText.GROUND);
        List<List<String>> rows = rows(measures);
        int shown = Math.min(MOST_ROWS, rows.size());
        html.table(
                "Trips over the ground, most metres first; each body and trip is in data/ground_use.csv",
                new DataTable(
                        List.of("from and to", "who, metres on the ground a day", "trips a day", "for", "why"),
                        rows.subList(0, shown)));
        if (shown < rows.size()) {
            html.paragraph((rows.size() - shown) + " rows with fewer metres are left out here.");
        }
        html.figure(TwoWaysChart.of(measures));
    }

    /** What would turn the trips that use the ground most. */
    private static void flip(Html html, Report report) {
        Habitat habitat = report.measures().outcome().habitat();
        PairUse worst = report.measures().groundUse().get(0);
        // not looked for a second time
        Optional<Flip> found = report.cards()
                .find(worst.body(), worst.from(), worst.to())
                .filter(RouteCard::flipAsked)
                .map(RouteCard::flip)
                .orElseGet(() -> SmallestFlip.of(habitat, worst));
        found.ifPresent(flip -> html.paragraph("To turn the trips of "
                        + Figures.one(worst.body().name()) + " from "
                        + worst.from() + " to " + worst.to() + " off the ground, one change is enough: "
                        + FlipText.of(flip) + ". It was tried by compiling the changed layout; as a change of a "
                        + "variant it reads:")
                .element(
                        "pre",
                        "- " + ChangeLine.of(flip.change(), habitat.layout().enclosure())));
    }

    private static List<List<String>> rows(Measures measures) {
        Map<Row, List<PairUse>> groups = new LinkedHashMap<>();
        for (PairUse use : measures.groundUse()) {
            String because = use.reason() instanceof GroundReason.Dearer
                    ? "dearer"
                    : ReasonText.because(use.reason(), use.body());
            Row row = new Row(use.from(), use.to(), because);
            groups.computeIfAbsent(row, k -> new ArrayList<>()).add(use);
        }
        List<List<String>> rows = new ArrayList<>();
        groups.forEach((row, uses) -> rows.add(cells(row, uses)));
        return rows;
    }

    private static List<String> cells(Row row, List<PairUse> uses) {
        List<String> who = new ArrayList<>();
        double trips = 0;
        double groundTrips = 0;
        for (PairUse use : uses) {
            who.add(use.body().name() + " " + Phrases.metres(use.groundMPerDay()));
            trips += use.tripsPerDay();
            groundTrips += use.groundTripsPerDay();
        }
        PairUse most = uses.get(0);
        String sentence = ReasonText.sentence(most.ways(), most.reason(), most.body());
        return List.of(
                row.from + " to " + row.to,
                String.join("; ", who),
                Figures.decimals(groundTrips, 1) + " of " + Figures.decimals(trips, 1) + " over the ground",
                Phrases.motives(most.motives()),
                uses.size() == 1
                        ? Phrases.sentence(sentence)
                        : "For " + Figures.one(most.body().name()) + " " + sentence + ".");
    }
}
