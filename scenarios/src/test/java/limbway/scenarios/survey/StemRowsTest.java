package limbway.scenarios.survey;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;

import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

import limbway.scenarios.entry.Fields;
import limbway.scenarios.entry.Form;
import limbway.scenarios.format.MappingNode;
import limbway.scenarios.format.YamlTree;
import limbway.scenarios.problem.Problems;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

/** All stems of the measured hectare, against the figures that an independent script computed (see its README). */
@Tag("derived")
class StemRowsTest {

    private static List<Stem> stems;

    @BeforeAll
    static void readTheTable() throws IOException {
        Problems problems = new Problems();
        MappingNode columns = (MappingNode) YamlTree.parse("columns", "{x: x, y: y, diameter: marks}", problems)
                .orElseThrow();
        CsvTable table = CsvTable.parse("waka.csv", Files.readString(Path.of("data/waka/waka.csv")), problems)
                .orElseThrow();
        stems = StemRows.of(table, Fields.of(columns, Form.COLUMNS, problems), problems)
                .orElseThrow()
                .read(0.01, Allometry.with(Map.of()))
                .orElseThrow();
        assertTrue(problems.isEmpty());
    }

    @Test
    void thereAre504StemsIn494Places() {
        assertEquals(504, stems.size());
        assertEquals(494, stems.stream().map(Stem::position).distinct().count());
    }

    @Test
    void positionsAndDiametersAddUp() {
        // the README prints two digits after the point
        double halfLastDigit = 5e-3;
        assertEquals(
                24659.67, stems.stream().mapToDouble(s -> s.position().xM()).sum(), halfLastDigit);
        assertEquals(
                26622.49, stems.stream().mapToDouble(s -> s.position().yM()).sum(), halfLastDigit);
        assertEquals(
                13305.55, stems.stream().mapToDouble(s -> 100 * s.diameterM()).sum(), halfLastDigit);
    }

    @Test
    void thickStemsAreCounted() {
        // diameters are given to 0.1 mm; the margin only absorbs the change of unit
        double roundingM = 1e-9;
        assertEquals(
                501,
                stems.stream().filter(s -> s.diameterM() >= 0.10 - roundingM).count());
        assertEquals(
                160,
                stems.stream().filter(s -> s.diameterM() >= 0.30 - roundingM).count());
    }

    @Test
    void theBasalAreaIsThatOfTheReadme() {
        double basalAreaM2 = stems.stream()
                .mapToDouble(s -> Math.PI / 4 * s.diameterM() * s.diameterM())
                .sum();
        double halfLastDigitM2 = 5e-5;
        assertEquals(39.7105, basalAreaM2, halfLastDigitM2);
    }
}
