package limbway.model.enclosure;

import java.util.List;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

import limbway.model.geometry.Point;
import limbway.model.geometry.Polyline;
import limbway.model.geometry.Segment;
import limbway.model.geometry.Terrain;
import limbway.model.geometry.Triangle;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

class SupportScaleTest {

    /** One metre above height 0 everywhere. */
    private static final Terrain TERRACE =
            new Terrain(List.of(new Triangle(new Point(0, 0, 1), new Point(30, 0, 1), new Point(0, 30, 1))));

    /** For sums of a few numbers of a few metres. */
    private static final double ROUNDING_M = 1e-12;

    private static SupportScale scale(SupportKind kind, Point from, Point to) {
        return new SupportScale(
                new Support("one", kind, Polyline.straight(from, to), 0.1, Material.GALVANISED_STEEL), TERRACE);
    }

    @Test
    @Tag("derived")
    void placesOnALeaningPoleAreToldByTheirHeightAboveTheGroundAtItsFoot() {
        SupportScale pole = scale(SupportKind.POLE, new Point(2, 2, 1), new Point(6, 2, 5));
        assertEquals(new Point(4, 2, 3), pole.at(2));
        assertEquals(2, pole.measureM(new Point(4, 2, 3)), ROUNDING_M);
        assertEquals(new Point(6, 2, 5), pole.at(4));
        assertTrue(pole.has(0) && pole.has(4));
        assertFalse(pole.has(-0.01) || pole.has(4.01));
    }

    @Test
    @Tag("derived")
    void placesOnABeamAreToldByTheDistanceFromItsFirstEnd() {
        SupportScale beam = scale(SupportKind.BEAM, new Point(2, 2, 3), new Point(6, 2, 3));
        assertEquals(new Point(5, 2, 3), beam.at(3));
        assertEquals(3, beam.measureM(new Point(5, 2.5, 3)), ROUNDING_M);
        assertEquals(new Point(6, 2, 3), beam.at(4));
        assertTrue(beam.has(0) && beam.has(4));
        assertFalse(beam.has(-0.01) || beam.has(4.01));
    }

    @Test
    @Tag("derived")
    void heightsAreAboveTheGroundStraightBelow() {
        assertEquals(2, TERRACE.aboveM(new Point(4, 2, 3)), ROUNDING_M);
        assertEquals(-0.5, TERRACE.aboveM(new Point(4, 2, 0.5)), ROUNDING_M);
    }

    @Test
    @Tag("derived")
    void pointsAlongALineHaveBothEndsAndNoWiderStepThanAsked() {
        List<Point> along = new Segment(new Point(0, 0, 0), new Point(1, 0, 0)).every(0.3);
        assertEquals(
                List.of(0.0, 0.25, 0.5, 0.75, 1.0),
                along.stream().map(Point::xM).toList());
        Point spot = new Point(1, 1, 1);
        assertEquals(List.of(spot, spot), new Segment(spot, spot).every(0.3));
    }
}
