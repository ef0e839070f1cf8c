package limbway.sim.day;

import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

import limbway.model.enclosure.ResourceKind;
import limbway.model.study.FeedingMethod;
import limbway.sim.Runs;
import limbway.sim.Yard;
import limbway.sim.animal.DaySettings;
import limbway.sim.animal.Physiology;
import limbway.sim.food.GainCurve;
import limbway.sim.journal.Journal;
import limbway.sim.journal.Motive;
import limbway.sim.journal.Reserve;
import limbway.sim.journal.Stay;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

/** One animal and one feeder: how long meals last, how much is left, and whether it gets enough. */
class FeedingDayTest {

    private static final int DAYS = 10;
    private static final int FEEDER = 0;
    private static final double PUT_OUT_KJ = 7000;
    private static final double HANDLING_MIN = 3;

    private final Physiology body = Physiology.of(Yard.body("adult female"), 1.6, DaySettings.standard());

    private static Journal live(FeedingMethod method) {
        double handlingMin = method == FeedingMethod.PUZZLE ? HANDLING_MIN : 0;
        return Runs.once(
                new Yard()
                        .at("feeder", ResourceKind.FOOD, 20, 10, 0, 1)
                        .at("trough", ResourceKind.WATER, 15, 10, 0, 1)
                        .at("nest", ResourceKind.NEST, 10, 10, 0, 1)
                        .feed("feeder", "08:00", PUT_OUT_KJ, method, handlingMin)
                        .animal("A", "adult female", 1)
                        .build(),
                DAYS,
                1);
    }

    private static List<Stay> meals(Journal journal) {
        return journal.stays().stream().filter(stay -> stay.eatenJ() > 0).toList();
    }

    /** On day 1 all that lies there is what was put out, so the stock before each meal is known. */
    @ParameterizedTest
    @EnumSource
    void aMealLastsAsLongAsTheCurveSays(FeedingMethod method) {
        double putOutJ = PUT_OUT_KJ * 1000;
        double handlingMs = method == FeedingMethod.PUZZLE ? HANDLING_MIN * 60_000 : 0;
        double leftJ = putOutJ;
        int meals = 0;
        for (Stay meal : meals(live(method))) {
            if (meal.day() == 1) {
                double toJ = leftJ - meal.eatenJ();
                double expectedMs = handlingMs + GainCurve.of(method).timeMs(putOutJ, body.eatingJPerMs(), leftJ, toJ);
                // whole milliseconds
                assertEquals(expectedMs, (double) (meal.endMs() - meal.startMs()), 0.51, meal::toString);
                leftJ = toJ;
                meals++;
            }
        }
        assertTrue(meals >= 5, "meals on day 1: " + meals);
    }

    @ParameterizedTest
    @EnumSource
    void anAnimalThatIsOfferedMoreThanItsNeedGetsItHoweverItIsPutOut(FeedingMethod method) {
        Reserve reserve = live(method).reserves().get(0);
        double share = reserve.eatenJ() / (body.energyNeedJ() * DAYS);
        assertTrue(share > 0.9 && share < 1.1, () -> method + ": " + share + " of its need");
    }

    @Test
    void foodIsLeftWhereItComesSlowlyAndNotInAHeap() {
        // less than its need, so that it comes back for all that is worth eating to a hungry animal
        assertTrue(leftOfLittle(FeedingMethod.HEAP) < 1);
        double scattered = leftOfLittle(FeedingMethod.SCATTERED);
        double browse = leftOfLittle(FeedingMethod.BROWSE);
        assertTrue(scattered > 20_000, () -> "scattered: " + scattered);
        assertTrue(browse > scattered, () -> "browse: " + browse);
    }

    private static double leftOfLittle(FeedingMethod method) {
        Journal journal = Runs.once(
                new Yard()
                        .at("feeder", ResourceKind.FOOD, 20, 10, 0, 1)
                        .at("trough", ResourceKind.WATER, 15, 10, 0, 1)
                        .at("nest", ResourceKind.NEST, 10, 10, 0, 1)
                        .feed("feeder", "08:00", 3000, method, 0)
                        .animal("A", "adult female", 1)
                        .build(),
                2,
                1);
        return journal.stocks().get(FEEDER).leftJ();
    }

    /** It settles a little before the last moment, so a little less than the whole is spent. */
    @Test
    void whatIsSpentWhileAwakeAddsUpOverADay() {
        Reserve reserve = live(FeedingMethod.HEAP).reserves().get(0);
        double share = reserve.otherJ() / (body.otherJPerDay() * DAYS);
        assertTrue(share > 0.98 && share <= 1 + 1e-12, () -> "share " + share);
        assertEquals(0.9 * (1 - 1 / 1.6) * body.energyNeedJ(), body.otherJPerDay(), 1e-6);
    }

    @Test
    void nobodyWaitsAtAFeederThatItLeftByItself() {
        assertFalse(live(FeedingMethod.BROWSE).stays().stream()
                .anyMatch(stay -> stay.waiting() || (stay.motive() == Motive.HUNGER && stay.eatenJ() == 0)));
    }
}
