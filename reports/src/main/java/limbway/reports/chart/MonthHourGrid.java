package limbway.reports.chart;

import java.awt.geom.Rectangle2D;
import java.util.Locale;

import limbway.reports.words.ShadeText;

/**
 * Months across, hours of the day down.
 *
 * @param leftPx left edge of the first month
 * @param topPx upper edge of the first hour
 * @param cellWidthPx width of a month
 * @param cellHeightPx height of an hour
 * @param firstHour hour of the first row
 * @param rows number of hours
 */
record MonthHourGrid(double leftPx, double topPx, double cellWidthPx, double cellHeightPx, int firstHour, int rows) {

    Rectangle2D cell(int month, int hour) {
        return new Rectangle2D.Double(
                leftPx + month * cellWidthPx, topPx + (hour - firstHour) * cellHeightPx, cellWidthPx, cellHeightPx);
    }

    Rectangle2D all() {
        return new Rectangle2D.Double(leftPx, topPx, ShadeText.MONTHS.size() * cellWidthPx, rows * cellHeightPx);
    }

    /** For example {@code 06:00} at the upper edge of the row of the hour from six. */
    static String clock(int hour) {
        return String.format(Locale.ROOT, "%02d:00", hour);
    }
}
