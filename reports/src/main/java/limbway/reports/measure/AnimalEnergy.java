package limbway.reports.measure;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

import limbway.model.body.LocomotorMode;
import limbway.sim.experiment.Outcome;
import limbway.sim.experiment.statistics.Interval;
import limbway.sim.journal.Journal;
import limbway.sim.journal.Reserve;
import limbway.sim.journal.Trip;

/**
 * What one animal spends and eats a day.
 *
 * @param animal name of the animal
 * @param body name of its body
 * @param movedJPerDay energy of moves by locomotor mode, mean over replications [J/day]
 * @param movedTotalJPerDay energy of all moves [J/day]
 * @param restingJPerDay energy spent by the second whatever the animal does [J/day]
 * @param otherJPerDay energy spent while awake on all that is not moving about [J/day]
 * @param eatenJPerDay energy eaten [J/day]
 * @param travelMPerDay path travelled [m/day]
 */
public record AnimalEnergy(
        String animal,
        String body,
        Map<LocomotorMode, Double> movedJPerDay,
        Interval movedTotalJPerDay,
        Interval restingJPerDay,
        Interval otherJPerDay,
        Interval eatenJPerDay,
        Interval travelMPerDay) {

    /** Share of what it spends that an animal must eat if it is not to be called hungry: assumption. */
    private static final double LEAST_EATEN = 0.8;

    /** Keeps a copy of the map. */
    public AnimalEnergy {
        Map<LocomotorMode, Double> copy = new EnumMap<>(LocomotorMode.class);
        copy.putAll(movedJPerDay);
        movedJPerDay = Collections.unmodifiableMap(copy);
    }

    /**
     * Computes the accounts of all animals.
     *
     * @param outcome a run with at least one finished replication
     * @return one for each animal, in the order of the study
     */
    public static List<AnimalEnergy> of(Outcome outcome) {
        List<AnimalEnergy> list = new ArrayList<>();
        for (int animal = 0; animal < outcome.habitat().animals().size(); animal++) {
            list.add(of(outcome, animal));
        }
        return list;
    }

    private static AnimalEnergy of(Outcome outcome, int animal) {
        int days = outcome.settings().days();
        long[] milliJByMode = new long[LocomotorMode.values().length];
        List<Double> moved = new ArrayList<>();
        List<Double> resting = new ArrayList<>();
        List<Double> other = new ArrayList<>();
        List<Double> eaten = new ArrayList<>();
        List<Double> travel = new ArrayList<>();
        for (Journal journal : outcome.journals()) {
            long milliJ = 0;
            double metres = 0;
            for (Trip trip : journal.trips()) {
                if (trip.animal() == animal) {
                    milliJ += trip.way().milliJ();
                    metres += trip.way().lengthM();
                    for (LocomotorMode mode : LocomotorMode.values()) {
                        milliJByMode[mode.ordinal()] += trip.way().energy().part(mode);
                    }
                }
            }
            Reserve reserve = journal.reserves().stream()
                    .filter(account -> account.animal() == animal)
                    .findFirst()
                    .orElseThrow();
            moved.add(milliJ / 1000.0 / days);
            travel.add(metres / days);
            resting.add(reserve.restingJ() / days);
            other.add(reserve.otherJ() / days);
            eaten.add(reserve.eatenJ() / days);
        }
        Map<LocomotorMode, Double> parts = new EnumMap<>(LocomotorMode.class);
        double runDays = (double) outcome.journals().size() * days;
        for (LocomotorMode mode : LocomotorMode.values()) {
            parts.put(mode, milliJByMode[mode.ordinal()] / 1000.0 / runDays);
        }
        return new AnimalEnergy(
                outcome.habitat().animals().get(animal).name(),
                outcome.habitat().animals().get(animal).body().name(),
                parts,
                Interval.of(moved).orElseThrow(),
                Interval.of(resting).orElseThrow(),
                Interval.of(other).orElseThrow(),
                Interval.of(eaten).orElseThrow(),
                Interval.of(travel).orElseThrow());
    }

    /**
     * What it eats over what it spends.
     *
     * @return share, 0 or more; below 1 it lives on its reserves
     */
    public double eatenOverSpent() {
        return eatenJPerDay.mean() / (movedTotalJPerDay.mean() + restingJPerDay.mean() + otherJPerDay.mean());
    }

    /**
     * Whether it eats clearly less than it spends.
     *
     * @return true below four fifths (an assumption)
     */
    public boolean goesHungry() {
        return eatenOverSpent() < LEAST_EATEN;
    }
}
