package limbway.reports.chart;

import java.awt.Color;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

import org.jfree.chart.axis.CategoryAxis;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.labels.CategoryItemLabelGenerator;
import org.jfree.chart.labels.StandardCategoryItemLabelGenerator;
import org.jfree.chart.plot.CategoryPlot;
import org.jfree.chart.renderer.category.StackedBarRenderer;
import org.jfree.chart.renderer.category.StandardBarPainter;
import org.jfree.data.category.CategoryDataset;
import org.jfree.data.category.DefaultCategoryDataset;

import limbway.reports.measure.Activity;
import limbway.reports.measure.Budget;
import limbway.reports.measure.Measures;
import limbway.reports.words.Figures;
import limbway.reports.words.IntervalText;
import limbway.sim.experiment.statistics.Interval;

/** Draws what the animals do hour by hour, a bar for each hour from morning down to evening. */
public final class ActivityChart {

    private static final int ROW_PX = 26;
    private static final int FRAME_PX = 96;

    /** A part of a bar narrower than this gets no number [%]. */
    private static final double LEAST_LABELLED = 6;

    /** A part at least this wide has room for a short name beside its number [%]. */
    private static final double LEAST_NAMED = 22;

    private static final int NOWHERE = -1;

    private ActivityChart() {}

    /**
     * Shares of the time of all animals by hour.
     *
     * @param measures measures of a run
     * @return the picture
     */
    public static Picture of(Measures measures) {
        List<Budget.Hour> hours = measures.budget().byHour();
        List<Activity> shown = shown(hours);
        DefaultCategoryDataset data = new DefaultCategoryDataset();
        List<List<String>> table = new ArrayList<>();
        for (Budget.Hour hour : hours) {
            String label = String.format(Locale.ROOT, "%02d:00", hour.hour());
            List<String> row = new ArrayList<>(List.of(label));
            for (Activity activity : shown) {
                Interval share = hour.shares().get(activity);
                data.addValue(100 * share.mean(), activity.word(), label);
                row.add(IntervalText.percent(share.mean(), share.lo(), share.hi()));
            }
            table.add(row);
        }
        List<String> headers = new ArrayList<>(List.of("hour"));
        shown.forEach(activity -> headers.add(activity.word()));
        CategoryAxis names = Axes.names();
        names.setCategoryMargin(0.12);
        NumberAxis percent = Axes.numbers("share of the time of all animals in the hour that begins then [%]");
        percent.setRange(0, 100);
        CategoryPlot plot = Axes.plot(data, names, percent, renderer(shown, namedHours(hours, shown)));
        return new Picture(
                "activity-by-hour",
                "What the animals do through the day",
                "A bar for each hour in which anybody is up, morning on top, divided into "
                        + String.join(", ", shown.stream().map(Activity::word).toList()) + ".",
                Style.WIDTH_PX,
                FRAME_PX + ROW_PX * Math.max(2, hours.size()),
                Axes.painter(plot, true),
                new DataTable(headers, table));
    }

    /** What occurs at all, in the order of the bars. */
    private static List<Activity> shown(List<Budget.Hour> hours) {
        return List.of(Activity.values()).stream()
                .filter(activity -> hours.stream()
                        .anyMatch(hour -> hour.shares().get(activity).mean() > 0))
                .toList();
    }

    /** For each activity the bar in which it takes most: there its name stands too. */
    private static Map<Activity, Integer> namedHours(List<Budget.Hour> hours, List<Activity> shown) {
        Map<Activity, Integer> named = new EnumMap<>(Activity.class);
        for (Activity activity : shown) {
            double most = LEAST_NAMED / 100;
            for (int h = 0; h < hours.size(); h++) {
                double share = hours.get(h).shares().get(activity).mean();
                if (share > most) {
                    most = share;
                    named.put(activity, h);
                }
            }
        }
        return named;
    }

    private static StackedBarRenderer renderer(List<Activity> shown, Map<Activity, Integer> named) {
        StackedBarRenderer renderer = new StackedBarRenderer();
        renderer.setBarPainter(new StandardBarPainter());
        renderer.setShadowVisible(false);
        renderer.setDefaultItemLabelGenerator(labels(shown, named));
        renderer.setDefaultItemLabelsVisible(true);
        // white edges keep neighbours apart in a grey print
        renderer.setDrawBarOutline(true);
        for (int series = 0; series < shown.size(); series++) {
            Color colour = Style.of(shown.get(series));
            renderer.setSeriesPaint(series, colour);
            renderer.setSeriesOutlinePaint(series, Style.PAPER);
            renderer.setSeriesOutlineStroke(series, Style.line(1.2));
            renderer.setSeriesItemLabelPaint(series, Style.inkOn(colour));
        }
        return renderer;
    }

    private static CategoryItemLabelGenerator labels(List<Activity> shown, Map<Activity, Integer> named) {
        return new StandardCategoryItemLabelGenerator() {
            private static final long serialVersionUID = 1;

            @Override
            public String generateLabel(CategoryDataset data, int row, int column) {
                double percent = data.getValue(row, column).doubleValue();
                if (percent < LEAST_LABELLED) {
                    return "";
                }
                boolean isNamed = named.getOrDefault(shown.get(row), NOWHERE) == column;
                return (isNamed ? shown.get(row).word() + " " : "") + Figures.decimals(percent, 0);
            }
        };
    }
}
