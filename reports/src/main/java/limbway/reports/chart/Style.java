package limbway.reports.chart;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;

import limbway.model.body.LocomotorMode;
import limbway.reports.measure.Activity;
import limbway.reports.measure.Aspect;

/**
 * Colours, strokes and type of all pictures. Every colour differs from its neighbours in lightness too, so a grey print
 * shows the same.
 *
 * @source blue and orange: Okabe and Ito 2008, Color Universal Design; the steps of the commonest parts: viridis by van
 *     der Walt and Smith, dedicated to the public domain (both from memory); the rest are our own
 */
final class Style {

    static final Color PAPER = Color.WHITE;
    static final Color INK = new Color(0x22, 0x22, 0x22);
    static final Color FAINT = new Color(0x66, 0x66, 0x66);
    static final Color GRID = new Color(0xDD, 0xDD, 0xDD);
    static final Color OFF_GROUND = new Color(0x00, 0x72, 0xB2);
    static final Color GROUND = new Color(0xE6, 0x9F, 0x00);
    static final int WIDTH_PX = 720;

    /** Width of a picture for a narrow screen: a telephone held upright, less the margins of the page. */
    static final int NARROW_PX = 356;

    private Style() {}

    static Font type(int size) {
        return new Font(Font.SANS_SERIF, Font.PLAIN, size);
    }

    static Font strongType(int size) {
        return new Font(Font.SANS_SERIF, Font.BOLD, size);
    }

    static BasicStroke line(double width) {
        return new BasicStroke((float) width, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND);
    }

    static BasicStroke dashed(double width) {
        float dash = (float) Math.max(5, 1.6 * width);
        return new BasicStroke(
                (float) width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1, new float[] {dash, dash * 0.7f}, 0);
    }

    /** Circle, square and triangle for distance, time and energy. */
    static Shape marker(Aspect aspect) {
        return switch (aspect) {
            case DISTANCE -> new Ellipse2D.Double(-5, -5, 10, 10);
            case TIME -> new Rectangle2D.Double(-4.5, -4.5, 9, 9);
            case ENERGY -> {
                Path2D triangle = new Path2D.Double();
                triangle.moveTo(0, -6);
                triangle.lineTo(5.5, 4.5);
                triangle.lineTo(-5.5, 4.5);
                triangle.closePath();
                yield triangle;
            }
        };
    }

    static Color of(Aspect aspect) {
        return switch (aspect) {
            case DISTANCE -> OFF_GROUND;
            case TIME -> GROUND;
            case ENERGY -> INK;
        };
    }

    /**
     * Dark and light take turns in the order in which parts are drawn: neighbours differ by a fifth of the way from black to
     * white or more, and by a tenth where one between them does not occur.
     */
    static Color of(LocomotorMode mode) {
        return switch (mode) {
            case QUADRUPEDAL_WALK -> new Color(0xFD, 0xE7, 0x25);
            case VERTICAL_DESCENT -> new Color(0x21, 0x90, 0x8C);
            case CLAMBER -> new Color(0x5D, 0xC8, 0x63);
            case VERTICAL_CLIMB -> new Color(0x3B, 0x52, 0x8B);
            case BRIDGE -> new Color(0x44, 0x01, 0x54);
            case BIPEDAL_WALK -> new Color(0xB8, 0xDE, 0x29);
            case BRACHIATE -> new Color(0x8C, 0x3B, 0x4A);
            case SWAY -> new Color(0xC0, 0x7F, 0x59);
            case LEAP -> new Color(0xC6, 0xDB, 0xEF);
            case DROP -> new Color(0x2D, 0x43, 0x4A);
        };
    }

    /** Neighbours in the bars of a day differ by a fifth of the way from black to white or more. */
    static Color of(Activity activity) {
        return switch (activity) {
            case FEEDING -> OFF_GROUND;
            case MOVING -> GROUND;
            case WAITING -> new Color(0x44, 0x01, 0x54);
            case RESTING -> new Color(0xC6, 0xDB, 0xEF);
            case COMFORT -> new Color(0x21, 0x90, 0x8C);
            case NIGHT -> new Color(0x22, 0x2B, 0x3A);
        };
    }

    /** Black or white, whichever can be read on a colour. */
    static Color inkOn(Color colour) {
        return lightness(colour) > 140 ? INK : Color.WHITE;
    }

    /** How light a colour looks in a grey print, 0 to 255; the weights are those of ITU-R BT.601. */
    static double lightness(Color colour) {
        return 0.299 * colour.getRed() + 0.587 * colour.getGreen() + 0.114 * colour.getBlue();
    }
}
