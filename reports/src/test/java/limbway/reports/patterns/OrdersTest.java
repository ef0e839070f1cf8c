package limbway.reports.patterns;

import java.util.List;
import java.util.Map;
import java.util.function.Predicate;

import org.junit.jupiter.api.Test;

import limbway.sim.experiment.statistics.Interval;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

/**
 * Signs and orders of the patterns, held with the whole 95 % interval over a dozen replications; the table has the figures. Where a
 * term is said to make the difference, the same question without it must not show it.
 */
class OrdersTest {

    private static final Run NIGHTS = Run.of("patterns/03-night-rooms");
    private static final Run HALL = Run.of("patterns/01-flooded-hall");
    private static final Predicate<Piece> ALL = Shares.always();

    private final Lives usual = Lives.usual();

    /** Pattern 3: Samson and Shumaker 2015, doi 10.1159/000381056. */
    @Test
    void beddingOnADryFloorBringsBedsDown() {
        Lives without = usual.trying(Map.of("worth.bedding", 0.0));
        double most = Interval.of(Sleep.onGround(NIGHTS).of(without))
                .orElseThrow()
                .hi()
                .orElseThrow();
        assertTrue(isAbove(most, Sleep.onGround(NIGHTS).of(usual)), () -> "without bedding up to " + most);
    }

    /** Pattern 1: Hebert and Bard 2000, Zoo Biology 19:239-251. */
    @Test
    void theUpperCanopyIsUsedMoreThanTheLowerOneBecauseItIsHigher() {
        Measurement upper = Shares.share(HALL, ALL, Shares.higherThan(5));
        Measurement lower = Shares.share(HALL, ALL, piece -> !piece.isOnGround() && piece.heightM() <= 5);
        assertTrue(isAbove(0, upper.minus(lower).of(usual)));
        Lives without = usual.trying(Map.of("worth.height", 0.0));
        assertFalse(isAbove(0, upper.minus(lower).of(without)), "without height");
    }

    /** Pattern 16: Soraya (abstract) against Danum, doi 10.1002/ajp.20848. */
    @Test
    void whereFruitIsShortApesRestMoreAndFeedLess() {
        Run much = CalibrationPatterns.FOREST;
        Run little = much.in("little fruit");
        Measurement more = Shares.share(little, ALL, Shares.resting()).minus(Shares.share(much, ALL, Shares.resting()));
        Measurement less = Shares.share(much, ALL, Shares.feeding()).minus(Shares.share(little, ALL, Shares.feeding()));
        assertTrue(isAbove(0, more.of(usual)));
        assertTrue(isAbove(0, less.of(usual)));
    }

    /** Pattern 10: six gibbons, doi 10.1080/10888705.2014.916172. */
    @Test
    void highStructuresBringGibbonsUp() {
        Run before = Run.of("patterns/10-gibbon-wings");
        Run after = before.in("high structures");
        Measurement rise = Shares.mean(after, ALL, Piece::heightM).minus(Shares.mean(before, ALL, Piece::heightM));
        assertTrue(isAbove(0, rise.of(usual)));
    }

    private static boolean isAbove(double limit, List<Double> values) {
        return Interval.of(values).orElseThrow().lo().orElseThrow() > limit;
    }
}
