package limbway.model.shade;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;

import limbway.model.enclosure.Barrier;
import limbway.model.enclosure.BarrierKind;
import limbway.model.enclosure.Bounds;
import limbway.model.enclosure.Building;
import limbway.model.enclosure.Cover;
import limbway.model.enclosure.CoverKind;
import limbway.model.enclosure.Crown;
import limbway.model.enclosure.Enclosure;
import limbway.model.enclosure.Foliage;
import limbway.model.enclosure.Panel;
import limbway.model.enclosure.PanelKind;
import limbway.model.enclosure.Shading;
import limbway.model.geometry.Facet;
import limbway.model.geometry.Outline;
import limbway.model.geometry.Point;
import limbway.model.scene.Scene;

/** Yards full of things that cast shade, at random from a seed. */
public final class RandomShade {

    private final SplittableRandom chance;
    private final double sideM;

    private RandomShade(long seed, double sideM) {
        this.chance = new SplittableRandom(seed);
        this.sideM = sideM;
    }

    /**
     * A yard at 1.5 degrees north: two fifths sails and roofs, two fifths beams, one fifth crowns.
     *
     * @param seed of chance
     * @param sideM side of the square yard [m]
     * @param platforms decks of 2 m by 2 m, 1 to 4 m up
     * @param occluders what stands around them besides
     */
    public static Enclosure yard(long seed, double sideM, int platforms, int occluders) {
        return new RandomShade(seed, sideM).mixed(platforms, occluders);
    }

    /** The same with walls, glass, mesh, buildings and trees of a season. */
    static Enclosure everything(long seed) {
        RandomShade random = new RandomShade(seed, 30);
        Enclosure some = random.mixed(8, 60);
        List<Barrier> barriers = new ArrayList<>();
        List<Building> buildings = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            barriers.add(new Barrier("wall-" + i, BarrierKind.WALL, random.footprint(), 0, random.within(2, 6)));
            barriers.add(new Barrier("pane-" + i, BarrierKind.GLASS, random.footprint(), 0, random.within(2, 6)));
            buildings.add(new Building("house-" + i, random.footprint(), 0, random.within(3, 8)));
        }
        barriers.add(new Barrier("pool", BarrierKind.WATER, random.footprint(), 0, 0.5));
        List<Panel> panels = new ArrayList<>();
        for (int i = 0; i < 6; i++) {
            panels.add(new Panel("mesh-" + i, PanelKind.MESH, random.facet(3), 0.05, 0.004, OptionalDouble.empty()));
        }
        Shading shading =
                new Shading(some.shading().covers(), buildings, some.shading().neighbours());
        return some.withPanels(panels)
                .withBounds(new Bounds(barriers, List.of(), List.of()))
                .withShading(shading);
    }

    private Enclosure mixed(int platforms, int occluders) {
        Scene scene = Scene.yard(sideM, sideM);
        for (int i = 0; i < platforms; i++) {
            double x = within(1, sideM - 3);
            double y = within(1, sideM - 3);
            scene.deck("deck-" + i, x, y, x + 2, y + 2, within(1, 4));
        }
        List<Cover> covers = new ArrayList<>();
        List<Crown> crowns = new ArrayList<>();
        for (int i = 0; i < occluders; i++) {
            switch (i % 5) {
                case 0 -> covers.add(new Cover("sail-" + i, CoverKind.SAIL, facet(2), within(0.05, 0.5)));
                case 1 -> covers.add(new Cover("roof-" + i, CoverKind.ROOF, facet(2), 0));
                case 2 -> crowns.add(crown(i));
                default -> {
                    Point a = new Point(within(1, sideM - 1), within(1, sideM - 1), within(2, 7));
                    Point along = new Point(within(-2, 2), within(-2, 2), within(-1, 1));
                    scene.beam("beam-" + i, within(0.03, 0.3), a, a.plus(along));
                }
            }
        }
        return scene.build().withShading(new Shading(covers, List.of(), crowns));
    }

    private Crown crown(int i) {
        Point foot = new Point(within(0, sideM), within(0, sideM), 0);
        double base = within(2, 5);
        Optional<Foliage.Season> season = i % 2 == 0
                ? Optional.empty()
                : Optional.of(new Foliage.Season(java.time.MonthDay.of(4, 15), java.time.MonthDay.of(11, 5)));
        return new Crown(
                "crown-" + i, "", foot, within(1, 2.5), base, base + within(1, 4), new Foliage(within(1, 6), season));
    }

    /** A triangle or a tilted four-sided sheet, three to eight metres up. */
    Facet facet(double sizeM) {
        Point at = new Point(within(0, sideM), within(0, sideM), within(3, 8));
        Point u = new Point(within(0.5, sizeM), within(-sizeM, sizeM), within(-1, 1));
        Point v = new Point(within(-sizeM, -0.5), within(0.5, sizeM), within(-1, 1));
        return chance.nextBoolean()
                ? new Facet(List.of(at, at.plus(u), at.plus(v)))
                : new Facet(List.of(at, at.plus(u), at.plus(u).plus(v), at.plus(v)));
    }

    private Outline footprint() {
        double x = within(0, sideM - 4);
        double y = within(0, sideM - 4);
        return Outline.rectangle(x, y, x + within(0.2, 4), y + within(0.2, 4));
    }

    private double within(double least, double most) {
        return chance.nextDouble(least, most);
    }
}
