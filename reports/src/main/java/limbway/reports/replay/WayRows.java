package limbway.reports.replay;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import limbway.model.body.Body;
import limbway.model.geometry.Point;
import limbway.model.graph.MoveCosts;
import limbway.model.graph.RouteGraph;
import limbway.model.route.Way;
import limbway.sim.habitat.Habitat;

/** The different ways of a film, each written once, and the holds that they pass. */
final class WayRows {

    /** Added to the number of the mode where a move is made on the ground. */
    static final int ON_GROUND = 128;

    private final Habitat habitat;
    private final RouteGraph graph;
    private final Map<Integer, Integer> rowOfHold = new LinkedHashMap<>();
    private final Map<Passed, Integer> numbers = new LinkedHashMap<>();

    /** Ways that were met before; looked up only, never walked through. */
    private final Map<Body, IdentityHashMap<Way, Integer>> met = new LinkedHashMap<>();

    /** Who passes what: two bodies take different times on the same moves. */
    private record Passed(Body body, int start, List<Integer> moves) {}

    WayRows(Habitat habitat) {
        this.habitat = habitat;
        this.graph = habitat.graph();
    }

    /** The number of a way of an animal; it is added if it is new. */
    int number(int animal, Way way) {
        return number(habitat.animals().get(animal).body(), way);
    }

    /** The number of a way of a body; it is added if it is new. */
    int number(Body body, Way way) {
        return met.computeIfAbsent(body, b -> new IdentityHashMap<>()).computeIfAbsent(way, w -> {
            w.holds().forEach(this::rowOfHold);
            Passed passed = new Passed(body, w.holds().get(0), w.moves());
            return numbers.computeIfAbsent(passed, p -> numbers.size());
        });
    }

    /** The row of a hold; it is added if it is new. */
    int rowOfHold(int hold) {
        return rowOfHold.computeIfAbsent(hold, h -> rowOfHold.size());
    }

    /** Where the holds are, by row. */
    List<Point> places() {
        return rowOfHold.keySet().stream().map(graph::place).toList();
    }

    Map<String, Object> json() {
        List<Long> start = new ArrayList<>(List.of(0L));
        List<Long> hold = new ArrayList<>();
        List<Long> ms = new ArrayList<>();
        List<Long> mode = new ArrayList<>();
        for (Passed passed : numbers.keySet()) {
            MoveCosts costs = habitat.routes(passed.body).costs();
            hold.add((long) rowOfHold(passed.start));
            ms.add(0L);
            mode.add(0L);
            double seconds = 0;
            long told = 0;
            for (int move : passed.moves) {
                // each end is rounded, not each duration, so that no error adds up along the way
                seconds += costs.seconds(move);
                long end = Film.hundredths(Math.round(seconds * 1000));
                hold.add((long) rowOfHold(graph.to(move)));
                ms.add(end - told);
                mode.add((long) graph.mode(move).ordinal() + (graph.moveOnGround(move) ? ON_GROUND : 0));
                told = end;
            }
            start.add((long) hold.size());
        }
        Map<String, Object> rows = new LinkedHashMap<>();
        rows.put("start", row(start));
        rows.put("hold", row(hold));
        rows.put("ms", row(ms));
        rows.put("mode", row(mode));
        return rows;
    }

    private static String row(List<Long> numbers) {
        return Rows.unsigned(numbers.stream().mapToLong(Long::longValue).toArray());
    }
}
