package limbway.scenarios.layout;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;

import limbway.model.enclosure.Barrier;
import limbway.model.geometry.Corner;
import limbway.model.geometry.Outline;
import limbway.model.geometry.Point;
import limbway.model.geometry.Terrain;
import limbway.scenarios.entry.BarrierEntry;
import limbway.scenarios.entry.BarrierEntry.ByLine;
import limbway.scenarios.entry.BarrierEntry.ByOutline;
import limbway.scenarios.entry.BarrierEntry.Hollow;
import limbway.scenarios.entry.BarrierEntry.Standing;
import limbway.scenarios.problem.Problem;
import limbway.scenarios.problem.Problems;

/** Puts walls, panes and water into space. */
final class BarrierBuilder {

    private final Terrain terrain;
    private final GroundRules rules;
    private final Problems problems;

    BarrierBuilder(Terrain terrain, GroundRules rules, Problems problems) {
        this.terrain = terrain;
        this.rules = rules;
        this.problems = problems;
    }

    List<Barrier> all(List<BarrierEntry> entries) {
        List<Barrier> barriers = new ArrayList<>();
        for (BarrierEntry entry : entries) {
            Optional<Outline> footprint = footprint(entry);
            Optional<Levels> levels = levels(entry);
            if (footprint.isPresent() && levels.isPresent()) {
                barriers.add(new Barrier(
                        entry.id(),
                        entry.kind(),
                        footprint.get(),
                        levels.get().baseM(),
                        levels.get().topM()));
            }
        }
        return barriers;
    }

    private Optional<Levels> levels(BarrierEntry entry) {
        List<Corner> corners = entry.plan().corners();
        if (entry.upright() instanceof Hollow hollow) {
            double surfaceM = hollow.surfaceM().orElseGet(() -> Levels.lowestGroundM(corners, terrain));
            return Optional.of(new Levels(surfaceM - hollow.depthM(), surfaceM));
        }
        Standing standing = (Standing) entry.upright();
        return Levels.standing(
                standing.bottomM(), standing.topM(), corners, terrain, entry.place(), entry.what(), problems);
    }

    private Optional<Outline> footprint(BarrierEntry entry) {
        if (entry.plan() instanceof ByOutline stated) {
            return rules.overlaps(entry.planPlace(), entry.what(), stated.outline())
                    ? Optional.of(stated.outline())
                    : Optional.empty();
        }
        ByLine line = (ByLine) entry.plan();
        List<Point> points =
                line.corners().stream().map(corner -> corner.atHeight(0)).toList();
        return rules.areInside(entry.planPlace(), entry.what(), points) ? widened(entry, line) : Optional.empty();
    }

    private Optional<Outline> widened(BarrierEntry entry, ByLine line) {
        Coordinate[] course = line.corners().stream()
                .map(corner -> new Coordinate(corner.xM(), corner.yM()))
                .toArray(Coordinate[]::new);
        BufferParameters shape = new BufferParameters(
                BufferParameters.DEFAULT_QUADRANT_SEGMENTS,
                BufferParameters.CAP_FLAT,
                BufferParameters.JOIN_MITRE,
                BufferParameters.DEFAULT_MITRE_LIMIT);
        Geometry area = BufferOp.bufferOp(new GeometryFactory().createLineString(course), line.thicknessM() / 2, shape);
        if (area instanceof Polygon polygon && !polygon.isEmpty() && polygon.getNumInteriorRing() == 0) {
            Coordinate[] ring = polygon.getExteriorRing().getCoordinates();
            return Optional.of(new Outline(Arrays.stream(ring)
                    .limit(ring.length - 1L)
                    .map(at -> new Corner(at.x, at.y))
                    .toList()));
        }
        boolean isPoint = area.isEmpty();
        problems.add(Problem.at(
                        entry.planPlace(),
                        "line of " + entry.what() + (isPoint ? " has no length" : " closes a ring or crosses itself"))
                .mend(isPoint ? "let it end somewhere else" : "divide it into two that meet, each with its own name"));
        return Optional.empty();
    }
}
