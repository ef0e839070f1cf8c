package limbway.model.scene;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

import limbway.model.enclosure.Enclosure;
import limbway.model.enclosure.ResourceKind;
import limbway.model.enclosure.Support;
import limbway.model.geometry.Point;

/** A believable yard from a seed: masts, ropes and beams between them, decks, rocks, trees, and resources anywhere. */
public final class RandomEnclosure {

    private static final double EAST_M = 24;
    private static final double NORTH_M = 16;

    private final SplittableRandom chance;
    private final Scene scene = Scene.yard(EAST_M, NORTH_M);
    private final List<Point> masts = new ArrayList<>();

    private RandomEnclosure(long seed) {
        chance = new SplittableRandom(seed);
    }

    /** The enclosure of a seed; the same seed always gives the same one. */
    public static Enclosure of(long seed) {
        return new RandomEnclosure(seed).build();
    }

    /** A straight support of a seed, to be added to an enclosure. */
    public static Support support(long seed) {
        SplittableRandom chance = new SplittableRandom(seed ^ 0x5eed);
        Point a = new Point(chance.nextDouble(1, 23), chance.nextDouble(1, 15), chance.nextDouble(0.5, 6));
        Point b = new Point(chance.nextDouble(1, 23), chance.nextDouble(1, 15), chance.nextDouble(0.5, 6));
        return Scene.yard(1, 1).beam("added", 0.06, a, b).build().supports().get(0);
    }

    private Enclosure build() {
        int rocks = chance.nextInt(0, 4);
        for (int i = 0; i < rocks; i++) {
            double x = chance.nextDouble(2, EAST_M - 6);
            double y = chance.nextDouble(2, NORTH_M - 6);
            scene.rock("rock-" + i, x, y, x + chance.nextDouble(1, 4), y + chance.nextDouble(1, 4));
        }
        int count = chance.nextInt(4, 10);
        for (int i = 0; i < count; i++) {
            Point mast = new Point(
                    chance.nextDouble(1, EAST_M - 1), chance.nextDouble(1, NORTH_M - 1), chance.nextDouble(3, 8));
            masts.add(mast);
            scene.pole("mast-" + i, mast.xM(), mast.yM(), mast.zM());
        }
        for (int i = 0; i + 1 < count; i++) {
            double diameterM = chance.nextBoolean() ? 0.06 : 0.32;
            scene.beam("link-" + i, diameterM, onMast(i), onMast(chance.nextInt(0, 4) == 0 ? 0 : i + 1));
        }
        int decks = chance.nextInt(1, 4);
        for (int i = 0; i < decks; i++) {
            Point mast = masts.get(i % count);
            double zM = chance.nextDouble(1, mast.zM());
            scene.deck("deck-" + i, mast.xM() - 1, mast.yM() - 0.75, mast.xM() + 1, mast.yM() + 0.75, zM);
        }
        int trees = chance.nextInt(0, 4);
        for (int i = 0; i < trees; i++) {
            double baseM = chance.nextDouble(1, 4);
            scene.crown(
                    "crown-" + i,
                    chance.nextDouble(2, EAST_M - 2),
                    chance.nextDouble(2, NORTH_M - 2),
                    chance.nextDouble(0.8, 3),
                    baseM,
                    baseM + chance.nextDouble(1, 4));
        }
        scene.food("hatch", chance.nextDouble(0, EAST_M), chance.nextDouble(0, NORTH_M), 0);
        scene.resource("tray", ResourceKind.FOOD, onMast(0), "mast-0");
        scene.resource("pool", ResourceKind.WATER, onMast(1), "mast-1");
        Point deck = masts.get(0);
        scene.resource("nest", ResourceKind.NEST, new Point(deck.xM() + 0.3, deck.yM(), 0), "deck-0");
        return scene.build();
    }

    private Point onMast(int i) {
        Point mast = masts.get(i);
        return mast.atHeight(chance.nextDouble(0.4, 1) * mast.zM());
    }
}
