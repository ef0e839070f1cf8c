package limbway.reports.command;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;

import limbway.reports.data.DataFolder;
import limbway.reports.data.Json;
import limbway.reports.data.LessonTable;
import limbway.reports.data.WholeFile;
import limbway.reports.page.LessonPage;
import limbway.reports.page.LessonReport;

/** Writes the folder of a lesson. */
final class LessonFiles {

    private LessonFiles() {}

    static void write(Path folder, LessonReport report) throws IOException {
        DataFolder.write(folder, report.info(), List.of(LessonTable.of(report.lesson())));
        WholeFile.write(folder.resolve("lesson.json"), Json.text(LessonAnswer.of(report)));
        WholeFile.write(folder.resolve("lesson.html"), LessonPage.html(report));
    }
}
