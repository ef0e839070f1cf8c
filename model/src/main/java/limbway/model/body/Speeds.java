package limbway.model.body;

/**
 * How fast a body moves.
 *
 * @param walkMPerS on the ground, platforms and broad beams [m/s]
 * @param climbMPerS up a steep support [m/s]
 * @param descendMPerS down a steep support [m/s]
 * @param clamberMPerS along other supports and across gaps [m/s]
 */
public record Speeds(double walkMPerS, double climbMPerS, double descendMPerS, double clamberMPerS) {

    /**
     * Speed in one locomotor mode.
     *
     * @param mode the mode
     * @return speed [m/s]
     */
    public double inMode(LocomotorMode mode) {
        return switch (mode) {
            case QUADRUPEDAL_WALK -> walkMPerS;
            case VERTICAL_CLIMB -> climbMPerS;
            case VERTICAL_DESCENT -> descendMPerS;
            case CLAMBER, BRIDGE -> clamberMPerS;
        };
    }
}
