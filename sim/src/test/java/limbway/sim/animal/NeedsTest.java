package limbway.sim.animal;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

import limbway.model.energy.DailyExpenditure;
import limbway.sim.Yard;
import limbway.sim.habitat.SunlitWays;
import limbway.sim.habitat.Warmth;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

class NeedsTest {

    private static final long HOUR_MS = 3_600_000;

    private final DaySettings settings = DaySettings.standard().withoutWorth();
    private final Physiology body = Physiology.of(Yard.body("adult female"), 1.6, settings);

    private Needs fresh() {
        return new Needs(body, settings.needs(), 0);
    }

    /** 35 kg: resting 1600 (35/54.4)^0.304 kcal / 1.6 in 24 h; water 40 ml/kg a day; tiring 1 - exp(-60/240). */
    @Test
    @Tag("derived")
    void anHourOfActivityCostsWhatTheFormulasSay() {
        Needs needs = fresh();
        needs.beActive();
        needs.advance(HOUR_MS);
        assertEquals(DailyExpenditure.restingW(35, 1.6) * 3600, needs.missingJ(), 1e-6);
        assertEquals(35 * 40 / 24.0, needs.missingMl(), 1e-9);
        assertEquals(1 - Math.exp(-0.25), needs.fatigue(), 1e-12);
    }

    @Test
    void cuttingTimeInPiecesChangesNothingButRounding() {
        Needs whole = fresh();
        Needs pieces = fresh();
        for (Needs needs : new Needs[] {whole, pieces}) {
            needs.beActive();
        }
        whole.advance(7 * HOUR_MS);
        for (int minute = 1; minute <= 7 * 60; minute++) {
            pieces.advance(minute * 60_000L);
        }
        // 420 additions of doubles round by at most 420 half-steps of 2^-53
        assertEquals(whole.missingJ(), pieces.missingJ(), 1e-13 * whole.missingJ());
        assertEquals(whole.fatigue(), pieces.fatigue(), 1e-13);
    }

    /** Eight hours awake, sixteen asleep: what is spent while awake adds up to the day's share, 0.9 (1 - 1/1.6) of the need. */
    @Test
    @Tag("derived")
    void aDayAwakeAndAsleepCostsRestAndTheShareOfTheRest() {
        Ape ape = ape();
        ape.advance(8 * HOUR_MS);
        ape.wake(8 * HOUR_MS, 8 * HOUR_MS);
        ape.advance(11 * HOUR_MS);
        assertEquals(body.otherJPerDay() * 3 / 8, ape.account().otherJ(11 * HOUR_MS), 1e-6);
        ape.advance(16 * HOUR_MS);
        ape.sleep(16 * HOUR_MS);
        ape.advance(24 * HOUR_MS);
        double need = DailyExpenditure.jPerDay(35);
        // a few additions of numbers of a few MJ
        assertEquals(need / 1.6 + 0.9 * (need - need / 1.6), ape.needs().missingJ(), 1e-6);
        assertEquals(0.9 * (need - need / 1.6), ape.account().otherJ(24 * HOUR_MS), 1e-6);
    }

    /** Awake, hunger comes faster: 30 minutes of both powers before it calls. */
    @Test
    void aRestEndsAtTheVeryMomentWhenHungerCalls() {
        Ape ape = ape();
        ape.wake(0, 12 * HOUR_MS);
        double perMs = body.restingJPerMs() + body.otherJPerDay() / (12 * HOUR_MS);
        ape.needs().spend(settings.rest().callingUrgency() * body.hungriestJ() - perMs * HOUR_MS / 2);
        long lengthMs = new Resting(settings).lengthMs(ape, 1);
        // to a whole millisecond, rounded up
        assertTrue(lengthMs - HOUR_MS / 2 >= 0 && lengthMs - HOUR_MS / 2 <= 1, () -> lengthMs + " ms");
    }

    @Test
    void aRestEndsAtTheVeryMomentWhenTheAnimalIsRested() {
        Ape ape = ape();
        ape.needs().beActive();
        ape.needs().advance(2 * HOUR_MS);
        ape.needs().eat(ape.needs().missingJ());
        ape.needs().drink(ape.needs().missingMl());
        long lengthMs = new Resting(settings).lengthMs(ape, 1);
        ape.needs().rest(1);
        ape.needs().advance(2 * HOUR_MS + lengthMs - 1);
        assertTrue(ape.needs().fatigue() > settings.rest().restedFatigue());
        ape.needs().advance(2 * HOUR_MS + lengthMs);
        assertTrue(ape.needs().fatigue() <= settings.rest().restedFatigue());
    }

    @Test
    void aRestEndsAtTheVeryMomentWhenThirstCalls() {
        Ape ape = ape();
        double calling = settings.rest().callingUrgency() * body.thirstiestMl();
        // 30 minutes before thirst calls
        ape.needs().drink(ape.needs().missingMl() - calling + body.waterMlPerMs() * HOUR_MS / 2);
        long lengthMs = new Resting(settings).lengthMs(ape, 1);
        // to a whole millisecond, rounded up
        assertTrue(lengthMs - HOUR_MS / 2 >= 0 && lengthMs - HOUR_MS / 2 <= 1, () -> lengthMs + " ms");
    }

    @Test
    void reliefIsWorthTheFallOfTheSquare() {
        // half of (0.8^2 - 0.3^2), times the weight
        assertEquals(0.6 * 0.5 * (0.64 - 0.09), Appraisal.gain(0.6, 0.8, 0.5), 1e-15);
    }

    private Ape ape() {
        var habitat = Yard.furnished().build();
        var animal = habitat.animals().get(1);
        int resources = habitat.graph().resources().size();
        var outlook =
                new Outlook(habitat.passages(animal.body()).get(0), SunlitWays.NOT_MINDED, resources, body, settings);
        return new Ape(
                1,
                animal,
                body,
                outlook,
                fresh(),
                new HeatCurve(Warmth.UNKNOWN, HeatNeedSettings.GROUP.standard()),
                new Worth(habitat.character(), habitat.keepersHours(), settings, 0, 1, new boolean[resources]),
                new Company(habitat.animals()),
                new limbway.sim.chance.Chance(1, 1),
                settings.memory().foraging(new double[resources]));
    }
}
