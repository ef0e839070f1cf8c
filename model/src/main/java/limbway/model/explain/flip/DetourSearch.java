package limbway.model.explain.flip;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

import limbway.model.enclosure.Enclosure;
import limbway.model.enclosure.Support;
import limbway.model.enclosure.SupportKind;
import limbway.model.geometry.Point;
import limbway.model.route.Way;

/** Makes a way off the ground cheaper: ties one end of a rope or beam on it higher or lower, or pulls a rope tighter. */
final class DetourSearch {

    /** An end is tied higher or lower by no more than this [m]. Assumption. */
    private static final double MOST_M = 4;

    /** Whether an end is worth following is seen from a change of this size [m]. */
    private static final double PROBE_M = 0.25;

    /** A promise is followed so much farther. */
    private static final double FARTHER = 1.3;

    private static final int MOST_ENDS = 3;

    private record Probe(EndRetied change, long gainMilliJ) {}

    private final ChangeTrial trial;
    private final TripTrees trees;
    private final Enclosure enclosure;

    DetourSearch(ChangeTrial trial, TripTrees trees) {
        this.trial = trial;
        this.trees = trees;
        this.enclosure = trial.question().enclosure();
    }

    /** The least change of an end, and the least tightening, that turn the trip. */
    List<Flip> find(Way offGround) {
        List<Support> passed = passed(offGround);
        List<Flip> found = new ArrayList<>();
        retied(passed).ifPresent(found::add);
        tightened(passed).ifPresent(found::add);
        return found;
    }

    /** Ropes and beams on a way, on which nothing hangs, and of ropes those cut to no stated length. */
    private List<Support> passed(Way way) {
        Set<String> names = new LinkedHashSet<>();
        way.holds().forEach(hold -> names.add(trees.graph().support(hold)));
        return names.stream()
                .flatMap(name -> Things.support(enclosure, name).stream())
                .filter(one -> one.kind() == SupportKind.ROPE || one.kind() == SupportKind.BEAM)
                .filter(one -> !Things.carries(enclosure, one) && Line.isStated(Line.sagShare(one)))
                .toList();
    }

    private Optional<Flip> retied(List<Support> passed) {
        List<Probe> probes = new ArrayList<>();
        for (Support support : passed) {
            for (boolean first : new boolean[] {true, false}) {
                Point end = first ? support.axis().start() : support.axis().end();
                Optional<Support> pole = Things.uprightAt(enclosure, end, support.id());
                if (pole.isPresent() && trial.canAfford(2)) {
                    probe(support, first, pole.get(), end).ifPresent(probes::add);
                }
            }
        }
        probes.sort(Comparator.comparingLong((Probe one) -> -one.gainMilliJ));
        Optional<Flip> best = Optional.empty();
        for (Probe probe : probes.subList(0, Math.min(MOST_ENDS, probes.size()))) {
            double mostM = best.map(flip -> flip.change().amountM()).orElse(MOST_M);
            Optional<Flip> less = followed(probe, mostM);
            best = less.isPresent() ? less : best;
        }
        return best;
    }

    /** Tries a little higher; what makes it dearer is tried lower. */
    private Optional<Probe> probe(Support support, boolean first, Support pole, Point end) {
        Point foot = pole.axis().start();
        double heightM =
                Steps.millimetre(end.zM() - enclosure.ground().terrain().heightM(foot.xM(), foot.yM()));
        for (boolean up : new boolean[] {true, false}) {
            EndRetied change = new EndRetied(support.id(), first, pole.id(), heightM, up, PROBE_M);
            Optional<TripCost> then = trial.cost(change).filter(TripCost::hasOffGround);
            long gain = then.map(cost -> trees.now().temptationMilliJ() - cost.temptationMilliJ())
                    .orElse(0L);
            if (gain > 0) {
                return Optional.of(new Probe(change, gain));
            }
        }
        return Optional.empty();
    }

    /** Goes as far as the first step promises, a little farther, and as far as is allowed. */
    private Optional<Flip> followed(Probe probe, double mostM) {
        double promisedM = PROBE_M * trees.now().temptationMilliJ() / probe.gainMilliJ;
        if (promisedM > FARTHER * FARTHER * mostM) {
            return Optional.empty();
        }
        double failsM = 0;
        long failsBy = trees.now().temptationMilliJ();
        for (double triedM : new double[] {promisedM, FARTHER * promisedM, mostM}) {
            double amountM = Math.ceil(Math.min(mostM, triedM) * 100) / 100;
            Change change = probe.change.withAmount(amountM);
            Optional<TripCost> cost = trial.cost(change);
            if (cost.isPresent() && cost.get().isOffGround()) {
                Flip works = trial.flip(change, cost.get());
                return Optional.of(new Threshold(trial).between(failsM, Optional.of(failsBy), works, Double.NaN));
            }
            if (cost.isPresent() && cost.get().hasOffGround() && amountM > failsM) {
                failsM = amountM;
                failsBy = cost.get().temptationMilliJ();
            }
        }
        return Optional.empty();
    }

    private Optional<Flip> tightened(List<Support> passed) {
        Optional<Flip> best = Optional.empty();
        for (Support rope : passed) {
            double sagShare = Line.sagShare(rope);
            double planM = rope.axis().start().planDistanceM(rope.axis().end());
            if (rope.kind() == SupportKind.ROPE && sagShare > 0) {
                Optional<Flip> works = trial.flip(new Tightened(rope.id(), planM, sagShare, sagShare * planM));
                if (works.isPresent() && best.isEmpty()) {
                    best = works.map(flip -> new Threshold(trial)
                            .between(0, Optional.of(trees.now().temptationMilliJ()), flip, Double.NaN));
                }
            }
        }
        return best;
    }
}
