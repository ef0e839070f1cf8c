package limbway.reports.data;

import java.util.List;

import limbway.reports.measure.GroundCells;
import limbway.reports.measure.Measures;
import limbway.reports.measure.SupportUse;

/** How much every place is used, row by row. */
final class UseTables {

    private static final Field LAYOUT = Field.text("layout", "name of the layout");
    private static final Field SECONDS = Field.number(
            "seconds_per_animal_day",
            "time of an animal in a day, on average over animals, days and repetitions, sleep at night left out [s]");

    private UseTables() {}

    static CsvTable supports(List<Measures> layouts) {
        CsvTable table = new CsvTable(
                "support_use",
                "one support, platform or panel in one layout that somebody was on; a move counts for what it leads to",
                List.of(LAYOUT, Field.text("support", "its name"), SECONDS));
        for (Measures measures : layouts) {
            for (SupportUse support : measures.use().supports()) {
                table.row(measures.layout(), support.id(), CsvTable.number(support.secondsPerAnimalDay(), 3));
            }
        }
        return table;
    }

    static CsvTable ground(List<Measures> layouts) {
        CsvTable table = new CsvTable(
                "ground_cells",
                "one square cell of the ground in one layout in which somebody was",
                List.of(
                        LAYOUT,
                        Field.number("west_m", "west edge of the cell [m east]"),
                        Field.number("south_m", "south edge of the cell [m north]"),
                        Field.number("side_m", "side of the cell [m]"),
                        SECONDS));
        for (Measures measures : layouts) {
            GroundCells cells = measures.use().ground();
            for (int row = 0; row < cells.rows(); row++) {
                for (int column = 0; column < cells.columns(); column++) {
                    double seconds = cells.secondsPerAnimalDay(column, row);
                    if (seconds > 0) {
                        table.row(
                                measures.layout(),
                                CsvTable.number(cells.westM() + column * GroundCells.CELL_M, 0),
                                CsvTable.number(cells.southM() + row * GroundCells.CELL_M, 0),
                                CsvTable.number(GroundCells.CELL_M, 0),
                                CsvTable.number(seconds, 3));
                    }
                }
            }
        }
        return table;
    }
}
