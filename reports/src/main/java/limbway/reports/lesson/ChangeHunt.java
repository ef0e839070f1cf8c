package limbway.reports.lesson;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import limbway.model.alteration.Alteration;
import limbway.model.enclosure.Enclosure;
import limbway.model.enclosure.Platform;
import limbway.model.enclosure.Resource;
import limbway.model.enclosure.Support;
import limbway.model.explain.flip.BuildLimits;
import limbway.model.explain.flip.Change;
import limbway.model.explain.flip.Flip;
import limbway.model.explain.flip.FlipAnswer;
import limbway.model.explain.flip.LinkAdded;
import limbway.model.explain.flip.PlaceMoved;
import limbway.model.explain.flip.Spot;
import limbway.model.geometry.Point;
import limbway.model.graph.RouteGraph;
import limbway.model.route.Way;
import limbway.model.study.Variant;
import limbway.reports.words.ChangeLine;
import limbway.reports.words.FlipText;
import limbway.reports.words.LessonSentence;

/** Finds changes to choose between: some that turn the trip and some that look as if they did. */
public final class ChangeHunt {

    private static final int MOST_FLIPS = 2;
    private static final int MOST_VARIANTS = 2;
    private static final int MOST_TRIED = 3;
    private static final int MOST_TAKEN = 3;

    /** A rope that looks helpful is tied at this share of the height of a pole. */
    private static final double TIED_AT = 0.8;

    private static final double SHORTEST_M = 2;
    private static final double LONGEST_M = 15;
    private static final double HALF = 0.5;

    /** A change that just turns the trip is also tried so many times as large. */
    private static final double MORE = 2;

    /** From this share of trips on it is surely turned. Assumption. */
    private static final double SURE = 0.75;

    private final TaughtTrip trip;
    private final Enclosure enclosure;
    private final RouteGraph graph;
    private final ChangeTrials trials;
    private final Map<String, TriedChange> found = new LinkedHashMap<>();

    private ChangeHunt(TaughtTrip trip, RouteGraph graph, BuildLimits limits) {
        this.trip = trip;
        this.enclosure = trip.question().enclosure();
        this.graph = graph;
        this.trials = new ChangeTrials(trip.question(), limits);
    }

    /**
     * Changes of which some turn the trip and some do not, if there are such.
     *
     * @param trip the trip
     * @param graph its layout compiled
     * @param flips the smallest changes that turn it off the ground; none where it stays off it
     * @param variants other layouts of the scenario
     * @param limits what must not be built
     * @return each change once, in the order of their words, so that the order tells nothing
     */
    public static List<TriedChange> of(
            TaughtTrip trip, RouteGraph graph, FlipAnswer flips, List<Variant> variants, BuildLimits limits) {
        ChangeHunt hunt = new ChangeHunt(trip, graph, limits);
        if (trip.takesGround()) {
            hunt.flips(flips);
            hunt.elsewhere();
            hunt.rope();
        } else {
            hunt.takenAway();
            hunt.onGround();
        }
        hunt.variants(variants);
        List<TriedChange> sorted = new ArrayList<>(hunt.found.values());
        sorted.sort(Comparator.comparing(TriedChange::words));
        return sorted;
    }

    /**
     * Whether a change turns the trip: off the ground where it takes it, else down to it.
     *
     * @param trip the trip as it is now
     * @param change a change that was made
     * @return true if the other way is then the one that is taken
     */
    public static boolean turns(TaughtTrip trip, TriedChange change) {
        return trip.takesGround()
                ? change.costs().isOffGround()
                : change.costs().isOverGround();
    }

    private void add(TriedChange change) {
        found.putIfAbsent(change.words(), change);
    }

    private Optional<TriedChange> tried(Change change) {
        return change.in(enclosure)
                .flatMap(alterations ->
                        trials.of(FlipText.what(change), "- " + ChangeLine.of(change, enclosure), alterations));
    }

    /** One change of each kind that turns the trip, and less of the first one of which less does not. */
    private void flips(FlipAnswer answer) {
        Set<Class<?>> kinds = new LinkedHashSet<>();
        for (Flip flip : answer.flips()) {
            if (kinds.size() < MOST_FLIPS && kinds.add(flip.change().getClass())) {
                surer(flip).or(() -> tried(flip.change())).ifPresent(this::add);
            }
        }
        for (Flip flip : answer.flips()) {
            Change less = flip.change().withAmount(decimetre(flip.change().amountM() * HALF));
            Optional<TriedChange> tooLittle = less.equals(flip.change()) ? Optional.empty() : tried(less);
            if (tooLittle.filter(one -> !turns(trip, one)).isPresent()) {
                add(tooLittle.get());
                return;
            }
        }
    }

    /** Of a change that only just turns the trip, so much more that it surely does, if that helps. */
    private Optional<TriedChange> surer(Flip flip) {
        Change more = flip.change().withAmount(decimetre(flip.change().amountM() * MORE));
        return more.equals(flip.change()) || flip.share() >= SURE
                ? Optional.empty()
                : tried(more).filter(one -> one.costs().offGroundShare() >= SURE && turns(trip, one));
    }

    /** A size as somebody would write it down. */
    private static double decimetre(double metres) {
        return Math.max(1, Math.rint(metres * 10)) / 10;
    }

    /** The place it leads to put on a deck nearby, where that does not help. */
    private void elsewhere() {
        Resource end = enclosure.resources().get(graph.resourceNumber(trip.to()));
        Resource start = enclosure.resources().get(graph.resourceNumber(trip.from()));
        List<Platform> decks = enclosure.platforms().stream()
                .filter(deck -> !deck.id().equals(end.on()) && !deck.id().equals(start.on()))
                .sorted(Comparator.comparingDouble(deck -> deck.centre().distanceM(end.at())))
                .limit(MOST_TRIED)
                .toList();
        for (Platform deck : decks) {
            double movedM = deck.centre().distanceM(end.at());
            Optional<TriedChange> moved =
                    tried(new PlaceMoved(end.id(), new Spot.OnDeck(deck.id(), 0, 0), 0, movedM, false));
            if (moved.filter(one -> !turns(trip, one)).isPresent()) {
                add(moved.get());
                return;
            }
        }
    }

    /** A rope between poles near both places that does not help. */
    private void rope() {
        List<Support> near = nearest(
                enclosure.resources().get(graph.resourceNumber(trip.from())).at());
        List<Support> far = nearest(
                enclosure.resources().get(graph.resourceNumber(trip.to())).at());
        int left = MOST_TRIED;
        for (Support from : near) {
            for (Support to : far) {
                Optional<LinkAdded> link = left > 0 ? between(from, to) : Optional.empty();
                if (link.isPresent()) {
                    left--;
                    Optional<TriedChange> hung = tried(link.get());
                    if (hung.filter(one -> !turns(trip, one)).isPresent()) {
                        add(hung.get());
                        return;
                    }
                }
            }
        }
    }

    private List<Support> nearest(Point place) {
        return ChangeTrials.uprights(enclosure).stream()
                .sorted(Comparator.comparingDouble(
                        (Support pole) -> pole.axis().start().planDistanceM(place)))
                .limit(MOST_TRIED)
                .toList();
    }

    private Optional<LinkAdded> between(Support from, Support to) {
        if (from.id().equals(to.id())) {
            return Optional.empty();
        }
        Point a = from.axis().atLength(TIED_AT * from.axis().lengthM());
        Point b = to.axis().atLength(TIED_AT * to.axis().lengthM());
        double lengthM = a.distanceM(b);
        Optional<Spot> first = Spot.near(enclosure, from.id(), a);
        Optional<Spot> second = Spot.near(enclosure, to.id(), b);
        return lengthM < SHORTEST_M || lengthM > LONGEST_M || first.isEmpty() || second.isEmpty()
                ? Optional.empty()
                : Optional.of(new LinkAdded(freeName(), first.get(), second.get(), lengthM));
    }

    private String freeName() {
        String name = "new-rope";
        for (int i = 2; isTaken(name); i++) {
            name = "new-rope-" + i;
        }
        return name;
    }

    private boolean isTaken(String id) {
        return enclosure.supports().stream().anyMatch(one -> one.id().equals(id))
                || enclosure.platforms().stream().anyMatch(one -> one.id().equals(id))
                || enclosure.resources().stream().anyMatch(one -> one.id().equals(id));
    }

    /** Ropes and beams of the way taken away, those with most of its holds first, and one that is not on it. */
    private void takenAway() {
        Map<String, Integer> used = new LinkedHashMap<>();
        List<String> supports = ChangeTrials.lying(enclosure);
        Way way = trip.ways().cheapest();
        for (int hold : way.holds()) {
            if (supports.contains(graph.support(hold))) {
                used.merge(graph.support(hold), 1, Integer::sum);
            }
        }
        List<String> most = new ArrayList<>(used.keySet());
        most.sort(Comparator.comparingInt(id -> -used.get(id)));
        most.stream().limit(MOST_TAKEN).forEach(this::take);
        supports.stream().filter(id -> !used.containsKey(id)).findFirst().ifPresent(this::take);
    }

    private void take(String support) {
        trials.of(
                        LessonSentence.takeAway(support),
                        "- {remove: " + support + "}",
                        List.of(new Alteration.SupportTaken(support)))
                .ifPresent(this::add);
    }

    /** The place it leads to put on the ground below. */
    private void onGround() {
        Resource end = enclosure.resources().get(graph.resourceNumber(trip.to()));
        Point at = end.at();
        Point below = at.atHeight(enclosure.ground().terrain().heightM(at.xM(), at.yM()));
        if (!below.equals(at) && enclosure.ground().outline().covers(at.xM(), at.yM())) {
            trials.of(
                            LessonSentence.putOnGround(end.id()),
                            "- " + ChangeLine.placed(end.id(), below),
                            List.of(new Alteration.ResourceMoved(end.id(), below, "")))
                    .ifPresent(this::add);
        }
    }

    /** One other layout that turns the trip and one that does not, before more of either. */
    private void variants(List<Variant> variants) {
        List<TriedChange> turning = new ArrayList<>();
        List<TriedChange> still = new ArrayList<>();
        for (Variant variant : variants) {
            trials.in(LessonSentence.build(variant.name(), variant.note()), "", variant.enclosure())
                    .ifPresent(one -> (turns(trip, one) ? turning : still).add(one));
        }
        List<TriedChange> picked = new ArrayList<>();
        for (int i = 0; i < Math.max(turning.size(), still.size()); i++) {
            for (List<TriedChange> kind : List.of(turning, still)) {
                if (i < kind.size() && picked.size() < MOST_VARIANTS) {
                    picked.add(kind.get(i));
                }
            }
        }
        picked.forEach(this::add);
    }
}
