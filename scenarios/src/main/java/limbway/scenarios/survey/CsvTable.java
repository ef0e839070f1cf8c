package limbway.scenarios.survey;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import limbway.scenarios.format.ScalarNode;
import limbway.scenarios.problem.Place;
import limbway.scenarios.problem.Problem;
import limbway.scenarios.problem.Problems;

/**
 * A table of comma-separated values, every cell with its place.
 *
 * <p>Read after RFC 4180, except that a cell stays on one line; where the first line holds semicolons and no comma, as some
 * spreadsheets write it, semicolons separate the cells.
 *
 * @param header names of the columns
 * @param rows cells by row, as many as there are columns
 */
record CsvTable(List<ScalarNode> header, List<List<ScalarNode>> rows) {

    static final int MOST_ROWS = 20_000;

    /** Reads a table, or adds a problem for each row that does not fit or for the first mark that is not closed. */
    static Optional<CsvTable> parse(String file, String text, Problems problems) {
        List<String> lines = text.lines().toList();
        if (lines.isEmpty()) {
            problems.add(Problem.at(Place.startOf(file), "this table is empty")
                    .allowed("a line with the names of the columns, then a line for each tree"));
            return Optional.empty();
        }
        char separator = lines.get(0).contains(";") && !lines.get(0).contains(",") ? ';' : ',';
        for (int i = 0; i < lines.size(); i++) {
            int open = openQuote(lines.get(i));
            if (open >= 0) {
                problems.add(
                        Problem.at(new Place(file, i + 1, open + 1), "this quotation mark is not closed on its line")
                                .mend("close it, or take it out; a cell may not run over several lines"));
                return Optional.empty();
            }
        }
        List<ScalarNode> header = cells(file, 1, lines.get(0), separator);
        List<List<ScalarNode>> rows = new ArrayList<>();
        boolean sound = true;
        for (int i = 1; i < lines.size(); i++) {
            if (lines.get(i).isBlank()) {
                continue;
            }
            List<ScalarNode> row = cells(file, i + 1, lines.get(i), separator);
            if (row.size() != header.size()) {
                problems.add(Problem.at(new Place(file, i + 1, 1), "this row does not fit the first line")
                        .found(row.size() + " cells")
                        .allowed(header.size() + " cells"));
                sound = false;
            }
            if (rows.size() == MOST_ROWS) {
                problems.add(Problem.at(new Place(file, i + 1, 1), "this table has too many rows")
                        .allowed("at most " + MOST_ROWS)
                        .mend("cut the table, for example to the thicker stems"));
                return Optional.empty();
            }
            rows.add(row);
        }
        return sound ? Optional.of(new CsvTable(header, rows)) : Optional.empty();
    }

    /** Where the last quotation mark stands if their number is odd, or -1. */
    private static int openQuote(String line) {
        return line.chars().filter(c -> c == '"').count() % 2 == 0 ? -1 : line.lastIndexOf('"');
    }

    private static List<ScalarNode> cells(String file, int line, String text, char separator) {
        List<ScalarNode> cells = new ArrayList<>();
        StringBuilder cell = new StringBuilder();
        boolean quoted = false;
        int start = 0;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c == '"' && quoted && i + 1 < text.length() && text.charAt(i + 1) == '"') {
                cell.append('"');
                i++;
            } else if (c == '"') {
                quoted = !quoted;
            } else if (c == separator && !quoted) {
                cells.add(new ScalarNode(new Place(file, line, start + 1), cell.toString()));
                cell.setLength(0);
                start = i + 1;
            } else {
                cell.append(c);
            }
        }
        cells.add(new ScalarNode(new Place(file, line, start + 1), cell.toString()));
        return cells;
    }

    /** Number of the column of a name, or -1. */
    int column(String name) {
        for (int i = 0; i < header.size(); i++) {
            if (header.get(i).text().strip().equals(name)) {
                return i;
            }
        }
        return -1;
    }

    List<String> names() {
        return header.stream().map(cell -> cell.text().strip()).toList();
    }
}
