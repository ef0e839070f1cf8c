package limbway.sim.habitat;

import java.time.Month;
import java.time.MonthDay;

import limbway.model.enclosure.Enclosure;
import limbway.model.geometry.Point;
import limbway.model.shade.ShadeScene;
import limbway.model.shade.ShadeSettings;

/**
 * What can be seen of what in an enclosure, and how much hangs over a place, on Midsummer Day, when trees are in leaf.
 *
 * <p>Somebody sees a point if at least half of the light comes through on the straight way from it: a pane and the usual
 * mesh hide nothing, a deck, a wall, a thick crown and a dense sail do. Both numbers are assumptions.
 */
final class Sights {

    /** Eyes of an animal, and what is looked for of it, above the hold that it sits on [m]. Assumption. */
    static final double EYE_M = 0.5;

    private static final double LEAST_LIGHT = 0.5;

    private final ShadeScene scene;
    private final int season;

    Sights(Enclosure enclosure) {
        scene = ShadeScene.of(enclosure, ShadeSettings.standard());
        Month midsummer = enclosure.site().latitudeDeg() < 0 ? Month.DECEMBER : Month.JUNE;
        season = scene.season(MonthDay.of(midsummer, 21));
    }

    static Point eye(Point hold) {
        return hold.atHeight(hold.zM() + EYE_M);
    }

    boolean sees(Point from, Point to) {
        return scene.between(from, to, season) >= LEAST_LIGHT;
    }

    /** Share of the light of the sky that is kept off a level surface. */
    double cover(Point place) {
        return 1 - scene.sky(place.xM(), place.yM(), place.zM(), season);
    }
}
