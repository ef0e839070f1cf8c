package limbway.model.scene;

import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

import limbway.model.enclosure.Bearing;
import limbway.model.enclosure.Crown;
import limbway.model.enclosure.Enclosure;
import limbway.model.enclosure.Ground;
import limbway.model.enclosure.Material;
import limbway.model.enclosure.Obstacle;
import limbway.model.enclosure.Platform;
import limbway.model.enclosure.Resource;
import limbway.model.enclosure.ResourceKind;
import limbway.model.enclosure.Site;
import limbway.model.enclosure.Support;
import limbway.model.enclosure.SupportKind;
import limbway.model.geometry.Outline;
import limbway.model.geometry.Point;
import limbway.model.geometry.Polyline;
import limbway.model.geometry.Terrain;

/** Draws an enclosure for a test, in metres. */
public final class Scene {

    /** What is drawn here bears every animal, however thin it is. */
    private static final Bearing BEARS_ALL = new Bearing(OptionalDouble.empty(), OptionalDouble.of(1000), false);

    private final Outline outline;
    private Terrain terrain = Terrain.LEVEL;
    private final List<Obstacle> obstacles = new ArrayList<>();
    private final List<Support> supports = new ArrayList<>();
    private final List<Platform> platforms = new ArrayList<>();
    private final List<Crown> crowns = new ArrayList<>();
    private final List<Resource> resources = new ArrayList<>();

    private Scene(Outline outline) {
        this.outline = outline;
    }

    /** Level ground from (0, 0) to the given corner. */
    public static Scene yard(double eastM, double northM) {
        return new Scene(Outline.rectangle(0, 0, eastM, northM));
    }

    /** Level ground of any outline. */
    public static Scene on(Outline outline) {
        return new Scene(outline);
    }

    /** Gives the ground heights. */
    public Scene terrain(Terrain heights) {
        terrain = heights;
        return this;
    }

    public Scene pole(String id, double x, double y, double heightM) {
        return add(id, SupportKind.POLE, 0.08, new Point(x, y, 0), new Point(x, y, heightM));
    }

    public Scene rope(String id, Point... points) {
        return add(id, SupportKind.ROPE, 0.05, points);
    }

    public Scene beam(String id, double diameterM, Point... points) {
        return add(id, SupportKind.BEAM, diameterM, points);
    }

    public Scene add(Support support) {
        supports.add(support);
        return this;
    }

    public Scene deck(String id, double x0, double y0, double x1, double y1, double zM) {
        platforms.add(new Platform(id, Outline.rectangle(x0, y0, x1, y1), zM));
        return this;
    }

    public Scene crown(String id, double x, double y, double radiusM, double baseZM, double topZM) {
        crowns.add(new Crown(id, "", new Point(x, y, 0), radiusM, baseZM, topZM));
        return this;
    }

    public Scene rock(String id, double x0, double y0, double x1, double y1) {
        obstacles.add(new Obstacle(id, Outline.rectangle(x0, y0, x1, y1)));
        return this;
    }

    public Scene food(String id, double x, double y, double z) {
        return resource(id, ResourceKind.FOOD, new Point(x, y, z), "");
    }

    public Scene resource(String id, ResourceKind kind, Point at, String on) {
        resources.add(new Resource(id, kind, at, on, 1));
        return this;
    }

    public Enclosure build() {
        return new Enclosure(
                new Site(1.5, 110.5, ZoneOffset.ofHours(8)),
                new Ground(outline, "grass", obstacles, terrain),
                supports,
                platforms,
                crowns,
                resources);
    }

    private Scene add(String id, SupportKind kind, double diameterM, Point... points) {
        supports.add(
                new Support(id, kind, new Polyline(List.of(points)), diameterM, diameterM, Material.TIMBER, BEARS_ALL));
        return this;
    }
}
