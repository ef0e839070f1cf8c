package limbway.reports.measure;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;

import limbway.model.body.Body;
import limbway.model.enclosure.Platform;
import limbway.model.graph.MoveCosts;
import limbway.model.structure.Blocking;
import limbway.model.structure.DisjointWays;
import limbway.model.structure.PartGraph;
import limbway.reports.words.Figures;
import limbway.sim.habitat.Habitat;

/**
 * Where one animal can bar the way off the ground: places with a single way, supports that part the frame, decks with
 * one exit. Bodies and places for which the same holds share a finding.
 */
final class StructureAudit {

    private static final int MOST_NAMED = 3;

    /** What is barred, and from where. */
    private record Barred(List<String> places, List<String> from) {}

    private final Habitat habitat;
    private final Map<Barred, List<String>> singleWays = new LinkedHashMap<>();
    private final Map<Barred, List<String>> cutPoints = new LinkedHashMap<>();
    private final Map<String, List<String>> oneExit = new LinkedHashMap<>();
    private final List<Finding> findings = new ArrayList<>();

    StructureAudit(Habitat habitat) {
        this.habitat = habitat;
    }

    List<Finding> findings() {
        for (Body body : habitat.bodies()) {
            MoveCosts costs = MoveCosts.of(habitat.graph(), body, habitat.energy());
            PartGraph parts = PartGraph.of(habitat.graph(), costs);
            DisjointWays ways = new DisjointWays(parts);
            waysToResources(body.name(), parts, ways);
            exits(body.name(), parts, ways);
        }
        together(singleWays).forEach(this::singleWay);
        cutPoints.forEach(this::cutPoint);
        exitsTogether().forEach(this::exit);
        return findings;
    }

    private void waysToResources(String body, PartGraph parts, DisjointWays ways) {
        Set<Integer> single = new LinkedHashSet<>();
        for (int r = 0; r < habitat.graph().resources().size(); r++) {
            if (ways.toOthers(r) == 1) {
                single.add(r);
            }
        }
        Map<Integer, List<String>> barredFrom = new LinkedHashMap<>();
        Map<List<Integer>, List<String>> parted = new LinkedHashMap<>();
        for (Blocking blocking : Blocking.all(parts)) {
            String name = parts.parts().get(blocking.part()).name();
            List<Integer> cutOff = blocking.cutOff();
            for (List<Integer> side : blocking.sides()) {
                if (side.stream().allMatch(r -> togetherOnOnePart(parts, side.get(0), r))) {
                    side.forEach(r -> barredFrom
                            .computeIfAbsent(r, k -> new ArrayList<>())
                            .add(name));
                }
            }
            if (!single.containsAll(cutOff)) {
                parted.computeIfAbsent(cutOff, k -> new ArrayList<>()).add(name);
            }
        }
        for (int r : single) {
            Barred barred = new Barred(List.of(nameOf(r)), barredFrom.getOrDefault(r, List.of()));
            singleWays.computeIfAbsent(barred, k -> new ArrayList<>()).add(body);
        }
        parted.forEach((cutOff, names) -> {
            Barred barred = new Barred(cutOff.stream().map(this::nameOf).toList(), names);
            cutPoints.computeIfAbsent(barred, k -> new ArrayList<>()).add(body);
        });
    }

    private static boolean togetherOnOnePart(PartGraph parts, int one, int other) {
        return parts.partsOf(one).stream().anyMatch(parts.partsOf(other)::contains);
    }

    private void exits(String body, PartGraph parts, DisjointWays ways) {
        Set<Integer> goals = new TreeSet<>();
        for (int part = 0; part < parts.parts().size(); part++) {
            if (parts.parts().get(part).touchesGround()) {
                goals.add(part);
            }
        }
        for (int r = 0; r < habitat.graph().resources().size(); r++) {
            goals.addAll(parts.partsOf(r));
        }
        List<Platform> platforms = habitat.layout().enclosure().platforms();
        platforms.forEach(platform -> goals.addAll(parts.partsNamed(platform.id())));
        for (Platform platform : platforms) {
            for (int part : parts.partsNamed(platform.id())) {
                if (!parts.parts().get(part).touchesGround() && ways.exits(part, goals) == 1) {
                    oneExit.computeIfAbsent(platform.id(), k -> new ArrayList<>())
                            .add(body);
                }
            }
        }
    }

    private void singleWay(Barred barred, List<String> bodies) {
        String places = String.join(", ", barred.places());
        String past = barred.from().isEmpty()
                ? ""
                : ", past " + named(barred.from(), "and") + ": one animal there can bar it";
        add(
                "single-way",
                places,
                bodies,
                1,
                "ways",
                "off the ground, only one way leads " + who(bodies) + " to " + named(barred.places(), "and") + past,
                "add a second way that shares no support with the first");
    }

    private void cutPoint(Barred barred, List<String> bodies) {
        add(
                "cut-point",
                String.join(", ", barred.from()),
                bodies,
                barred.places().size(),
                "places",
                "off the ground, " + who(bodies) + " comes to " + named(barred.places(), "and")
                        + " from the rest of the frame only past " + named(barred.from(), "and")
                        + ": one animal there can bar it",
                "add a way that leads past " + (barred.from().size() == 1 ? "it" : "them"));
    }

    private void exit(List<String> bodies, List<String> decks) {
        add(
                "one-exit",
                String.join(", ", decks),
                bodies,
                1,
                "exits",
                named(decks, "and") + (decks.size() == 1 ? " has" : " have") + " one exit for " + who(bodies)
                        + ": one animal can shut in whoever is there",
                "give " + (decks.size() == 1 ? "it" : "each") + " a second exit (common practice, no source)");
    }

    /** The same holds for several places: one entry for all of them. */
    private static Map<Barred, List<String>> together(Map<Barred, List<String>> single) {
        Map<List<List<String>>, List<String>> places = new LinkedHashMap<>();
        single.forEach(
                (barred, bodies) -> places.computeIfAbsent(List.of(barred.from(), bodies), k -> new ArrayList<>())
                        .addAll(barred.places()));
        Map<Barred, List<String>> together = new LinkedHashMap<>();
        places.forEach((key, names) -> together.put(new Barred(names, key.get(0)), key.get(1)));
        return together;
    }

    private Map<List<String>, List<String>> exitsTogether() {
        Map<List<String>, List<String>> decks = new LinkedHashMap<>();
        oneExit.forEach((deck, bodies) ->
                decks.computeIfAbsent(bodies, k -> new ArrayList<>()).add(deck));
        return decks;
    }

    private void add(
            String kind, String place, List<String> bodies, double figure, String unit, String text, String mend) {
        String body = everyone(bodies) ? "" : String.join(", ", bodies);
        findings.add(new Finding(
                kind,
                Weight.CAUTION,
                place,
                body,
                OptionalDouble.of(figure),
                unit,
                text,
                mend,
                text,
                Optional.empty()));
    }

    private String who(List<String> bodies) {
        return everyone(bodies) ? "any animal" : Figures.one(named(bodies, "or"));
    }

    private boolean everyone(List<String> bodies) {
        return bodies.size() == habitat.bodies().size();
    }

    private String nameOf(int resource) {
        return habitat.graph().resources().get(resource).id();
    }

    private static String named(List<String> all, String before) {
        int shown = Math.min(MOST_NAMED, all.size());
        int rest = all.size() - shown;
        if (rest > 0) {
            return String.join(", ", all.subList(0, shown)) + " " + before + " " + rest + " more";
        }
        String last = all.get(shown - 1);
        return shown == 1 ? last : String.join(", ", all.subList(0, shown - 1)) + " " + before + " " + last;
    }
}
