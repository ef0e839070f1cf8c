package limbway.scenarios.layout;

import java.util.ArrayList;
import java.util.List;

import limbway.model.enclosure.HotWire;
import limbway.model.geometry.Polyline;
import limbway.model.geometry.Terrain;
import limbway.scenarios.entry.HotWireEntry;
import limbway.scenarios.entry.HotWireEntry.Planting;
import limbway.scenarios.entry.HotWireEntry.Strand;
import limbway.scenarios.problem.Problems;

/** Puts live wire into space. */
final class HotWireBuilder {

    private final Terrain terrain;
    private final GroundRules rules;
    private final Problems problems;

    HotWireBuilder(Terrain terrain, GroundRules rules, Problems problems) {
        this.terrain = terrain;
        this.rules = rules;
        this.problems = problems;
    }

    List<HotWire> all(List<HotWireEntry> entries) {
        List<HotWire> wires = new ArrayList<>();
        for (HotWireEntry entry : entries) {
            if (entry instanceof Strand strand) {
                addStrand(strand, wires);
            } else {
                addPlanting((Planting) entry, wires);
            }
        }
        return wires;
    }

    private void addStrand(Strand strand, List<HotWire> wires) {
        if (rules.areInside(strand.linePlace(), strand.what(), strand.line())) {
            wires.add(new HotWire.Strand(strand.id(), new Polyline(strand.line()), strand.clearanceM()));
        }
    }

    private void addPlanting(Planting planting, List<HotWire> wires) {
        if (rules.overlaps(planting.outlinePlace(), planting.what(), planting.outline())) {
            Levels.standing(
                            planting.bottomM(),
                            planting.topM(),
                            planting.outline().corners(),
                            terrain,
                            planting.place(),
                            planting.what(),
                            problems)
                    .ifPresent(levels -> wires.add(new HotWire.Planting(
                            planting.id(), planting.outline(), levels.baseM(), levels.topM(), planting.clearanceM())));
        }
    }
}
