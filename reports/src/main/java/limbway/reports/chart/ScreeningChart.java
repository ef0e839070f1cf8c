package limbway.reports.chart;

import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
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

import limbway.reports.measure.Movers;
import limbway.sim.experiment.screening.Effect;

/** Draws how much each assumption moves an answer against how much that depends on the others. */
public final class ScreeningChart {

    private static final int HEIGHT_PX = 470;
    private static final double POINTS = 100;
    private static final double ROOM = 1.12;
    private static final double MARK_PX = 5;
    private static final double MOST_AWAY_PX = 70;
    private static final double WITHOUT_LEADER_PX = 10;

    private ScreeningChart() {}

    /**
     * Mean absolute effect to the right, spread upwards.
     *
     * @param id file name without ending
     * @param title what it shows
     * @param movers the effects, at least one of them with a spread
     * @param table the numbers behind it
     * @return the picture
     */
    public static Picture of(String id, String title, Movers movers, DataTable table) {
        return new Picture(
                id,
                title,
                "Points, one for each assumption: to the right how much it moves the answer, upwards how much that depends "
                        + "on the other assumptions. Those that move the answer are filled and carry their names.",
                Style.WIDTH_PX,
                HEIGHT_PX,
                (g, area) -> draw(g, area, movers),
                table);
    }

    private static void draw(Graphics2D g, Rectangle2D area, Movers movers) {
        XYSeriesCollection data = new XYSeriesCollection();
        data.addSeries(series("moves the answer", movers.sure()));
        data.addSeries(series("may move it: more walks would tell", movers.unsure()));
        data.addSeries(series("does not", movers.others()));
        XYPlot plot = plot(data, greatest(movers));
        JFreeChart chart = Axes.chart(plot, true);
        ChartRenderingInfo info = new ChartRenderingInfo();
        chart.draw(g, area, info);
        Rectangle2D inside = info.getPlotInfo().getDataArea();
        guides(g, plot, inside, movers.leastMove() * POINTS);
        label(g, plot, inside, movers);
    }

    private static XYPlot plot(XYSeriesCollection data, double[] greatest) {
        NumberAxis across = Axes.numbers("mean absolute effect [points]");
        NumberAxis upwards = Axes.numbers("spread of the effect [points]");
        across.setRange(0, greatest[0]);
        upwards.setRange(0, greatest[1]);
        XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer(false, true);
        Shape round = new Ellipse2D.Double(-MARK_PX, -MARK_PX, 2 * MARK_PX, 2 * MARK_PX);
        Shape square = new Rectangle2D.Double(-4.5, -4.5, 9, 9);
        Shape small = new Ellipse2D.Double(-3, -3, 6, 6);
        mark(renderer, 0, round, true);
        mark(renderer, 1, square, false);
        mark(renderer, 2, small, false);
        renderer.setDrawOutlines(true);
        renderer.setUseOutlinePaint(true);
        renderer.setUseFillPaint(true);
        XYPlot plot = new XYPlot(data, across, upwards, renderer);
        plot.setBackgroundPaint(Style.PAPER);
        plot.setOutlineVisible(false);
        plot.setRangeGridlinePaint(Style.GRID);
        plot.setDomainGridlinePaint(Style.GRID);
        plot.setRangeGridlineStroke(Style.line(1));
        plot.setDomainGridlineStroke(Style.line(1));
        plot.setAxisOffset(new RectangleInsets(0, 0, 0, 0));
        return plot;
    }

    private static void mark(XYLineAndShapeRenderer renderer, int series, Shape shape, boolean filled) {
        renderer.setSeriesShape(series, shape);
        renderer.setSeriesFillPaint(series, filled ? Style.OFF_GROUND : Style.PAPER);
        renderer.setSeriesPaint(series, filled ? Style.OFF_GROUND : Style.FAINT);
        renderer.setSeriesOutlinePaint(series, filled ? Style.OFF_GROUND : Style.FAINT);
        renderer.setSeriesOutlineStroke(series, Style.line(1.4));
    }

    /** Where the spread is as great as the effect, and where effects begin to count. */
    private static void guides(Graphics2D g, XYPlot plot, Rectangle2D inside, double leastPoints) {
        double most = Math.min(
                plot.getDomainAxis().getUpperBound(), plot.getRangeAxis().getUpperBound());
        Shape clip = g.getClip();
        g.clip(inside);
        g.setColor(Style.FAINT);
        g.setStroke(Style.dashed(1));
        g.draw(new Line2D.Double(x(plot, inside, 0), y(plot, inside, 0), x(plot, inside, most), y(plot, inside, most)));
        g.draw(new Line2D.Double(
                x(plot, inside, leastPoints), inside.getMinY(), x(plot, inside, leastPoints), inside.getMaxY()));
        g.setClip(clip);
    }

    private static void label(Graphics2D g, XYPlot plot, Rectangle2D inside, Movers movers) {
        Labels labels = new Labels(g, inside);
        for (Effect effect : movers.effects()) {
            if (effect.spread().isPresent()) {
                double x = x(plot, inside, POINTS * effect.meanAbsolute());
                double y = y(plot, inside, POINTS * effect.spread().getAsDouble());
                labels.keepFree(new Rectangle2D.Double(x - MARK_PX, y - MARK_PX, 2 * MARK_PX, 2 * MARK_PX));
            }
        }
        write(g, labels, plot, inside, movers.sure(), Style.strongType(12));
        write(g, labels, plot, inside, movers.unsure(), Style.type(12));
        Font small = Style.type(11);
        g.setColor(Style.FAINT);
        double leastX = x(plot, inside, movers.leastMove() * POINTS);
        labels.write("counts from here on", leastX, inside.getMinY() + 8, 2, small, MOST_AWAY_PX);
        double most = Math.min(
                plot.getDomainAxis().getUpperBound(), plot.getRangeAxis().getUpperBound());
        // well to the upper left of the line through equal effect and spread
        labels.write(
                "above the slanting line: depends on the others",
                x(plot, inside, 0.2 * most),
                y(plot, inside, 0.6 * most),
                2,
                small,
                WITHOUT_LEADER_PX);
    }

    private static void write(
            Graphics2D g, Labels labels, XYPlot plot, Rectangle2D inside, List<Effect> effects, Font font) {
        for (Effect effect : effects) {
            if (effect.spread().isPresent()) {
                g.setColor(Style.INK);
                labels.write(
                        effect.factor().parameter().name(),
                        x(plot, inside, POINTS * effect.meanAbsolute()),
                        y(plot, inside, POINTS * effect.spread().getAsDouble()),
                        MARK_PX,
                        font,
                        MOST_AWAY_PX);
            }
        }
    }

    private static double x(XYPlot plot, Rectangle2D inside, double points) {
        return plot.getDomainAxis().valueToJava2D(points, inside, RectangleEdge.BOTTOM);
    }

    private static double y(XYPlot plot, Rectangle2D inside, double points) {
        return plot.getRangeAxis().valueToJava2D(points, inside, RectangleEdge.LEFT);
    }

    private static XYSeries series(String name, List<Effect> effects) {
        XYSeries series = new XYSeries(name, false);
        for (Effect effect : effects) {
            if (effect.spread().isPresent()) {
                series.add(
                        POINTS * effect.meanAbsolute(), POINTS * effect.spread().getAsDouble());
            }
        }
        return series;
    }

    private static double[] greatest(Movers movers) {
        List<Double> across = new ArrayList<>(List.of(2 * movers.leastMove()));
        List<Double> upwards = new ArrayList<>(List.of(2 * movers.leastMove()));
        for (Effect effect : movers.effects()) {
            across.add(effect.meanAbsolute());
            upwards.add(effect.spread().orElse(0));
        }
        return new double[] {
            ROOM * POINTS * across.stream().max(Double::compare).orElse(1.0),
            ROOM * POINTS * upwards.stream().max(Double::compare).orElse(1.0)
        };
    }
}
