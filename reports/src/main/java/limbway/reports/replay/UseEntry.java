package limbway.reports.replay;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import limbway.reports.measure.GroundCells;
import limbway.reports.measure.SupportUse;
import limbway.reports.measure.UseOfPlaces;

/** How much every place is used, as an entry of a layout. */
final class UseEntry {

    private UseEntry() {}

    static Map<String, Object> of(UseOfPlaces use) {
        List<Map<String, Object>> supports = new ArrayList<>();
        for (SupportUse support : use.supports()) {
            Map<String, Object> entry = new LinkedHashMap<>();
            entry.put("id", support.id());
            entry.put("secondsPerAnimalDay", Math.rint(support.secondsPerAnimalDay() * 1000) / 1000);
            supports.add(entry);
        }
        Map<String, Object> both = new LinkedHashMap<>();
        both.put("supports", supports);
        both.put("ground", ground(use.ground()));
        return both;
    }

    /** The axes of the replay go south, so the first row of cells is the northernmost. */
    private static Map<String, Object> ground(GroundCells cells) {
        double[] seconds = new double[cells.columns() * cells.rows()];
        for (int row = 0; row < cells.rows(); row++) {
            for (int column = 0; column < cells.columns(); column++) {
                seconds[row * cells.columns() + column] = cells.secondsPerAnimalDay(column, cells.rows() - 1 - row);
            }
        }
        Map<String, Object> ground = new LinkedHashMap<>();
        ground.put("cellM", GroundCells.CELL_M);
        ground.put("x0", cells.westM());
        ground.put("z0", 0 - (cells.southM() + cells.rows() * GroundCells.CELL_M));
        ground.put("nx", cells.columns());
        ground.put("nz", cells.rows());
        ground.put("secondsPerAnimalDay", Rows.f32(seconds));
        return ground;
    }
}
