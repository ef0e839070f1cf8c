package limbway.scenarios;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

import org.junit.jupiter.api.Test;

import limbway.model.geometry.Point;
import limbway.scenarios.layout.CandidateSpot;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

class PlacingTest {

    private static Reading read(String placing) {
        String changes = "[{move: hatch, on: mast-2 at 5.5}, {remove: rope-1}]";
        return SmallYard.read(SmallYard.TEXT.replace("[{move: hatch, on: mast-2 at 5.5}]", changes) + placing);
    }

    private static List<String> words(List<CandidateSpot> spots) {
        return spots.stream().map(CandidateSpot::words).toList();
    }

    @Test
    void candidatesAndRulesAreRead() {
        PlacingGiven placing = Examples.sound(read("""
                        placing:
                          candidates: [mast-2 at 3.5, "deck-1 at [0.5, -0.3]", rope-1 middle, [4, 2]]
                          keeper-reach: 6 m
                          hoist: no
                          apart: 3
                          load: 25
                          shaded: yes
                          no-hotter: no
                          barrier-distance: 0.5
                        """)).placing().orElseThrow();
        assertEquals(OptionalDouble.of(6), placing.entry().keeperReachM());
        assertEquals(Optional.of(false), placing.entry().hoist());
        assertEquals(OptionalDouble.of(3), placing.entry().apartM());
        assertEquals(OptionalDouble.of(25), placing.entry().loadKg());
        assertEquals(Optional.of(true), placing.entry().shaded());
        assertEquals(Optional.of(false), placing.entry().noHotter());
        assertEquals(OptionalDouble.of(0.5), placing.entry().barrierM());
        Map<String, List<CandidateSpot>> found = placing.candidates();
        assertEquals(
                List.of("mast-2 at 3.5", "deck-1 at [0.5, -0.3]", "rope-1 middle", "[4, 2]"),
                words(found.get("as drawn")));
        assertEquals(
                new CandidateSpot("mast-2 at 3.5", new Point(15, 6, 3.5), "mast-2"),
                found.get("as drawn").get(0));
        // the variant has no rope
        assertEquals(List.of("mast-2 at 3.5", "deck-1 at [0.5, -0.3]", "[4, 2]"), words(found.get("high")));
    }

    @Test
    void withoutTheSectionNothingIsGiven() {
        assertEquals(
                Optional.empty(), Examples.sound(SmallYard.read(SmallYard.TEXT)).placing());
    }

    @Test
    void mistakesAreToldAtTheirPlace() {
        String refusal = Examples.refusal(read("""
                placing:
                  candidates: [mast-2 at 9, mast-4 at 1, rope-1]
                  keeper-reach: 600
                  hoists: yes
                """));
        assertTrue(refusal.contains(":21:16: place of a candidate is above the top of pole \"mast-2\""), refusal);
        assertTrue(refusal.contains(":21:29: "), refusal);
        assertTrue(refusal.contains(":21:42: place of a candidate does not say where on rope \"rope-1\""), refusal);
        assertTrue(refusal.contains(":22:17: keeper-reach of placing is outside what is plausible"), refusal);
        assertTrue(refusal.contains("did you mean \"hoist\"?"), refusal);
        assertTrue(
                Examples.refusal(read("placing: {candidates: []}\n")).contains(":20:23: there are no candidates"),
                refusal);
    }
}
