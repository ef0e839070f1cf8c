package limbway.reports.measure.placement;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

import limbway.model.study.Animal;
import limbway.reports.measure.AnimalEnergy;
import limbway.reports.measure.criterion.Criteria;
import limbway.sim.experiment.Outcome;
import limbway.sim.experiment.trial.Criterion;

/**
 * What layouts are judged by when places are put: of the catalogue travel off the ground first, then waiting at food and energy of
 * moves of the mean animal; then the same energy of each animal, which the catalogue does not have.
 */
public final class PlacingCriteria {

    /** Names in the catalogue, in the order of the first criteria. */
    public static final List<String> NAMES = List.of(Criteria.OFF_GROUND, "waiting_at_food_min", "travel_kj");

    /** Place of the share of travel off the ground among the criteria. */
    public static final int OFF_GROUND = 0;

    /** Place of the minutes waited at food among the criteria. */
    public static final int WAITING = 1;

    /** Place of the energy of moves of the mean animal among the criteria. */
    public static final int ENERGY = 2;

    /** Place of the energy of the first animal; the others follow in the order of the study. */
    public static final int FIRST_ANIMAL = 3;

    private static final double J_PER_KJ = 1000;

    private PlacingCriteria() {}

    private record EnergyOfMoves(int animal, String name) implements Criterion {
        @Override
        public boolean isShare() {
            return false;
        }

        @Override
        public OptionalDouble of(Outcome one) {
            return OptionalDouble.of(
                    AnimalEnergy.of(one).get(animal).movedTotalJPerDay().mean() / J_PER_KJ);
        }
    }

    /**
     * The criteria for a group.
     *
     * @param animals the group
     * @return off-ground share by distance, waiting at food [min/day] and energy of moves [kJ/day] of the mean animal, energy of
     *     moves of each animal [kJ/day]
     */
    public static List<Criterion> of(List<Animal> animals) {
        Criteria catalogue = new Criteria();
        List<Criterion> all = new ArrayList<>();
        for (String name : NAMES) {
            all.add(catalogue.find(name).orElseThrow());
        }
        for (int a = 0; a < animals.size(); a++) {
            all.add(new EnergyOfMoves(a, "travel_kj " + animals.get(a).name()));
        }
        return List.copyOf(all);
    }
}
