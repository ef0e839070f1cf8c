package limbway.reports.chart;

import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.List;

/** Draws for the hours of one day how few rest platforms lie in shade at once. */
public final class ShadeHoursChart {

    /**
     * One hour with sun.
     *
     * @param hour 0 for the hour after midnight
     * @param fewest fewest platforms in shade at any moment with sun in it
     */
    public record Hour(int hour, int fewest) {}

    private static final int HEIGHT_PX = 220;
    private static final double LEFT_PX = 34;
    private static final double RIGHT_PX = 10;
    private static final double TOP_PX = 20;
    private static final double BOTTOM_PX = 44;
    private static final double FULL = 0.72;

    private final List<Hour> hours;
    private final int platforms;
    private final int atLeast;

    private ShadeHoursChart(List<Hour> hours, int platforms, int atLeast) {
        this.hours = hours;
        this.platforms = platforms;
        this.atLeast = atLeast;
    }

    /**
     * A column for each hour with sun.
     *
     * @param id file name without ending
     * @param title what is shown
     * @param hours one or more hours in order
     * @param platforms how many platforms there are
     * @param atLeast how many must be in shade
     * @return the picture
     */
    public static Picture of(String id, String title, List<Hour> hours, int platforms, int atLeast) {
        ShadeHoursChart chart = new ShadeHoursChart(List.copyOf(hours), platforms, atLeast);
        return new Picture(
                id,
                title,
                "A column for each hour with sun, as high as the fewest platforms in shade at once in it; a dashed line at "
                        + atLeast + ". Hours below the line are marked by a cross.",
                WayBars.WIDTH_PX,
                HEIGHT_PX,
                chart::paint,
                chart.table());
    }

    private double yPx(double count) {
        return HEIGHT_PX - BOTTOM_PX - (HEIGHT_PX - BOTTOM_PX - TOP_PX) * count / Math.max(platforms, atLeast);
    }

    private void paint(Graphics2D g, Rectangle2D area) {
        Lettering letters = new Lettering(g);
        double step = (WayBars.WIDTH_PX - LEFT_PX - RIGHT_PX) / hours.size();
        int every = platforms > 8 ? 5 : 1;
        for (int count = 0; count <= Math.max(platforms, atLeast); count += every) {
            g.setColor(count == 0 ? Style.INK : Style.GRID);
            g.setStroke(Style.line(1));
            g.draw(new Line2D.Double(LEFT_PX, yPx(count), WayBars.WIDTH_PX - RIGHT_PX, yPx(count)));
            letters.upTo(Integer.toString(count), LEFT_PX - 6, yPx(count) + 4, Style.type(12), Style.INK);
        }
        for (int i = 0; i < hours.size(); i++) {
            Hour hour = hours.get(i);
            double x = LEFT_PX + i * step;
            double top = yPx(hour.fewest);
            g.setColor(hour.fewest < atLeast ? Style.GROUND : Style.OFF_GROUND);
            g.fill(new Rectangle2D.Double(x + step * (1 - FULL) / 2, top, step * FULL, yPx(0) - top));
            letters.middle(Integer.toString(hour.hour), x + step / 2, yPx(0) + 16, Style.type(12), Style.INK);
            if (hour.fewest < atLeast) {
                letters.middle("×", x + step / 2, top - 4, Style.strongType(14), Style.INK);
            }
        }
        g.setColor(Style.INK);
        g.setStroke(Style.dashed(1.4));
        g.draw(new Line2D.Double(LEFT_PX, yPx(atLeast), WayBars.WIDTH_PX - RIGHT_PX, yPx(atLeast)));
        letters.from("hour of the day; × fewer than " + atLeast, LEFT_PX, HEIGHT_PX - 12.0, Style.type(12), Style.INK);
    }

    private DataTable table() {
        return new DataTable(
                List.of("hour", "fewest platforms in shade at once", "enough"),
                hours.stream()
                        .map(hour -> List.of(
                                hour.hour + " to " + (hour.hour + 1),
                                Integer.toString(hour.fewest),
                                hour.fewest < atLeast ? "no" : "yes"))
                        .toList());
    }
}
