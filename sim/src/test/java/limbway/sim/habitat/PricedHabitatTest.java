package limbway.sim.habitat;

import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.junit.jupiter.api.Test;

import limbway.model.body.Body;
import limbway.model.energy.EnergySettings;
import limbway.model.route.ChoiceSharpness;
import limbway.model.study.Animal;
import limbway.sim.Yard;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertSame;

class PricedHabitatTest {

    private static final EnergySettings DEARER = EnergySettings.standard()
            .with(Map.of("energy.clamber-multiplier", 3.3, "energy.bridge-multiplier", 1.7, "sway.cycles", 5.0));
    private static final ChoiceSharpness SHARPER = new ChoiceSharpness(40);

    private final Habitat yard = Yard.furnished().build();

    @Test
    void aPricedHabitatIsOneThatWasCompiledAtThosePrices() {
        Habitat compiled = new Habitat(yard.layout(), yard.animals(), Optional.empty(), DEARER, SHARPER);
        assertSameWays(compiled, yard.priced(DEARER, SHARPER));
        // and once more from one that was priced already
        assertSameWays(compiled, yard.priced(EnergySettings.standard(), SHARPER).priced(DEARER, SHARPER));
        assertNotEquals(sum(yard), sum(compiled));
    }

    @Test
    void heavierAnimalsInACompiledHabitatFareAsIfItHadBeenCompiledForThem() {
        List<Animal> heavier = yard.animals().stream()
                .map(a -> new Animal(a.name(), a.body().timesMass(1.15), a.rank(), a.follows(), a.group()))
                .toList();
        Habitat compiled = new Habitat(yard.layout(), heavier, Optional.empty(), DEARER, SHARPER);
        assertSameWays(compiled, yard.inhabited(heavier, Optional.empty(), DEARER, SHARPER));
    }

    @Test
    void whatPlacesAreLikeIsFoundOnce() {
        assertSame(yard.character(), yard.priced(DEARER, SHARPER).character());
    }

    private static long sum(Habitat habitat) {
        long sum = 0;
        for (int hold = 0; hold < habitat.graph().holdCount(); hold++) {
            sum += habitat.routes(habitat.bodies().get(0)).offGroundMilliJ(hold, 0);
        }
        return sum;
    }

    private static void assertSameWays(Habitat expected, Habitat found) {
        assertEquals(expected.graph().holdCount(), found.graph().holdCount());
        assertEquals(expected.bodies(), found.bodies());
        for (Body body : expected.bodies()) {
            for (int resource = 0; resource < expected.graph().resources().size(); resource++) {
                for (int hold = 0; hold < expected.graph().holdCount(); hold++) {
                    assertEquals(
                            expected.routes(body).offGroundMilliJ(hold, resource),
                            found.routes(body).offGroundMilliJ(hold, resource));
                    assertEquals(
                            expected.routes(body).cheapestMilliJ(hold, resource),
                            found.routes(body).cheapestMilliJ(hold, resource));
                }
            }
            Passages one = expected.passages(body).get(0);
            Passages other = found.passages(body).get(0);
            assertEquals(one.count(), other.count());
            for (int passage = 0; passage < one.count(); passage++) {
                assertEquals(one.isOpen(passage), other.isOpen(passage));
                if (one.isOpen(passage)) {
                    assertEquals(one.ways(passage), other.ways(passage));
                }
            }
        }
        for (int start = 0;
                start < expected.passages(expected.bodies().get(0)).get(0).startCount();
                start++) {
            assertEquals(expected.character().heightM(start), found.character().heightM(start), 0);
            assertEquals(expected.character().lookOut(start), found.character().lookOut(start), 0);
            assertEquals(expected.character().edgeM(start), found.character().edgeM(start), 0);
        }
    }
}
