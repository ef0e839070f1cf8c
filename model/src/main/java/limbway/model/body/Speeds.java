package limbway.model.body;

/**
 * How fast a body moves.
 *
 * @param walkMPerS on the ground, platforms and broad beams [m/s]
 * @param climbMPerS up a steep support [m/s]
 * @param descendMPerS down a steep support [m/s]
 * @param clamberMPerS along other supports, on panels and across gaps [m/s]
 * @param brachiateMPerS hand over hand below supports [m/s]
 */
public record Speeds(
        double walkMPerS, double climbMPerS, double descendMPerS, double clamberMPerS, double brachiateMPerS) {

    /**
     * Speed in one locomotor mode; a sway, leap or drop takes the time that its mechanics need, not this.
     *
     * @param mode the mode
     * @return speed [m/s]
     */
    public double inMode(LocomotorMode mode) {
        return switch (mode) {
            case QUADRUPEDAL_WALK -> walkMPerS;
            case VERTICAL_CLIMB -> climbMPerS;
            case VERTICAL_DESCENT -> descendMPerS;
            case CLAMBER, BRIDGE, BIPEDAL_WALK, SWAY, LEAP, DROP -> clamberMPerS;
            case BRACHIATE -> brachiateMPerS;
        };
    }
}
