package limbway.reports.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

import org.jfree.chart.axis.CategoryAxis;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.CategoryPlot;
import org.jfree.chart.plot.CombinedDomainCategoryPlot;
import org.jfree.chart.plot.PlotOrientation;
import org.jfree.chart.renderer.category.StackedBarRenderer;
import org.jfree.chart.renderer.category.StandardBarPainter;
import org.jfree.chart.renderer.category.StatisticalLineAndShapeRenderer;
import org.jfree.data.category.DefaultCategoryDataset;
import org.jfree.data.statistics.DefaultStatisticalCategoryDataset;

import limbway.reports.measure.Aspect;
import limbway.reports.measure.HourOfDay;
import limbway.reports.measure.Measures;
import limbway.reports.words.Figures;
import limbway.reports.words.IntervalText;
import limbway.sim.experiment.statistics.Interval;

/** Draws travel through the day: the share off the ground above, the metres below. */
public final class HourChart {

    private static final int HEIGHT_PX = 420;
    private static final String SHARE = "share off the ground, by distance";
    private static final String OFF_GROUND = "metres off the ground";
    private static final String GROUND = "metres on the ground";

    private HourChart() {}

    /**
     * Travel by the hour in which it began.
     *
     * @param measures measures of a run
     * @return the picture
     */
    public static Picture of(Measures measures) {
        List<HourOfDay> hours = measures.offGround().byHour();
        DefaultStatisticalCategoryDataset shares = new DefaultStatisticalCategoryDataset();
        DefaultCategoryDataset metres = new DefaultCategoryDataset();
        List<List<String>> table = new ArrayList<>();
        int first = hours.isEmpty() ? 6 : hours.get(0).hour();
        int last = hours.isEmpty() ? 18 : hours.get(hours.size() - 1).hour();
        for (int h = first; h <= last; h++) {
            shares.add(null, null, SHARE, Integer.toString(h));
            metres.addValue(0, OFF_GROUND, Integer.toString(h));
            metres.addValue(0, GROUND, Integer.toString(h));
        }
        for (HourOfDay hour : hours) {
            String label = Integer.toString(hour.hour());
            Interval share = hour.share().by(Aspect.DISTANCE).orElseThrow();
            shares.add(100 * share.mean(), 100 * share.halfWidth().orElse(0), SHARE, label);
            metres.addValue(hour.offGroundMPerDay(), OFF_GROUND, label);
            metres.addValue(hour.groundMPerDay(), GROUND, label);
            table.add(List.of(
                    String.format(Locale.ROOT, "%02d:00", hour.hour()),
                    IntervalText.percent(share.mean(), share.lo(), share.hi()),
                    Figures.decimals(hour.offGroundMPerDay(), 1),
                    Figures.decimals(hour.groundMPerDay(), 1)));
        }
        return new Picture(
                "off-ground-by-hour",
                "Travel off the ground through the day",
                "Above, the share off the ground of trips that began in each hour, with 95 % intervals; below, how many "
                        + "metres a day all animals together travel in that hour, off the ground and on it.",
                Style.WIDTH_PX,
                HEIGHT_PX,
                Axes.painter(plot(shares, metres), true),
                new DataTable(
                        List.of("hour", "share off the ground", "off the ground [m/day]", "on the ground [m/day]"),
                        table));
    }

    private static CombinedDomainCategoryPlot plot(
            DefaultStatisticalCategoryDataset shares, DefaultCategoryDataset metres) {
        StatisticalLineAndShapeRenderer points = new StatisticalLineAndShapeRenderer(true, true);
        points.setSeriesShape(0, Style.marker(Aspect.DISTANCE));
        points.setSeriesPaint(0, Style.INK);
        points.setErrorIndicatorStroke(Style.line(1.4));
        StackedBarRenderer bars = new StackedBarRenderer();
        bars.setBarPainter(new StandardBarPainter());
        bars.setShadowVisible(false);
        bars.setSeriesPaint(0, Style.OFF_GROUND);
        bars.setSeriesPaint(1, Style.GROUND);
        CategoryAxis hours = Axes.categories("hour of the day in which the trip began");
        NumberAxis percent = Axes.percent("off the ground [%]");
        CombinedDomainCategoryPlot both = new CombinedDomainCategoryPlot(hours);
        CategoryPlot upper = Axes.plot(shares, null, percent, points);
        CategoryPlot lower = Axes.plot(metres, null, Axes.numbers("travel [m/day]"), bars);
        both.add(upper, 3);
        both.add(lower, 2);
        both.setOrientation(PlotOrientation.VERTICAL);
        both.setGap(18);
        return both;
    }
}
