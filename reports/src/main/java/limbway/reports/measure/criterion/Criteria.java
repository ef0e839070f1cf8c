package limbway.reports.measure.criterion;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.WeakHashMap;

import limbway.model.graph.RouteGraph;
import limbway.reports.measure.Aspect;
import limbway.reports.measure.ElevatedTime;
import limbway.reports.measure.OffGroundShare;
import limbway.reports.measure.Visibility;
import limbway.reports.words.Figures;
import limbway.sim.experiment.Outcome;
import limbway.sim.experiment.statistics.Interval;

/**
 * The catalogue of what layouts are judged by.
 *
 * <p>What only depends on the layout, as its usable room, is found once and kept for as long as the layout is in use, also
 * where it is priced anew. Threads may share a catalogue.
 */
public final class Criteria {

    /** The first criterion of all answers. */
    public static final String OFF_GROUND = "offground_distance";

    private final Map<RouteGraph, LayoutFacts> known = Collections.synchronizedMap(new WeakHashMap<>());
    private final List<DesignCriterion> all;

    /**
     * A catalogue.
     *
     * @param thresholdM height above which an animal counts as elevated [m], 0 or more
     */
    public Criteria(double thresholdM) {
        List<DesignCriterion> list = new ArrayList<>();
        travel(list);
        list.add(DesignCriterion.share(
                "time_elevated",
                "share of waking time above " + Figures.plain(thresholdM) + " m",
                Wish.MORE,
                one -> mean(ElevatedTime.of(one, thresholdM).share())));
        space(list);
        group(list);
        heat(list);
        all = List.copyOf(list);
    }

    /** A catalogue with the usual height. */
    public Criteria() {
        this(ElevatedTime.STANDARD_THRESHOLD_M);
    }

    private static void travel(List<DesignCriterion> list) {
        for (Aspect aspect : Aspect.values()) {
            list.add(DesignCriterion.share(
                    "offground_" + aspect.word(),
                    "share of travel off the ground, by " + aspect.word(),
                    Wish.MORE,
                    one -> mean(OffGroundShare.of(one.journals(), trip -> true).by(aspect))));
        }
        list.add(DesignCriterion.amount(
                "offground_m", "travel off the ground by animal and day", "m/day", Wish.MORE, Accounts::offGroundM));
        list.add(DesignCriterion.amount(
                "climbed_m", "height climbed by animal and day", "m/day", Wish.MORE, Accounts::climbedM));
    }

    private void space(List<DesignCriterion> list) {
        list.add(DesignCriterion.share(
                "usable_volume_used",
                "share of the usable volume that was within reach of where the animals went, all days together",
                Wish.MORE,
                one -> UseOfSpace.usedShare(facts(one), one)));
        list.add(DesignCriterion.index(
                "spread_index",
                "unevenness of the use of ground and layers for their room (modified SPI)",
                Wish.LESS,
                one -> UseOfSpace.spread(facts(one), one)));
        list.add(DesignCriterion.index(
                "electivity_off_ground",
                "preference of off the ground to the ground for its room (E*, at most 1/3)",
                Wish.MORE,
                one -> UseOfSpace.offGroundElectivity(facts(one), one)));
    }

    private static void group(List<DesignCriterion> list) {
        list.add(DesignCriterion.amount(
                "travel_kj", "energy of moves by animal and day", "kJ/day", Wish.NEITHER, Accounts::energyOfTravelKj));
        list.add(DesignCriterion.amount(
                "energy_balance_kj",
                "energy eaten less energy spent by animal and day",
                "kJ/day",
                Wish.NEITHER,
                Accounts::balanceKj));
        list.add(DesignCriterion.amount(
                "energy_balance_worst_kj",
                "energy eaten less energy spent by the animal that fares worst",
                "kJ/day",
                Wish.MORE,
                Accounts::worstBalanceKj));
        list.add(DesignCriterion.amount(
                "waiting_at_food_min",
                "waiting for food by animal and day",
                "min/day",
                Wish.LESS,
                Accounts::waitedMin));
        list.add(DesignCriterion.amount(
                "displacements_at_food",
                "stalls at food taken from another, whole group",
                "1/day",
                Wish.LESS,
                Accounts::displacements));
    }

    private void heat(List<DesignCriterion> list) {
        list.add(DesignCriterion.amount(
                "hours_in_heat",
                "time at places of " + Figures.plain(HeatAndShade.hotC()) + " °C and more by animal and day",
                "h/day",
                Wish.LESS,
                one -> HeatAndShade.hotHours(facts(one), one)));
        list.add(DesignCriterion.share(
                "visible_share",
                "share of the time with visitors that animals can be seen",
                Wish.NEITHER,
                one -> mean(Visibility.of(one).flatMap(seen -> seen.overall().fromAny()))));
        list.add(DesignCriterion.amount(
                "shade_breach_min",
                "time with fewer than two platforms in shade",
                "min/day",
                Wish.LESS,
                one -> HeatAndShade.breachMin(facts(one), one)));
    }

    private LayoutFacts facts(Outcome one) {
        return known.computeIfAbsent(one.habitat().graph(), graph -> new LayoutFacts());
    }

    private static OptionalDouble mean(Optional<Interval> of) {
        return of.map(interval -> OptionalDouble.of(interval.mean())).orElse(OptionalDouble.empty());
    }

    /**
     * All criteria.
     *
     * @return in the order in which they are shown
     */
    public List<DesignCriterion> all() {
        return all;
    }

    /**
     * One of them.
     *
     * @param name its name
     * @return the criterion, or empty if there is none of that name
     */
    public Optional<DesignCriterion> find(String name) {
        return all.stream().filter(criterion -> criterion.name().equals(name)).findFirst();
    }
}
