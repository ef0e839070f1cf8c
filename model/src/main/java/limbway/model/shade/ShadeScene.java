package limbway.model.shade;

import java.time.MonthDay;
import java.util.ArrayList;
import java.util.List;

import limbway.model.enclosure.Enclosure;
import limbway.model.enclosure.Horizon;
import limbway.model.geometry.Point;

/** An enclosure made ready to be asked how much light reaches a point. Never changes; many threads may ask it. */
public final class ShadeScene {

    /** Directions of the sky in which light is looked for: rings of equal weight on a level surface. */
    private static final int RINGS = 8;

    private static final int SECTORS = 24;
    private static final List<Point> SKY = sky();

    private final Caster[] casters;
    private final boolean[] isOpaque;
    private final boolean[] isSlender;
    private final Boxes boxes;
    private final LeafStates states;
    private final Horizon horizon;

    private ShadeScene(Casters casters, Horizon horizon) {
        this.casters = casters.all().toArray(Caster[]::new);
        this.isOpaque = new boolean[this.casters.length];
        this.isSlender = new boolean[this.casters.length];
        for (int i = 0; i < isOpaque.length; i++) {
            isOpaque[i] = this.casters[i].isOpaque();
            isSlender[i] = this.casters[i].isSlender();
        }
        this.boxes = new Boxes(casters.all().stream().map(Caster::box).toList());
        this.states = casters.states();
        this.horizon = horizon;
    }

    /**
     * Takes an enclosure apart.
     *
     * @param enclosure what stands there
     * @param settings what shade depends on besides shape
     * @return a scene
     */
    public static ShadeScene of(Enclosure enclosure, ShadeSettings settings) {
        return new ShadeScene(new Casters(enclosure, settings), enclosure.site().horizon());
    }

    /**
     * The state of the leaves on a day.
     *
     * @param day day of the year
     * @return a number to ask with
     */
    public int season(MonthDay day) {
        return states.on(day);
    }

    /**
     * How much of the direct sunlight reaches a point.
     *
     * @param x metres east
     * @param y metres north
     * @param z metres up
     * @param sun direction towards the middle of the sun, of length 1
     * @param season state of the leaves
     * @return share, 0 to 1; 0 where the sun stands below the horizon
     */
    public double beam(double x, double y, double z, Point sun, int season) {
        if (isBelowHorizon(sun)) {
            return 0;
        }
        return boxes.through(casters, x, y, z, sun.xM(), sun.yM(), sun.zM(), season);
    }

    /**
     * How much of the light of an evenly bright sky reaches a level surface at a point.
     *
     * @param x metres east
     * @param y metres north
     * @param z metres up
     * @param season state of the leaves
     * @return share, 0 to 1
     */
    public double sky(double x, double y, double z, int season) {
        double sum = 0;
        for (Point towards : SKY) {
            sum += beam(x, y, z, towards, season);
        }
        return sum / SKY.size();
    }

    /**
     * How much light passes on the straight line between two points. Supports hide nothing, as they are seldom broader than
     * an animal.
     *
     * @param from one point
     * @param to the other, elsewhere
     * @param season state of the leaves
     * @return share, 0 to 1; what lies in a point itself, such as the deck that it is on, takes nothing
     */
    public double between(Point from, Point to, int season) {
        Point way = to.minus(from);
        double lengthM = way.lengthM();
        if (lengthM == 0) {
            return 1;
        }
        Point d = way.times(1 / lengthM);
        int[] met = new int[casters.length];
        int n = boxes.along(new double[] {from.xM(), from.yM(), from.zM()}, new double[3], d.xM(), d.yM(), d.zM(), met);
        double light = 1;
        for (int i = 0; i < n && light > 0; i++) {
            light *= casters[met[i]].before(from.xM(), from.yM(), from.zM(), d.xM(), d.yM(), d.zM(), lengthM, season);
        }
        return light;
    }

    private static List<Point> sky() {
        List<Point> directions = new ArrayList<>();
        for (int ring = 0; ring < RINGS; ring++) {
            double altitude = StrictMath.asin(Math.sqrt((ring + 0.5) / RINGS));
            for (int sector = 0; sector < SECTORS; sector++) {
                double azimuth = 2 * Math.PI * (sector + (ring % 2) / 2.0) / SECTORS;
                double level = StrictMath.cos(altitude);
                directions.add(new Point(
                        level * StrictMath.sin(azimuth), level * StrictMath.cos(azimuth), StrictMath.sin(altitude)));
            }
        }
        return List.copyOf(directions);
    }

    /** Whether the land around hides a direction. */
    boolean isBelowHorizon(Point sun) {
        if (sun.zM() <= 0) {
            return true;
        }
        double azimuth = Math.toDegrees(StrictMath.atan2(sun.xM(), sun.yM()));
        double altitude = Math.toDegrees(StrictMath.asin(Math.min(1, sun.zM())));
        return altitude < horizon.altitudeDeg(azimuth < 0 ? azimuth + 360 : azimuth);
    }

    /** Number of casters. */
    int size() {
        return casters.length;
    }

    /**
     * All casters that a bundle of rays towards the sun may meet: those that let nothing through come first, pieces of
     * supports last, in an order that depends on the scene and the bundle alone.
     */
    int along(double[] middle, double[] half, Point sun, int[] found) {
        int n = boxes.along(middle, half, sun.xM(), sun.yM(), sun.zM(), found);
        int slender = n;
        for (int i = n - 1; i >= 0; i--) {
            if (isSlender[found[i]]) {
                swap(found, i, --slender);
            }
        }
        int opaque = 0;
        for (int i = 0; i < slender; i++) {
            if (isOpaque[found[i]]) {
                swap(found, i, opaque++);
            }
        }
        return n;
    }

    /**
     * The beam at a point, past some casters; anything up to a limit that settles the question may come back. An opaque
     * caster that was met moves to the front, where the next point of the platform meets it first: it changes the time
     * that the answer takes, never the answer, which is nothing.
     */
    double through(double x, double y, double z, Point sun, int season, int[] found, int n, double enough) {
        double beam = 1;
        for (int i = 0; i < n && beam > enough; i++) {
            int number = found[i];
            beam *= casters[number].through(x, y, z, sun.xM(), sun.yM(), sun.zM(), season);
            if (beam == 0 && isOpaque[number]) {
                swap(found, 0, i);
            }
        }
        return beam;
    }

    private static void swap(int[] numbers, int i, int j) {
        int kept = numbers[i];
        numbers[i] = numbers[j];
        numbers[j] = kept;
    }

    /** The casters, for comparison. */
    List<Caster> casters() {
        return List.of(casters);
    }
}
