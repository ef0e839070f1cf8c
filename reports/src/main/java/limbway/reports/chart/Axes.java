package limbway.reports.chart;

import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.util.Locale;

import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.AxisLocation;
import org.jfree.chart.axis.CategoryAxis;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.block.BlockBorder;
import org.jfree.chart.plot.CategoryPlot;
import org.jfree.chart.plot.Plot;
import org.jfree.chart.plot.PlotOrientation;
import org.jfree.chart.renderer.category.CategoryItemRenderer;
import org.jfree.chart.title.LegendTitle;
import org.jfree.chart.ui.HorizontalAlignment;
import org.jfree.chart.ui.RectangleEdge;
import org.jfree.chart.ui.RectangleInsets;
import org.jfree.data.category.CategoryDataset;

/** Builds JFreeChart plots in the style of this package. */
final class Axes {

    private static final int TEXT = 13;

    private Axes() {}

    static CategoryAxis categories(String label) {
        return styled(new CategoryAxis(label));
    }

    private static CategoryAxis styled(CategoryAxis axis) {
        axis.setLabelFont(Style.type(TEXT));
        axis.setTickLabelFont(Style.type(TEXT));
        axis.setTickLabelPaint(Style.INK);
        axis.setLabelPaint(Style.INK);
        axis.setAxisLineVisible(false);
        axis.setTickMarksVisible(false);
        return axis;
    }

    /** Names at the left edge of bars that lie on their side; long ones on two lines. */
    static CategoryAxis names() {
        CategoryAxis axis = styled(new NameAxis());
        axis.setMaximumCategoryLabelWidthRatio(0.45f);
        axis.setMaximumCategoryLabelLines(2);
        return axis;
    }

    static NumberAxis numbers(String label) {
        NumberAxis axis = new NumberAxis(label);
        axis.setLabelFont(Style.type(TEXT));
        axis.setTickLabelFont(Style.type(TEXT));
        axis.setTickLabelPaint(Style.INK);
        axis.setLabelPaint(Style.INK);
        DecimalFormatSymbols symbols = DecimalFormatSymbols.getInstance(Locale.ROOT);
        symbols.setGroupingSeparator('\u00a0');
        axis.setNumberFormatOverride(new DecimalFormat("#,##0.###", symbols));
        axis.setAxisLinePaint(Style.FAINT);
        axis.setAutoRangeIncludesZero(true);
        return axis;
    }

    /** An axis from 0 to 100 %, for values that are given as percentages. */
    static NumberAxis percent(String label) {
        NumberAxis axis = numbers(label);
        // room for marks at both ends
        axis.setRange(-2, 102);
        return axis;
    }

    static CategoryPlot plot(
            CategoryDataset data, CategoryAxis categories, NumberAxis numbers, CategoryItemRenderer renderer) {
        CategoryPlot plot = new CategoryPlot(data, categories, numbers, renderer);
        plot.setOrientation(PlotOrientation.HORIZONTAL);
        plot.setBackgroundPaint(Style.PAPER);
        plot.setOutlineVisible(false);
        plot.setRangeGridlinePaint(Style.GRID);
        plot.setRangeGridlineStroke(Style.line(1));
        plot.setAxisOffset(new RectangleInsets(0, 2, 0, 0));
        plot.setRangeAxisLocation(AxisLocation.BOTTOM_OR_LEFT);
        renderer.setDefaultItemLabelFont(Style.type(TEXT));
        renderer.setDefaultItemLabelPaint(Style.INK);
        return plot;
    }

    static Painter painter(Plot plot, boolean withLegend) {
        JFreeChart chart = chart(plot, withLegend);
        return (Graphics2D g, Rectangle2D area) -> chart.draw(g, area);
    }

    static JFreeChart chart(Plot plot, boolean withLegend) {
        JFreeChart chart = new JFreeChart(null, Style.type(TEXT), plot, withLegend);
        chart.setBackgroundPaint(Style.PAPER);
        chart.setPadding(new RectangleInsets(8, 8, 4, 16));
        if (withLegend) {
            LegendTitle legend = chart.getLegend();
            legend.setPosition(RectangleEdge.TOP);
            legend.setHorizontalAlignment(HorizontalAlignment.LEFT);
            legend.setItemFont(Style.type(TEXT));
            legend.setFrame(BlockBorder.NONE);
            legend.setBackgroundPaint(Style.PAPER);
        }
        return chart;
    }
}
