package limbway.scenarios.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import limbway.model.enclosure.Panel;
import limbway.model.geometry.Corner;
import limbway.model.geometry.Facet;
import limbway.model.geometry.Point;
import limbway.model.geometry.Terrain;
import limbway.scenarios.entry.PanelEntry;
import limbway.scenarios.entry.PanelEntry.ByCorners;
import limbway.scenarios.entry.PanelEntry.Upright;
import limbway.scenarios.problem.Problems;

/** Puts panels into space. */
final class PanelBuilder {

    private final Terrain terrain;
    private final GroundRules rules;
    private final Problems problems;

    PanelBuilder(Terrain terrain, GroundRules rules, Problems problems) {
        this.terrain = terrain;
        this.rules = rules;
        this.problems = problems;
    }

    List<Panel> all(List<PanelEntry> entries) {
        List<Panel> panels = new ArrayList<>();
        for (PanelEntry entry : entries) {
            corners(entry)
                    .filter(corners -> rules.areInside(entry.shapePlace(), entry.what(), corners))
                    .ifPresent(corners -> panels.add(new Panel(
                            entry.id(),
                            entry.kind(),
                            new Facet(corners),
                            entry.openingM(),
                            entry.strandM(),
                            entry.stiffnessNPerM())));
        }
        return panels;
    }

    private Optional<List<Point>> corners(PanelEntry entry) {
        if (entry.shape() instanceof ByCorners stated) {
            return Optional.of(stated.corners());
        }
        Upright upright = (Upright) entry.shape();
        Corner from = upright.from();
        Corner to = upright.to();
        return Levels.standing(
                        upright.bottomM(),
                        upright.topM(),
                        List.of(from, to),
                        terrain,
                        entry.place(),
                        entry.what(),
                        problems)
                .map(levels -> List.of(
                        from.atHeight(levels.baseM()),
                        to.atHeight(levels.baseM()),
                        to.atHeight(levels.topM()),
                        from.atHeight(levels.topM())));
    }
}
