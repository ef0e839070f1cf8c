package limbway.scenarios.entry;

import java.util.Map;
import java.util.Optional;

import limbway.scenarios.format.NumberText;
import limbway.scenarios.problem.Wording;

/**
 * Every number of the format: its unit, the range beyond which it is refused, and the range that is usual.
 *
 * <p>The ranges are there to catch slips of the pen and of the unit. They are common sense, no source; none is a limit of
 * the model.
 */
public enum Quantity {
    /** Degrees north. */
    LATITUDE("latitude", "degrees", -90, 90, -90, 90),
    /** Degrees east. */
    LONGITUDE("longitude", "degrees", -180, 180, -180, 180),
    /** Height of a site above the sea. */
    SITE_ELEVATION("elevation", "m", -450, 6000, -30, 3000),
    /** Compass direction of a mark of the horizon, 90 is east. */
    AZIMUTH("azimuth", "degrees", 0, 360, 0, 360),
    /** Height of the horizon before the sky. */
    ALTITUDE("altitude", "degrees", -10, 80, 0, 45),
    /** Position in plan. */
    POSITION("position", "m", -2000, 2000, -200, 200),
    /** Height of a point above the ground. */
    ELEVATION("height", "m", 0, 100, 0, 40),
    /** Height of a pole, trunk or deck. */
    HEIGHT("height", "m", 0.1, 100, 1.5, 40),
    /** Thickness of a pole, beam or rope. */
    DIAMETER("diameter", "m", 0.005, 2, 0.015, 0.7),
    /** Thickness of a trunk. */
    TRUNK_DIAMETER("diameter", "m", 0.005, 4, 0.03, 1.5),
    /** How far a rope hangs below the straight line, as a part of its span in plan. */
    SAG("sag", "%", 0, 30, 0, 15),
    /** Length of a rope from end to end. */
    LENGTH("length", "m", 0.05, 2000, 0.5, 100),
    /** Thickness of the free end of a pole, trunk or branch. */
    TIP_DIAMETER("tip-diameter", "m", 0.002, 4, 0.005, 1),
    /** Force for each metre that a support gives. */
    STIFFNESS("stiffness", "N/m", 10, 10000000, 50, 1000000),
    /** Heaviest load allowed on a support. */
    BEARS("bears", "kg", 1, 20000, 5, 2000),
    /** Lean from upright. */
    LEAN("degrees", "degrees", 0, 60, 0, 45),
    /** Compass direction, 90 is east. */
    BEARING("towards", "degrees", 0, 360, 0, 360),
    /** Turn of a deck, clockwise seen from above. */
    TURN("turn", "degrees", -360, 360, -360, 360),
    /** Side of a deck. */
    SIDE("size", "m", 0.2, 30, 0.5, 6),
    /** Radius of a crown. */
    CROWN_RADIUS("crown-radius", "m", 0.2, 30, 0.5, 12),
    /** Height of the lowest branches. */
    CROWN_BASE("crown-base", "m", 0, 95, 0.5, 40),
    /** Area of leaves above each square metre of ground below the middle of a crown. */
    LEAF_AREA_INDEX("leaf-area-index", "", 0.1, 12, 1, 8),
    /** Part of the direct sunlight that passes through a sail. */
    TRANSMITTANCE("transmittance", "", 0, 0.95, 0.05, 0.6),
    /** Height of a roof above the deck below it. */
    RISE("rise", "m", 0.3, 30, 1, 6),
    /** How far a roof lies beside the deck below it. */
    SHIFT("shift", "m", -30, 30, -5, 5),
    /** Height of the top of a building. */
    BUILDING_TOP("top", "m", 0.3, 400, 2, 60),
    /** Clear width of an opening of a mesh or net. */
    OPENING("opening", "m", 0.005, 0.5, 0.01, 0.3),
    /** Thickness of the wire or rope of a panel. */
    STRAND("strand", "m", 0.001, 0.1, 0.002, 0.04),
    /** Height of a lower edge. */
    BOTTOM("bottom", "m", 0, 100, 0, 40),
    /** Height of an upper edge. */
    TOP("top", "m", 0, 100, 0.3, 40),
    /** Thickness of a wall or pane. */
    THICKNESS("thickness", "m", 0.005, 5, 0.01, 1.5),
    /** Depth of water. */
    DEPTH("depth", "m", 0.1, 20, 0.3, 5),
    /** How far animals keep away from live wire. */
    CLEARANCE("clearance", "m", 0.05, 5, 0.1, 2),
    /** Height of the lower edge of a door. */
    SILL("sill", "m", 0, 100, 0, 20),
    /** Distance between heights of a grid. */
    SPACING("spacing", "m", 0.1, 500, 0.5, 50),
    /** Distance along a support. */
    ALONG("at", "m", 0, 2000, 0, 60),
    /** Part of a support. */
    SHARE("at", "%", 0, 100, 0, 100),
    /** Offset from the middle of a deck. */
    OFFSET("at", "m", -15, 15, -4, 4),
    /** Mean of the warmest or coldest of each day of a month. */
    MONTH_TEMPERATURE("temperature", "°C", -60, 55, -30, 45),
    /** Speed of the wind. */
    WIND("wind", "m/s", 0, 20, 0, 8),
    /** How much the air dims the sun, in clean dry atmospheres. */
    TURBIDITY("turbidity", "", 1, 10, 2, 7),
    /** Power at which an animal values full sun on its back on the way. */
    SUNLIT_WAYS("sunlit-ways", "W", 0, 2000, 20, 500),
    /** Animals that can use a place at once. */
    PORTIONS("portions", "", 1, 100, 1, 20),
    /** Rank in the group. */
    RANK("rank", "", 1, 200, 1, 30),
    /** Mass of an animal. */
    MASS("mass", "kg", 2, 200, 5, 130),
    /** Mass to design structures for. */
    STRUCTURAL_MASS("structural-mass", "kg", 2, 300, 5, 160),
    /** From fingertip to fingertip. */
    ARM_SPAN("arm-span", "m", 0.3, 4, 0.6, 3),
    /** Widest gap crossed by reaching over. */
    GAP_REACH("gap-reach", "m", 0.1, 4, 0.3, 2.5),
    /** Reach above the feet. */
    OVERHEAD_REACH("overhead-reach", "m", 0.2, 5, 0.4, 3),
    /** Widest gap leaped. */
    LEAP("leap", "m", 0, 15, 0.3, 12),
    /** Fastest take-off of a leap. */
    TAKE_OFF("take-off", "m/s", 0, 15, 1, 12),
    /** Thickest support that a hand hooks round. */
    GRIP_DIAMETER("grip-diameter", "m", 0.01, 0.6, 0.02, 0.3),
    /** Thickest rough stem that both arms hold. */
    HUG_DIAMETER("hug-diameter", "m", 0.02, 3, 0.1, 1.5),
    /** Thinnest beam broad enough to walk on. */
    WALKWAY_DIAMETER("walkway-diameter", "m", 0.01, 2, 0.04, 0.6),
    /** Speed of travel. */
    SPEED("speed", "m/s", 0.02, 15, 0.1, 5),
    /** Animals of one entry. */
    COUNT("count", "", 1, 50, 1, 20),
    /** Energy of one feeding. */
    ENERGY("energy-kj", "kJ", 10, 200000, 50, 60000),
    /** Work that a portion of food from a puzzle costs before it can be eaten. */
    HANDLING("handling-min", "min", 0.1, 120, 0.5, 30),
    /** How much bedding lies in a place, against what a deep nest takes. */
    BEDDING("bedding", "", 0, 1, 0, 1),
    /** Greatest height that a keeper reaches. */
    KEEPER_REACH("keeper-reach", "m", 0, 100, 1, 6),
    /** Least distance between places that are put. */
    APART("apart", "m", 0, 100, 0, 30),
    /** Weight of what is put up. */
    LOAD("load", "kg", 0, 5000, 0, 500),
    /** Least distance of places that are put from barriers. */
    BARRIER_DISTANCE("barrier-distance", "m", 0, 100, 0, 20),
    /** Trees kept of a survey. */
    TALLEST("tallest", "", 1, 20000, 1, 20000),
    /** Points of a sweep that are spread by chance. */
    POINTS("points", "", 2, 1000, 2, 1000),
    /** Values of a sweep at equal distances. */
    STEPS("steps", "", 2, 50, 2, 50),
    /** Height of the lowest branches of a surveyed tree as a share of its height. */
    BASE_SHARE("crown-base-share", "", 0.05, 0.95, 0.05, 0.95),
    /** A coefficient of an allometry. */
    COEFFICIENT("coefficient", "", -100, 100, -100, 100);

    /** Metric and other units that people write, in units of this format. */
    private static final Map<String, Map<String, Double>> OTHER_UNITS = Map.of(
            "m", Map.of("mm", 0.001, "cm", 0.01, "km", 1000.0, "ft", 0.3048, "in", 0.0254),
            "kg", Map.of("g", 0.001, "t", 1000.0, "lb", 0.45359237),
            "min", Map.of("s", 1 / 60.0, "h", 60.0),
            "kJ", Map.of("J", 0.001, "MJ", 1000.0, "kcal", 4.184),
            "N/m", Map.of("kN/m", 1000.0, "N/mm", 1000.0, "N/cm", 100.0),
            "°C", Map.of("°F", 1 / 1.8, "F", 1 / 1.8, "K", 1.0, "C", 1.0),
            "m/s", Map.of("km/h", 1 / 3.6));

    /** Where 0 °C lies in other units. */
    private static final Map<String, Double> ZEROS = Map.of("°F", 32.0, "F", 32.0, "K", 273.15);

    private static final Map<String, String[]> SLIPS = Map.of(
            "m", new String[] {"mm", "cm"},
            "kg", new String[] {"g"},
            "kJ", new String[] {"MJ", "J"},
            "°C", new String[] {"°F", "K"},
            "m/s", new String[] {"km/h"});

    private final String key;
    private final String unit;
    private final double least;
    private final double most;
    private final double usualLeast;
    private final double usualMost;

    Quantity(String key, String unit, double least, double most, double usualLeast, double usualMost) {
        this.key = key;
        this.unit = unit;
        this.least = least;
        this.most = most;
        this.usualLeast = usualLeast;
        this.usualMost = usualMost;
    }

    /**
     * The word in a scenario.
     *
     * @return usually the key before the colon
     */
    public String key() {
        return key;
    }

    /**
     * The unit, empty for a plain number.
     *
     * @return symbol or word
     */
    public String unit() {
        return unit;
    }

    /**
     * The least value that is read.
     *
     * @return in {@link #unit()}
     */
    public double least() {
        return least;
    }

    /**
     * The greatest value that is read.
     *
     * @return in {@link #unit()}
     */
    public double most() {
        return most;
    }

    /**
     * Whether a value is read.
     *
     * @param value in {@link #unit()}
     * @return true from least to most, both included
     */
    public boolean allows(double value) {
        return value >= least && value <= most;
    }

    /**
     * The range in words.
     *
     * @return for example {@code 0.1 m to 100 m}
     */
    public String range() {
        return Wording.measure(least, unit) + " to " + Wording.measure(most, unit);
    }

    /**
     * Whether a unit written after a number is that of this quantity.
     *
     * @param written the word after the number, or empty
     * @return true for the unit itself, and for none except where only a percentage makes sense
     */
    public boolean isWrittenIn(String written) {
        if (written.isEmpty()) {
            return !unit.equals("%");
        }
        return written.equals(unit) || (unit.equals("degrees") && (written.equals("°") || written.equals("degree")));
    }

    /**
     * Converts a number in another unit.
     *
     * @param number what was written
     * @return the value in {@link #unit()}, or empty if the unit is unknown or the value out of range
     */
    public Optional<String> converted(NumberText number) {
        return inOwnUnit(number.value(), number.unit()).filter(this::allows).map(Wording::number);
    }

    /** A question for the unit that somebody had in mind, or empty if no slip of the unit makes the number usual. */
    private Optional<String> likelySlip(double value) {
        // no site lies so low that millimetres could be meant
        String[] slips = this == SITE_ELEVATION ? new String[] {"ft"} : SLIPS.getOrDefault(unit, new String[0]);
        for (String slip : slips) {
            double meant = inOwnUnit(value, slip).orElseThrow();
            if (meant >= usualLeast && meant <= usualMost && allows(meant)) {
                return Optional.of(
                        "did you mean " + Wording.number(meant) + "? (" + Wording.measure(value, slip) + ")");
            }
        }
        return Optional.empty();
    }

    /**
     * How to mend a number that is out of range.
     *
     * @param value the number
     * @return one sentence
     */
    public String mend(double value) {
        return switch (this) {
            case AZIMUTH, BEARING ->
                "count from 0 in the north over 90 in the east up to 360"
                        + (Math.abs(value) <= 720
                                ? ": did you mean " + Wording.number(value - 360 * Math.floor(value / 360)) + "?"
                                : "");
            case ALTITUDE ->
                "write how high the land stands above the level, which is 0; straight overhead would be 90";
            case SITE_ELEVATION -> likelySlip(value).orElse("write the height above the sea in metres");
            default -> likelySlip(value).orElse("correct the number");
        };
    }

    private Optional<Double> inOwnUnit(double value, String written) {
        return Optional.ofNullable(OTHER_UNITS.getOrDefault(unit, Map.of()).get(written))
                .map(factor -> (value - ZEROS.getOrDefault(written, 0.0)) * factor);
    }
}
