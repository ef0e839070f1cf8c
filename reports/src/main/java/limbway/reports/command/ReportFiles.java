package limbway.reports.command;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import limbway.reports.chart.Picture;
import limbway.reports.chart.PictureFormat;
import limbway.reports.data.DataFolder;
import limbway.reports.data.Json;
import limbway.reports.data.WholeFile;
import limbway.reports.page.Report;
import limbway.reports.page.ReportPage;

/** Writes the folder of a run. */
final class ReportFiles {

    private ReportFiles() {}

    static void write(Path folder, Report report, Instant started, Instant finished, int threads) throws IOException {
        DataFolder.write(folder, report.info(), report.measures(), report.others(), report.cards());
        WholeFile.write(folder.resolve("report.html"), ReportPage.html(report));
        pictures(folder, ReportPage.pictures(report));
        // what the clock and the machine decide stands apart, so that everything else can be compared byte by byte
        Map<String, Object> times = new LinkedHashMap<>();
        times.put("started", started.toString());
        times.put("finished", finished.toString());
        times.put("seconds", Duration.between(started, finished).toMillis() / 1000.0);
        times.put("threads", threads);
        WholeFile.write(folder.resolve("run-times.json"), Json.text(times));
    }

    /** Writes each picture as SVG and PNG. */
    static void pictures(Path folder, List<Picture> pictures) throws IOException {
        Path charts = Files.createDirectories(folder.resolve("charts"));
        for (Picture picture : pictures) {
            WholeFile.write(charts.resolve(picture.id() + ".svg"), PictureFormat.svgFile(picture));
            WholeFile.write(charts.resolve(picture.id() + ".png"), PictureFormat.png(picture));
        }
    }
}
