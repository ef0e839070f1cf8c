package limbway.sim.animal;

import java.util.Map;

import org.junit.jupiter.api.Test;

import limbway.model.enclosure.ResourceKind;
import limbway.sim.Yard;
import limbway.sim.chance.Chance;
import limbway.sim.habitat.Habitat;
import limbway.sim.habitat.SunlitWays;
import limbway.sim.habitat.Warmth;
import limbway.sim.journal.Motive;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

/** Choices without noise, which can be told beforehand. */
class AppraisalTest {

    private static final int NEST = 0;
    private static final int NEAR = 1;
    private static final int FAR = 2;
    private static final int HATCH = 3;
    private static final long NOON_MS = 12 * 3_600_000;
    private static final long EVENING_MS = 18 * 3_600_000;

    private final Habitat habitat = new Yard()
            .at("nest", ResourceKind.NEST, 5, 10, 0, 1)
            .at("near", ResourceKind.WATER, 10, 10, 0, 1)
            .at("far", ResourceKind.WATER, 25, 10, 0, 1)
            .at("hatch", ResourceKind.FOOD, 15, 10, 0, 1)
            .animal("A", "adult female", 1)
            .build();
    private final DaySettings settings = DaySettings.standard().withoutWorth().with(Map.of("choice.noise", 0.0));
    private final Stalls stalls = new Stalls(habitat.graph().resources());
    private final Nights nights =
            new Nights(habitat.graph().resources(), stalls, habitat.keepersHours(), settings.choice());
    private final Ape ape = inItsNest();

    private static Worth worth(Habitat where, DaySettings settings) {
        int starts = where.passages(where.animals().get(0).body()).get(0).startCount();
        return new Worth(
                where.character(),
                where.keepersHours(),
                settings,
                starts,
                1,
                new boolean[where.graph().resources().size()]);
    }

    private Ape inItsNest() {
        var animal = habitat.animals().get(0);
        var passages = habitat.passages(animal.body()).get(0);
        Physiology body = Physiology.of(animal.body(), 1.6, settings);
        Needs needs = new Needs(body, settings.needs(), 0);
        Outlook outlook = new Outlook(passages, SunlitWays.NOT_MINDED, 4, body, settings);
        Ape built = new Ape(
                0,
                animal,
                body,
                outlook,
                needs,
                new HeatCurve(Warmth.UNKNOWN, HeatNeedSettings.GROUP.standard()),
                worth(habitat, settings),
                new Company(habitat.animals()),
                new Chance(1, 1),
                settings.memory().foraging(new double[4]));
        built.arrive(NEST, passages.startAt(habitat.graph().useHolds(NEST)[0]));
        stalls.own(built, NEST);
        return built;
    }

    private int choice(long nowMs) {
        return new Appraisal(habitat.graph().resources(), habitat.keepersHours(), settings)
                .choose(ape, stalls, nights, nowMs, EVENING_MS, 1);
    }

    @Test
    void whoNeedsNothingStaysInItsRestingPlace() {
        assertEquals(NEST, choice(NOON_MS));
    }

    @Test
    void whoIsThirstyGoesToTheNearerWaterAndFartherOnlyWhenItKeepsAwayFromThat() {
        ape.needs().drink(-ape.body().thirstiestMl());
        assertEquals(NEAR, choice(NOON_MS));
        ape.bar(NEAR, NOON_MS + 1);
        assertEquals(FAR, choice(NOON_MS));
        assertEquals(NEAR, choice(NOON_MS + 1));
    }

    /** Patience 120 min: a wait of 1 min leaves 99 % of the worth of the near water, one of 600 min 0.7 %. */
    @Test
    void whoWaitsStaysInTheQueueWhileTheWaitIsWorthIt() {
        ape.needs().drink(-ape.body().thirstiestMl());
        ape.arrive(NEAR, ape.outlook().passages().startAt(habitat.graph().useHolds(NEAR)[0]));
        stalls.queue(ape, NEAR);
        ape.holdings().expectWait(60_000, 120 * 60_000);
        assertEquals(NEAR, choice(NOON_MS));
        ape.holdings().expectWait(600 * 60_000, 120 * 60_000);
        assertEquals(FAR, choice(NOON_MS));
        stalls.quit(ape);
        assertEquals(NEAR, choice(NOON_MS), "the wait counts only while it waits");
    }

    @Test
    void foodIsGoneToOnlyWhereTheAnimalBelievesItLies() {
        ape.needs().spend(ape.body().hungriestJ());
        assertEquals(NEST, choice(NOON_MS));
        ape.foraging().memory().hear(HATCH, ape.body().hungriestJ(), NOON_MS);
        assertEquals(HATCH, choice(NOON_MS));
    }

    @Test
    void theMorePressingNeedWins() {
        ape.needs().spend(0.5 * ape.body().hungriestJ());
        ape.needs().drink(-ape.body().thirstiestMl());
        ape.foraging().memory().hear(HATCH, ape.body().hungriestJ(), NOON_MS);
        assertEquals(NEAR, choice(NOON_MS));
    }

    /** The far water is 20 m from the nest: at 0.7 m/s 29 s there and 29 s back. */
    @Test
    void aPlaceTooFarToBeBackInTimeIsNoChoice() {
        ape.needs().drink(-ape.body().thirstiestMl());
        ape.bar(NEAR, EVENING_MS);
        assertEquals(FAR, choice(EVENING_MS - 60_000));
        assertEquals(NEST, choice(EVENING_MS - 55_000));
    }

    /** Two shelters, 5 m and 15 m away: the near one in the sun, the far one in shade, and so hot in the nest as well. */
    private final class HotDay {

        private static final int SUNNY = 1;
        private static final int SHADY = 2;

        private final Habitat yard = new Yard()
                .at("nest", ResourceKind.NEST, 5, 10, 0, 1)
                .at("sunny", ResourceKind.SHADE, 10, 10, 0, 1)
                .at("shady", ResourceKind.SHADE, 20, 10, 0, 1)
                .animal("A", "adult female", 1)
                .build();
        private final Ape hot;

        HotDay(float sunC, float shadeC) {
            this(sunC, shadeC, NOON_MS);
        }

        /** It has been in its nest for some time; before that it was cool. */
        HotDay(float sunC, float shadeC, long warmedMs) {
            var animal = yard.animals().get(0);
            var passages = yard.passages(animal.body()).get(0);
            float[] operativeC = new float[passages.startCount()];
            for (int start = 0; start < operativeC.length; start++) {
                boolean shady = passages.hold(start) == yard.graph().useHolds(SHADY)[0];
                operativeC[start] = shady ? shadeC : sunC;
            }
            Warmth warmth = new Warmth(operativeC.length, 86_400_000, operativeC);
            Physiology body = Physiology.of(animal.body(), 1.6, settings);
            hot = new Ape(
                    0,
                    animal,
                    body,
                    new Outlook(passages, SunlitWays.NOT_MINDED, 3, body, settings),
                    new Needs(body, settings.needs(), 0),
                    new HeatCurve(warmth, settings.heat()),
                    worth(yard, settings),
                    new Company(yard.animals()),
                    new Chance(1, 1),
                    settings.memory().foraging(new double[3]));
            hot.arrive(NEST, passages.startAt(yard.graph().useHolds(NEST)[0]));
            hot.advance(warmedMs);
        }

        int choice() {
            Stalls free = new Stalls(yard.graph().resources());
            free.own(hot, NEST);
            return appraisal()
                    .choose(
                            hot,
                            free,
                            new Nights(yard.graph().resources(), free, yard.keepersHours(), settings.choice()),
                            NOON_MS,
                            EVENING_MS,
                            1);
        }

        Appraisal appraisal() {
            return new Appraisal(yard.graph().resources(), yard.keepersHours(), settings);
        }
    }

    @Test
    void whoIsHotGoesToTheShadyPlaceThoughItIsFartherThanTheSunnyOne() {
        HotDay day = new HotDay(55, 31);
        assertEquals(HotDay.SHADY, day.choice());
        assertEquals(Motive.HEAT, day.appraisal().motive(day.hot, HotDay.SHADY, NOON_MS));
        assertNotEquals(Motive.HEAT, day.appraisal().motive(day.hot, HotDay.SUNNY, NOON_MS));
    }

    @Test
    void whoGetsHotWhereverItRestsKeepsItsStall() {
        assertEquals(NEST, new HotDay(33, 33, 0).choice());
    }

    /** Nobody is hot yet, but every place will be: the shady one least. */
    @Test
    void whoWillGetHotWhereItIsGoesToTheLeastOfEvils() {
        HotDay day = new HotDay(60, 33, 0);
        assertEquals(0, day.hot.heat());
        assertEquals(HotDay.SHADY, day.choice());
        assertEquals(Motive.HEAT, day.appraisal().motive(day.hot, HotDay.SHADY, NOON_MS));
    }

    @Test
    void onACoolDayShadeIsWorthNothing() {
        HotDay day = new HotDay(29, 20);
        assertEquals(NEST, day.choice());
        assertNotEquals(Motive.HEAT, day.appraisal().motive(day.hot, HotDay.SHADY, NOON_MS));
    }

    /** At the water, tired, with a least relief of a trip that no rest reaches. */
    @Test
    void whereHeatCountsForNothingTooLittleRestIsNoReasonToGo() {
        ape.arrive(NEAR, ape.outlook().passages().startAt(habitat.graph().useHolds(NEAR)[0]));
        ape.needs().beActive();
        long tiredMs = Math.round(settings.needs().tiringMin() * 60_000);
        ape.needs().advance(tiredMs);
        ape.needs().drink(ape.needs().missingMl());
        DaySettings without = settings.with(Map.of(
                "choice.effort-weight",
                0.0,
                "choice.persistence",
                0.0,
                "choice.least-relief",
                0.9,
                "need.heat-weight",
                0.0));
        Appraisal appraisal = new Appraisal(habitat.graph().resources(), habitat.keepersHours(), without);
        assertEquals(Appraisal.HERE, appraisal.choose(ape, stalls, nights, tiredMs, tiredMs + EVENING_MS, 1));
    }
}
