package limbway.model.energy;

/** Down, over the ground and up again. */
final class Detour {

    private Detour() {}

    /** {@code M [C(-90) down + C(0) walk + C(90) up]}. */
    static double costJ(double massKg, double downM, double walkM, double upM) {
        return costJ(massKg, downM, walkM, upM, InclineCost.jPerKgM(massKg, 90));
    }

    /** The same with another cost of climbing [J/(kg m)]. */
    static double costJ(double massKg, double downM, double walkM, double upM, double climbJPerKgM) {
        return massKg
                * (InclineCost.jPerKgM(massKg, -90) * downM
                        + InclineCost.jPerKgM(massKg, 0) * walkM
                        + climbJPerKgM * upM);
    }
}
