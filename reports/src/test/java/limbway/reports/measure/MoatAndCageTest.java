package limbway.reports.measure;

import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;

import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

import limbway.model.energy.EnergySettings;
import limbway.model.parameter.Assumable;
import limbway.model.route.ChoiceSharpness;
import limbway.model.study.Study;
import limbway.model.study.Variant;
import limbway.model.volume.UsableVolume;
import limbway.scenarios.Reading;
import limbway.scenarios.ScenarioReader;
import limbway.sim.habitat.Habitat;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

/** The same footprint behind a moat and as a cage of mesh: {@code scenarios/examples/moat-and-cage.yaml}. */
class MoatAndCageTest {

    private static Map<String, UsableVolume> yard;
    private static Map<String, UsableVolume> cage;

    @BeforeAll
    static void measure() {
        Path file = Path.of("..", "scenarios", "examples", "moat-and-cage.yaml");
        Study study = ((Reading.Read) ScenarioReader.read(file, Assumable.nothing())).study();
        yard = usable(study.base(), study);
        cage = usable(study.variants().get(0), study);
    }

    private static Map<String, UsableVolume> usable(Variant layout, Study study) {
        return Room.of(new Habitat(
                        layout,
                        study.animals(),
                        Optional.empty(),
                        EnergySettings.standard(),
                        ChoiceSharpness.GROUP.standard()))
                .usable();
    }

    @Test
    @Tag("derived")
    void theCageHasMoreUsableRoomForEveryBodyThoughItIsLower() {
        assertEquals(yard.keySet(), cage.keySet());
        yard.forEach((body, open) -> {
            UsableVolume closed = cage.get(body);
            // 320 m²: 7 m to the longest arm above the masts, 5 m to the roof
            assertEquals(2240, open.grossM3(), 1e-6);
            assertEquals(1600, closed.grossM3(), 1e-6);
            double errorM3 = Math.hypot(open.standardErrorM3(), closed.standardErrorM3());
            assertTrue(closed.m3() > 1.5 * open.m3() + 4 * errorM3, () -> body + ": " + open + ", " + closed);
            assertTrue(closed.offGroundM3() > 2 * open.offGroundM3(), body);
            // what is within reach of floor, walls and roof, without the climbing frame
            double r = closed.reachM();
            double shellM3 = 1600 - (20 - 2 * r) * (16 - 2 * r) * (5 - 2 * r);
            assertTrue(closed.m3() > shellM3 - 4 * closed.standardErrorM3(), () -> body + ": " + shellM3);
        });
    }

    /** Our own figures; each may move by two of its standard errors if the sampling changes. */
    @Test
    @Tag("pinned")
    void theFiguresOfTheHandbook() {
        assertFigure(768.1, yard.get("old male"));
        assertFigure(650.5, yard.get("adult female and infant"));
        assertFigure(403.1, yard.get("juvenile"));
        assertFigure(1404.2, cage.get("old male"));
        assertFigure(1299.2, cage.get("adult female and infant"));
        assertFigure(1014.9, cage.get("juvenile"));
    }

    private static void assertFigure(double expectedM3, UsableVolume found) {
        assertEquals(expectedM3, found.m3(), 2 * found.standardErrorM3());
        // 0.3 m³: a thousandth of the smallest
        assertTrue(found.standardErrorM3() < 0.3, () -> found.toString());
    }
}
