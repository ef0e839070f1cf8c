package limbway.reports.chart;

import java.awt.Color;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

import org.jfree.chart.axis.CategoryAxis;
import org.jfree.chart.labels.CategoryItemLabelGenerator;
import org.jfree.chart.labels.StandardCategoryItemLabelGenerator;
import org.jfree.chart.plot.CategoryPlot;
import org.jfree.chart.renderer.category.StackedBarRenderer;
import org.jfree.chart.renderer.category.StandardBarPainter;
import org.jfree.data.category.CategoryDataset;
import org.jfree.data.category.DefaultCategoryDataset;

import limbway.model.body.LocomotorMode;
import limbway.model.route.Way;
import limbway.reports.measure.Measures;
import limbway.reports.measure.PairUse;
import limbway.reports.words.EnergyText;
import limbway.reports.words.Figures;
import limbway.reports.words.PartText;

/** Draws what the two ways of a trip cost, part by part, on one scale. */
public final class TwoWaysChart {

    /** A bar, known by its number and named by its label. */
    private record Row(int number, String label) implements Comparable<Row> {

        @Override
        public int compareTo(Row other) {
            return Integer.compare(number, other.number);
        }

        @Override
        public String toString() {
            return label;
        }
    }

    private static final int MOST_PAIRS = 6;
    private static final int ROW_PX = 40;
    private static final int FRAME_PX = 100;

    /** A part narrower than this share of the longest bar has no room for its number. */
    private static final double LEAST_LABELLED = 0.07;

    private TwoWaysChart() {}

    /**
     * Energy of the way over the ground and the way off it, for the trips with most metres on the ground.
     *
     * @param measures measures of a run in which the ground was used
     * @return the picture
     */
    public static Picture of(Measures measures) {
        DefaultCategoryDataset data = new DefaultCategoryDataset();
        List<List<String>> table = new ArrayList<>();
        double longestJ = 0;
        List<PairUse> uses = largest(measures.groundUse());
        List<LocomotorMode> modes = modes(uses);
        for (PairUse use : uses) {
            String name = use.from() + " to " + use.to() + ", " + use.body().name();
            longestJ = Math.max(
                    longestJ,
                    add(
                            data,
                            modes,
                            table,
                            name,
                            name + ", ",
                            "over the ground",
                            use.ways().overGround()));
            longestJ = Math.max(
                    longestJ,
                    add(
                            data,
                            modes,
                            table,
                            name,
                            "",
                            "off the ground",
                            use.ways().offGround()));
        }
        CategoryAxis names = Axes.names();
        names.setCategoryMargin(0.25);
        CategoryPlot plot = Axes.plot(
                data, names, Axes.numbers("energy of one trip [J]"), renderer(modes, LEAST_LABELLED * longestJ));
        return new Picture(
                "two-ways-by-part",
                "Energy of the two ways, by part",
                "For each trip two bars on the same scale: the way over the ground and the way off it, each divided into "
                        + String.join(", ", modes.stream().map(PartText::doing).toList()) + ".",
                Style.WIDTH_PX,
                FRAME_PX + 2 * ROW_PX * uses.size(),
                Axes.painter(plot, true),
                new DataTable(List.of("trip", "way", "energy"), table));
    }

    /** Of each two places the body with most metres. */
    private static List<PairUse> largest(List<PairUse> uses) {
        Map<String, PairUse> first = new LinkedHashMap<>();
        uses.forEach(use -> first.putIfAbsent(use.from() + "\n" + use.to(), use));
        return first.values().stream().limit(MOST_PAIRS).toList();
    }

    /** The modes that take energy on one of the ways, as they are told. */
    private static List<LocomotorMode> modes(List<PairUse> uses) {
        List<Way> ways = uses.stream()
                .flatMap(use -> Stream.of(use.ways().overGround(), use.ways().offGround()))
                .flatMap(Optional::stream)
                .toList();
        return PartText.asTold().stream()
                .filter(mode -> ways.stream().anyMatch(way -> way.energy().part(mode) > 0))
                .toList();
    }

    private static double add(
            DefaultCategoryDataset data,
            List<LocomotorMode> modes,
            List<List<String>> table,
            String name,
            String before,
            String kind,
            Optional<Way> way) {
        double totalJ = way.map(w -> w.milliJ() / 1000.0).orElse(0.0);
        Row row = new Row(
                data.getColumnCount(), before + kind + ": " + (way.isPresent() ? Figures.energy(totalJ) : "no way"));
        for (LocomotorMode mode : modes) {
            double partJ = way.map(w -> w.energy().part(mode) / 1000.0).orElse(0.0);
            data.addValue(partJ, PartText.doing(mode), row);
        }
        table.add(List.of(name, kind, way.map(w -> EnergyText.sum(w.energy())).orElse("no way")));
        return totalJ;
    }

    private static StackedBarRenderer renderer(List<LocomotorMode> modes, double leastLabelledJ) {
        StackedBarRenderer renderer = new StackedBarRenderer();
        renderer.setBarPainter(new StandardBarPainter());
        renderer.setShadowVisible(false);
        renderer.setDefaultItemLabelGenerator(labels(leastLabelledJ));
        renderer.setDefaultItemLabelsVisible(true);
        // white edges keep neighbours apart in a grey print
        renderer.setDrawBarOutline(true);
        for (int series = 0; series < modes.size(); series++) {
            Color colour = Style.of(modes.get(series));
            renderer.setSeriesPaint(series, colour);
            renderer.setSeriesOutlinePaint(series, Style.PAPER);
            renderer.setSeriesOutlineStroke(series, Style.line(1.2));
            renderer.setSeriesItemLabelPaint(series, Style.inkOn(colour));
        }
        return renderer;
    }

    private static CategoryItemLabelGenerator labels(double leastLabelledJ) {
        return new StandardCategoryItemLabelGenerator() {
            private static final long serialVersionUID = 1;

            @Override
            public String generateLabel(CategoryDataset data, int row, int column) {
                double valueJ = data.getValue(row, column).doubleValue();
                return valueJ < leastLabelledJ ? "" : Figures.energy(valueJ);
            }
        };
    }
}
