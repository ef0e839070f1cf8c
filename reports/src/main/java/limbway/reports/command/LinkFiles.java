package limbway.reports.command;

import java.io.IOException;
import java.nio.file.Path;

import limbway.reports.data.DataFolder;
import limbway.reports.data.Json;
import limbway.reports.data.LinkTables;
import limbway.reports.data.WholeFile;
import limbway.reports.page.LinkPage;
import limbway.reports.page.LinkReport;

/** Writes the folder of a search for links. */
final class LinkFiles {

    private LinkFiles() {}

    static void write(Path folder, LinkReport report) throws IOException {
        DataFolder.write(folder, report.info(), LinkTables.of(report.found()));
        WholeFile.write(folder.resolve("link.json"), Json.text(LinkAnswer.of(report)));
        ReportFiles.page(folder, "link", LinkPage.html(report), LinkPage.pictures(report));
    }
}
