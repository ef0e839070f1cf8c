package limbway.reports.chart;

import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.image.BufferedImage;
import java.util.Locale;

import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;

/**
 * Tells every text of an SVG how wide it was when the picture was laid out, so that a reader with other fonts sees the
 * same layout.
 */
final class FittedText {

    private FittedText() {}

    static void fit(Element svg) {
        NodeList texts = svg.getElementsByTagName("text");
        for (int i = 0; i < texts.getLength(); i++) {
            Element text = (Element) texts.item(i);
            int size = (int) Math.round(
                    Double.parseDouble(inherited(text, "font-size", "12px").replace("px", "")));
            boolean bold = inherited(text, "font-weight", "normal").equals("bold");
            double width = width(text.getTextContent(), bold ? Style.strongType(size) : Style.type(size));
            if (width > 0) {
                text.setAttribute("textLength", String.format(Locale.ROOT, "%.2f", width));
                text.setAttribute("lengthAdjust", "spacingAndGlyphs");
            }
        }
    }

    private static String inherited(Element element, String attribute, String otherwise) {
        for (Node node = element; node instanceof Element at; node = node.getParentNode()) {
            if (at.hasAttribute(attribute)) {
                return at.getAttribute(attribute);
            }
        }
        return otherwise;
    }

    private static double width(String text, Font font) {
        FontMetrics metrics = new BufferedImage(1, 1, BufferedImage.TYPE_INT_RGB)
                .createGraphics()
                .getFontMetrics(font);
        return metrics.stringWidth(text);
    }
}
