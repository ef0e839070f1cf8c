package limbway.reports.page;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

import limbway.model.explain.GroundReason;
import limbway.model.explain.GroundReasons;
import limbway.model.explain.PairWays;
import limbway.model.route.Routes;
import limbway.model.route.Search;
import limbway.reports.chart.DataTable;
import limbway.reports.chart.ShareChart;
import limbway.reports.measure.Aspect;
import limbway.reports.measure.LayoutChange;
import limbway.reports.measure.LayoutDifference;
import limbway.reports.measure.Measures;
import limbway.reports.words.Figures;
import limbway.reports.words.IntervalText;
import limbway.reports.words.PageText;
import limbway.reports.words.ReasonText;
import limbway.sim.experiment.statistics.Interval;

/** How the other layouts of the scenario compare, and what makes the difference. */
final class LayoutSection {

    private static final int MOST_REMEDIES = 3;

    private LayoutSection() {}

    static void write(Html html, Report report) {
        if (report.others().isEmpty()) {
            return;
        }
        List<Measures> layouts = ranked(report);
        html.element("h2 id=\"layouts\"", "How the layouts compare");
        html.paragraph(order(layouts));
        html.paragraph(PageText.LAYOUTS);
        html.figure(ShareChart.byLayout(layouts));
        Measures base = report.measures();
        List<List<String>> rows = new ArrayList<>();
        for (Measures layout : layouts) {
            rows.add(List.of(
                    layout.layout() + (isShown(layout, base) ? " (this report)" : ""),
                    Phrases.share(layout.offGround().overall().by(Aspect.DISTANCE)),
                    isShown(layout, base) ? "" : points(LayoutDifference.of(base, layout, Aspect.DISTANCE)),
                    Phrases.share(layout.offGround().overall().by(Aspect.TIME)),
                    Phrases.share(layout.offGround().overall().by(Aspect.ENERGY)),
                    Phrases.share(layout.elevated().share())));
        }
        html.table(
                "Travel off the ground and waking time above "
                        + Figures.metres(report.info().thresholdM()),
                new DataTable(
                        List.of(
                                "layout",
                                "by distance",
                                "difference to " + base.layout() + " [points]",
                                "by time",
                                "by energy",
                                "waking time up high"),
                        rows));
        for (Measures other : layouts) {
            if (!isShown(other, base)) {
                one(html, base, other);
            }
        }
    }

    /** All layouts, those with most travel off the ground first; without travel last. */
    static List<Measures> ranked(Report report) {
        List<Measures> layouts = new ArrayList<>(List.of(report.measures()));
        layouts.addAll(report.others());
        layouts.sort(Comparator.comparingDouble(layout -> -layout.offGround()
                .overall()
                .by(Aspect.DISTANCE)
                .map(Interval::mean)
                .orElse(-1.0)));
        return layouts;
    }

    /** Layouts have names of their own. */
    private static boolean isShown(Measures layout, Measures shown) {
        return layout.layout().equals(shown.layout());
    }

    private static String order(List<Measures> layouts) {
        List<String> names = new ArrayList<>();
        for (Measures layout : layouts) {
            names.add("\"" + layout.layout() + "\" "
                    + layout.offGround()
                            .overall()
                            .by(Aspect.DISTANCE)
                            .map(share -> Figures.percent(share.mean()))
                            .orElse("no travel"));
        }
        return "Travel off the ground by distance, most first: " + String.join(", ", names) + ".";
    }

    private static void one(Html html, Measures base, Measures other) {
        html.element("h3", other.layout());
        String note = other.outcome().habitat().layout().note();
        if (!note.isEmpty()) {
            html.paragraph(Phrases.sentence(note));
        }
        html.paragraph(comparison(base, other));
        List<String> remedies = Remedies.of(other, MOST_REMEDIES);
        if (remedies.isEmpty()) {
            html.paragraph("Nobody is left on the ground.");
        } else {
            html.paragraph("Where the ground is still used, and what to try:").list(remedies);
        }
    }

    private static String points(Optional<Interval> difference) {
        return difference
                .map(i -> IntervalText.points(i.mean(), i.lo(), i.hi()))
                .orElse("not known");
    }

    private static String comparison(Measures base, Measures other) {
        Optional<Interval> share = other.offGround().overall().by(Aspect.DISTANCE);
        if (share.isEmpty()) {
            return "Nobody travelled.";
        }
        String size = LayoutDifference.of(base, other, Aspect.DISTANCE)
                .map(difference -> "; the difference to \"" + base.layout() + "\" is " + points(Optional.of(difference))
                        + " percentage points under the same chance")
                .orElse("");
        return Phrases.share(share) + " of the distance is off the ground" + size + "."
                + LayoutChange.greatest(base, other)
                        .map(greatest -> " " + greatest(greatest, base, other))
                        .orElse("");
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
        if (!(PairWays.find(routes, routes.sharpness(), from, to) instanceof Search.Reached ways)) {
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
