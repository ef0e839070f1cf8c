package limbway.scenarios.layout;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import limbway.model.enclosure.Crown;
import limbway.model.enclosure.Platform;
import limbway.model.enclosure.Support;
import limbway.model.enclosure.SupportKind;
import limbway.model.geometry.Point;
import limbway.model.geometry.Polyline;
import limbway.scenarios.entry.PlaceWords;
import limbway.scenarios.entry.SupportEntry;
import limbway.scenarios.entry.SupportEntry.DeckByOutline;
import limbway.scenarios.entry.SupportEntry.DeckBySize;
import limbway.scenarios.entry.SupportEntry.Span;
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

    private final Names names;
    private final Problems problems;
    private final Map<String, Optional<Built>> built = new LinkedHashMap<>();
    private final Set<String> underWay = new LinkedHashSet<>();

    Builder(Names names, Problems problems) {
        this.names = names;
        this.problems = problems;
    }

    /** Everything that could be built, in the order of declaration. */
    List<Built> all() {
        List<Built> all = new ArrayList<>();
        for (String id : names.supportIds()) {
            build(id).ifPresent(all::add);
        }
        return all;
    }

    /** Where words say; empty after a problem, or if what they name is broken. */
    Optional<Located> locate(PlaceWords words, String what) {
        if (words instanceof PlaceWords.Coordinates coordinates) {
            return Optional.of(new Located(coordinates.point(), ""));
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
        return build(named.id()).flatMap(carrier -> new Spots(problems).on(carrier, named, what));
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
                    .map(middle -> new Built.Deck(
                            deck,
                            new Platform(
                                    deck.id(),
                                    Shapes.deck(deck, middle.point()),
                                    middle.point().zM())));
        }
        DeckByOutline deck = (DeckByOutline) entry;
        return Optional.of(new Built.Deck(deck, new Platform(deck.id(), deck.outline(), deck.heightM())));
    }

    private static Built upright(Upright pole) {
        Polyline axis = Shapes.axis(pole);
        Support support = new Support(pole.id(), pole.kind(), axis, pole.diameterM(), pole.material());
        Point foot = pole.foot().point();
        Optional<Crown> crown = pole.crown()
                .map(size -> new Crown(
                        pole.id() + " crown",
                        pole.id(),
                        foot,
                        size.radiusM(),
                        foot.zM() + size.baseM(),
                        axis.end().zM()));
        return new Built.Member(pole, support, crown);
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
        Polyline axis = Shapes.rope(a, b, span.sagShare());
        double lowestM = axis.points().stream().mapToDouble(Point::zM).min().orElse(0);
        if (lowestM < 0) {
            problems.add(Problem.at(span.place(), span.what() + " hangs into the ground")
                    .found("lowest point at " + Wording.measure(lowestM, "m"))
                    .allowed("0 m or more")
                    .mend("hang it higher, or give it less sag"));
            return Optional.empty();
        }
        return Optional.of(new Built.Member(
                span, new Support(span.id(), span.kind(), axis, span.diameterM(), span.material()), Optional.empty()));
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
