package limbway.scenarios;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

import limbway.model.enclosure.Enclosure;
import limbway.model.geometry.Point;
import limbway.model.geometry.Terrain;

import static org.junit.jupiter.api.Assertions.assertEquals;

/** Ground that slopes: its heights, and what stands on it. */
class TerrainTest {

    /** A plane that rises by 0.1 m a metre to the north. */
    private static final String SLOPE =
            "heights: {points: [[0, 0, 0], [30, 0, 0], [30, 20, 2], [0, 20, 2]]}\n  obstacles:";

    private static final String SLOPING =
            SmallYard.TEXT.replace("obstacles:", SLOPE).replace("at: [28, 10, 0]", "at: [28, 10]");

    private static Enclosure base(String text) {
        return Examples.sound(SmallYard.read(text)).study().base().enclosure();
    }

    @Test
    @Tag("derived")
    void whatHasNoHeightOfItsOwnStandsOnTheSlope() {
        Enclosure yard = base(SLOPING);
        // interpolation in a triangle rounds to some 1e-15
        assertEquals(1.0, yard.resources().get(0).at().zM(), 1e-12);
        assertEquals(0.5, SmallCage.support(yard, "mast-1").axis().start().zM(), 1e-12);
        assertEquals(7.5, SmallCage.support(yard, "mast-1").axis().end().zM(), 1e-12);
    }

    @Test
    @Tag("derived")
    void aHeightOnAMastIsMeasuredFromTheGroundAtItsFoot() {
        Enclosure yard = base(SLOPING);
        assertEquals(0.5 + 5.0, yard.platforms().get(0).zM(), 1e-12);
        assertEquals(0.6 + 6.0, SmallCage.support(yard, "rope-1").axis().end().zM(), 1e-12);
    }

    @Test
    void threeCoordinatesAreMeasuredFromHeightZero() {
        Enclosure yard = base(SLOPING.replace("at: [28, 10]", "at: [28, 10, 1.2]"));
        assertEquals(new Point(28, 10, 1.2), yard.resources().get(0).at());
    }

    /** The grid of a plane says the same as its corners. */
    @Test
    @Tag("derived")
    void aGridIsReadFromSouthToNorth() {
        String grid =
                "heights: {grid: {origin: [0, 0], spacing: 10, rows: [[0, 0, 0, 0], [1, 1, 1, 1], [2, 2, 2, 3]]}}\n"
                        + "  obstacles:";
        Terrain terrain = base(SLOPING.replace(SLOPE, grid)).ground().terrain();
        assertEquals(12, terrain.triangles().size());
        assertEquals(0.5, terrain.heightM(3, 5), 1e-12);
        assertEquals(1.3, terrain.heightM(12, 13), 1e-12);
        assertEquals(3, terrain.heightM(30, 20), 1e-12);
    }

    @Test
    void theOrderOfTheHeightsDoesNotMatter() {
        String turned = SLOPING.replace(
                "[[0, 0, 0], [30, 0, 0], [30, 20, 2], [0, 20, 2]]", "[[30, 20, 2], [0, 0, 0], [0, 20, 2], [30, 0, 0]]");
        assertEquals(base(SLOPING), base(turned));
    }

    @Test
    void heightsThatDoNotReachTheEdgeAreTold() {
        assertEquals(
                """
                yard.yaml:5:21: heights of the ground do not cover all of it
                  found    corner [30, 0] of the ground lies beyond the outermost heights
                  mend     add heights there, also beyond the edge, or make the ground smaller

                1 problem
                """,
                Examples.refusal(
                        SmallYard.read(SLOPING.replace("[30, 0, 0], [30, 20, 2]", "[28, 0, 0], [30, 20, 2]"))));
    }

    @Test
    void aRopeThatRunsIntoTheSlopeIsTold() {
        assertEquals("""
                yard.yaml:10:5: rope "rope-1" hangs into the ground
                  found    1.4 m below the ground at [15, 20, 0.6]
                  allowed  0 m or more above the ground
                  mend     hang it higher, or give it less sag

                1 problem
                """, Examples.refusal(SmallYard.read(SLOPING.replace("to: mast-2 at 6.0", "to: [15, 20, 0.6]"))));
    }

    @Test
    void aDeckOrFoodInTheSlopeIsTold() {
        assertEquals(
                """
                yard.yaml:11:5: platform "deck-1" lies in the ground
                  found    0.575 m below the ground at [16, 19.75, 1.4]
                  mend     put it higher, or move it to where the ground is lower

                yard.yaml:13:23: food "hatch" lies in the ground
                  found    [28, 19, 0.5], 1.4 m below the ground
                  mend     write [x, y] without a height for a place on the ground

                2 problems
                """,
                Examples.refusal(SmallYard.read(SLOPING.replace("on: mast-1 at 5.0", "at: [15, 19, 1.4]")
                        .replace("at: [28, 10]", "at: [28, 19, 0.5]"))));
    }

    @Test
    void twoHeightsOfOnePlaceAndHeightsInOneLineAreTold() {
        assertEquals(
                """
                yard.yaml:5:45: two heights are given for one place
                  found    0 m and 2 m
                  mend     take one of them out

                1 problem
                """,
                Examples.refusal(SmallYard.read(SLOPING.replace("[30, 20, 2], [0, 20, 2]", "[30, 0, 2], [0, 20, 2]"))));
        assertEquals(
                """
                yard.yaml:5:21: points of the heights lie in one line, seen from above
                  mend     add a point beside that line

                1 problem
                """,
                Examples.refusal(SmallYard.read(SLOPING.replace(
                        "[[0, 0, 0], [30, 0, 0], [30, 20, 2], [0, 20, 2]]", "[[0, 0, 0], [30, 0, 0], [60, 0, 2]]"))));
    }
}
