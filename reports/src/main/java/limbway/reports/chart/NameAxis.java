package limbway.reports.chart;

import java.awt.Graphics2D;

import org.jfree.chart.axis.CategoryAxis;
import org.jfree.chart.text.TextBlock;
import org.jfree.chart.ui.RectangleEdge;

import limbway.reports.words.Unbroken;

/** An axis of names that may be broken into lines, but not within a number or before its unit. */
final class NameAxis extends CategoryAxis {

    private static final long serialVersionUID = 1;

    // the overridden method has a raw type
    @SuppressWarnings("rawtypes")
    @Override
    protected TextBlock createLabel(Comparable category, float width, RectangleEdge edge, Graphics2D g) {
        return super.createLabel(Unbroken.text(category.toString()), width, edge, g);
    }
}
