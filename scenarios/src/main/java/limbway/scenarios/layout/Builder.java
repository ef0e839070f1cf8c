package limbway.scenarios.layout;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

import limbway.model.enclosure.Bearing;
import limbway.model.enclosure.Crown;
import limbway.model.enclosure.Platform;
import limbway.model.enclosure.Support;
import limbway.model.enclosure.SupportKind;
import limbway.model.energy.Elasticities;
import limbway.model.geometry.HangingLine;
import limbway.model.geometry.Outline;
import limbway.model.geometry.Point;
import limbway.model.geometry.Polyline;
import limbway.model.geometry.Terrain;
import limbway.scenarios.entry.PlaceWords;
import limbway.scenarios.entry.PlaceWords.Coordinates;
import limbway.scenarios.entry.SupportEntry;
import limbway.scenarios.entry.SupportEntry.Deck;
import limbway.scenarios.entry.SupportEntry.DeckByOutline;
import limbway.scenarios.entry.SupportEntry.DeckBySize;
import limbway.scenarios.entry.SupportEntry.Span;
import limbway.scenarios.entry.SupportEntry.Stated;
import limbway.scenarios.entry.SupportEntry.Upright;
import limbway.scenarios.problem.Problem;
import limbway.scenarios.problem.Problems;
import limbway.scenarios.problem.Wording;

/**
 * Builds the supports of one layout, each after those that carry it.
 *
 * <p>Whatever could not be read or built is known as broken; what depends on it is left out without a further message.
 */
final class Builder {

    /** A longer chain of supports that carry one another is refused, so that no chain exhausts the stack. */
    private static final int LONGEST_CHAIN = 100;

    /** A span shorter than this is none [m]. */
    private static final double SHORTEST_SPAN_M = 0.05;

    /** On sloping ground a point this far below it lies on it [m]. */
    static final double ON_SLOPE_M = 0.01;

    private final Names names;
    private final Problems problems;
    private final Map<String, Optional<Built>> built = new LinkedHashMap<>();
    private final Set<String> underWay = new LinkedHashSet<>();
    private final Terrain terrain;
    private final Set<String> tied;

    Builder(Names names, Terrain terrain, Problems problems) {
        this.names = names;
        this.terrain = terrain;
        this.problems = problems;
        this.tied = Tied.among(names.all(SupportEntry.class));
    }

    /** Everything that could be built, in the order of declaration. */
    List<Built> all() {
        List<Built> all = new ArrayList<>();
        for (SupportEntry entry : names.all(SupportEntry.class)) {
            build(entry.id()).ifPresent(all::add);
        }
        return all;
    }

    /** Where words say; empty after a problem, or if what they name is broken. */
    Optional<Located> locate(PlaceWords words, String what) {
        if (words instanceof PlaceWords.Coordinates coordinates) {
            return Optional.of(new Located(placed(coordinates), ""));
        }
        PlaceWords.OnNamed named = (PlaceWords.OnNamed) words;
        if (!names.checkSupport(named, what, problems)) {
            return Optional.empty();
        }
        if (underWay.contains(named.id())) {
            List<String> ring = new ArrayList<>(underWay);
            ring = ring.subList(ring.indexOf(named.id()), ring.size());
            problems.add(Problem.at(named.place(), what + " closes a ring: each hangs on the next")
                    .found(Wording.list(ring) + " and again " + named.id())
                    .mend("let one of them stand on the ground or hang on something else"));
            return Optional.empty();
        }
        if (underWay.size() >= LONGEST_CHAIN) {
            problems.add(Problem.at(named.place(), what + " hangs on a chain of too many supports")
                    .allowed("at most " + LONGEST_CHAIN + ", each carried by the next"));
            return Optional.empty();
        }
        return build(named.id()).flatMap(carrier -> new Spots(terrain, problems).on(carrier, named, what));
    }

    private Optional<Built> build(String id) {
        Optional<Built> known = built.get(id);
        if (known != null) {
            return known;
        }
        underWay.add(id);
        Optional<Built> fresh = names.support(id).flatMap(this::construct);
        underWay.remove(id);
        built.put(id, fresh);
        return fresh;
    }

    private Optional<Built> construct(SupportEntry entry) {
        if (entry instanceof Upright pole) {
            return Optional.of(upright(pole));
        }
        if (entry instanceof Span span) {
            return span(span);
        }
        if (entry instanceof DeckBySize deck) {
            return locate(deck.middle(), "place of " + deck.what())
                    .filter(middle -> carries(middle, deck))
                    .map(middle -> deck(
                            deck,
                            Shapes.deck(deck, middle.point()),
                            middle.point().zM()));
        }
        DeckByOutline deck = (DeckByOutline) entry;
        return Optional.of(deck(deck, deck.outline(), deck.heightM()));
    }

    private static Built deck(Deck entry, Outline outline, double zM) {
        return new Built.Deck(entry, new Platform(entry.id(), outline, zM, entry.kind(), entry.bearsKg()));
    }

    private Built upright(Upright pole) {
        if (pole.kind() == SupportKind.POLE) {
            OwnWeight.check(pole, Elasticities.standard(), problems);
        }
        Point foot = placed(pole.foot());
        Polyline axis = Shapes.axis(pole, foot);
        Support support = new Support(
                pole.id(),
                pole.kind(),
                axis,
                pole.diameterM(),
                pole.tipDiameterM(),
                pole.material(),
                bearing(pole.id(), pole.kind(), pole.stated()));
        Optional<Crown> crown = pole.crown()
                .map(size -> new Crown(
                        pole.id() + " crown",
                        pole.id(),
                        foot,
                        size.radiusM(),
                        foot.zM() + size.baseM(),
                        axis.end().zM(),
                        size.foliage()));
        return new Built.Member(pole, support, crown);
    }

    /** Who does not say so has a pole or branch sway to which nothing is tied; a trunk is taken as too stout. */
    private Bearing bearing(String id, SupportKind kind, Stated stated) {
        boolean free = (kind == SupportKind.POLE || kind == SupportKind.BRANCH) && !tied.contains(id);
        return new Bearing(
                stated.stiffnessNPerM(), stated.bearsKg(), stated.sways().orElse(free));
    }

    private Point placed(Coordinates words) {
        return placed(words, terrain);
    }

    /** The point of some coordinates; without a height it lies on the ground. */
    static Point placed(Coordinates words, Terrain terrain) {
        Point point = words.point();
        return words.onGround() ? point.atHeight(terrain.heightM(point.xM(), point.yM())) : point;
    }

    private Optional<Built> span(Span span) {
        Optional<Located> from = locate(span.from(), "start of " + span.what());
        Optional<Located> to = locate(span.to(), "end of " + span.what());
        if (from.isEmpty() || to.isEmpty()) {
            return Optional.empty();
        }
        Point a = from.get().point();
        Point b = to.get().point();
        if (a.distanceM(b) < SHORTEST_SPAN_M) {
            problems.add(Problem.at(span.to().place(), span.what() + " has no length")
                    .found("both ends at " + shown(a))
                    .mend("let it end somewhere else"));
            return Optional.empty();
        }
        OptionalDouble sagM = RopeSag.sagM(span, a, b, problems);
        if (sagM.isEmpty()) {
            return Optional.empty();
        }
        Polyline axis = HangingLine.between(a, b, sagM.getAsDouble());
        return hangsIntoGround(span, axis)
                ? Optional.empty()
                : Optional.of(new Built.Member(
                        span,
                        new Support(
                                span.id(),
                                span.kind(),
                                axis,
                                span.diameterM(),
                                span.tipDiameterM(),
                                span.material(),
                                bearing(span.id(), span.kind(), span.stated())),
                        Optional.empty()));
    }

    private boolean hangsIntoGround(Span span, Polyline axis) {
        double slackM = terrain.isLevel() ? 0 : ON_SLOPE_M;
        Point lowest = axis.start();
        for (Point point : axis.points()) {
            if (aboveGroundM(point) < aboveGroundM(lowest)) {
                lowest = point;
            }
        }
        double aboveM = aboveGroundM(lowest);
        if (aboveM >= -slackM) {
            return false;
        }
        problems.add(Problem.at(span.place(), span.what() + " hangs into the ground")
                .found(
                        terrain.isLevel()
                                ? "lowest point at " + Wording.measure(aboveM, "m")
                                : Wording.measure(-aboveM, "m") + " below the ground at " + shown(lowest))
                .allowed("0 m or more" + (terrain.isLevel() ? "" : " above the ground"))
                .mend("hang it higher, or give it less sag"));
        return true;
    }

    private double aboveGroundM(Point point) {
        return terrain.aboveM(point);
    }

    private boolean carries(Located middle, DeckBySize deck) {
        Built carrier = built.getOrDefault(middle.on(), Optional.empty()).orElse(null);
        boolean weak = carrier instanceof Built.Deck
                || (carrier instanceof Built.Member member && member.support().kind() == SupportKind.ROPE);
        if (weak) {
            problems.add(Problem.at(deck.middle().place(), deck.what() + " is put on something that cannot carry it")
                    .found(carrier.entry().what())
                    .allowed("a pole, a trunk, a beam, or coordinates"));
        }
        return !weak;
    }

    static String shown(Point p) {
        return "[" + Wording.number(p.xM()) + ", " + Wording.number(p.yM()) + ", " + Wording.number(p.zM()) + "]";
    }
}
