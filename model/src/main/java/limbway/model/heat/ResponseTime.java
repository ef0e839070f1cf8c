package limbway.model.heat;

import limbway.model.heat.Surface.Touch;

/** How quickly a member comes to the temperature that fits its surroundings. */
public final class ResponseTime {

    /** Time in which a member must come 63 % of the way for its balance to hold from one quarter of an hour to the next. */
    public static final double STEADY_WITHIN_S = 900;

    /** Heat that air and rays take off together [W/m2K]: still air, about 60 °C. */
    private static final double COOLING_W_PER_M2_K = 20;

    /** Thickness of the wall of a steel tube [m]: the usual scaffold tube; assumption for every metal member. */
    private static final double WALL_M = 0.0032;

    private static final double STEEL_J_PER_M3_K = 3.85e6;
    private static final double WOOD_J_PER_M3_K = 1.0e6;
    private static final double STONE_J_PER_M3_K = 2.0e6;

    private ResponseTime() {}

    /**
     * Time in which a member comes 63 % of the way.
     *
     * @param touch kind of surface: metal stands for a steel tube of 3.2 mm, everything else for a solid bar
     * @param diameterM thickness [m], above 0
     * @return seconds
     * @source stored heat over cooling, with heat capacities from memory; the inside of a bar is taken to follow its surface
     */
    public static double seconds(Touch touch, double diameterM) {
        return switch (touch) {
            case METAL, COATED_METAL -> STEEL_J_PER_M3_K * Math.min(WALL_M, diameterM / 4) / COOLING_W_PER_M2_K;
            case WOOD_OR_PLASTIC -> WOOD_J_PER_M3_K * diameterM / 4 / COOLING_W_PER_M2_K;
            case STONE -> STONE_J_PER_M3_K * diameterM / 4 / COOLING_W_PER_M2_K;
        };
    }

    /**
     * Whether a steady balance may be used from one quarter of an hour to the next.
     *
     * @param touch kind of surface
     * @param diameterM thickness [m], above 0
     * @return true up to 72 mm of wood and 36 mm of concrete
     */
    public static boolean isSteady(Touch touch, double diameterM) {
        return seconds(touch, diameterM) <= STEADY_WITHIN_S;
    }
}
