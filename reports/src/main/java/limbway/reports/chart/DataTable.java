package limbway.reports.chart;

import java.util.List;

/**
 * The numbers behind a picture, as text.
 *
 * @param headers one for each column
 * @param rows cells in the order of the headers
 */
public record DataTable(List<String> headers, List<List<String>> rows) {

    /** Keeps copies of the lists. */
    public DataTable {
        headers = List.copyOf(headers);
        rows = rows.stream().map(List::copyOf).toList();
    }
}
