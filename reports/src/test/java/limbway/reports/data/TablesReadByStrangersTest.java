package limbway.reports.data;

import java.io.IOException;
import java.io.StringReader;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.jgrapht.graph.DirectedPseudograph;
import org.jgrapht.nio.graphml.GraphMLImporter;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

import limbway.model.body.Body;
import limbway.model.energy.EnergySettings;
import limbway.model.graph.MoveCosts;
import limbway.model.graph.RouteGraph;
import limbway.model.route.ChoiceSharpness;
import limbway.model.study.Study;
import limbway.reports.Yard;
import limbway.sim.habitat.Habitat;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

/** Graph files as general libraries read them, against the graph that they were written from. */
class TablesReadByStrangersTest {

    /** Files have six decimals of a metre. */
    private static final double HALF_LAST_DIGIT_M = 5e-7 + 1e-12;

    private static Habitat habitat;
    private static RouteGraph graph;

    @BeforeAll
    static void compile() {
        Study study = Yard.study();
        habitat = new Habitat(
                study.base(),
                study.animals(),
                Optional.empty(),
                EnergySettings.standard(),
                ChoiceSharpness.GROUP.standard());
        graph = habitat.graph();
    }

    @Test
    void cellsOfEveryKindComeBackFromACsvReader() throws IOException {
        CsvTable table = new CsvTable("t", "a row", List.of(Field.text("a, b", "x"), Field.text("c", "y")));
        List<String> words = List.of("plain", "one, \"two\"", "two\nlines", "", "Größe 5°", "\"");
        words.forEach(word -> table.row(word, "end"));
        List<CSVRecord> rows = rows(table);
        assertEquals(words, rows.stream().map(row -> row.get("a, b")).toList());
        assertTrue(rows.stream().allMatch(row -> row.get("c").equals("end")));
    }

    @Test
    void holdsAndMovesComeBackFromACsvReader() throws IOException {
        List<CsvTable> tables = GraphTables.of(habitat);
        List<CSVRecord> holds = rows(tables.get(0));
        assertEquals(graph.holdCount(), holds.size());
        for (int hold = 0; hold < holds.size(); hold++) {
            CSVRecord row = holds.get(hold);
            assertEquals(hold, Integer.parseInt(row.get("hold")));
            assertEquals(graph.place(hold).xM(), Double.parseDouble(row.get("x_m")), HALF_LAST_DIGIT_M);
            assertEquals(graph.place(hold).zM(), Double.parseDouble(row.get("z_m")), HALF_LAST_DIGIT_M);
            assertEquals(graph.support(hold), row.get("support"));
        }
        Map<String, Map<String, String>> read = new LinkedHashMap<>();
        for (CSVRecord row : rows(tables.get(1))) {
            Map<String, String> told = new TreeMap<>(row.toMap());
            told.keySet().removeIf(key -> !key.startsWith("mj:") && !key.equals("mode"));
            told.values().removeIf(String::isEmpty);
            read.put(read.size() + ": " + row.get("from") + ">" + row.get("to"), told);
        }
        assertEquals(expectedMoves(), read);
    }

    @Test
    void holdsAndMovesComeBackFromAGraphMlReader() {
        DirectedPseudograph<Integer, Object> moves = new DirectedPseudograph<>(null, Object::new, false);
        Map<String, String> supports = new LinkedHashMap<>();
        Map<Object, Map<String, String>> told = new LinkedHashMap<>();
        GraphMLImporter<Integer, Object> importer = new GraphMLImporter<>();
        importer.setSchemaValidation(true);
        importer.setVertexFactory(Integer::valueOf);
        importer.addVertexAttributeConsumer((of, value) -> {
            if (of.getSecond().equals("support")) {
                supports.put(of.getFirst().toString(), value.getValue());
            }
        });
        importer.addEdgeAttributeConsumer((of, value) -> {
            if (of.getSecond().startsWith("mj:") || of.getSecond().equals("mode")) {
                told.computeIfAbsent(of.getFirst(), edge -> new TreeMap<>())
                        .put(of.getSecond().replace('_', ' '), value.getValue());
            }
        });
        importer.importGraph(moves, new StringReader(GraphMl.text(habitat)));
        assertEquals(graph.holdCount(), moves.vertexSet().size());
        for (int hold = 0; hold < graph.holdCount(); hold++) {
            assertEquals(graph.support(hold), supports.get(Integer.toString(hold)));
        }
        Map<String, Map<String, String>> read = new LinkedHashMap<>();
        for (Object edge : moves.edgeSet()) {
            read.put(read.size() + ": " + moves.getEdgeSource(edge) + ">" + moves.getEdgeTarget(edge), told.get(edge));
        }
        assertEquals(expectedMoves(), read);
    }

    private static Map<String, Map<String, String>> expectedMoves() {
        Map<String, Map<String, String>> expected = new LinkedHashMap<>();
        for (int move = 0; move < graph.moveCount(); move++) {
            Map<String, String> told = new TreeMap<>();
            for (Body body : habitat.bodies()) {
                int milliJ = habitat.routes(body).costs().milliJ(move);
                if (milliJ != MoveCosts.IMPOSSIBLE) {
                    told.put("mj:" + body.name(), Integer.toString(milliJ));
                }
            }
            if (!told.isEmpty()) {
                told.put("mode", graph.mode(move).word());
                expected.put(expected.size() + ": " + graph.from(move) + ">" + graph.to(move), told);
            }
        }
        assertTrue(expected.size() > 100, "moves = " + expected.size());
        return expected;
    }

    private static List<CSVRecord> rows(CsvTable table) throws IOException {
        CSVFormat format = CSVFormat.RFC4180
                .builder()
                .setHeader()
                .setSkipHeaderRecord(true)
                .get();
        try (CSVParser parser = CSVParser.parse(new StringReader(table.text()), format)) {
            return parser.getRecords();
        }
    }
}
