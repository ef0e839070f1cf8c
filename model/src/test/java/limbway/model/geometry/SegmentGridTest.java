package limbway.model.geometry;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.TreeSet;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

class SegmentGridTest {

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void everyNearPairIsMetOnce(long seed) {
        SplittableRandom chance = new SplittableRandom(seed);
        List<Segment> lines = new ArrayList<>();
        for (int i = 0; i < 300; i++) {
            Point a = new Point(chance.nextDouble(-30, 30), chance.nextDouble(-30, 30), chance.nextDouble(0, 20));
            lines.add(new Segment(
                    a,
                    a.plus(new Point(chance.nextDouble(-8, 8), chance.nextDouble(-8, 8), chance.nextDouble(-8, 8)))));
        }
        TreeSet<Long> met = new TreeSet<>();
        SegmentGrid.forEachNearPair(lines, 2, (i, j) -> assertTrue(met.add(1000L * i + j), i + " and " + j + " twice"));
        TreeSet<Long> near = new TreeSet<>();
        for (int i = 0; i < lines.size(); i++) {
            for (int j = i + 1; j < lines.size(); j++) {
                if (ClosestApproach.of(lines.get(i), lines.get(j)).distanceM() <= 2) {
                    near.add(1000L * i + j);
                }
            }
        }
        assertTrue(near.size() > 50, "the test has pairs to find");
        near.removeAll(met);
        assertEquals(new TreeSet<>(), near);
    }
}
