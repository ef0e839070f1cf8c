package limbway.reports.scene;

import java.util.List;

import limbway.model.enclosure.Building;
import limbway.model.enclosure.Cover;
import limbway.model.enclosure.Shading;

/** What stands for its shade alone, as nodes. */
final class Shades {

    private Shades() {}

    static List<SceneNode> groups(Shading shading, Roundness round) {
        return List.of(
                SceneNode.group(
                        "covers", shading.covers().stream().map(Shades::cover).toList()),
                SceneNode.group(
                        "buildings",
                        shading.buildings().stream().map(Shades::building).toList()),
                SceneNode.group(
                        "trees beside",
                        shading.neighbours().stream()
                                .map(crown -> Structures.crown(crown, Finish.NEIGHBOUR, round))
                                .toList()));
    }

    private static SceneNode cover(Cover cover) {
        return SceneNode.thing(
                        cover.kind().word(),
                        cover.id(),
                        new Part(Sheet.of(cover.facet()), Finish.of(cover.kind())),
                        new Part(Lines.of(cover.facet().edges()), Finish.EDGE))
                .telling("transmittance", cover.transmittance());
    }

    private static SceneNode building(Building building) {
        Mesh block = Prism.of(building.footprint().toPolygon(), building.baseZM(), building.topZM());
        return SceneNode.thing("building", building.id(), new Part(block, Finish.BUILDING))
                .telling("base_z_m", building.baseZM())
                .telling("top_z_m", building.topZM());
    }
}
