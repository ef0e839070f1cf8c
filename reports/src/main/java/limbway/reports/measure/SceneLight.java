package limbway.reports.measure;

import java.util.LinkedHashMap;
import java.util.Map;

import limbway.model.geometry.Point;
import limbway.model.heat.LightReach;
import limbway.model.shade.ShadeScene;

/** The light of a scene under the leaves of one day; what reaches a point from the sky is worked out once. */
final class SceneLight implements LightReach {

    private final ShadeScene scene;
    private final int season;
    private final Map<Point, Double> skies = new LinkedHashMap<>();

    SceneLight(ShadeScene scene, int season) {
        this.scene = scene;
        this.season = season;
    }

    @Override
    public double beam(Point at, Point sunDirection) {
        return scene.beam(at.xM(), at.yM(), at.zM(), sunDirection, season);
    }

    @Override
    public double sky(Point at) {
        return skies.computeIfAbsent(at, point -> scene.sky(point.xM(), point.yM(), point.zM(), season));
    }
}
