package limbway.reports.page;

import java.time.LocalTime;
import java.util.List;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

import limbway.model.enclosure.OpenHours;
import limbway.model.geometry.Point;
import limbway.model.study.Keeping;
import limbway.model.study.Study;
import limbway.model.study.Variant;
import limbway.model.study.Viewpoint;
import limbway.reports.Yard;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

@Tag("derived")
class VisitorSectionTest {

    private static String page(List<Viewpoint> viewpoints) {
        Study study = Yard.study();
        Variant base = study.base();
        Keeping keeping = new Keeping(base.feedings(), List.of(), List.of(), List.of(), viewpoints);
        Variant shown = new Variant(base.name(), base.note(), base.enclosure(), keeping, base.added());
        return ReportPage.html(Yard.report(
                new Study(study.title(), study.climate(), study.animals(), shown, List.of(), study.assumed())));
    }

    @Test
    void theSectionIsThereOnlyWhereVisitorsLookIn() {
        OpenHours day = new OpenHours(LocalTime.of(9, 0), LocalTime.of(17, 0));
        String shown = page(List.of(new Viewpoint("terrace", new Point(-2, 5, 1.6), day)));
        assertTrue(shown.contains("id=\"visitors\"") && shown.contains("#visitors"));
        assertTrue(shown.contains("seen from terrace"));
        String plain = page(List.of());
        assertFalse(plain.contains("visitors\"") || plain.contains("seen from"));
    }
}
