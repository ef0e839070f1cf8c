package limbway.reports.command;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

import limbway.reports.chart.Picture;
import limbway.reports.data.CompareTables;
import limbway.reports.data.CsvTable;
import limbway.reports.data.DataFolder;
import limbway.reports.data.Json;
import limbway.reports.data.WholeFile;
import limbway.reports.page.ComparePage;
import limbway.reports.page.CompareReport;

/** Writes the folder of a comparison. */
final class CompareFiles {

    private CompareFiles() {}

    static void write(Path folder, CompareReport report) throws IOException {
        List<CsvTable> tables = new ArrayList<>(CompareTables.of(report.compared(), report.criteria()));
        List<Picture> pictures = new ArrayList<>(ComparePage.pictures(report));
        pictures.addAll(ComparePage.watched(report));
        report.supplements().forEach(supplement -> {
            tables.addAll(supplement.data());
            pictures.addAll(supplement.pictures());
        });
        DataFolder.write(folder, report.info(), tables);
        WholeFile.write(folder.resolve("compare.json"), Json.text(CompareAnswer.of(report)));
        ReportFiles.page(folder, "compare", ComparePage.html(report), pictures);
    }
}
