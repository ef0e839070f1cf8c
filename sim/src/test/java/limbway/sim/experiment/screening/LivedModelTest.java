package limbway.sim.experiment.screening;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

import org.junit.jupiter.api.Test;

import limbway.model.study.Study;
import limbway.sim.Runs;
import limbway.sim.Yard;
import limbway.sim.experiment.Assumptions;
import limbway.sim.experiment.Outcome;
import limbway.sim.experiment.RunSettings;
import limbway.sim.habitat.Habitat;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

class LivedModelTest {

    private final Habitat yard = Yard.furnished().build();
    private final Study study = new Study(
            "yard", Optional.empty(), yard.animals(), yard.layout(), List.of(), new TreeMap<String, Double>());
    private final RunSettings settings = new RunSettings(3, 2, 1, Runs.DATE, 1);
    private final Assumptions base = Assumptions.standard();

    /** Heat is not felt without weather, so its numbers change nothing; hunger's do. */
    @Test
    void whatCannotMatterHasAnEffectOfExactlyNothing() {
        List<Factor> factors = Factor.doubtful(base).stream()
                .filter(f -> f.parameter().name().startsWith("need.heat-")
                        || f.parameter().name().equals("need.hunger-weight"))
                .toList();
        assertEquals(5, factors.size());
        for (Effect effect : screen(factors, 1).effects(0)) {
            boolean isHeat = effect.factor().parameter().name().startsWith("need.heat-");
            assertEquals(isHeat, effect.meanAbsolute() == 0, effect.toString());
        }
    }

    @Test
    void twoThreadsGiveWhatOneGives() {
        List<Factor> factors = Factor.doubtful(base).stream()
                .filter(f -> f.parameter().name().startsWith("choice."))
                .toList();
        assertTrue(factors.size() > 3);
        assertEquals(screen(factors, 1).effects(0), screen(factors, 2).effects(0));
    }

    /** The layout that was made ready for another step gives the same as one made ready for this one. */
    @Test
    void whatIsKeptFromStepToStepChangesNothing() {
        LivedModel kept = model();
        for (Map<String, Double> values : List.of(
                Map.of("need.water", 30.0),
                Map.of("need.water", 60.0),
                Map.of("choice.sharpness", 5.0),
                Map.of("energy.bridge-multiplier", 3.0))) {
            double found = kept.answers(values, () -> false).orElseThrow()[0];
            assertEquals(model().answers(values, () -> false).orElseThrow()[0], found, values.toString());
        }
    }

    @Test
    void aRunThatIsGivenUpHasNoAnswer() {
        assertTrue(model().answers(Map.of(), () -> true).isEmpty());
    }

    @Test
    void valuesThatAreRefusedTogetherAreRefused() {
        assertThrows(IllegalArgumentException.class, () -> model().used(
                        Map.of("need.heat-from", 45.0, "need.heat-greatest", 40.0)));
        assertEquals(Map.of("sway.cycles", 6.0), model().used(Map.of("sway.cycles", 5.67)));
    }

    private Screened screen(List<Factor> factors, int threads) {
        return Screening.run(factors, 2, 1, threads, this::model, (done, total) -> {});
    }

    private LivedModel model() {
        return new LivedModel(study, List.of(study.base()), base, settings, LivedModelTest::meanTripM);
    }

    private static double[] meanTripM(List<Outcome> outcomes) {
        double metres = outcomes.get(0).journals().stream()
                .flatMap(journal -> journal.trips().stream())
                .mapToDouble(trip -> trip.way().lengthM())
                .sum();
        return new double[] {metres};
    }
}
