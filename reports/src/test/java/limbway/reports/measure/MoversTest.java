package limbway.reports.measure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

import limbway.model.parameter.Parameter;
import limbway.model.parameter.Standing;
import limbway.sim.chance.Chance;
import limbway.sim.chance.Purpose;
import limbway.sim.chance.Stream;
import limbway.sim.experiment.screening.Effect;
import limbway.sim.experiment.screening.Factor;
import limbway.sim.experiment.screening.Screened;
import limbway.sim.experiment.screening.Screening;
import limbway.sim.experiment.statistics.Interval;

import static org.junit.jupiter.api.Assertions.assertEquals;

class MoversTest {

    private static final int WALKS = 400;

    private int draws;

    @Test
    void largeAndSureMovesLargeAndUnsureMayAndSmallDoesNot() {
        Effect sure = effect("sure", 0.10, 0.04);
        Effect unsure = effect("unsure", 0.09, 0.05);
        Effect small = effect("small", 0.019, 0.001);
        Movers movers = movers(0.01, List.of(sure, unsure, small));
        assertEquals(List.of(sure), movers.sure());
        assertEquals(List.of(unsure), movers.unsure());
        assertEquals(List.of(small), movers.others());
        assertEquals(0.02, movers.leastMove());
    }

    @Test
    void whatChanceMakesIsNoMove() {
        Movers movers = movers(0.03, List.of(effect("a", 0.031, 0.001), effect("b", 0.033, 0.001)));
        assertEquals(0.03, movers.leastMove());
        assertEquals("b", movers.sure().get(0).factor().parameter().name());
        assertEquals(1, movers.sure().size());
    }

    @Test
    void oneWalkTellsNothingForSure() {
        Effect lone = new Effect(factor("lone"), 0.5, 0.5, OptionalDouble.empty(), OptionalDouble.empty(), 1);
        assertEquals(List.of(lone), movers(0, List.of(lone)).unsure());
    }

    @Test
    void theSignIsCountedOverAllPointsTried() {
        Movers movers = new Movers(
                ScreenedAnswer.OFF_GROUND,
                Interval.of(List.of(0.1, 0.2)),
                0,
                List.of(),
                List.of(-0.2, 0.0, 0.1, 0.3, 0.4));
        // 0.1, 0.3 and 0.4 have the sign of 0.15; nothing has no sign
        assertEquals(0.6, movers.sameSign());
    }

    /**
     * A model in which a number does no more than to pick other random numbers. Each replication is a sum of twelve even
     * numbers less 6, which is nearly normal with variance 1; the answer is the mean of five. One base case knows its
     * spread from five values only, so the formula is asked for the mean over 400 base cases.
     */
    @Test
    @Tag("derived")
    void chanceAloneMovesAnAnswerByWhatTheFormulaSays() {
        Screened shuffled = Screening.run(
                List.of(factor("idle")),
                WALKS,
                1,
                1,
                () -> (values, stop) -> {
                    double sum = 0;
                    for (double value : fiveValues(draws++)) {
                        sum += value;
                    }
                    return Optional.of(new double[] {sum / 5});
                },
                (done, total) -> {});
        double formula = 0;
        for (int i = 0; i < WALKS; i++) {
            formula += Movers.of(ScreenedAnswer.OFF_GROUND, shuffled, fiveValues(draws++))
                            .chance()
                    / WALKS;
        }
        double found = shuffled.effects(0).get(0).meanAbsolute();
        // of a half-normal the standard deviation is 0.76 of the mean: four standard errors over 400 walks are 0.15;
        // the
        // spread of five values is 6 % too low on average; leaving out the step, a factor of 1.5, would fail
        assertEquals(1, formula / found, 0.2);
    }

    private List<Double> fiveValues(int number) {
        Stream stream = new Chance(1, number + 1).stream("idle", Purpose.PLACE);
        List<Double> values = new ArrayList<>();
        for (int i = 0; i < 5; i++) {
            double sum = -6;
            for (int j = 0; j < 12; j++) {
                sum += stream.uniform(12L * i + j);
            }
            values.add(sum);
        }
        return values;
    }

    private static Movers movers(double chance, List<Effect> effects) {
        return new Movers(ScreenedAnswer.OFF_GROUND, Optional.empty(), chance, effects, List.of());
    }

    private static Effect effect(String name, double meanAbsolute, double error) {
        return new Effect(
                factor(name), meanAbsolute, meanAbsolute, OptionalDouble.of(error), OptionalDouble.of(error), 10);
    }

    private static Factor factor(String name) {
        return new Factor(new Parameter(name, name, "1", 0, 0, 1, Standing.ASSUMPTION, "no source"));
    }
}
