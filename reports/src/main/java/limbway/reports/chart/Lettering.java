package limbway.reports.chart;

import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;

/** Writes single lines of text by their left end, middle or right end. */
final class Lettering {

    private final Graphics2D g;

    Lettering(Graphics2D g) {
        this.g = g;
    }

    /** Writes from a place on and returns where the text ends. */
    double from(String text, double x, double baseline, Font font, Color colour) {
        g.setFont(font);
        g.setColor(colour);
        g.drawString(text, (float) x, (float) baseline);
        return x + g.getFontMetrics().stringWidth(text);
    }

    void middle(String text, double x, double baseline, Font font, Color colour) {
        g.setFont(font);
        from(text, x - g.getFontMetrics().stringWidth(text) / 2.0, baseline, font, colour);
    }

    void upTo(String text, double x, double baseline, Font font, Color colour) {
        g.setFont(font);
        from(text, x - g.getFontMetrics().stringWidth(text), baseline, font, colour);
    }
}
