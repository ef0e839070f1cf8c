package limbway.reports.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import limbway.model.explain.GroundReason;
import limbway.model.explain.GroundReasons;
import limbway.model.explain.PairWays;
import limbway.model.route.ChoiceSharpness;
import limbway.model.route.Routes;
import limbway.model.route.Search;
import limbway.reports.chart.DataTable;
import limbway.reports.chart.ShareChart;
import limbway.reports.measure.Aspect;
import limbway.reports.measure.Interval;
import limbway.reports.measure.LayoutChange;
import limbway.reports.measure.Measures;
import limbway.reports.measure.PairUse;
import limbway.reports.words.Figures;
import limbway.reports.words.PageText;
import limbway.reports.words.ReasonText;

/** How the other layouts of the scenario compare, and what makes the difference. */
final class LayoutSection {

    private LayoutSection() {}

    static void write(Html html, Report report) {
        if (report.others().isEmpty()) {
            return;
        }
        List<Measures> layouts = new ArrayList<>(List.of(report.measures()));
        layouts.addAll(report.others());
        html.element("h2 id=\"layouts\"", "The other layouts").paragraph(PageText.LAYOUTS);
        html.figure(ShareChart.byLayout(layouts));
        List<List<String>> rows = new ArrayList<>();
        for (Measures layout : layouts) {
            rows.add(List.of(
                    layout.layout(),
                    Phrases.share(layout.offGround().overall().by(Aspect.DISTANCE)),
                    Phrases.share(layout.offGround().overall().by(Aspect.TIME)),
                    Phrases.share(layout.offGround().overall().by(Aspect.ENERGY)),
                    Phrases.share(layout.elevated().share())));
        }
        html.table(
                "Travel off the ground and waking time above "
                        + Figures.metres(report.info().thresholdM()),
                new DataTable(List.of("layout", "by distance", "by time", "by energy", "waking time up high"), rows));
        for (Measures other : report.others()) {
            html.element("h3", other.layout());
            String note = other.outcome().habitat().layout().note();
            if (!note.isEmpty()) {
                html.paragraph(Phrases.sentence(note));
            }
            html.paragraph(comparison(report.measures(), other));
        }
    }

    static String comparison(Measures base, Measures other) {
        Optional<Interval> baseShare = base.offGround().overall().by(Aspect.DISTANCE);
        Optional<Interval> otherShare = other.offGround().overall().by(Aspect.DISTANCE);
        if (baseShare.isEmpty() || otherShare.isEmpty()) {
            return "In one of the two layouts nobody travelled.";
        }
        double points = 100 * (otherShare.get().mean() - baseShare.get().mean());
        String size = Math.abs(points) < 0.5
                ? "about as much as in \"" + base.layout() + "\""
                : Figures.decimals(Math.abs(points), 0) + (points > 0 ? " points more" : " points less") + " than in \""
                        + base.layout() + "\"";
        String first = Phrases.share(otherShare) + " of the distance is off the ground, " + size + ".";
        String change = LayoutChange.greatest(base, other)
                .map(greatest -> " " + greatest(greatest, base, other))
                .orElse("");
        return first + change + left(other);
    }

    private static String left(Measures other) {
        if (other.groundUse().isEmpty()) {
            return " Nobody is left on the ground.";
        }
        PairUse most = other.groundUse().get(0);
        return " What is left on the ground is mostly from " + most.from() + " to " + most.to() + " ("
                + Figures.one(most.body().name()) + ", "
                + Figures.path(most.groundMPerDay().mean())
                + " a day), because " + ReasonText.because(most.reason(), most.body()) + ".";
    }

    private static String greatest(LayoutChange change, Measures base, Measures other) {
        String text = "The greatest change is on the way from " + change.from() + " to " + change.to() + ": "
                + Figures.one(change.body().name()) + " goes " + Figures.path(change.afterM())
                + " a day on the ground instead of " + Figures.path(change.beforeM()) + ".";
        return text + reason(change, base) + reason(change, other);
    }

    private static String reason(LayoutChange change, Measures measures) {
        String in = " In \"" + measures.layout() + "\" ";
        Routes routes = measures.outcome().habitat().routes(change.body());
        var resources = routes.graph().resources().stream().map(r -> r.id()).toList();
        int from = resources.indexOf(change.from());
        int to = resources.indexOf(change.to());
        if (from < 0 || to < 0) {
            return in + "one of the two places does not exist.";
        }
        if (!(PairWays.find(routes, ChoiceSharpness.standard(), from, to) instanceof Search.Reached ways)) {
            return in + "there is no way at all.";
        }
        GroundReason reason =
                new GroundReasons(measures.outcome().habitat().layout().enclosure(), routes).of(from, to, ways);
        if (reason instanceof GroundReason.OffGroundIsCheapest) {
            return in + "the way off the ground is the cheapest.";
        }
        return in + "the ground wins because " + ReasonText.because(reason, change.body()) + ".";
    }
}
