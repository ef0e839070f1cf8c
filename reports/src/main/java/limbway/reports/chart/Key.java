package limbway.reports.chart;

import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.List;

import limbway.model.enclosure.Enclosure;
import limbway.model.enclosure.ResourceKind;
import limbway.reports.words.Figures;

/** What the lines, greys and signs of an enclosure drawing mean, with its scale and its north. */
final class Key {

    private static final int HEIGHT_PX = 96;

    private static final double SAMPLE_PX = 44;
    private static final int[] SCALES_M = {1, 2, 5, 10, 20, 50, 100};

    private final Graphics2D g;
    private final List<KeySign> signs;
    private final Frame frame;

    Key(Graphics2D g, Enclosure enclosure, Frame frame) {
        this.g = g;
        this.signs = KeySign.of(enclosure);
        this.frame = frame;
    }

    /** Height of the key of an enclosure [px]. */
    static int heightPx(Enclosure enclosure) {
        return HEIGHT_PX + KeySign.rows(KeySign.of(enclosure)) * KeySign.ROW_PX;
    }

    /** Where the last line of the key stands, which tells of what is drawn over the enclosure [px]. */
    static double lastLinePx(double topPx, Enclosure enclosure) {
        return topPx + 68 + KeySign.rows(KeySign.of(enclosure)) * KeySign.ROW_PX;
    }

    void draw(double topPx, TravelLines travel, boolean withTravel) {
        double x = Frame.LEFT_PX;
        double y = topPx + 10;
        for (ResourceKind kind : ResourceKind.values()) {
            ResourceMark.draw(g, kind, new Point2D.Double(x + 8, y));
            x = text(kind.word(), x + 22, y) + 20;
        }
        drawScale(y);
        y += 30;
        for (int step = 0; step < 40; step++) {
            g.setColor(Structure.grey(step * frame.structureTopM() / 40, frame.structureTopM()));
            g.fill(new Rectangle2D.Double(Frame.LEFT_PX + 2 * step, y - 4, 2.3, 8));
        }
        text(
                "supports and decks, from the ground to " + Figures.path(frame.structureTopM() - 0.5) + " up",
                Frame.LEFT_PX + 88,
                y);
        drawSigns(y + 28);
        if (withTravel) {
            drawTravel(Frame.LEFT_PX, y + 28 + KeySign.rows(signs) * KeySign.ROW_PX, travel);
        }
    }

    /** The last line of the key, where the broad line is something that could be added. */
    void drawProposed(double topPx, String words, TravelLines travel) {
        double y = topPx + 68 + KeySign.rows(signs) * KeySign.ROW_PX;
        g.setColor(Style.OFF_GROUND);
        g.setStroke(Style.line(travel.widthPx(travel.mostPerDay())));
        g.draw(new Line2D.Double(Frame.LEFT_PX, y, Frame.LEFT_PX + SAMPLE_PX, y));
        text(words, Frame.LEFT_PX + SAMPLE_PX + 8, y);
    }

    void drawSigns(double topPx) {
        double column = (Style.WIDTH_PX - Frame.LEFT_PX) / KeySign.COLUMNS;
        for (int i = 0; i < signs.size(); i++) {
            double x = Frame.LEFT_PX + column * (i % KeySign.COLUMNS);
            double y = topPx + KeySign.ROW_PX * (i / KeySign.COLUMNS);
            signs.get(i).sample().paint(g, new Rectangle2D.Double(x, y - 8, KeySign.WIDTH_PX, 16));
            text(signs.get(i).words(), x + KeySign.WIDTH_PX + 8, y);
        }
    }

    void drawNorth(double xPx, double yPx) {
        Path2D arrow = new Path2D.Double();
        arrow.moveTo(xPx, yPx - 12);
        arrow.lineTo(xPx + 5, yPx + 4);
        arrow.lineTo(xPx, yPx);
        arrow.lineTo(xPx - 5, yPx + 4);
        arrow.closePath();
        g.setColor(Style.INK);
        g.fill(arrow);
        g.setFont(Style.strongType(12));
        g.drawString("N", (float) (xPx + 8), (float) yPx);
    }

    private void drawTravel(double x, double y, TravelLines travel) {
        double halfPerDay = travel.mostPerDay() / 2;
        g.setColor(Style.OFF_GROUND);
        g.setStroke(Style.line(travel.widthPx(halfPerDay)));
        g.draw(new Line2D.Double(x, y, x + SAMPLE_PX, y));
        double next = text("travel off the ground", x + SAMPLE_PX + 8, y) + 22;
        g.setColor(Style.GROUND);
        g.setStroke(Style.dashed(travel.widthPx(halfPerDay)));
        g.draw(new Line2D.Double(next, y, next + SAMPLE_PX, y));
        next = text("travel on the ground", next + SAMPLE_PX + 8, y) + 22;
        text("(drawn here: " + Figures.plain(halfPerDay) + " times a day)", next, y);
    }

    void drawScale(double y) {
        int metres = SCALES_M[0];
        for (int candidate : SCALES_M) {
            if (candidate * frame.pxPerM() <= 120) {
                metres = candidate;
            }
        }
        double length = metres * frame.pxPerM();
        double right = Style.WIDTH_PX - 24.0;
        g.setColor(Style.INK);
        g.setStroke(Style.line(1.5));
        g.draw(new Line2D.Double(right - length, y + 4, right, y + 4));
        g.draw(new Line2D.Double(right - length, y, right - length, y + 8));
        g.draw(new Line2D.Double(right, y, right, y + 8));
        String label = metres + " m";
        g.setFont(Style.type(12));
        g.drawString(label, (float) (right - length / 2 - g.getFontMetrics().stringWidth(label) / 2.0), (float) y);
    }

    private double text(String words, double x, double y) {
        g.setColor(Style.INK);
        g.setFont(Style.type(12));
        g.drawString(words, (float) x, (float) (y + 4));
        return x + g.getFontMetrics().stringWidth(words);
    }
}
