package limbway.reports.paper;

import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.Rectangle2D;
import java.util.Map;

import com.openhtmltopdf.extend.FSObjectDrawer;
import com.openhtmltopdf.extend.OutputDevice;
import com.openhtmltopdf.render.RenderingContext;
import org.w3c.dom.Element;

import limbway.reports.chart.Picture;

/** Draws the pictures of a page as lines and areas, so that they stay sharp on paper. */
final class PictureDrawer implements FSObjectDrawer {

    /** The type of the elements that stand for a picture; {@code data} is its id. */
    static final String TYPE = "application/x-limbway-picture";

    private final Map<String, Picture> pictures;

    PictureDrawer(Map<String, Picture> pictures) {
        this.pictures = pictures;
    }

    @Override
    public Map<Shape, String> drawObject(
            Element element,
            double x,
            double y,
            double width,
            double height,
            OutputDevice device,
            RenderingContext context,
            int dotsPerPixel) {
        Picture picture = pictures.get(element.getAttribute("data"));
        device.drawWithGraphics(
                (float) x,
                (float) y,
                (float) (width / dotsPerPixel),
                (float) (height / dotsPerPixel),
                g -> paint(picture, g, width / dotsPerPixel / picture.widthPx()));
        return Map.of();
    }

    private static void paint(Picture picture, Graphics2D g, double scale) {
        g.scale(scale, scale);
        g.setRenderingHint(RenderingHints.KEY_FRACTIONALMETRICS, RenderingHints.VALUE_FRACTIONALMETRICS_ON);
        picture.painter().paint(g, new Rectangle2D.Double(0, 0, picture.widthPx(), picture.heightPx()));
    }
}
