package limbway.reports.command;

import java.io.IOException;
import java.nio.file.Path;

import limbway.reports.data.DataFolder;
import limbway.reports.data.Json;
import limbway.reports.data.PlaceTables;
import limbway.reports.data.WholeFile;
import limbway.reports.page.PlacePage;
import limbway.reports.page.PlaceReport;

/** Writes the folder of a placing. */
final class PlaceFiles {

    private PlaceFiles() {}

    static void write(Path folder, PlaceReport report) throws IOException {
        DataFolder.write(folder, report.info(), PlaceTables.of(report.answer(), report.animals()));
        WholeFile.write(folder.resolve("place.json"), Json.text(PlaceAnswer.of(report)));
        ReportFiles.page(folder, "place", PlacePage.html(report), PlacePage.pictures(report));
    }
}
