package limbway.reports.chart;

import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;

import javax.imageio.ImageIO;
import javax.imageio.stream.ImageOutputStream;
import javax.imageio.stream.MemoryCacheImageOutputStream;

/** Turns pictures into SVG text and PNG bytes; the same picture always gives the same of either. */
public final class PictureFormat {

    private static final int PNG_SCALE = 2;

    private PictureFormat() {}

    /**
     * The picture as an SVG element that can stand in a page or, after an XML declaration, in a file.
     *
     * @param picture what to draw
     * @return one {@code svg} element with title and description
     */
    public static String svg(Picture picture) {
        return SvgElement.of(picture, g -> paint(picture, g));
    }

    /**
     * The picture as a file of its own.
     *
     * @param picture what to draw
     * @return an SVG document
     */
    public static String svgFile(Picture picture) {
        return "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n" + svg(picture) + "\n";
    }

    /**
     * The picture in dots, two for each pixel.
     *
     * @param picture what to draw
     * @return bytes of a PNG file
     */
    public static byte[] png(Picture picture) {
        BufferedImage image = new BufferedImage(
                PNG_SCALE * picture.widthPx(), PNG_SCALE * picture.heightPx(), BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        g.scale(PNG_SCALE, PNG_SCALE);
        g.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        paint(picture, g);
        g.dispose();
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        // kept in memory: a file would have to be registered for deletion, which is refused while an interrupted run
        // saves
        try (ImageOutputStream stream = new MemoryCacheImageOutputStream(bytes)) {
            ImageIO.write(image, "png", stream);
        } catch (IOException e) {
            throw new UncheckedIOException("picture " + picture.id() + " could not be encoded", e);
        }
        return bytes.toByteArray();
    }

    private static void paint(Picture picture, Graphics2D g) {
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        g.setRenderingHint(RenderingHints.KEY_FRACTIONALMETRICS, RenderingHints.VALUE_FRACTIONALMETRICS_ON);
        Rectangle2D area = new Rectangle2D.Double(0, 0, picture.widthPx(), picture.heightPx());
        g.setColor(Style.PAPER);
        g.fill(area);
        picture.painter().paint(g, area);
    }
}
