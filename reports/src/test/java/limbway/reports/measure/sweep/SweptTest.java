package limbway.reports.measure.sweep;

import java.util.List;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

import limbway.reports.measure.criterion.Criteria;
import limbway.reports.measure.criterion.DesignCriterion;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

/** Two replications of small plans, worked out by hand. */
@Tag("derived")
class SweptTest {

    private static final double ROUNDING = 1e-12;

    private static final DesignCriterion SHARE =
            new Criteria().find("offground_distance").orElseThrow();
    private static final DesignCriterion WAIT =
            new Criteria().find("waiting_at_food_min").orElseThrow();

    private static SweptCase one(int point, String layout, List<String> values, List<Double> at, double... shares) {
        double[][] byReplication = new double[shares.length][];
        for (int r = 0; r < shares.length; r++) {
            byReplication[r] = new double[] {shares[r], 10 * shares[r]};
        }
        return new SweptCase(point, layout, values, at, byReplication);
    }

    private static Swept swept(List<SweptFactor> factors, List<String> layouts, SweptCase... cases) {
        return new Swept(factors, layouts, List.of(SHARE, WAIT), List.of(cases));
    }

    private final Swept plan = swept(
            List.of(
                    new SweptFactor("rope.sag", false, false, List.of("2 %", "5 %")),
                    new SweptFactor("worth.cover", false, true, List.of("0", "1"))),
            List.of("as drawn"),
            one(1, "as drawn", List.of("2 %", "0"), List.of(0.0, 0.0), 0.2, 0.4),
            one(2, "as drawn", List.of("2 %", "1"), List.of(0.0, 1.0), 0.8, 0.6),
            one(3, "as drawn", List.of("5 %", "0"), List.of(1.0, 0.0), 0.4, 0.5),
            one(4, "as drawn", List.of("5 %", "1"), List.of(1.0, 1.0), 0.5, 0.5));

    /** Sag: 0.5 and 0.5 at 2 %, 0.45 and 0.5 at 5 %; the differences are 0.05 and 0. */
    @Test
    void effectsAreMeansAtEachValuePairedByReplication() {
        MainEffect sag = plan.effects(SHARE).get(0);
        assertEquals(0.5, sag.levels().get(0).orElseThrow().mean(), ROUNDING);
        assertEquals(0.475, sag.levels().get(1).orElseThrow().mean(), ROUNDING);
        assertEquals(0.025, sag.between().orElseThrow().mean(), ROUNDING);
        // Student's t of one degree of freedom times the standard error 0.025
        assertEquals(12.7062 * 0.025, sag.between().orElseThrow().halfWidth().orElseThrow(), 1e-5);
        MainEffect cover = plan.effects(SHARE).get(1);
        assertEquals(0.375, cover.levels().get(0).orElseThrow().mean(), ROUNDING);
        assertEquals(0.225, cover.between().orElseThrow().mean(), ROUNDING);
        assertEquals(1, cover.highest());
        assertEquals(2, plan.effects(SHARE).size());
    }

    /** Point 2 is the best of all, but its cover is an assumption: with 2 % it is 0.5 on the mean, with 5 % 0.475. */
    @Test
    void whatNobodyCanChooseIsNotChosen() {
        List<SweptCase> ranked = plan.ranked(SHARE);
        assertEquals(List.of("2 %", Swept.ALL), ranked.get(0).values());
        assertEquals(0.5, ranked.get(0).of(0).orElseThrow().mean(), ROUNDING);
        assertEquals(List.of("5 %", Swept.ALL), ranked.get(1).values());
        assertEquals(2, ranked.size());
        assertEquals(
                0.025, ranked.get(0).lessThat(ranked.get(1), 0).orElseThrow().mean(), ROUNDING);
        // less waiting is better
        assertEquals("5 %", plan.ranked(WAIT).get(0).values().get(0));
    }

    /** Shares 0.1 + 0.4 x in the first replication, and a value missing in the second. */
    @Test
    void aRangeIsAStraightLine() {
        Swept line = swept(
                List.of(new SweptFactor("rope.sag", true, false, List.of("2 %", "10 %"))),
                List.of("as drawn"),
                one(1, "as drawn", List.of("2 %"), List.of(0.0), 0.1, 0.3),
                one(2, "as drawn", List.of("6 %"), List.of(0.5), 0.3, Double.NaN),
                one(3, "as drawn", List.of("10 %"), List.of(1.0), 0.5, 0.5));
        MainEffect effect = line.effects(SHARE).get(0);
        assertEquals(0.2, effect.levels().get(0).orElseThrow().mean(), ROUNDING);
        assertEquals(0.5, effect.levels().get(1).orElseThrow().mean(), ROUNDING);
        assertEquals(0.3, effect.between().orElseThrow().mean(), ROUNDING);
    }

    @Test
    void severalLayoutsAreAFactorToo() {
        Swept two = swept(
                List.of(new SweptFactor("rope.sag", false, false, List.of("2 %", "5 %"))),
                List.of("as drawn", "high"),
                one(1, "as drawn", List.of("2 %"), List.of(0.0), 0.1),
                one(1, "high", List.of("2 %"), List.of(0.0), 0.7),
                one(2, "as drawn", List.of("5 %"), List.of(1.0), 0.3),
                one(2, "high", List.of("5 %"), List.of(1.0), 0.7));
        MainEffect layout = two.effects(SHARE).get(1);
        assertEquals(SweptFactor.LAYOUT, layout.factor().name());
        assertEquals(0.5, layout.between().orElseThrow().mean(), ROUNDING);
        assertEquals(
                2, two.ranked(SHARE).get(0).point() + two.ranked(SHARE).get(1).point() - 1);
        assertEquals("high", two.ranked(SHARE).get(0).layout());
    }

    @Test
    void aFirstValueWithoutMeasureHidesNoEffect() {
        Swept three = swept(
                List.of(new SweptFactor("rope.sag", false, false, List.of("2 %", "5 %", "8 %"))),
                List.of("as drawn"),
                one(1, "as drawn", List.of("2 %"), List.of(0.0), Double.NaN),
                one(2, "as drawn", List.of("5 %"), List.of(1.0), 0.7),
                one(3, "as drawn", List.of("8 %"), List.of(2.0), 0.3));
        MainEffect effect = three.effects(SHARE).get(0);
        assertEquals(2, effect.lowest());
        assertEquals(1, effect.highest());
        assertEquals(0.4, effect.between().orElseThrow().mean(), ROUNDING);
    }

    @Test
    void whereNothingWasMeasuredNothingIsSaid() {
        Swept none = swept(
                List.of(new SweptFactor("rope.sag", false, false, List.of("2 %", "5 %"))),
                List.of("as drawn"),
                one(1, "as drawn", List.of("2 %"), List.of(0.0), Double.NaN),
                one(2, "as drawn", List.of("5 %"), List.of(1.0), Double.NaN));
        assertTrue(none.ranked(SHARE).isEmpty());
        assertTrue(none.effects(SHARE).get(0).between().isEmpty());
        assertTrue(none.effects(SHARE).get(0).levels().get(1).isEmpty());
    }
}
