package limbway.reports.chart;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;

import limbway.reports.measure.ShadeByHour;
import limbway.reports.words.Hours;
import limbway.reports.words.ShadeText;

/** Draws how few platforms lie in shade at once, month by month and hour by hour. */
public final class ShadeYearChart {

    private static final double LEFT_PX = 60;
    private static final double TOP_PX = 34;
    private static final double CELL_WIDTH_PX = 54;
    private static final double CELL_HEIGHT_PX = 32;
    private static final int KEY_PX = 106;

    private final ShadeByHour shade;
    private final int atLeast;
    private final MonthHourGrid grid;

    private ShadeYearChart(ShadeByHour shade, int atLeast) {
        int[] hours = shade.hoursWithSun();
        this.shade = shade;
        this.atLeast = atLeast;
        this.grid = new MonthHourGrid(
                LEFT_PX, TOP_PX, CELL_WIDTH_PX, CELL_HEIGHT_PX, hours[0], hours[hours.length - 1] - hours[0] + 1);
    }

    /**
     * Fewest platforms in shade at once.
     *
     * @param shade a year with sun
     * @param atLeast how many platforms are asked for
     * @return the picture
     */
    public static Picture of(ShadeByHour shade, int atLeast) {
        ShadeYearChart chart = new ShadeYearChart(shade, atLeast);
        return new Picture(
                "shade-by-month-and-hour",
                "Fewest platforms in shade at once, by month and hour",
                "Months across and hours of the day down, in standard time. The number in a cell is the fewest platforms in "
                        + "shade at any moment of that month and hour. Cells with too few have a heavy edge and a dark "
                        + "fill, and say for how long; cells without sun are left out.",
                Style.WIDTH_PX,
                (int) Math.ceil(chart.grid.all().getMaxY()) + KEY_PX,
                chart::paint,
                chart.table());
    }

    private void paint(Graphics2D g, Rectangle2D area) {
        Lettering letters = new Lettering(g);
        for (int month = 0; month < ShadeByHour.MONTHS; month++) {
            Rectangle2D first = grid.cell(month, grid.firstHour());
            letters.middle(
                    ShadeText.MONTHS.get(month), first.getCenterX(), TOP_PX - 8, Style.strongType(13), Style.INK);
        }
        for (int hour = grid.firstHour(); hour < grid.firstHour() + grid.rows(); hour++) {
            double y = grid.cell(0, hour).getMinY();
            letters.upTo(MonthHourGrid.clock(hour), LEFT_PX - 8, y + 4, Style.type(12), Style.INK);
            for (int month = 0; month < ShadeByHour.MONTHS; month++) {
                if (shade.fewest(month, hour).isPresent()) {
                    cell(g, grid.cell(month, hour), month, hour);
                }
            }
        }
        int end = grid.firstHour() + grid.rows();
        letters.upTo(MonthHourGrid.clock(end), LEFT_PX - 8, grid.all().getMaxY() + 4, Style.type(12), Style.INK);
        // heavy edges last, so that no neighbour covers them
        for (int hour = grid.firstHour(); hour < end; hour++) {
            for (int month = 0; month < ShadeByHour.MONTHS; month++) {
                if (shade.breachMinutes(month, hour) > 0) {
                    g.setColor(Style.INK);
                    g.setStroke(Style.line(1.8));
                    g.draw(grid.cell(month, hour));
                }
            }
        }
        key(g, grid.all().getMaxY() + 28);
    }

    private void cell(Graphics2D g, Rectangle2D cell, int month, int hour) {
        int fewest = shade.fewest(month, hour).orElse(0);
        int breach = shade.breachMinutes(month, hour);
        Color fill = fill(fewest, breach, shade.sunMinutes(month, hour));
        fill(g, cell, fill);
        Lettering letters = new Lettering(g);
        Color ink = Style.inkOn(fill);
        if (breach == 0) {
            letters.middle(Integer.toString(fewest), cell.getCenterX(), cell.getCenterY() + 5, Style.type(14), ink);
            return;
        }
        letters.middle(Integer.toString(fewest), cell.getCenterX(), cell.getMinY() + 15, Style.strongType(14), ink);
        letters.middle(Hours.brief(breach), cell.getCenterX(), cell.getMaxY() - 5, Style.type(10), ink);
    }

    private Color fill(int fewest, int breachMinutes, int sunMinutes) {
        if (breachMinutes > 0) {
            return 2 * breachMinutes >= sunMinutes ? ShadeStyle.BREACH : ShadeStyle.PART_BREACH;
        }
        return fewest > atLeast ? ShadeStyle.PLENTY : ShadeStyle.ENOUGH;
    }

    private static void fill(Graphics2D g, Rectangle2D cell, Color fill) {
        g.setColor(fill);
        g.fill(cell);
        g.setColor(Style.PAPER);
        g.setStroke(Style.line(1));
        g.draw(cell);
    }

    private void key(Graphics2D g, double topPx) {
        Lettering letters = new Lettering(g);
        double x = LEFT_PX;
        x = sample(g, x, topPx, ShadeStyle.PLENTY, false, "more than " + atLeast);
        x = sample(g, x, topPx, ShadeStyle.ENOUGH, false, "just " + atLeast);
        x = sample(g, x, topPx, ShadeStyle.PART_BREACH, true, "too few, less than half of the time");
        sample(g, x, topPx, ShadeStyle.BREACH, true, "too few, half of it or more");
        List<String> words = List.of(
                "Large: fewest platforms in shade at once, where " + atLeast + " are asked for.",
                "Small: time with too few in shade, all days of the month together.",
                "Hours are standard time, without summer time. Empty: the sun is down or too low to count.");
        for (int line = 0; line < words.size(); line++) {
            letters.from(words.get(line), LEFT_PX, topPx + 32 + 18 * line, Style.type(12), Style.INK);
        }
    }

    private static double sample(Graphics2D g, double x, double y, Color fill, boolean heavy, String words) {
        Rectangle2D box = new Rectangle2D.Double(x, y - 8, 22, 16);
        g.setColor(fill);
        g.fill(box);
        g.setColor(heavy ? Style.INK : Style.FAINT);
        g.setStroke(Style.line(heavy ? 1.8 : 0.6));
        g.draw(box);
        return new Lettering(g).from(words, x + 28, y + 4, Style.type(12), Style.INK) + 18;
    }

    private DataTable table() {
        List<String> headers = new ArrayList<>(List.of("hour"));
        headers.addAll(ShadeText.MONTHS);
        List<List<String>> rows = new ArrayList<>();
        for (int hour = grid.firstHour(); hour < grid.firstHour() + grid.rows(); hour++) {
            List<String> row = new ArrayList<>(List.of(MonthHourGrid.clock(hour)));
            for (int month = 0; month < ShadeByHour.MONTHS; month++) {
                int breach = shade.breachMinutes(month, hour);
                row.add(
                        shade.fewest(month, hour).isEmpty()
                                ? ""
                                : shade.fewest(month, hour).getAsInt()
                                        + (breach > 0 ? ", too few " + Hours.text(breach) : ""));
            }
            rows.add(row);
        }
        return new DataTable(headers, rows);
    }
}
