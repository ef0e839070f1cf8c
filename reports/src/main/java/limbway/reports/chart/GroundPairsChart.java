package limbway.reports.chart;

import java.util.ArrayList;
import java.util.List;

import limbway.reports.measure.Measures;
import limbway.reports.measure.PairTotal;
import limbway.reports.words.Figures;
import limbway.reports.words.IntervalText;
import limbway.sim.experiment.statistics.Interval;

/** Draws between which places the ground is used. */
public final class GroundPairsChart {

    private static final int MOST_PAIRS = 12;

    private GroundPairsChart() {}

    /**
     * Metres on the ground a day, pairs with most on top.
     *
     * @param measures measures of a run in which the ground was used
     * @return the picture
     */
    public static Picture of(Measures measures) {
        List<Bars.Bar> bars = new ArrayList<>();
        List<List<String>> table = new ArrayList<>();
        for (PairTotal total :
                measures.groundTotals().stream().limit(MOST_PAIRS).toList()) {
            Interval metres = total.groundMPerDay();
            String name = total.from() + " to " + total.to();
            bars.add(new Bars.Bar(name + ": " + Figures.path(metres.mean()), metres, Style.GROUND));
            table.add(List.of(name, IntervalText.amount(metres.mean(), metres.lo(), metres.hi(), 1, "m")));
        }
        int left = measures.groundTotals().size() - bars.size();
        return new Picture(
                "ground-by-pair",
                "Metres on the ground a day, all animals together"
                        + (left > 0 ? " (" + left + " smaller ones left out)" : ""),
                "Bars with 95 % intervals, one for each pair of places, longest on top.",
                Style.WIDTH_PX,
                Bars.heightPx(bars.size()),
                Bars.painter("on the ground [m/day]", bars, 1),
                new DataTable(List.of("trip", "on the ground a day"), table));
    }
}
