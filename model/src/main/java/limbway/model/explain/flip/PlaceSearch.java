package limbway.model.explain.flip;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import limbway.model.enclosure.Enclosure;
import limbway.model.enclosure.Platform;
import limbway.model.enclosure.Resource;
import limbway.model.enclosure.Support;
import limbway.model.geometry.Point;

/** Puts the start or the end of a trip elsewhere: higher on its pole, on another pole, on a deck. */
final class PlaceSearch {

    /** So many poles or decks are tried, nearest first. */
    private static final int MOST_TRIED = 4;

    /** Layouts that narrowing down to a millimetre within a pole may take. */
    private static final int NARROWING = 8;

    /** A place no higher than this is used from the ground [m], as in {@code GraphSettings}. */
    static final double LOWEST_M = 0.6;

    private record Candidate(PlaceMoved change, double failsM) {}

    private final ChangeTrial trial;
    private final TripTrees trees;
    private final Enclosure enclosure;
    private final Map<String, List<Integer>> holdsOf = new LinkedHashMap<>();

    PlaceSearch(ChangeTrial trial, TripTrees trees) {
        this.trial = trial;
        this.trees = trees;
        this.enclosure = trial.question().enclosure();
        for (int hold = 0; hold < trees.graph().holdCount(); hold++) {
            holdsOf.computeIfAbsent(trees.graph().support(hold), id -> new ArrayList<>())
                    .add(hold);
        }
    }

    /** The nearest pole and the nearest deck at which the trip turns, for the end of the trip or for its start. */
    List<Flip> find(boolean end) {
        String id = end ? trial.question().to() : trial.question().from();
        Resource place = Things.resource(enclosure, id).orElseThrow();
        List<Flip> found = new ArrayList<>();
        onPole(place, end).ifPresent(found::add);
        onDeck(place, end).ifPresent(found::add);
        // a deck round a pole at that height is the same place
        if (found.size() == 2 && Math.abs(movedM(found.get(0)) - movedM(found.get(1))) < Steps.COARSE_M) {
            found.remove(0);
        }
        return found;
    }

    private Resource other(boolean end) {
        String id = end ? trial.question().from() : trial.question().to();
        return Things.resource(enclosure, id).orElseThrow();
    }

    /** Whether the other place is on a pole, or on a deck that the pole carries: then there would be no trip. */
    private boolean holdsOther(Support pole, boolean end) {
        String on = other(end).on();
        return on.equals(pole.id())
                || Things.platform(enclosure, on)
                        .filter(deck -> Things.distanceM(pole.axis(), deck.centre()) < Things.SAME_PLACE_M)
                        .isPresent();
    }

    private Optional<Flip> onPole(Resource place, boolean end) {
        List<Candidate> candidates = new ArrayList<>();
        for (Support pole : enclosure.supports()) {
            if (pole.kind().isUpright() && !holdsOther(pole, end)) {
                lowest(pole, place, end).ifPresent(candidates::add);
            }
        }
        candidates.sort(Comparator.comparingDouble((Candidate one) -> one.change.movedM())
                .thenComparing(one -> one.change.at().on()));
        Optional<Flip> best = Optional.empty();
        for (Candidate candidate : candidates.subList(0, Math.min(MOST_TRIED, candidates.size()))) {
            boolean farther = best.isPresent() && movedM(best.get()) <= candidate.change.movedM();
            if (farther || !trial.canAfford(NARROWING)) {
                break;
            }
            Optional<Flip> flip = trial.flip(candidate.change)
                    .map(works -> candidate.change.isLowest()
                            ? works
                            : new Threshold(trial).between(candidate.failsM, failsBy(candidate), works, Double.NaN))
                    .flatMap(least -> trial.flip(((PlaceMoved) least.change()).measured(enclosure)));
            if (flip.isPresent() && (best.isEmpty() || movedM(flip.get()) < movedM(best.get()))) {
                best = flip;
            }
        }
        return best;
    }

    /** How much dearer the way off the ground is at a size that does not turn the trip. */
    private Optional<Long> failsBy(Candidate candidate) {
        return candidate.failsM <= 0
                ? Optional.empty()
                : trial.cost(candidate.change.withAmount(candidate.failsM))
                        .filter(TripCost::hasOffGround)
                        .map(TripCost::temptationMilliJ);
    }

    private static double movedM(Flip flip) {
        return ((PlaceMoved) flip.change()).movedM();
    }

    /** The lowest hold of a pole from which up the trip turns, and the hold below it, by the trees. */
    private Optional<Candidate> lowest(Support pole, Resource place, boolean end) {
        List<Integer> holds = new ArrayList<>(holdsOf.getOrDefault(pole.id(), List.of()));
        holds.sort(Comparator.comparingDouble(hold -> trees.graph().place(hold).zM()));
        Point foot = pole.axis().start();
        double groundM = enclosure.ground().terrain().heightM(foot.xM(), foot.yM());
        boolean samePole = place.on().equals(pole.id());
        double baseM = samePole ? Steps.millimetre(place.at().zM() - groundM) : 0;
        double failsM = 0;
        for (int hold : holds) {
            double heightM = Steps.millimetre(trees.graph().place(hold).zM() - groundM);
            boolean turns = end ? trees.turnsIfEndingAt(hold) : trees.turnsIfStartingAt(hold);
            if (heightM - baseM > Steps.FINE_M && heightM >= LOWEST_M && turns) {
                // the hold below is lower than any place looked at
                boolean lowest = baseM == 0 && failsM == 0;
                double raisedM = lowest ? LOWEST_M : heightM;
                PlaceMoved change = new PlaceMoved(place.id(), new Spot.AtHeight(pole.id(), raisedM), baseM, 0, lowest);
                return Optional.of(new Candidate(change.measured(enclosure), failsM));
            }
            if (heightM - baseM > Steps.FINE_M && !turns) {
                failsM = heightM - baseM;
            }
        }
        return Optional.empty();
    }

    private Optional<Flip> onDeck(Resource place, boolean end) {
        List<PlaceMoved> candidates = new ArrayList<>();
        for (Platform deck : enclosure.platforms()) {
            boolean turns = holdsOf.getOrDefault(deck.id(), List.of()).stream()
                    .anyMatch(hold -> end ? trees.turnsIfEndingAt(hold) : trees.turnsIfStartingAt(hold));
            if (turns && !place.on().equals(deck.id()) && !other(end).on().equals(deck.id())) {
                candidates.add(
                        new PlaceMoved(place.id(), new Spot.OnDeck(deck.id(), 0, 0), 0, 0, false).measured(enclosure));
            }
        }
        candidates.sort(Comparator.comparingDouble(PlaceMoved::movedM)
                .thenComparing(one -> one.at().on()));
        for (PlaceMoved candidate : candidates.subList(0, Math.min(MOST_TRIED, candidates.size()))) {
            Optional<Flip> flip = trial.flip(candidate);
            if (flip.isPresent()) {
                return flip;
            }
        }
        return Optional.empty();
    }
}
