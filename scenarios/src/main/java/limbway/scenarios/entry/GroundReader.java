package limbway.scenarios.entry;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import limbway.model.enclosure.Ground;
import limbway.model.enclosure.Obstacle;
import limbway.model.geometry.Corner;
import limbway.model.geometry.Outline;
import limbway.model.geometry.Terrain;
import limbway.scenarios.format.MappingNode;
import limbway.scenarios.problem.Problem;
import limbway.scenarios.problem.Problems;
import limbway.scenarios.problem.Wording;

/** Reads the entry {@code ground}. */
public final class GroundReader {

    private static final int MOST_OBSTACLES = 200;

    /** So that no straight walk of the heaviest body costs more than a move can: 4000 m at 205 kg are 2127 kJ. */
    private static final double WIDEST_M = 4000;

    private final Problems problems;
    private final OutlineReader outlines;
    private final HeightsReader heights;
    private final Values values;

    /**
     * A reader of the ground.
     *
     * @param problems where mistakes go
     */
    public GroundReader(Problems problems) {
        this.problems = problems;
        this.outlines = new OutlineReader(problems);
        this.heights = new HeightsReader(problems);
        this.values = new Values(problems);
    }

    /**
     * Reads the ground.
     *
     * @param node the entry
     * @return the ground, or empty if a problem was added
     */
    public Optional<Ground> read(MappingNode node) {
        Fields fields = Fields.of(node, Form.GROUND, problems);
        Optional<Outline> outline = fields.read("outline", value -> outlines.read(value, "outline of the ground"));
        double wideM = outline.map(GroundReader::widthM).orElse(0.0);
        if (wideM > WIDEST_M) {
            fields.fault(Problem.at(fields.find("outline").orElse(node).place(), "the ground is too wide")
                    .found(Wording.measure(Math.rint(wideM), "m") + " from corner to corner")
                    .allowed("at most " + Wording.measure(WIDEST_M, "m")));
        }
        String surface = fields.words("surface", "what covers the ground, for example grass", "unknown");
        Optional<List<Obstacle>> obstacles = fields.read("obstacles", value -> {
            List<MappingNode> entries = values.mappings(value, "obstacles");
            List<Obstacle> read = new ArrayList<>();
            for (MappingNode entry : entries) {
                obstacle(entry, outline, read).ifPresent(read::add);
            }
            if (entries.size() > MOST_OBSTACLES) {
                problems.add(Problem.at(value.place(), "there are too many obstacles")
                        .found(Integer.toString(entries.size()))
                        .allowed("at most " + MOST_OBSTACLES));
            }
            return read.size() == entries.size() ? Optional.of(read) : Optional.empty();
        });
        Optional<Terrain> terrain = fields.read("heights", value -> heights.read(value, outline));
        return fields.build(() ->
                new Ground(outline.orElseThrow(), surface, obstacles.orElse(List.of()), terrain.orElse(Terrain.LEVEL)));
    }

    private static double widthM(Outline outline) {
        double widest = 0;
        for (Corner one : outline.corners()) {
            for (Corner other : outline.corners()) {
                widest = Math.max(widest, StrictMath.hypot(one.xM() - other.xM(), one.yM() - other.yM()));
            }
        }
        return widest;
    }

    private Optional<Obstacle> obstacle(MappingNode entry, Optional<Outline> ground, List<Obstacle> earlier) {
        Fields fields = Fields.of(entry, Form.OBSTACLE, problems);
        String id = fields.id();
        String what = "outline of " + fields.what();
        Optional<Outline> outline = fields.read("outline", value -> outlines.read(value, what));
        if (earlier.stream().anyMatch(other -> other.id().equals(id))) {
            fields.fault(Problem.at(fields.place(), fields.what() + " has a name that is already used"));
        }
        if (outline.isPresent()
                && ground.isPresent()
                && !ground.get().toPolygon().covers(outline.get().toPolygon())) {
            fields.fault(Problem.at(
                            fields.find("outline").orElse(entry).place(),
                            fields.what() + " reaches beyond the outline of the ground")
                    .mend("move its corners inside, or make the ground larger"));
        }
        return fields.build(() -> new Obstacle(id, outline.orElseThrow()));
    }
}
