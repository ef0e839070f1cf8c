package limbway.reports.chart;

import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.image.BufferedImage;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Tells every text of an SVG how wide it was when the picture was laid out, so that a reader with other fonts sees the
 * same layout.
 */
final class FittedText {

    private static final Pattern TEXT = Pattern.compile("<text ([^>]*font-size: (\\d+)px;([^>]*))>([^<]*)</text>");

    private FittedText() {}

    static String fit(String svg) {
        Matcher matcher = TEXT.matcher(svg);
        StringBuilder fitted = new StringBuilder();
        while (matcher.find()) {
            boolean bold = matcher.group(3).contains("font-weight: bold");
            int size = Integer.parseInt(matcher.group(2));
            double width = width(plain(matcher.group(4)), bold ? Style.strongType(size) : Style.type(size));
            String length = width <= 0
                    ? ""
                    : String.format(Locale.ROOT, " textLength='%.2f' lengthAdjust='spacingAndGlyphs'", width);
            matcher.appendReplacement(
                    fitted,
                    Matcher.quoteReplacement(
                            "<text " + matcher.group(1) + length + ">" + matcher.group(4) + "</text>"));
        }
        return matcher.appendTail(fitted).toString();
    }

    private static double width(String text, Font font) {
        FontMetrics metrics = new BufferedImage(1, 1, BufferedImage.TYPE_INT_RGB)
                .createGraphics()
                .getFontMetrics(font);
        return metrics.stringWidth(text);
    }

    private static String plain(String escaped) {
        return escaped.replace("&lt;", "<")
                .replace("&gt;", ">")
                .replace("&quot;", "\"")
                .replace("&apos;", "'")
                .replace("&amp;", "&");
    }
}
