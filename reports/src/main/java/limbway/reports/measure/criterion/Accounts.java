package limbway.reports.measure.criterion;

import java.util.OptionalDouble;
import java.util.function.ToLongFunction;

import limbway.model.enclosure.ResourceKind;
import limbway.model.graph.RouteGraph;
import limbway.sim.experiment.Outcome;
import limbway.sim.journal.Reserve;
import limbway.sim.journal.Stay;
import limbway.sim.journal.Trip;

/** Amounts of one replication by animal and day. */
final class Accounts {

    private static final double J_PER_KJ = 1000;

    private Accounts() {}

    private static double animalDays(Outcome one) {
        return (double) one.habitat().animals().size() * one.settings().days();
    }

    /** Metres travelled off the ground. */
    static OptionalDouble offGroundM(Outcome one) {
        double metres = 0;
        for (Trip trip : one.journals().get(0).trips()) {
            metres += trip.way().offGroundM();
        }
        return OptionalDouble.of(metres / animalDays(one));
    }

    /** Metres of height gained in moves off the ground. */
    static OptionalDouble climbedM(Outcome one) {
        RouteGraph graph = one.habitat().graph();
        double metres = 0;
        for (Trip trip : one.journals().get(0).trips()) {
            for (int move : trip.way().moves()) {
                metres += graph.moveOnGround(move) ? 0 : Math.max(0, graph.riseM(move));
            }
        }
        return OptionalDouble.of(metres / animalDays(one));
    }

    /** Energy eaten less energy spent [kJ]: of the mean animal. */
    static OptionalDouble balanceKj(Outcome one) {
        return one.journals().get(0).reserves().stream()
                .mapToDouble(reserve -> balanceKj(reserve, one))
                .average();
    }

    /** Likewise of the animal that fares worst. */
    static OptionalDouble worstBalanceKj(Outcome one) {
        return one.journals().get(0).reserves().stream()
                .mapToDouble(reserve -> balanceKj(reserve, one))
                .min();
    }

    private static double balanceKj(Reserve reserve, Outcome one) {
        double spentJ = reserve.movedJ() + reserve.restingJ() + reserve.otherJ();
        return (reserve.eatenJ() - spentJ) / J_PER_KJ / one.settings().days();
    }

    /** Energy spent on moves [kJ]. */
    static OptionalDouble energyOfTravelKj(Outcome one) {
        double joules = 0;
        for (Reserve reserve : one.journals().get(0).reserves()) {
            joules += reserve.movedJ();
        }
        return OptionalDouble.of(joules / J_PER_KJ / animalDays(one));
    }

    /** Minutes waited for a stall at places of food. */
    static OptionalDouble waitedMin(Outcome one) {
        return perAnimalDay(one, stay -> stay.waiting() && isFood(one, stay.resource()) ? lasts(stay) : 0);
    }

    private static OptionalDouble perAnimalDay(Outcome one, ToLongFunction<Stay> counted) {
        long ms = one.journals().get(0).stays().stream().mapToLong(counted).sum();
        return OptionalDouble.of(ms / DayMs.MINUTE_MS / animalDays(one));
    }

    private static long lasts(Stay stay) {
        return stay.endMs() - stay.startMs();
    }

    /** Stalls taken from others at places of food, whole group, a day. */
    static OptionalDouble displacements(Outcome one) {
        long count = one.journals().get(0).displacements().stream()
                .filter(displacement -> isFood(one, displacement.resource()))
                .count();
        return OptionalDouble.of((double) count / one.settings().days());
    }

    private static boolean isFood(Outcome one, int resource) {
        return resource >= 0 && one.habitat().graph().resources().get(resource).kind() == ResourceKind.FOOD;
    }
}
