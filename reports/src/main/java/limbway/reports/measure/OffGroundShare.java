package limbway.reports.measure;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Predicate;

import limbway.sim.experiment.statistics.Interval;
import limbway.sim.journal.Journal;
import limbway.sim.journal.Trip;

/**
 * Share of travel off the ground: what was done off the ground divided by all, within each replication.
 *
 * @param byAspect share by distance, time and energy, 0 to 1; an aspect is missing where nobody travelled
 */
public record OffGroundShare(Map<Aspect, Interval> byAspect) {

    /** Keeps a copy of the map. */
    public OffGroundShare {
        Map<Aspect, Interval> copy = new EnumMap<>(Aspect.class);
        copy.putAll(byAspect);
        byAspect = Collections.unmodifiableMap(copy);
    }

    /**
     * The share of some trips.
     *
     * @param journals one for each replication
     * @param counted which trips count
     * @return the share; a replication in which no counted trip was made gives no value
     */
    public static OffGroundShare of(List<Journal> journals, Predicate<Trip> counted) {
        Map<Aspect, Interval> byAspect = new EnumMap<>(Aspect.class);
        for (Aspect aspect : Aspect.values()) {
            List<Double> shares = new ArrayList<>();
            for (Journal journal : journals) {
                of(journal, counted, aspect).ifPresent(shares::add);
            }
            Interval.of(shares).ifPresent(interval -> byAspect.put(aspect, interval));
        }
        return new OffGroundShare(byAspect);
    }

    /** The share of some trips of one replication, or empty where none was made. */
    static OptionalDouble of(Journal journal, Predicate<Trip> counted, Aspect aspect) {
        double all = 0;
        double offGround = 0;
        for (Trip trip : journal.trips()) {
            if (counted.test(trip)) {
                all += aspect.of(trip.way());
                offGround += aspect.offGround(trip.way());
            }
        }
        return all > 0 ? OptionalDouble.of(offGround / all) : OptionalDouble.empty();
    }

    /**
     * The share by one aspect.
     *
     * @param aspect distance, time or energy
     * @return the share, or empty where nobody travelled
     */
    public Optional<Interval> by(Aspect aspect) {
        return Optional.ofNullable(byAspect.get(aspect));
    }
}
