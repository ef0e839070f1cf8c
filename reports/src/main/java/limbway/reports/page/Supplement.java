package limbway.reports.page;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import limbway.reports.chart.DataTable;
import limbway.reports.chart.Picture;
import limbway.reports.data.CsvTable;

/**
 * A further part of an answer that was worked out apart from the rest: lines for the terminal, a section for the page, an
 * entry for other programs and tables for the folder.
 *
 * @param id where the section can be jumped to, and the name of the entry: lower-case words joined by underscores
 * @param heading heading of the section
 * @param sentences what is said, on the terminal and on the page
 * @param pictures pictures below them
 * @param tables tables below these, by caption, in order
 * @param answer what other programs read; anything that can be written as JSON
 * @param data tables for the folder
 */
public record Supplement(
        String id,
        String heading,
        List<String> sentences,
        List<Picture> pictures,
        Map<String, DataTable> tables,
        Map<String, Object> answer,
        List<CsvTable> data) {

    /** Keeps copies in the same order. */
    public Supplement {
        sentences = List.copyOf(sentences);
        pictures = List.copyOf(pictures);
        tables = new LinkedHashMap<>(tables);
        answer = new LinkedHashMap<>(answer);
        data = List.copyOf(data);
    }

    void write(Html html) {
        html.element("h2 id=\"" + id + "\"", heading);
        sentences.forEach(html::paragraph);
        pictures.forEach(html::figure);
        tables.forEach(html::table);
    }
}
