package limbway.reports.data;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

import limbway.reports.words.Decimals;

/**
 * A table with described columns, written as CSV by RFC 4180 but for its line ends, which are line feeds.
 *
 * @source RFC 4180 for quoting
 */
public final class CsvTable {

    private final String name;
    private final String description;
    private final List<Field> fields;
    private final StringBuilder text = new StringBuilder();

    /**
     * An empty table.
     *
     * @param name file name without ending
     * @param description what a row is
     * @param fields its columns
     */
    public CsvTable(String name, String description, List<Field> fields) {
        this.name = name;
        this.description = description;
        this.fields = List.copyOf(fields);
        line(this.fields.stream().map(Field::name).toList());
    }

    /**
     * The file name without ending.
     *
     * @return lower-case letters and underscores
     */
    public String name() {
        return name;
    }

    /**
     * What a row is.
     *
     * @return a clause
     */
    public String description() {
        return description;
    }

    /**
     * The columns.
     *
     * @return in order
     */
    public List<Field> fields() {
        return fields;
    }

    /**
     * The file's text.
     *
     * @return header and rows, each ended by a line feed
     */
    public String text() {
        return text.toString();
    }

    /**
     * Adds a row.
     *
     * @param cells whole numbers, truth values, texts, or numbers already made into text by {@link #number}
     * @throws IllegalArgumentException if there is not one cell for each column
     */
    public void row(Object... cells) {
        if (cells.length != fields.size()) {
            throw new IllegalArgumentException(
                    "table " + name + ": cells = " + cells.length + ", allowed " + fields.size());
        }
        List<String> row = new ArrayList<>();
        for (Object cell : cells) {
            row.add(cell.toString());
        }
        line(row);
    }

    /**
     * A number with a fixed count of decimals.
     *
     * @param value any finite number
     * @param decimals digits after the point
     * @return the number with a point, whatever the machine's language; never a negative zero
     */
    public static String number(double value, int decimals) {
        return Decimals.fixed(value, decimals);
    }

    /**
     * A number that may be missing.
     *
     * @param value a number or nothing
     * @param decimals digits after the point
     * @return the number, or an empty cell
     */
    public static String number(OptionalDouble value, int decimals) {
        return value.isPresent() ? number(value.getAsDouble(), decimals) : "";
    }

    private void line(List<String> cells) {
        for (int c = 0; c < cells.size(); c++) {
            text.append(c == 0 ? "" : ",").append(quoted(cells.get(c)));
        }
        text.append('\n');
    }

    private static String quoted(String cell) {
        boolean plain =
                cell.indexOf(',') < 0 && cell.indexOf('"') < 0 && cell.indexOf('\n') < 0 && cell.indexOf('\r') < 0;
        return plain ? cell : "\"" + cell.replace("\"", "\"\"") + "\"";
    }
}
