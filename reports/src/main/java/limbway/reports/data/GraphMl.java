package limbway.reports.data;

import java.io.StringWriter;
import java.util.LinkedHashMap;
import java.util.Map;

import org.jgrapht.graph.DirectedMultigraph;
import org.jgrapht.nio.Attribute;
import org.jgrapht.nio.AttributeType;
import org.jgrapht.nio.DefaultAttribute;
import org.jgrapht.nio.graphml.GraphMLExporter;

import limbway.model.body.Body;
import limbway.model.geometry.Point;
import limbway.model.graph.MoveCosts;
import limbway.model.graph.RouteGraph;
import limbway.sim.habitat.Habitat;

/**
 * A compiled enclosure as GraphML.
 *
 * @source GraphML by the Graph Drawing community, written by JGraphT's exporter
 */
public final class GraphMl {

    private final Habitat habitat;
    private final RouteGraph graph;

    private GraphMl(Habitat habitat) {
        this.habitat = habitat;
        this.graph = habitat.graph();
    }

    /**
     * The graph as text.
     *
     * @param habitat a layout, compiled
     * @return an XML document; moves that no body can make are left out
     */
    public static String text(Habitat habitat) {
        return new GraphMl(habitat).export();
    }

    private String export() {
        DirectedMultigraph<Integer, Integer> moves = new DirectedMultigraph<>(Integer.class);
        for (int hold = 0; hold < graph.holdCount(); hold++) {
            moves.addVertex(hold);
        }
        for (int move = 0; move < graph.moveCount(); move++) {
            if (GraphTables.isPossible(habitat, move)) {
                moves.addEdge(graph.from(move), graph.to(move), move);
            }
        }
        GraphMLExporter<Integer, Integer> exporter = new GraphMLExporter<>(hold -> Integer.toString(hold));
        exporter.setVertexAttributeProvider(this::hold);
        exporter.setEdgeAttributeProvider(this::move);
        hold(0).forEach((name, value) ->
                exporter.registerAttribute(name, GraphMLExporter.AttributeCategory.NODE, value.getType()));
        register(exporter, "mode", AttributeType.STRING);
        register(exporter, "length_m", AttributeType.DOUBLE);
        register(exporter, "rise_m", AttributeType.DOUBLE);
        register(exporter, "gap_m", AttributeType.DOUBLE);
        register(exporter, "on_ground", AttributeType.BOOLEAN);
        for (Body body : habitat.bodies()) {
            register(exporter, energyOf(body), AttributeType.INT);
        }
        StringWriter text = new StringWriter();
        exporter.exportGraph(moves, text);
        return text.toString().replace("\r\n", "\n");
    }

    private static void register(GraphMLExporter<Integer, Integer> exporter, String name, AttributeType type) {
        exporter.registerAttribute(name, GraphMLExporter.AttributeCategory.EDGE, type);
    }

    /** As in the table of moves, but GraphML allows no spaces in the name of an attribute. */
    private static String energyOf(Body body) {
        return "mj:" + body.name().replace(' ', '_');
    }

    private Map<String, Attribute> hold(int hold) {
        Point place = graph.place(hold);
        Map<String, Attribute> attributes = new LinkedHashMap<>();
        attributes.put("x_m", DefaultAttribute.createAttribute(place.xM()));
        attributes.put("y_m", DefaultAttribute.createAttribute(place.yM()));
        attributes.put("z_m", DefaultAttribute.createAttribute(place.zM()));
        attributes.put("ground_level", DefaultAttribute.createAttribute(graph.onGround(hold)));
        attributes.put("support", DefaultAttribute.createAttribute(graph.support(hold)));
        return attributes;
    }

    private Map<String, Attribute> move(int move) {
        Map<String, Attribute> attributes = new LinkedHashMap<>();
        attributes.put("mode", DefaultAttribute.createAttribute(graph.mode(move).word()));
        attributes.put("length_m", DefaultAttribute.createAttribute(graph.lengthM(move)));
        attributes.put("rise_m", DefaultAttribute.createAttribute(graph.riseM(move)));
        attributes.put("gap_m", DefaultAttribute.createAttribute(graph.gapM(move)));
        attributes.put("on_ground", DefaultAttribute.createAttribute(graph.moveOnGround(move)));
        for (Body body : habitat.bodies()) {
            int milliJ = habitat.routes(body).costs().milliJ(move);
            if (milliJ != MoveCosts.IMPOSSIBLE) {
                attributes.put(energyOf(body), DefaultAttribute.createAttribute(milliJ));
            }
        }
        return attributes;
    }
}
