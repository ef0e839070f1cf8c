package limbway.model.shade;

import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;

import limbway.model.enclosure.Bounds;
import limbway.model.enclosure.Building;
import limbway.model.enclosure.Cover;
import limbway.model.enclosure.CoverKind;
import limbway.model.enclosure.Crown;
import limbway.model.enclosure.Enclosure;
import limbway.model.enclosure.Foliage;
import limbway.model.enclosure.Ground;
import limbway.model.enclosure.Platform;
import limbway.model.enclosure.Shading;
import limbway.model.enclosure.Site;
import limbway.model.geometry.Facet;
import limbway.model.geometry.Outline;
import limbway.model.geometry.Point;
import limbway.model.geometry.Terrain;

/** Yards at random: six decks, three to five opaque sails near decks, two to four thick trees, two long walls. */
final class RandomShadeYard {

    static final double EAST_M = 30;
    static final double NORTH_M = 20;
    private static final int DECKS = 6;
    /** So thick that a crown lets no light through. */
    private static final Foliage OPAQUE = new Foliage(200, Optional.empty());

    private final SplittableRandom chance;

    private RandomShadeYard(long seed) {
        chance = new SplittableRandom(seed);
    }

    static Enclosure of(long seed, double latitudeDeg) {
        return new RandomShadeYard(seed).build(latitudeDeg);
    }

    private Enclosure build(double latitudeDeg) {
        List<Platform> decks = new ArrayList<>();
        for (int i = 0; i < DECKS; i++) {
            double x = between(3, EAST_M - 5);
            double y = between(3, NORTH_M - 5);
            decks.add(new Platform("deck-" + i, Outline.rectangle(x, y, x + 2, y + 1.5), between(2, 6)));
        }
        return new Enclosure(
                new Site(latitudeDeg, 0, ZoneOffset.UTC),
                new Ground(Outline.rectangle(0, 0, EAST_M, NORTH_M), "grass", List.of(), Terrain.LEVEL),
                List.of(),
                decks,
                trees(),
                List.of(),
                Bounds.NONE,
                new Shading(sails(decks), walls(), List.of()),
                List.of());
    }

    private List<Cover> sails(List<Platform> decks) {
        List<Cover> sails = new ArrayList<>();
        int count = chance.nextInt(3, 6);
        for (int i = 0; i < count; i++) {
            Point over = decks.get(i).centre();
            double x = over.xM() + between(-1, 1);
            double y = over.yM() + between(-1, 1);
            double z = over.zM() + between(1, 3);
            double a = between(1.5, 3.5);
            double b = between(1.5, 3.5);
            sails.add(new Cover(
                    "sail-" + i,
                    CoverKind.SAIL,
                    new Facet(List.of(
                            new Point(x - a, y - b, z),
                            new Point(x + a, y - b, z),
                            new Point(x + a, y + b, z),
                            new Point(x - a, y + b, z))),
                    0));
        }
        return sails;
    }

    private List<Crown> trees() {
        List<Crown> trees = new ArrayList<>();
        int count = chance.nextInt(2, 5);
        for (int i = 0; i < count; i++) {
            Point foot = new Point(between(0, EAST_M), between(0, NORTH_M), 0);
            trees.add(new Crown("tree-" + i, "", foot, between(1.5, 3.5), between(2, 4), between(7, 12), OPAQUE));
        }
        return trees;
    }

    /** One wall along the north or south, one along the east or west. */
    private List<Building> walls() {
        double y = chance.nextBoolean() ? -1 : NORTH_M + 0.7;
        double x = chance.nextBoolean() ? -1 : EAST_M + 0.7;
        double fromX = between(0, 10);
        double fromY = between(0, 5);
        return List.of(
                new Building("long", Outline.rectangle(fromX, y, fromX + 20, y + 0.3), 0, between(4, 9)),
                new Building("short", Outline.rectangle(x, fromY, x + 0.3, fromY + 15), 0, between(4, 9)));
    }

    private double between(double low, double high) {
        return low + (high - low) * chance.nextDouble();
    }
}
