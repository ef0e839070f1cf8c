package limbway.reports.chart;

import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

import limbway.reports.measure.PlatformShade;
import limbway.reports.measure.ShadeByHour;
import limbway.reports.words.Figures;
import limbway.reports.words.Hours;
import limbway.reports.words.ShadeText;

/** Draws for each platform how much of the time with sun it lies in shade, by month and hour. */
public final class PlatformShadeChart {

    private static final int MOST_SHOWN = 24;
    private static final int COLUMNS = 3;
    private static final double LEFT_PX = 44;
    private static final double TOP_PX = 4;
    private static final double COLUMN_PX = 228;
    private static final double CELL_WIDTH_PX = 15;
    private static final double CELL_HEIGHT_PX = 9;
    private static final double TITLE_PX = 24;
    private static final double BELOW_PX = 30;
    private static final int KEY_PX = 34;

    /** Cells overlap by so much, that no paper shows between them. */
    private static final double OVERLAP_PX = 0.6;

    private final ShadeByHour shade;
    private final List<PlatformShade> platforms;
    private final int[] shown;
    private final int firstHour;
    private final int rows;

    private PlatformShadeChart(ShadeByHour shade, List<PlatformShade> platforms) {
        int[] hours = shade.hoursWithSun();
        this.shade = shade;
        this.platforms = platforms;
        this.firstHour = hours[0];
        this.rows = hours[hours.length - 1] - hours[0] + 1;
        this.shown = IntStream.range(0, platforms.size())
                .boxed()
                .sorted(Comparator.comparingInt(p -> platforms.get(p).shadedMinutes()))
                .limit(MOST_SHOWN)
                .sorted()
                .mapToInt(p -> p)
                .toArray();
    }

    /**
     * A small chart for each platform; with very many, those with least shade.
     *
     * @param shade a year with sun
     * @param platforms its platforms, one or more, in the order of the year
     * @return the picture
     */
    public static Picture of(ShadeByHour shade, List<PlatformShade> platforms) {
        PlatformShadeChart chart = new PlatformShadeChart(shade, platforms);
        int left = platforms.size() - chart.shown.length;
        int lines = (chart.shown.length + COLUMNS - 1) / COLUMNS;
        return new Picture(
                "shade-by-platform",
                "Shade of each platform, by month and hour"
                        + (left > 0 ? " (" + left + " with more shade left out)" : ""),
                "A small chart for each platform, months across and hours of the day down: the darker a cell, the more of "
                        + "its time with sun the platform lies in shade.",
                Style.WIDTH_PX,
                (int) Math.ceil(TOP_PX + lines * chart.linePx()) + KEY_PX,
                chart::paint,
                chart.table());
    }

    private double linePx() {
        return TITLE_PX + rows * CELL_HEIGHT_PX + BELOW_PX;
    }

    private void paint(Graphics2D g, Rectangle2D area) {
        for (int i = 0; i < shown.length; i++) {
            double x = LEFT_PX + (i % COLUMNS) * COLUMN_PX;
            int line = i / COLUMNS;
            double y = TOP_PX + line * linePx() + TITLE_PX;
            one(g, new MonthHourGrid(x, y, CELL_WIDTH_PX, CELL_HEIGHT_PX, firstHour, rows), shown[i]);
        }
        key(g, area.getMaxY() - KEY_PX + 8);
    }

    private void one(Graphics2D g, MonthHourGrid grid, int platform) {
        Lettering letters = new Lettering(g);
        PlatformShade of = platforms.get(platform);
        String share = Figures.percent(of.share());
        g.setFont(Style.strongType(12));
        String name = shortened(g, of.platform(), COLUMN_PX - 70);
        double end = letters.from(name, grid.leftPx(), grid.topPx() - 7, Style.strongType(12), Style.INK);
        letters.from("  " + share, end, grid.topPx() - 7, Style.type(12), Style.INK);
        for (int month = 0; month < ShadeByHour.MONTHS; month++) {
            for (int hour = firstHour; hour < firstHour + rows; hour++) {
                if (shade.sunMinutes(month, hour) > 0) {
                    g.setColor(ShadeStyle.ofShare(shade.shadedShare(platform, month, hour)));
                    Rectangle2D cell = grid.cell(month, hour);
                    g.fill(new Rectangle2D.Double(
                            cell.getX(), cell.getY(), cell.getWidth() + OVERLAP_PX, cell.getHeight() + OVERLAP_PX));
                }
            }
            letters.middle(
                    ShadeText.MONTHS.get(month).substring(0, 1),
                    grid.cell(month, firstHour).getCenterX(),
                    grid.all().getMaxY() + 13,
                    Style.type(10),
                    Style.FAINT);
        }
        g.setStroke(Style.line(0.6));
        for (int hour = firstHour; hour <= firstHour + rows; hour++) {
            if (hour % 3 == 0) {
                double y = grid.topPx() + (hour - firstHour) * CELL_HEIGHT_PX;
                g.setColor(Style.FAINT);
                g.draw(new Line2D.Double(grid.leftPx() - 4, y, grid.leftPx(), y));
                letters.upTo(Integer.toString(hour), grid.leftPx() - 7, y + 4, Style.type(10), Style.FAINT);
            }
        }
        g.setColor(Style.FAINT);
        g.draw(grid.all());
    }

    private static String shortened(Graphics2D g, String name, double mostPx) {
        String text = name;
        while (text.length() > 1 && g.getFontMetrics().stringWidth(text + "…") > mostPx) {
            text = text.substring(0, text.length() - 1);
        }
        return text.length() == name.length() ? name : text + "…";
    }

    private static void key(Graphics2D g, double y) {
        Lettering letters = new Lettering(g);
        double x = letters.from("of the time in shade", LEFT_PX, y + 12, Style.type(12), Style.INK) + 12;
        int steps = ShadeStyle.steps();
        for (int step = 0; step < steps; step++) {
            Rectangle2D box = new Rectangle2D.Double(x, y, 22, 16);
            g.setColor(ShadeStyle.ofShare((step + 0.5) / steps));
            g.fill(box);
            g.setColor(Style.FAINT);
            g.setStroke(Style.line(0.6));
            g.draw(box);
            String words = 100 * step / steps + " to " + 100 * (step + 1) / steps + " %";
            x = letters.from(words, x + 27, y + 12, Style.type(12), Style.INK) + 10;
        }
    }

    private DataTable table() {
        List<String> headers = new ArrayList<>(List.of("platform", "in shade", "of the time with sun"));
        headers.addAll(ShadeText.MONTHS);
        List<List<String>> rows = new ArrayList<>();
        for (int platform : shown) {
            PlatformShade of = platforms.get(platform);
            List<String> row = new ArrayList<>(
                    List.of(of.platform(), Hours.text(of.shadedMinutes()), Figures.percent(of.share())));
            for (int month = 0; month < ShadeByHour.MONTHS; month++) {
                row.add(of.sunMinutesByMonth().get(month) == 0 ? "no sun" : Figures.percent(of.share(month)));
            }
            rows.add(row);
        }
        return new DataTable(headers, rows);
    }
}
