package limbway.reports.chart;

import java.awt.Color;

/**
 * Colours of the pictures of shade: warm and strong where shade is too little, pale where there is enough; pale for sun and
 * dark for shade where a share is shown. Each step differs from the next in lightness too.
 */
final class ShadeStyle {

    /** Too few platforms in shade for half of the time or more. */
    static final Color BREACH = new Color(0xA8, 0x3C, 0x00);

    /** Too few platforms in shade for less than half of the time. */
    static final Color PART_BREACH = new Color(0xF0, 0xA8, 0x70);

    /** A part of the sky from which too few are in shade for half of the time or more; lines are drawn over it. */
    static final Color SKY_BREACH = new Color(0xE3, 0x86, 0x49);

    /** A part of the sky from which too few are in shade for less than half of the time. */
    static final Color SKY_PART_BREACH = new Color(0xFA, 0xDD, 0xC4);

    /** As many as asked for. */
    static final Color ENOUGH = new Color(0xC4, 0xDA, 0xDF);

    /** More than asked for. */
    static final Color PLENTY = new Color(0xEA, 0xF3, 0xF4);

    private static final Color[] SHARES = {
        new Color(0xFF, 0xF4, 0xC9),
        new Color(0xD6, 0xDD, 0xC4),
        new Color(0x97, 0xB4, 0xBC),
        new Color(0x55, 0x80, 0x9E),
        new Color(0x1E, 0x3F, 0x63)
    };

    private ShadeStyle() {}

    /** Steps of a share. */
    static int steps() {
        return SHARES.length;
    }

    /** Colour of a share of shade from 0 to 1, darker for more. */
    static Color ofShare(double share) {
        return SHARES[Math.max(0, Math.min(SHARES.length - 1, (int) (share * SHARES.length)))];
    }
}
