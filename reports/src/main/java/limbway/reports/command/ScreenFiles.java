package limbway.reports.command;

import java.io.IOException;
import java.nio.file.Path;

import limbway.reports.data.DataFolder;
import limbway.reports.data.Json;
import limbway.reports.data.ScreenTables;
import limbway.reports.data.WholeFile;
import limbway.reports.page.ScreenPage;
import limbway.reports.page.ScreenReport;

/** Writes the folder of a screening. */
final class ScreenFiles {

    private ScreenFiles() {}

    static void write(Path folder, ScreenReport report) throws IOException {
        DataFolder.write(folder, report.info(), ScreenTables.of(report.answers()));
        WholeFile.write(folder.resolve("screen.json"), Json.text(ScreenAnswer.of(report)));
        ReportFiles.page(folder, "screen", ScreenPage.html(report), ScreenPage.pictures(report));
    }
}
