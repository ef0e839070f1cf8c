package limbway.sim.habitat;

import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

import limbway.model.enclosure.OpenHours;
import limbway.model.enclosure.Resource;
import limbway.model.enclosure.ResourceKind;
import limbway.model.geometry.Point;
import limbway.model.study.BeddingRound;
import limbway.model.study.Closure;
import limbway.model.study.Keeping;
import limbway.model.study.Viewpoint;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

class KeepersHoursTest {

    private static final long MINUTE = 60_000;
    private static final long HOUR = 60 * MINUTE;
    private static final long DAY = 24 * HOUR;
    private static final Point SOMEWHERE = new Point(1, 2, 0);

    private static Resource den(double bedding) {
        return new Resource("den", ResourceKind.NEST, SOMEWHERE, "", 1, bedding);
    }

    private static OpenHours hours(String from, String to) {
        return new OpenHours(LocalTime.parse(from), LocalTime.parse(to));
    }

    private static BeddingRound straw(String at, double amount) {
        return new BeddingRound("den", LocalTime.parse(at), amount);
    }

    private static KeepersHours plan(double bedding, List<BeddingRound> rounds, List<Closure> closures) {
        return new KeepersHours(new Keeping(List.of(), rounds, closures, List.of(), List.of()), List.of(den(bedding)));
    }

    @Test
    @Tag("derived")
    void aDenShutOverMidnightOpensInTheMorningOfTheNextDay() {
        KeepersHours plan = plan(0, List.of(), List.of(new Closure("den", hours("22:00", "06:30"), false)));
        assertFalse(plan.isShut(0, 21 * HOUR));
        assertEquals(21 * HOUR, plan.opensAtMs(0, 21 * HOUR));
        assertEquals(22 * HOUR, plan.shutsAtMs(0, 21 * HOUR));
        assertTrue(plan.isShut(0, 22 * HOUR));
        assertEquals(DAY + 6 * HOUR + 30 * MINUTE, plan.opensAtMs(0, 23 * HOUR));
        assertEquals(DAY + 22 * HOUR, plan.shutsAtMs(0, 23 * HOUR), "it is shut already: the next time is tomorrow's");
        assertTrue(plan.isShut(0, DAY));
        assertEquals(3 * DAY + 6 * HOUR + 30 * MINUTE, plan.opensAtMs(0, 3 * DAY + 1));
        assertEquals(3 * DAY + 22 * HOUR, plan.shutsAtMs(0, 3 * DAY + 1));
        assertFalse(plan.isShut(0, 3 * DAY + 6 * HOUR + 30 * MINUTE), "the last moment is not shut any more");
        assertTrue(plan.isShut(0, 3 * DAY + 6 * HOUR + 30 * MINUTE - 1));
        assertTrue(plan.isShut(0, -HOUR), "the days before the first are like the others");
    }

    @Test
    @Tag("derived")
    void whatIsNeverShutNeverShutsAndWhatIsAlwaysShutNeverOpens() {
        assertEquals(Long.MAX_VALUE, plan(0, List.of(), List.of()).shutsAtMs(0, 5 * HOUR));
        KeepersHours always = plan(0, List.of(), List.of(new Closure("den", hours("08:00", "08:00"), false)));
        assertTrue(always.isShut(0, 8 * HOUR) && always.isShut(0, 7 * HOUR));
        assertEquals(Long.MAX_VALUE, always.opensAtMs(0, 9 * HOUR));
        assertEquals(Long.MAX_VALUE, always.shutsAtMs(0, 9 * HOUR));
    }

    @Test
    @Tag("derived")
    void hoursThatMeetAreOneClosure() {
        KeepersHours plan = plan(
                0,
                List.of(),
                List.of(
                        new Closure("den", hours("09:00", "10:00"), false),
                        new Closure("den", hours("10:00", "11:00"), true)));
        assertEquals(11 * HOUR, plan.opensAtMs(0, 9 * HOUR));
        assertEquals(DAY + 9 * HOUR, plan.shutsAtMs(0, 9 * HOUR + 1));
    }

    @Test
    @Tag("derived")
    void cleaningTakesWhatWasPutOutAndLeavesWhatAlwaysLiesThere() {
        KeepersHours plan = plan(
                0.25,
                List.of(straw("16:00", 0.5), straw("20:00", 0.5)),
                List.of(new Closure("den", hours("09:00", "10:00"), true)));
        assertEquals(1, plan.bedding(0, 8 * HOUR), "0.25 + 0.5 + 0.5 of the evening before, at most 1");
        assertEquals(0.25, plan.bedding(0, 9 * HOUR));
        assertEquals(0.25, plan.bedding(0, 16 * HOUR - 1));
        assertEquals(0.75, plan.bedding(0, 16 * HOUR));
        assertEquals(1, plan.bedding(0, DAY + 21 * HOUR));
    }

    @Test
    @Tag("derived")
    void whatIsPutOutWhileCleaningGoesOnStaysAndWhatIsNeverCleanedLiesAllDay() {
        Closure cleaning = new Closure("den", hours("09:00", "10:00"), true);
        KeepersHours during = plan(0, List.of(straw("09:00", 0.3), straw("09:30", 0.2)), List.of(cleaning));
        assertEquals(0.3, during.bedding(0, 9 * HOUR));
        assertEquals(0.5, during.bedding(0, 10 * HOUR));
        assertEquals(0.5, during.bedding(0, DAY + 8 * HOUR));
        Closure onlyShut = new Closure("den", hours("09:00", "10:00"), false);
        KeepersHours never = plan(0.1, List.of(straw("16:00", 0.4)), List.of(onlyShut));
        assertEquals(0.5, never.bedding(0, 0));
        assertEquals(0.5, never.bedding(0, 9 * HOUR + MINUTE));
    }

    @Test
    @Tag("derived")
    void visitorsLookInDuringTheirHours() {
        KeepersHours plan = new KeepersHours(
                new Keeping(
                        List.of(),
                        List.of(),
                        List.of(),
                        List.of(),
                        List.of(
                                new Viewpoint("terrace", SOMEWHERE, hours("09:00", "17:00")),
                                new Viewpoint("night-walk", SOMEWHERE, hours("20:00", "01:00")))),
                List.of());
        assertTrue(plan.isPresent(0, 9 * HOUR) && !plan.isPresent(0, 17 * HOUR) && !plan.isPresent(0, DAY));
        assertTrue(plan.isPresent(1, DAY) && !plan.isPresent(1, DAY + HOUR) && !plan.isPresent(1, 12 * HOUR));
    }

    @Test
    void aPlaceThatIsNotThereIsRefusedByName() {
        IllegalArgumentException refused = assertThrows(
                IllegalArgumentException.class,
                () -> plan(0, List.of(new BeddingRound("loft", LocalTime.NOON, 1)), List.of()));
        assertEquals("keeping: resource = \"loft\", allowed [den]", refused.getMessage());
    }

    /** Random plans against the plainest reading of them, minute by minute over two days. */
    @Test
    @Tag("derived")
    void everyPlanIsReadAsMinuteByMinute() {
        for (int seed = 0; seed < 20; seed++) {
            Random random = new Random(seed);
            List<Closure> closures = new ArrayList<>();
            List<BeddingRound> rounds = new ArrayList<>();
            for (int i = random.nextInt(4); i > 0; i--) {
                closures.add(new Closure("den", new OpenHours(time(random), time(random)), random.nextBoolean()));
                rounds.add(new BeddingRound("den", time(random), 0.125 + random.nextInt(3) * 0.125));
            }
            KeepersHours plan = plan(0.125, rounds, closures);
            boolean[] isShut = shut(closures);
            double[] lies = bedding(rounds, closures);
            for (int now = 1440; now < 2 * 1440; now += 10) {
                String where = "seed " + seed + ", minute " + now;
                assertEquals(isShut[now % 1440], plan.isShut(0, now * MINUTE), where);
                assertEquals(lies[now % 1440], plan.bedding(0, now * MINUTE), 1e-12, where);
                int opens = now;
                while (opens < now + 2880 && isShut[opens % 1440]) {
                    opens++;
                }
                assertEquals(
                        opens == now + 2880 ? Long.MAX_VALUE : opens * MINUTE, plan.opensAtMs(0, now * MINUTE), where);
                int shuts = now + 1;
                while (shuts < now + 2880 && !(isShut[shuts % 1440] && !isShut[(shuts - 1) % 1440])) {
                    shuts++;
                }
                assertEquals(
                        shuts == now + 2880 ? Long.MAX_VALUE : shuts * MINUTE, plan.shutsAtMs(0, now * MINUTE), where);
            }
        }
    }

    private static LocalTime time(Random random) {
        return LocalTime.ofSecondOfDay(random.nextInt(48) * 1800L);
    }

    private static boolean[] shut(List<Closure> closures) {
        boolean[] isShut = new boolean[1440];
        for (Closure closure : closures) {
            int minute = closure.hours().from().toSecondOfDay() / 60;
            do {
                isShut[minute] = true;
                minute = (minute + 1) % 1440;
            } while (minute != closure.hours().to().toSecondOfDay() / 60);
        }
        return isShut;
    }

    /** Lives through the whole day before each minute. */
    private static double[] bedding(List<BeddingRound> rounds, List<Closure> closures) {
        double[] lies = new double[1440];
        for (int minute = 0; minute < 1440; minute++) {
            double put = 0;
            for (int now = minute + 1; now <= minute + 1440; now++) {
                for (Closure closure : closures) {
                    if (closure.cleaned() && closure.hours().from().toSecondOfDay() / 60 == now % 1440) {
                        put = 0;
                    }
                }
                for (BeddingRound round : rounds) {
                    if (round.at().toSecondOfDay() / 60 == now % 1440) {
                        put += round.amount();
                    }
                }
            }
            lies[minute] = Math.min(1, 0.125 + put);
        }
        return lies;
    }
}
