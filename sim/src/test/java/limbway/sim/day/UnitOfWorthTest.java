package limbway.sim.day;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.opentest4j.AssertionFailedError;

import limbway.sim.RichDays;
import limbway.sim.Runs;
import limbway.sim.Yard;
import limbway.sim.animal.ChoiceSettings;
import limbway.sim.animal.DaySettings;
import limbway.sim.animal.HeatNeedSettings;
import limbway.sim.animal.NeedSettings;
import limbway.sim.animal.WorthSettings;
import limbway.sim.experiment.RunSettings;
import limbway.sim.habitat.Habitat;
import limbway.sim.journal.Journal;

import static org.junit.jupiter.api.Assertions.assertThrows;

/**
 * The unit in which places are worth something is free: all weights, tolls, terms and the noise times one number change
 * no choice.
 *
 * <p>That is the one scale that the model leaves free. Energies have none, because what a body needs follows from its mass,
 * which decides its reach too. The factors are powers of two, so that every product is exact and lives must agree to the last
 * bit. The least relief, which is a share and marks the worth of a change of place in a fixed unit, is 0 here.
 */
class UnitOfWorthTest {

    private final Habitat habitat = RichDays.of(Yard.furnished().build());
    private final Journal usual = lived(scaled(1, 1));

    private Journal lived(DaySettings day) {
        return Runs.all(habitat, new RunSettings(8, 1, 6, Runs.DATE, 1), day)
                .journals()
                .get(0);
    }

    /** Everything in the unit of worth times one factor, the noise times another. */
    private static DaySettings scaled(double by, double noiseBy) {
        DaySettings day = DaySettings.standard();
        NeedSettings needs = day.needs();
        ChoiceSettings choice = day.choice();
        HeatNeedSettings heat = day.heat();
        WorthSettings worth = day.worth();
        return new DaySettings(
                new NeedSettings(
                        needs.hungerScale(),
                        needs.thirstScale(),
                        needs.waterMlPerKg(),
                        by * needs.hungerWeight(),
                        by * needs.thirstWeight(),
                        by * needs.fatigueWeight(),
                        needs.tiringMin(),
                        needs.recoveryMin(),
                        needs.otherActivity()),
                new ChoiceSettings(
                        choice.patienceMin(),
                        by * choice.effortWeight(),
                        noiseBy * choice.noise(),
                        by * choice.persistence(),
                        0),
                day.intake(),
                day.memory(),
                day.rest(),
                new HeatNeedSettings(heat.troublesFromC(), heat.greatestAtC(), heat.responseMin(), by * heat.weight()),
                day.night(),
                day.company(),
                new WorthSettings(
                        by * worth.bedding(),
                        by * worth.cover(),
                        by * worth.height(),
                        by * worth.company(),
                        by * worth.dominant(),
                        by * worth.strangers(),
                        by * worth.following(),
                        by * worth.seclusion(),
                        by * worth.perimeter(),
                        by * worth.lookOut(),
                        by * worth.staff(),
                        by * worth.familiarity(),
                        worth.strangeness(),
                        by * worth.groundWariness(),
                        by * worth.restlessness()),
                day.scales());
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.25, 2, 1024})
    void theUnitOfWorthIsFree(double by) {
        Runs.assertAlike(usual, lived(scaled(by, by)));
    }

    /** Planted mistake: the noise keeps its unit while everything else is doubled. */
    @Test
    void aNoiseThatIsNotScaledIsFound() {
        Journal wrong = lived(scaled(2, 1));
        assertThrows(AssertionFailedError.class, () -> Runs.assertAlike(usual, wrong));
    }
}
