package limbway.reports.measure;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BooleanSupplier;

import limbway.model.enclosure.Enclosure;
import limbway.model.enclosure.Ground;
import limbway.model.enclosure.Platform;
import limbway.model.geometry.Corner;
import limbway.model.geometry.Outline;
import limbway.model.geometry.Point;
import limbway.model.light.SunPosition;
import limbway.model.shade.ShadeCalendar;
import limbway.model.shade.ShadeRule;
import limbway.model.shade.ShadeScene;

/**
 * Hours of shade a day on the ground and on each deck, cell by cell: averaged over the year, and on one day.
 *
 * @param day the one day
 * @param daySunH hours with sun on that day
 * @param yearSunH hours with sun a day, averaged over the year
 * @param ground what lies on the ground
 * @param decks one area for each deck and hammock, in the order of the layout
 */
public record ShadeMap(LocalDate day, double daySunH, double yearSunH, Area ground, List<Area> decks) {

    /**
     * A square of the plan.
     *
     * @param xM its middle, metres east
     * @param yM its middle, metres north
     * @param yearH hours of shade a day, averaged over the year
     * @param dayH hours of shade on the one day
     */
    public record Cell(double xM, double yM, double yearH, double dayH) {}

    /**
     * The ground, or one deck.
     *
     * @param name name of the deck; empty for the ground
     * @param sizeM side of its cells [m]
     * @param cells squares whose middle lies on it
     */
    public record Area(String name, double sizeM, List<Cell> cells) {

        /** Keeps a copy of the list. */
        public Area {
            cells = List.copyOf(cells);
        }

        /**
         * Mean over the cells, averaged over the year.
         *
         * @return hours of shade a day
         */
        public double yearH() {
            return cells.stream().mapToDouble(Cell::yearH).average().orElse(0);
        }

        /**
         * Mean over the cells, on the one day.
         *
         * @return hours of shade
         */
        public double dayH() {
            return cells.stream().mapToDouble(Cell::dayH).average().orElse(0);
        }
    }

    /** Every so many days one is looked at for the average of the year. */
    public static final int DAY_STEP = 10;

    private static final int YEAR_STEP_MIN = 30;
    private static final int DAY_STEP_MIN = 15;
    private static final int MOST_GROUND_CELLS = 3000;
    private static final int LEAST_DECK_CELLS = 16;
    private static final double[] SIZES_M = {0.25, 0.5, 1, 2, 5, 10, 20, 50};

    /** So far above a surface the light is looked at, that the surface does not shade itself [m]. */
    private static final double ABOVE_M = 0.02;

    private static final double HOUR_MIN = 60;

    /** A place of the sun, with the state of the leaves. */
    private record Ray(Point towards, int season) {}

    /** Keeps a copy of the list. */
    public ShadeMap {
        decks = List.copyOf(decks);
    }

    /**
     * Looks at every cell.
     *
     * @param enclosure what stands there
     * @param scene the same, as it casts shade
     * @param rule how much light a place in shade may get, and how high the sun must stand
     * @param year calendar year
     * @param day one day to look at by itself, of that year
     * @param wantsStop asked between cells; true gives the work up
     * @return the map; whatever of it was finished if the work was given up
     */
    public static ShadeMap of(
            Enclosure enclosure, ShadeScene scene, ShadeRule rule, int year, LocalDate day, BooleanSupplier wantsStop) {
        ShadeCalendar coarse = ShadeCalendar.of(enclosure.site(), year, YEAR_STEP_MIN);
        List<Ray> yearRays = new ArrayList<>();
        int days = 0;
        for (int d = 0; d < coarse.days(); d += DAY_STEP) {
            yearRays.addAll(rays(enclosure, scene, rule, coarse, d));
            days++;
        }
        ShadeCalendar fine = ShadeCalendar.of(enclosure.site(), year, DAY_STEP_MIN);
        List<Ray> dayRays = rays(enclosure, scene, rule, fine, day.getDayOfYear() - 1);
        double perYearRayH = YEAR_STEP_MIN / HOUR_MIN / days;
        double perDayRayH = DAY_STEP_MIN / HOUR_MIN;
        Looking looking = new Looking(scene, rule, yearRays, perYearRayH, dayRays, perDayRayH, wantsStop);
        List<Area> decks = new ArrayList<>();
        for (Platform platform : enclosure.platforms()) {
            decks.add(looking.deck(platform));
        }
        return new ShadeMap(
                day,
                dayRays.size() * perDayRayH,
                yearRays.size() * perYearRayH,
                looking.ground(enclosure.ground()),
                decks);
    }

    private static List<Ray> rays(
            Enclosure enclosure, ShadeScene scene, ShadeRule rule, ShadeCalendar calendar, int day) {
        int season = scene.season(MonthDay.from(calendar.date(day)));
        List<Ray> rays = new ArrayList<>();
        for (int slot = 0; slot < calendar.slots(); slot++) {
            SunPosition sun = SunPosition.at(enclosure.site(), calendar.moment(day, slot));
            if (sun.altitudeDeg() > rule.lowestSunDeg()) {
                rays.add(new Ray(sun.direction(), season));
            }
        }
        return rays;
    }

    /** What it takes to look at a cell. */
    private record Looking(
            ShadeScene scene,
            ShadeRule rule,
            List<Ray> yearRays,
            double perYearRayH,
            List<Ray> dayRays,
            double perDayRayH,
            BooleanSupplier wantsStop) {

        Area ground(Ground ground) {
            double sizeM = SIZES_M[SIZES_M.length - 1];
            for (int i = SIZES_M.length - 1; i >= 0; i--) {
                if (ground.outline().areaM2() / (SIZES_M[i] * SIZES_M[i]) <= MOST_GROUND_CELLS) {
                    sizeM = SIZES_M[i];
                }
            }
            List<Cell> cells = new ArrayList<>();
            for (Corner middle : middles(ground.outline(), sizeM)) {
                double zM = ground.terrain().isLevel() ? 0 : ground.terrain().heightM(middle.xM(), middle.yM());
                look(cells, middle, zM);
            }
            return new Area("", sizeM, cells);
        }

        Area deck(Platform platform) {
            double sizeM = SIZES_M[0];
            for (double size : SIZES_M) {
                sizeM = platform.outline().areaM2() / (size * size) >= LEAST_DECK_CELLS ? size : sizeM;
            }
            List<Cell> cells = new ArrayList<>();
            for (Corner middle : middles(platform.outline(), sizeM)) {
                look(cells, middle, platform.zM());
            }
            return new Area(platform.id(), sizeM, cells);
        }

        private void look(List<Cell> cells, Corner at, double zM) {
            if (!wantsStop.getAsBoolean()) {
                cells.add(new Cell(
                        at.xM(),
                        at.yM(),
                        perYearRayH * shaded(at, zM + ABOVE_M, yearRays),
                        perDayRayH * shaded(at, zM + ABOVE_M, dayRays)));
            }
        }

        private int shaded(Corner at, double zM, List<Ray> rays) {
            int count = 0;
            for (Ray ray : rays) {
                count += scene.beam(at.xM(), at.yM(), zM, ray.towards, ray.season) <= rule.mostBeam() ? 1 : 0;
            }
            return count;
        }

        private static List<Corner> middles(Outline outline, double sizeM) {
            var box = outline.toPolygon().getEnvelopeInternal();
            List<Corner> middles = new ArrayList<>();
            for (int row = 0; row * sizeM < box.getHeight(); row++) {
                for (int column = 0; column * sizeM < box.getWidth(); column++) {
                    double xM = box.getMinX() + (column + 0.5) * sizeM;
                    double yM = box.getMinY() + (row + 0.5) * sizeM;
                    if (outline.covers(xM, yM)) {
                        middles.add(new Corner(xM, yM));
                    }
                }
            }
            return middles;
        }
    }
}
