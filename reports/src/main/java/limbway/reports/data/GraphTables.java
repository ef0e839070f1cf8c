package limbway.reports.data;

import java.util.ArrayList;
import java.util.List;

import limbway.model.body.Body;
import limbway.model.geometry.Point;
import limbway.model.graph.MoveCosts;
import limbway.model.graph.RouteGraph;
import limbway.sim.habitat.Habitat;

/** A compiled enclosure as tables: holds, moves with the energy of each body, and what is used where. */
public final class GraphTables {

    /** Lengths are written to the micrometre, closer than holds are told apart. */
    private static final int DECIMALS = 6;

    private GraphTables() {}

    /**
     * The three tables.
     *
     * @param habitat a layout, compiled
     * @return holds, moves and resources
     */
    public static List<CsvTable> of(Habitat habitat) {
        return List.of(holds(habitat.graph()), moves(habitat), resources(habitat.graph()));
    }

    /**
     * Whether any body of the group can make a move.
     *
     * @param habitat a layout, compiled
     * @param move number of a move
     * @return true if at least one can
     */
    public static boolean isPossible(Habitat habitat, int move) {
        return habitat.bodies().stream().anyMatch(body -> costs(habitat, body).milliJ(move) != MoveCosts.IMPOSSIBLE);
    }

    private static CsvTable holds(RouteGraph graph) {
        CsvTable table = new CsvTable(
                "holds",
                "a point where a body can hang, sit or stand",
                List.of(
                        Field.whole("hold", "number of the hold"),
                        Field.number("x_m", "metres east"),
                        Field.number("y_m", "metres north"),
                        Field.number("z_m", "metres up"),
                        Field.yesNo("on_ground", "whether it is at ground level"),
                        Field.text("support", "support, platform or crown, or ground")));
        for (int hold = 0; hold < graph.holdCount(); hold++) {
            Point place = graph.place(hold);
            table.row(
                    hold,
                    metres(place.xM()),
                    metres(place.yM()),
                    metres(place.zM()),
                    graph.onGround(hold),
                    graph.support(hold));
        }
        return table;
    }

    private static CsvTable moves(Habitat habitat) {
        RouteGraph graph = habitat.graph();
        List<Field> fields = new ArrayList<>(List.of(
                Field.whole("from", "hold where it starts"),
                Field.whole("to", "hold where it ends"),
                Field.text("mode", "locomotor mode"),
                Field.number("length_m", "length [m]"),
                Field.number("rise_m", "height gained [m], negative downwards"),
                Field.number("gap_m", "clear distance reached over [m]"),
                Field.yesNo("on_ground", "whether it is made on the ground")));
        for (Body body : habitat.bodies()) {
            fields.add(Field.whole("mj:" + body.name(), "net energy [mJ]; empty where this body cannot make it"));
        }
        CsvTable table = new CsvTable("moves", "one move that at least one body of the group can make", fields);
        for (int move = 0; move < graph.moveCount(); move++) {
            if (isPossible(habitat, move)) {
                List<Object> row = new ArrayList<>(List.of(
                        graph.from(move),
                        graph.to(move),
                        graph.mode(move).word(),
                        metres(graph.lengthM(move)),
                        metres(graph.riseM(move)),
                        metres(graph.gapM(move)),
                        graph.moveOnGround(move)));
                for (Body body : habitat.bodies()) {
                    int milliJ = costs(habitat, body).milliJ(move);
                    row.add(milliJ == MoveCosts.IMPOSSIBLE ? "" : milliJ);
                }
                table.row(row.toArray());
            }
        }
        return table;
    }

    private static CsvTable resources(RouteGraph graph) {
        CsvTable table = new CsvTable(
                "resources",
                "a hold from which a resource is used",
                List.of(
                        Field.text("resource", "name of the resource"),
                        Field.text("kind", "food, water, shade, nest or retreat"),
                        Field.whole("hold", "number of the hold")));
        for (int r = 0; r < graph.resources().size(); r++) {
            for (int hold : graph.useHolds(r)) {
                table.row(
                        graph.resources().get(r).id(),
                        graph.resources().get(r).kind().word(),
                        hold);
            }
        }
        return table;
    }

    private static MoveCosts costs(Habitat habitat, Body body) {
        return habitat.routes(body).costs();
    }

    private static String metres(double value) {
        return CsvTable.number(value, DECIMALS);
    }
}
