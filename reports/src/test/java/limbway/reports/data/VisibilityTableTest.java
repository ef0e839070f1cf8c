package limbway.reports.data;

import java.time.LocalTime;
import java.util.List;
import java.util.Optional;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

import limbway.model.enclosure.OpenHours;
import limbway.model.geometry.Point;
import limbway.model.study.Keeping;
import limbway.model.study.Study;
import limbway.model.study.Variant;
import limbway.model.study.Viewpoint;
import limbway.reports.Yard;
import limbway.reports.measure.Measures;
import limbway.reports.measure.Visibility;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

@Tag("derived")
class VisibilityTableTest {

    /** A lived day: seen and out of sight make up the whole, and nobody is seen less from anywhere than from one place. */
    @Test
    void aLivedDayIsToldForAllBodiesAndAnimals() {
        Study study = Yard.study();
        Variant base = study.base();
        OpenHours day = new OpenHours(LocalTime.of(9, 0), LocalTime.of(17, 0));
        Keeping keeping = new Keeping(
                base.feedings(),
                List.of(),
                List.of(),
                List.of(),
                List.of(
                        new Viewpoint("terrace", new Point(-2, 5, 1.6), day),
                        new Viewpoint("bridge", new Point(10, -3, 4), day)));
        Variant shown = new Variant(base.name(), base.note(), base.enclosure(), keeping, base.added());
        Measures measures = Yard.measures(shown, study.animals());
        Visibility visible = measures.visibility().orElseThrow();
        visible.byAnimal().forEach((animal, seen) -> {
            double any = seen.fromAny().orElseThrow().mean();
            assertEquals(1, any + seen.outOfSight().orElseThrow().mean(), 1e-12, animal);
            seen.fromViewpoint().forEach((from, share) -> assertTrue(share.mean() <= any + 1e-12, animal + " " + from));
        });
        CsvTable table = VisibilityTable.of(List.of(measures)).orElseThrow();
        int groups = 1 + visible.byBody().size() + visible.byAnimal().size();
        // a heading; for each group two viewpoints, anywhere, out of sight, at a retreat
        assertEquals(1 + 5 * groups, table.text().lines().count());
        assertTrue(visible.overall().fromAny().orElseThrow().mean() > 0, "the yard can be looked into");
    }

    @Test
    void withoutViewpointsThereIsNoTable() {
        Study study = Yard.study();
        assertEquals(Optional.empty(), VisibilityTable.of(List.of(Yard.measures(study.base(), study.animals()))));
    }
}
