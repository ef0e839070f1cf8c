package limbway.model.shade;

import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

import limbway.model.enclosure.Bounds;
import limbway.model.enclosure.Cover;
import limbway.model.enclosure.CoverKind;
import limbway.model.enclosure.Crown;
import limbway.model.enclosure.Enclosure;
import limbway.model.enclosure.Ground;
import limbway.model.enclosure.Material;
import limbway.model.enclosure.Platform;
import limbway.model.enclosure.Shading;
import limbway.model.enclosure.Site;
import limbway.model.enclosure.Support;
import limbway.model.enclosure.SupportKind;
import limbway.model.geometry.Facet;
import limbway.model.geometry.Outline;
import limbway.model.geometry.Point;
import limbway.model.geometry.Polyline;

/** Platforms among many casters at one density, thrown at random: two fifths sheets, two fifths members, a fifth crowns. */
public final class CrowdedYard {

    private static final double GROUND_M2_PER_CASTER = 10;

    private CrowdedYard() {}

    /**
     * A yard.
     *
     * @param platforms number of platforms, spread over the yard; each casts shade as well
     * @param casters number of other casters
     * @param seed of their places
     * @return an enclosure at 1.5 degrees north
     */
    public static Enclosure of(int platforms, int casters, long seed) {
        double sideM = Math.sqrt(casters * GROUND_M2_PER_CASTER);
        SplittableRandom chance = new SplittableRandom(seed);
        List<Platform> decks = new ArrayList<>();
        for (int i = 0; i < platforms; i++) {
            double x = chance.nextDouble(2, sideM - 2);
            double y = chance.nextDouble(2, sideM - 2);
            decks.add(
                    new Platform("deck-" + i, Outline.rectangle(x - 1, y - 1, x + 1, y + 1), chance.nextDouble(2, 6)));
        }
        List<Cover> covers = new ArrayList<>();
        List<Support> supports = new ArrayList<>();
        List<Crown> crowns = new ArrayList<>();
        for (int i = 0; i < casters; i++) {
            Point p = new Point(chance.nextDouble(sideM), chance.nextDouble(sideM), chance.nextDouble(3, 9));
            Point along =
                    new Point(chance.nextDouble(-1.5, 1.5), chance.nextDouble(-1.5, 1.5), chance.nextDouble(-1, 1));
            switch (i % 5) {
                case 0, 1 -> covers.add(new Cover("cover-" + i, CoverKind.SAIL, facet(p, along), i % 2 == 0 ? 0 : 0.3));
                case 2, 3 ->
                    supports.add(new Support(
                            "member-" + i,
                            SupportKind.BEAM,
                            new Polyline(List.of(p, p.plus(along.times(1 + 1 / along.lengthM())))),
                            0.06,
                            Material.TIMBER));
                default -> crowns.add(new Crown("tree-" + i, "", p.atHeight(0), 1.2, 3, 6));
            }
        }
        return new Enclosure(
                new Site(1.5, 110.5, ZoneOffset.ofHours(8)),
                new Ground(Outline.rectangle(0, 0, sideM, sideM), "grass", List.of()),
                supports,
                decks,
                crowns,
                List.of(),
                Bounds.NONE,
                new Shading(covers, List.of(), List.of()),
                List.of());
    }

    private static Facet facet(Point p, Point along) {
        Point across = new Point(-along.yM(), along.xM(), 0);
        return new Facet(List.of(p, p.plus(along), p.plus(along).plus(across), p.plus(across)));
    }
}
