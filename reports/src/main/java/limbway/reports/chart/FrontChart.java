package limbway.reports.chart;

import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.List;

import org.jfree.chart.ChartRenderingInfo;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.ui.RectangleEdge;
import org.jfree.chart.ui.RectangleInsets;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;

/** Draws travel off the ground against what it costs, one point for each layout. */
public final class FrontChart {

    private static final int WIDTH_PX = 560;
    private static final int HEIGHT_PX = 400;
    private static final double MARK_PX = 5;
    private static final double MOST_AWAY_PX = 52;
    private static final double ROOM = 0.15;

    private FrontChart() {}

    /**
     * A layout as a point.
     *
     * @param name what is written beside it
     * @param energyKj energy of moves [kJ/day], mean of the animals
     * @param offGroundPercent travel off the ground [%]
     * @param kind 0 on the front, 1 not, 2 the layout as it stands
     */
    public record Mark(String name, double energyKj, double offGroundPercent, int kind) {}

    /**
     * Energy to the right, travel off the ground upwards.
     *
     * @param marks the layouts, at least one
     * @param table the numbers behind it
     * @return the picture
     */
    public static Picture of(List<Mark> marks, DataTable table) {
        return picture("front", WIDTH_PX, marks, table);
    }

    /**
     * The same for a narrow screen.
     *
     * @param marks the layouts, at least one
     * @param table the numbers behind it
     * @return the picture
     */
    public static Picture narrow(List<Mark> marks, DataTable table) {
        return picture("front-narrow", Style.NARROW_PX, marks, table);
    }

    private static Picture picture(String id, int widthPx, List<Mark> marks, DataTable table) {
        return new Picture(
                id,
                "Travel off the ground, and what it costs to move",
                "Points, one for each layout that was lived in: to the right what moving costs the mean animal, upwards the "
                        + "share of travel off the ground. Filled circles are on the front: no other is as good in these two and "
                        + "in waiting, and better in one. The triangle is the layout as it stands.",
                widthPx,
                HEIGHT_PX,
                (g, area) -> draw(g, area, marks),
                table);
    }

    private static void draw(Graphics2D g, Rectangle2D area, List<Mark> marks) {
        XYSeriesCollection data = new XYSeriesCollection();
        String[] names = {"on the front", "another is better in everything", "as it stands"};
        XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer(false, true);
        for (int kind = 0; kind < names.length; kind++) {
            XYSeries series = new XYSeries(names[kind], false);
            for (Mark mark : marks) {
                if (mark.kind() == kind) {
                    series.add(mark.energyKj(), mark.offGroundPercent());
                }
            }
            if (series.getItemCount() > 0) {
                style(renderer, data.getSeriesCount(), kind);
                data.addSeries(series);
            }
        }
        renderer.setDrawOutlines(true);
        renderer.setUseOutlinePaint(true);
        renderer.setUseFillPaint(true);
        NumberAxis across = Axes.numbers("energy of moving, mean animal [kJ/day]");
        NumberAxis upwards = Axes.numbers("travel off the ground [%]");
        range(across, marks.stream().mapToDouble(Mark::energyKj).toArray(), Double.POSITIVE_INFINITY);
        range(upwards, marks.stream().mapToDouble(Mark::offGroundPercent).toArray(), 102);
        XYPlot plot = new XYPlot(data, across, upwards, renderer);
        plot.setBackgroundPaint(Style.PAPER);
        plot.setOutlineVisible(false);
        plot.setRangeGridlinePaint(Style.GRID);
        plot.setDomainGridlinePaint(Style.GRID);
        plot.setRangeGridlineStroke(Style.line(1));
        plot.setDomainGridlineStroke(Style.line(1));
        plot.setAxisOffset(new RectangleInsets(0, 0, 0, 0));
        JFreeChart chart = Axes.chart(plot, true);
        ChartRenderingInfo info = new ChartRenderingInfo();
        chart.draw(g, area, info);
        label(g, plot, info.getPlotInfo().getDataArea(), marks);
    }

    private static void style(XYLineAndShapeRenderer renderer, int series, int kind) {
        Path2D triangle = new Path2D.Double();
        triangle.moveTo(0, -6);
        triangle.lineTo(6, 5);
        triangle.lineTo(-6, 5);
        triangle.closePath();
        Shape round = new Ellipse2D.Double(-MARK_PX, -MARK_PX, 2 * MARK_PX, 2 * MARK_PX);
        renderer.setSeriesShape(series, kind == 2 ? triangle : round);
        renderer.setSeriesFillPaint(series, kind == 0 ? Style.OFF_GROUND : kind == 2 ? Style.GROUND : Style.PAPER);
        renderer.setSeriesPaint(series, Style.FAINT);
        renderer.setSeriesOutlinePaint(series, kind == 0 ? Style.OFF_GROUND : Style.INK);
        renderer.setSeriesOutlineStroke(series, Style.line(1.4));
    }

    private static void range(NumberAxis axis, double[] values, double most) {
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (double value : values) {
            low = Math.min(low, value);
            high = Math.max(high, value);
        }
        double room = Math.max(1, ROOM * (high - low));
        axis.setRange(Math.max(low >= 0 ? -0.02 * (high - low) - 0.5 : low, low - room), Math.min(most, high + room));
    }

    private static void label(Graphics2D g, XYPlot plot, Rectangle2D inside, List<Mark> marks) {
        Labels labels = new Labels(g, inside);
        for (Mark mark : marks) {
            labels.keepFree(new Rectangle2D.Double(
                    x(plot, inside, mark) - MARK_PX, y(plot, inside, mark) - MARK_PX, 2 * MARK_PX, 2 * MARK_PX));
        }
        for (Mark mark : marks) {
            g.setColor(Style.INK);
            labels.write(
                    mark.name(),
                    x(plot, inside, mark),
                    y(plot, inside, mark),
                    MARK_PX,
                    mark.kind() == 0 ? Style.strongType(12) : Style.type(12),
                    MOST_AWAY_PX);
        }
    }

    private static double x(XYPlot plot, Rectangle2D inside, Mark mark) {
        return plot.getDomainAxis().valueToJava2D(mark.energyKj(), inside, RectangleEdge.BOTTOM);
    }

    private static double y(XYPlot plot, Rectangle2D inside, Mark mark) {
        return plot.getRangeAxis().valueToJava2D(mark.offGroundPercent(), inside, RectangleEdge.LEFT);
    }
}
