package limbway.model.energy;

import limbway.model.body.Body;

/**
 * What a leap costs: {@code (K + F²/(2 k)) / eta}, with {@code K = M v²/2} and {@code F = max(K/s, M g)}.
 *
 * <p>The push bends the support that is left, and that work is lost. On a rigid support only K is paid.
 *
 * @source ballistics and a linear spring; efficiency set by human jumps, see {@link LeapSettings}; that stiffness, gap,
 *     number of sways and mass decide between sway and jump: Halsey, Coward and Thorpe 2016, doi 10.1098/rsbl.2016.0608
 *     (abstract)
 * @validity read as within a factor of two; landing is not paid apart, it is inside the efficiency
 */
public final class LeapCost {

    private final LeapSettings settings;

    /**
     * Costs under given settings.
     *
     * @param settings angle, push-off, efficiency, limits
     */
    public LeapCost(LeapSettings settings) {
        this.settings = settings;
    }

    /**
     * Asks whether a body can leap over a gap, and at what cost.
     *
     * @param body who leaps
     * @param gapM level part of the gap [m], above 0
     * @param riseM height of landing above take-off [m], negative for a drop
     * @param stiffnessNPerM stiffness of the support that is left [N/m], above 0; infinite for a rigid one
     * @return energy and time, or why not
     * @throws IllegalArgumentException naming the value outside its range
     */
    public Crossing across(Body body, double gapM, double riseM, double stiffnessNPerM) {
        Allowed.aboveZero("leap", "gapM", gapM);
        if (body.leapM() == 0) {
            return new Crossing.Refused("a " + body.name() + " does not leap");
        }
        if (body.massKg() > settings.heaviestKg()) {
            return new Crossing.Refused(
                    "a body of " + body.massKg() + " kg does not leap, allowed up to " + settings.heaviestKg() + " kg");
        }
        if (gapM > body.leapM()) {
            return new Crossing.Refused("the gap is " + gapM + " m, allowed up to " + body.leapM() + " m");
        }
        double neededMPerS = Ballistics.leastSpeedMPerS(gapM, riseM);
        if (neededMPerS > body.takeOffMPerS()) {
            return new Crossing.Refused(
                    "a take-off of " + neededMPerS + " m/s is needed, the body has " + body.takeOffMPerS() + " m/s");
        }
        double speedMPerS = speedMPerS(body, gapM, riseM);
        double kineticJ = kineticJ(body.massKg(), speedMPerS);
        double bendingJ = bendingJ(pushOffN(kineticJ, body.massKg(), settings.pushOffM()), stiffnessNPerM);
        boolean atBestAngle = speedMPerS == neededMPerS;
        double angle = atBestAngle
                ? StrictMath.atan(speedMPerS * speedMPerS / (InclineCost.GRAVITY_M_PER_S2 * gapM))
                : StrictMath.toRadians(settings.angleDeg());
        double flightS = gapM / (speedMPerS * StrictMath.cos(angle));
        return new Crossing.Possible(
                (kineticJ + bendingJ) / settings.efficiency(), 2 * settings.pushOffM() / speedMPerS + flightS);
    }

    /**
     * Returns how far the support that is left sinks under the push.
     *
     * @param body who leaps
     * @param gapM level part of the gap [m], above 0
     * @param riseM height of landing above take-off [m], negative for a drop
     * @param stiffnessNPerM stiffness of the support that is left [N/m], above 0; infinite for a rigid one
     * @return deflection [m], 0 on a rigid support
     */
    public double sinkM(Body body, double gapM, double riseM, double stiffnessNPerM) {
        double kineticJ = kineticJ(body.massKg(), speedMPerS(body, gapM, riseM));
        return pushOffN(kineticJ, body.massKg(), settings.pushOffM()) / stiffnessNPerM;
    }

    /** At the usual angle; where that asks for more than the body has, at the angle that asks for least. */
    private double speedMPerS(Body body, double gapM, double riseM) {
        double usual = Ballistics.speedAtAngleMPerS(gapM, riseM, settings.angleDeg());
        return usual <= body.takeOffMPerS() ? usual : Ballistics.leastSpeedMPerS(gapM, riseM);
    }

    /**
     * Returns the energy of motion at take-off.
     *
     * @param massKg mass that moves [kg], above 0
     * @param speedMPerS take-off speed [m/s], 0 or more
     * @return energy [J]
     */
    public static double kineticJ(double massKg, double speedMPerS) {
        return massKg * speedMPerS * speedMPerS / 2;
    }

    /**
     * Returns the mean force on the support during push-off, at least the body's weight.
     *
     * @param kineticJ energy of motion at take-off [J], 0 or more
     * @param massKg mass that moves [kg], above 0
     * @param pushOffM way over which the limbs push [m], above 0
     * @return force [N]
     */
    public static double pushOffN(double kineticJ, double massKg, double pushOffM) {
        Allowed.aboveZero("leap", "pushOffM", pushOffM);
        return Math.max(kineticJ / pushOffM, massKg * InclineCost.GRAVITY_M_PER_S2);
    }

    /**
     * Returns the work lost in bending the support that is left.
     *
     * @param forceN force of push-off [N], 0 or more
     * @param stiffnessNPerM stiffness of the support [N/m], above 0; infinite for a rigid one
     * @return energy [J]
     */
    public static double bendingJ(double forceN, double stiffnessNPerM) {
        Allowed.aboveZero("leap", "stiffnessNPerM", stiffnessNPerM);
        return forceN * forceN / (2 * stiffnessNPerM);
    }
}
