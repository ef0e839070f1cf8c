package limbway.reports.data;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

import limbway.reports.measure.Measures;
import limbway.reports.measure.RouteCards;

/** Writes the tables of a run with their description, and the record of the run. */
public final class DataFolder {

    private DataFolder() {}

    /**
     * Writes {@code data/*.csv}, {@code data/datapackage.json} and {@code run.json}.
     *
     * @param folder where to write; made if it does not exist
     * @param info how the run was made
     * @param measures what came out of the layout in question; its trips and stays are written
     * @param others what came out of other layouts; only measures are written
     * @param cards trips of the layout in question
     * @throws IOException if a file cannot be written
     */
    public static void write(Path folder, RunInfo info, Measures measures, List<Measures> others, RouteCards cards)
            throws IOException {
        List<Measures> layouts = new ArrayList<>(List.of(measures));
        layouts.addAll(others);
        JournalTables journal = new JournalTables(measures.outcome());
        MeasureTables computed = new MeasureTables(layouts);
        List<CsvTable> tables = new ArrayList<>(List.of(
                journal.trips(),
                journal.stays(),
                journal.reserves(),
                journal.stocks(),
                journal.displacements(),
                computed.measures(),
                computed.groundUse(),
                UseTables.supports(layouts),
                UseTables.ground(layouts),
                RouteCardTable.of(measures.layout(), cards),
                ActivityTable.of(layouts)));
        VisibilityTable.of(layouts).ifPresent(tables::add);
        tables(
                folder,
                "limbway-run",
                info.title() + ", " + info.layout(),
                "What a simulated group of apes did, and what was measured of it.",
                tables);
        WholeFile.write(folder.resolve("run.json"), RunRecord.json(info));
    }

    /**
     * Writes {@code data/*.csv} and {@code data/datapackage.json} of a year of shade.
     *
     * @param folder where to write; made if it does not exist
     * @param info how it was looked at
     * @param tables what came out
     * @throws IOException if a file cannot be written
     */
    public static void write(Path folder, ShadeInfo info, List<CsvTable> tables) throws IOException {
        tables(
                folder,
                "limbway-shade",
                info.title() + ", " + info.layout(),
                "Which rest platforms of an enclosure lie in shade through a year, and what else was computed of the sun.",
                tables);
    }

    /**
     * Writes {@code data/*.csv} and {@code data/datapackage.json} of an answer.
     *
     * @param folder where to write; made if it does not exist
     * @param answer says what the tables are about
     * @param tables what came out
     * @throws IOException if a file cannot be written
     */
    public static void write(Path folder, Described answer, List<CsvTable> tables) throws IOException {
        Described.Head head = answer.head();
        tables(folder, head.name(), head.title(), head.description(), tables);
    }

    private static void tables(Path folder, String name, String title, String description, List<CsvTable> tables)
            throws IOException {
        Path data = Files.createDirectories(folder.resolve("data"));
        for (CsvTable table : tables) {
            WholeFile.write(data.resolve(table.name() + ".csv"), table.text());
        }
        WholeFile.write(data.resolve("datapackage.json"), DataPackage.json(name, title, description, tables));
    }
}
