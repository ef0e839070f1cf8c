package limbway.model.geometry;

import java.util.SplittableRandom;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

import static org.junit.jupiter.api.Assertions.assertEquals;

class ClosestApproachTest {

    @Test
    @Tag("derived")
    void crossingLinesMeetWhereTheyCross() {
        var found = ClosestApproach.of(
                new Segment(new Point(0, 0, 0), new Point(4, 0, 0)),
                new Segment(new Point(1, -1, 2), new Point(1, 3, 2)));
        assertEquals(new ClosestApproach(0.25, 0.25, 2), found);
    }

    @Test
    void noPairOfPlacesIsNearer() {
        SplittableRandom chance = new SplittableRandom(7);
        for (int i = 0; i < 2000; i++) {
            Segment a = line(chance);
            Segment b = i % 10 == 0
                    ? new Segment(a.a().plus(new Point(0, 1, 0)), a.b().plus(new Point(0, 1, 0)))
                    : line(chance);
            double found = ClosestApproach.of(a, b).distanceM();
            double best = Double.MAX_VALUE;
            for (int s = 0; s <= 200; s++) {
                best = Math.min(best, b.distanceM(a.at(s / 200.0)));
            }
            // the sampled minimum lies at most half a step of at most 20 m / 200 along the line above the true one
            assertEquals(best, found, 0.05);
            assertEquals(true, found <= best + 1e-12);
        }
    }

    private static Segment line(SplittableRandom chance) {
        return new Segment(point(chance), point(chance));
    }

    private static Point point(SplittableRandom chance) {
        return new Point(chance.nextDouble(10), chance.nextDouble(10), chance.nextDouble(10));
    }
}
