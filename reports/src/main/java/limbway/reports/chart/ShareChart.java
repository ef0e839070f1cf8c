package limbway.reports.chart;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.jfree.chart.plot.CategoryPlot;
import org.jfree.chart.renderer.category.StatisticalLineAndShapeRenderer;
import org.jfree.data.statistics.DefaultStatisticalCategoryDataset;

import limbway.reports.measure.Aspect;
import limbway.reports.measure.Measures;
import limbway.reports.measure.OffGroundShare;
import limbway.reports.words.Figures;
import limbway.reports.words.IntervalText;
import limbway.sim.experiment.statistics.Interval;

/** Draws shares of travel off the ground as three marked points with their intervals. */
public final class ShareChart {

    /** Narrower than the others, because it stands beside the answer. */
    private static final int WIDTH_PX = 620;

    private static final int ROW_PX = 52;
    private static final int FRAME_PX = 110;

    private ShareChart() {}

    /**
     * Shares of all animals together, of each body, and of each animal.
     *
     * @param measures measures of a run
     * @return the picture
     */
    public static Picture byAnimal(Measures measures) {
        Map<String, OffGroundShare> rows = new LinkedHashMap<>();
        rows.put("all animals", measures.offGround().overall());
        if (measures.offGround().byBody().size()
                < measures.offGround().byAnimal().size()) {
            measures.offGround().byBody().forEach((body, share) -> rows.put("each " + body, share));
        }
        measures.outcome()
                .habitat()
                .animals()
                .forEach(animal -> rows.put(
                        animal.name() + ", " + animal.body().name(),
                        measures.offGround().byAnimal().get(animal.name())));
        return picture("off-ground-by-animal", "Share of travel off the ground, by animal", rows);
    }

    /**
     * Shares of all animals together in each layout.
     *
     * @param layouts measures of runs, in the order to show them
     * @return the picture
     */
    public static Picture byLayout(List<Measures> layouts) {
        Map<String, OffGroundShare> rows = new LinkedHashMap<>();
        layouts.forEach(
                measures -> rows.put(measures.layout(), measures.offGround().overall()));
        return picture("off-ground-by-layout", "Share of travel off the ground, by layout", rows);
    }

    private static Picture picture(String id, String title, Map<String, OffGroundShare> shares) {
        DefaultStatisticalCategoryDataset data = new DefaultStatisticalCategoryDataset();
        List<List<String>> table = new ArrayList<>();
        shares.forEach((name, share) -> {
            String label = share.by(Aspect.DISTANCE)
                    .map(interval -> name + ": " + Figures.percent(interval.mean()))
                    .orElse(name + ": no travel");
            List<String> row = new ArrayList<>(List.of(name));
            for (Aspect aspect : Aspect.values()) {
                Optional<Interval> interval = share.by(aspect);
                Double mean = interval.map(i -> 100 * i.mean()).orElse(null);
                Double half = interval.map(i -> 100 * i.halfWidth().orElse(0)).orElse(null);
                data.add(mean, half, series(aspect), label);
                row.add(interval.map(i -> IntervalText.percent(i.mean(), i.lo(), i.hi()))
                        .orElse("no travel"));
            }
            table.add(row);
        });
        CategoryPlot plot =
                Axes.plot(data, Axes.names(), Axes.percent("share of travel off the ground [%]"), renderer());
        return new Picture(
                id,
                title,
                "Points with 95 % intervals: circles by distance, squares by time, triangles by energy. "
                        + "The number beside each name is the share by distance.",
                WIDTH_PX,
                FRAME_PX + ROW_PX * shares.size(),
                Axes.painter(plot, true),
                new DataTable(List.of("who or what", "by distance", "by time", "by energy"), table));
    }

    private static String series(Aspect aspect) {
        String name = "by " + aspect.word();
        return aspect == Aspect.DISTANCE ? name + " (the number beside the name)" : name;
    }

    static StatisticalLineAndShapeRenderer renderer() {
        StatisticalLineAndShapeRenderer renderer = new StatisticalLineAndShapeRenderer(false, true);
        renderer.setUseSeriesOffset(true);
        renderer.setErrorIndicatorStroke(Style.line(1.6));
        for (Aspect aspect : Aspect.values()) {
            renderer.setSeriesShape(aspect.ordinal(), Style.marker(aspect));
            renderer.setSeriesPaint(aspect.ordinal(), Style.of(aspect));
        }
        return renderer;
    }
}
