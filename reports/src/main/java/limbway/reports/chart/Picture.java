package limbway.reports.chart;

/**
 * Something drawn, with what a reader needs who cannot see it.
 *
 * @param id file name without ending, unique within a report; lower-case letters and hyphens
 * @param title what it shows, in one line
 * @param description what can be seen in it, in a sentence
 * @param widthPx width [px]
 * @param heightPx height [px]
 * @param painter draws it
 * @param table the numbers behind it
 */
public record Picture(
        String id, String title, String description, int widthPx, int heightPx, Painter painter, DataTable table) {}
