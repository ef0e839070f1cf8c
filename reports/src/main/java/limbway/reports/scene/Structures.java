package limbway.reports.scene;

import java.util.ArrayList;
import java.util.List;

import limbway.model.enclosure.Crown;
import limbway.model.enclosure.Enclosure;
import limbway.model.enclosure.Ground;
import limbway.model.enclosure.Obstacle;
import limbway.model.enclosure.Panel;
import limbway.model.enclosure.Platform;
import limbway.model.enclosure.PlatformKind;
import limbway.model.enclosure.Resource;
import limbway.model.enclosure.Support;
import limbway.model.geometry.Corner;
import limbway.model.geometry.Polyline;

/** What animals move on and what they go to, as nodes. */
final class Structures {

    /** Drawn thickness; an enclosure says where the surface is, not how thick the boards are. */
    private static final double BOARD_M = 0.06;

    private static final double WEBBING_M = 0.02;

    /** Drawn height of an area that cannot be walked over; only its outline is known. */
    private static final double OBSTACLE_M = 0.1;

    private Structures() {}

    static List<SceneNode> groups(Enclosure enclosure, Roundness round) {
        return List.of(
                SceneNode.group("ground", List.of(ground(enclosure))),
                SceneNode.group(
                        "obstacles",
                        enclosure.ground().obstacles().stream()
                                .map(obstacle -> obstacle(obstacle, enclosure.ground()))
                                .toList()),
                SceneNode.group(
                        "supports",
                        enclosure.supports().stream()
                                .map(support -> support(support, round))
                                .toList()),
                SceneNode.group(
                        "platforms",
                        enclosure.platforms().stream().map(Structures::platform).toList()),
                SceneNode.group(
                        "crowns",
                        enclosure.crowns().stream()
                                .map(crown -> crown(crown, Finish.CROWN, round))
                                .toList()),
                SceneNode.group(
                        "panels",
                        enclosure.panels().stream().map(Structures::panel).toList()),
                SceneNode.group(
                        "resources",
                        enclosure.resources().stream().map(Structures::resource).toList()));
    }

    private static SceneNode ground(Enclosure enclosure) {
        Ground ground = enclosure.ground();
        Mesh mesh = GroundSheet.of(ground, enclosure.bounds().barriers());
        return SceneNode.thing("ground", "ground", new Part(mesh, Finish.GROUND))
                .telling("surface", ground.surface());
    }

    private static SceneNode obstacle(Obstacle obstacle, Ground ground) {
        List<Double> heightsM = new ArrayList<>();
        for (Corner corner : obstacle.outline().corners()) {
            heightsM.add(ground.terrain().isLevel() ? 0 : ground.terrain().heightM(corner.xM(), corner.yM()));
        }
        double lowM = heightsM.stream().mapToDouble(z -> z).min().orElse(0);
        double highM = heightsM.stream().mapToDouble(z -> z).max().orElse(0);
        Mesh block = Prism.of(obstacle.outline().toPolygon(), lowM, highM + OBSTACLE_M);
        return SceneNode.thing("obstacle", obstacle.id(), new Part(block, Finish.OBSTACLE));
    }

    private static SceneNode support(Support support, Roundness round) {
        Mesh rod = Tube.of(support.axis(), round.rodSides(), alongM -> support.diameterAtM(alongM) / 2);
        return SceneNode.thing(support.kind().word(), support.id(), new Part(rod, Finish.of(support.material())))
                .telling("material", support.material().word())
                .telling("diameter_m", support.diameterM())
                .telling("tip_diameter_m", support.tipDiameterM());
    }

    private static SceneNode platform(Platform platform) {
        double thickM = platform.kind() == PlatformKind.HAMMOCK ? WEBBING_M : BOARD_M;
        Mesh slab = Prism.of(platform.outline().toPolygon(), platform.zM() - thickM, platform.zM());
        return SceneNode.thing(platform.kind().word(), platform.id(), new Part(slab, Finish.of(platform.kind())));
    }

    static SceneNode crown(Crown crown, Finish finish, Roundness round) {
        Polyline axis = Polyline.straight(
                crown.foot().atHeight(crown.baseZM()), crown.foot().atHeight(crown.topZM()));
        Mesh branches = Tube.of(axis, round.crownSides(), alongM -> crown.radiusM());
        return SceneNode.thing("crown", crown.id(), new Part(branches, finish)).telling("trunk", crown.trunk());
    }

    private static SceneNode panel(Panel panel) {
        return SceneNode.thing(
                        panel.kind().word(),
                        panel.id(),
                        new Part(Sheet.of(panel.facet()), Finish.of(panel.kind())),
                        new Part(Lines.of(panel.facet().edges()), Finish.EDGE))
                .telling("opening_m", panel.openingM())
                .telling("strand_diameter_m", panel.strandDiameterM());
    }

    private static SceneNode resource(Resource resource) {
        return SceneNode.thing(
                        resource.kind().word(),
                        resource.id(),
                        new Part(Marker.at(resource.at()), Finish.of(resource.kind())))
                .telling("stalls", resource.stalls());
    }
}
