package limbway.reports.chart;

import java.awt.Color;
import java.awt.Paint;
import java.util.List;

import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.CategoryPlot;
import org.jfree.chart.renderer.category.StandardBarPainter;
import org.jfree.chart.renderer.category.StatisticalBarRenderer;
import org.jfree.data.statistics.DefaultStatisticalCategoryDataset;

import limbway.sim.experiment.statistics.Interval;

/** Horizontal bars of one quantity with their intervals, each labelled with its value. */
final class Bars {

    /** One bar: its label on the axis, its value and its colour. */
    record Bar(String label, Interval value, Color colour) {}

    private static final int ROW_PX = 34;
    private static final int FRAME_PX = 64;

    /** Room to the right of the longest bar. */
    private static final double ROOM = 1.04;

    private Bars() {}

    static int heightPx(int bars) {
        return FRAME_PX + ROW_PX * Math.max(2, bars);
    }

    static Painter painter(String axis, List<Bar> bars, double factor) {
        DefaultStatisticalCategoryDataset data = new DefaultStatisticalCategoryDataset();
        for (Bar bar : bars) {
            data.add(factor * bar.value.mean(), factor * bar.value.halfWidth().orElse(0), axis, bar.label);
        }
        StatisticalBarRenderer renderer = new StatisticalBarRenderer() {
            private static final long serialVersionUID = 1;

            @Override
            public Paint getItemPaint(int row, int column) {
                return bars.get(column).colour;
            }
        };
        renderer.setBarPainter(new StandardBarPainter());
        renderer.setShadowVisible(false);
        renderer.setErrorIndicatorPaint(Style.INK);
        renderer.setErrorIndicatorStroke(Style.line(1.6));
        renderer.setMaximumBarWidth(0.08);
        renderer.setDrawBarOutline(false);
        NumberAxis numbers = Axes.numbers(axis);
        double greatest = 0;
        for (Bar bar : bars) {
            greatest = Math.max(
                    greatest, factor * (bar.value.mean() + bar.value.halfWidth().orElse(0)));
        }
        numbers.setRange(0, greatest > 0 ? ROOM * greatest : 1);
        CategoryPlot plot = Axes.plot(data, Axes.names(), numbers, renderer);
        return Axes.painter(plot, false);
    }
}
