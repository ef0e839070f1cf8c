package limbway.reports.command;

import java.io.IOException;
import java.nio.file.Path;

import limbway.reports.data.DataFolder;
import limbway.reports.data.Json;
import limbway.reports.data.ShadeTables;
import limbway.reports.data.WholeFile;
import limbway.reports.page.ShadePage;
import limbway.reports.page.ShadeReport;
import limbway.reports.page.ShadeViews;

/** Writes the folder of a year of shade. */
final class ShadeFiles {

    private ShadeFiles() {}

    static void write(Path folder, ShadeReport report, ShadeViews views) throws IOException {
        DataFolder.write(folder, report.info(), ShadeTables.of(report.year(), views.map(), report.heat()));
        WholeFile.write(folder.resolve("shade.json"), Json.text(ShadeAnswer.of(report)));
        ReportFiles.page(folder, "shade", ShadePage.html(report, views), ShadePage.pictures(report, views));
    }
}
