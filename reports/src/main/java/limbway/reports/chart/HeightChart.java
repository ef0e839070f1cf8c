package limbway.reports.chart;

import java.util.ArrayList;
import java.util.List;

import limbway.reports.measure.HeightBand;
import limbway.reports.measure.Measures;
import limbway.reports.words.Figures;
import limbway.reports.words.IntervalText;
import limbway.sim.experiment.statistics.Interval;

/** Draws how waking time is spread over heights. */
public final class HeightChart {

    private HeightChart() {}

    /**
     * Waking time by height, highest on top.
     *
     * @param measures measures of a run
     * @return the picture
     */
    public static Picture of(Measures measures) {
        List<Bars.Bar> bars = new ArrayList<>();
        List<List<String>> table = new ArrayList<>();
        for (int b = measures.heights().size() - 1; b >= 0; b--) {
            HeightBand band = measures.heights().get(b);
            Interval share = band.share();
            String name = name(band);
            bars.add(new Bars.Bar(
                    name + ": " + Figures.percent(share.mean()),
                    share,
                    band.isGround() ? Style.GROUND : Style.OFF_GROUND));
            table.add(List.of(name, IntervalText.percent(share.mean(), share.lo(), share.hi())));
        }
        return new Picture(
                "heights-used",
                "Waking time by height",
                "Bars with 95 % intervals, one for each band of height, the ground lowest.",
                Style.WIDTH_PX,
                Bars.heightPx(bars.size()),
                Bars.painter("share of waking time [%]", bars, 100),
                new DataTable(List.of("height", "share of waking time"), table));
    }

    private static String name(HeightBand band) {
        if (band.isGround()) {
            return "on the ground";
        }
        String from = band.fromM() == HeightBand.GROUND_M ? "0" : Figures.decimals(band.fromM(), 0);
        return from + " to " + Figures.decimals(band.toM(), 0) + " m";
    }
}
