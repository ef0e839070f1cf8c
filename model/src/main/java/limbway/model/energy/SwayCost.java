package limbway.model.energy;

/**
 * What it costs to sway a pole or tree until the far side comes within reach.
 *
 * <p>{@code E = k A²/2 [1 + 4 pi zeta (N/3 + 1/2 + 1/(6 N))] / eta}, with the amplitude A the gap less the reach, built up
 * evenly over N swings, each losing {@code 4 pi zeta} of its energy: the sum of (n/N)² for n = 1 to N is the bracket. One
 * swing takes {@code T = 2 pi sqrt((M + 0.24 m) / k)}, m the mass of the pole.
 *
 * @source damped linear oscillator and Rayleigh's equivalent mass of a uniform cantilever, 33/140 = 0.24, textbook; that
 *     swaying is less than half as dear as a jump and a tenth of going round by the ground: Thorpe, Crompton and Alexander
 *     2007, doi 10.1098/rsbl.2007.0049 (abstract)
 * @validity small deflections, linear stiffness; read as within a factor of two
 */
public final class SwayCost {

    private static final double POLE_SHARE = 0.24;
    private static final double BUCKLING = 1.2;
    private static final double SOFTEST_SHARE = 0.25;

    private final SwaySettings settings;

    /**
     * Costs under given settings.
     *
     * @param settings swings, damping, efficiency, limits
     */
    public SwayCost(SwaySettings settings) {
        this.settings = settings;
    }

    /**
     * Asks whether a body can sway a pole across a gap, and at what cost.
     *
     * @param massKg mass that moves [kg], above 0
     * @param reachM gap that the body crosses without swaying [m], 0 or more
     * @param gapM gap to cross [m], above 0
     * @param pole the pole up to where the animal holds it
     * @return energy and time, or why not
     * @throws IllegalArgumentException naming the value outside its range
     */
    public Crossing across(double massKg, double reachM, double gapM, FlexiblePole pole) {
        return across(massKg, reachM, gapM, pole.stiffnessNPerM(), pole.lengthM(), pole.massKg());
    }

    /**
     * The same for a pole or tree of measured stiffness.
     *
     * @param massKg mass that moves [kg], above 0
     * @param reachM gap that the body crosses without swaying [m], 0 or more
     * @param gapM gap to cross [m], above 0
     * @param stiffnessNPerM stiffness where it is held [N/m], above 0
     * @param lengthM from the fixed base to where it is held [m], above 0
     * @param poleMassKg mass of that part of the pole [kg], 0 or more
     * @return energy and time, or why not
     * @throws IllegalArgumentException naming the value outside its range
     */
    public Crossing across(
            double massKg, double reachM, double gapM, double stiffnessNPerM, double lengthM, double poleMassKg) {
        Allowed.between("sway", "reachM", reachM, 0, Double.MAX_VALUE);
        Allowed.aboveZero("sway", "gapM", gapM);
        Allowed.aboveZero("sway", "lengthM", lengthM);
        double amplitudeM = gapM - reachM;
        if (amplitudeM <= 0) {
            return new Crossing.Refused("the gap of " + gapM + " m is within the reach of " + reachM + " m");
        }
        double farthestM = settings.farthestShare() * lengthM;
        if (amplitudeM > farthestM) {
            return new Crossing.Refused("the pole would have to swing " + amplitudeM + " m, allowed up to " + farthestM
                    + " m, " + settings.farthestShare() + " of its length");
        }
        double k = settings.softened() ? softenedNPerM(stiffnessNPerM, massKg, lengthM) : stiffnessNPerM;
        double energyJ = energyJ(k, amplitudeM, settings.cycles(), settings.damping(), settings.efficiency());
        return new Crossing.Possible(energyJ, settings.cycles() * periodS(k, massKg, poleMassKg));
    }

    /**
     * How far a body can swing a pole to one side: as far as the pole may bend, and no farther than its own weight, pushing
     * once in each swing, can build up.
     *
     * @param massKg mass that moves [kg], above 0
     * @param stiffnessNPerM stiffness where it is held [N/m], above 0
     * @param lengthM from the fixed base to where it is held [m], above 0
     * @return amplitude [m]
     * @source that each swing adds at most the bend under the full weight is an assumption
     */
    public double widestSwingM(double massKg, double stiffnessNPerM, double lengthM) {
        double bentM = massKg * InclineCost.GRAVITY_M_PER_S2 / stiffnessNPerM;
        return Math.min(settings.farthestShare() * lengthM, settings.cycles() * bentM);
    }

    /**
     * Returns the energy of building up and losing a swing.
     *
     * @param stiffnessNPerM stiffness [N/m], above 0
     * @param amplitudeM farthest swing to one side [m], 0 or more
     * @param cycles swings to and fro, 1 or more
     * @param damping damping over critical damping, 0 to 1
     * @param efficiency work over energy, above 0
     * @return energy [J]
     * @throws IllegalArgumentException naming the value outside its range
     */
    public static double energyJ(
            double stiffnessNPerM, double amplitudeM, int cycles, double damping, double efficiency) {
        Allowed.aboveZero("sway", "stiffnessNPerM", stiffnessNPerM);
        Allowed.aboveZero("sway", "efficiency", efficiency);
        double storedJ = stiffnessNPerM * amplitudeM * amplitudeM / 2;
        return storedJ * lossFactor(cycles, damping) / efficiency;
    }

    /**
     * Returns how many times the stored energy must be supplied, because every swing loses some.
     *
     * @param cycles swings to and fro, 1 or more
     * @param damping damping over critical damping, 0 to 1
     * @return factor, 1 without damping
     * @throws IllegalArgumentException naming the value outside its range
     */
    public static double lossFactor(int cycles, double damping) {
        Allowed.between("sway", "cycles", cycles, 1, Integer.MAX_VALUE);
        Allowed.between("sway", "damping", damping, 0, 1);
        return 1 + 4 * Math.PI * damping * (cycles / 3.0 + 0.5 + 1 / (6.0 * cycles));
    }

    /**
     * Returns the time of one swing to and fro.
     *
     * @param stiffnessNPerM stiffness [N/m], above 0
     * @param massKg mass of the animal [kg], above 0
     * @param poleMassKg mass of the pole [kg], 0 or more
     * @return period [s]
     * @throws IllegalArgumentException naming the value outside its range
     */
    public static double periodS(double stiffnessNPerM, double massKg, double poleMassKg) {
        Allowed.aboveZero("sway", "stiffnessNPerM", stiffnessNPerM);
        Allowed.aboveZero("sway", "massKg", massKg);
        Allowed.between("sway", "poleMassKg", poleMassKg, 0, Double.MAX_VALUE);
        return 2 * Math.PI * Math.sqrt((massKg + POLE_SHARE * poleMassKg) / stiffnessNPerM);
    }

    /**
     * Returns the stiffness of an upright pole under the weight of the animal at its tip: {@code max(k - 1.2 M g / H,
     * k / 4)}.
     *
     * @param stiffnessNPerM stiffness without a load [N/m], above 0
     * @param massKg mass of the animal [kg], above 0
     * @param lengthM length of the pole [m], above 0
     * @return stiffness [N/m]; the floor of a quarter is an assumption that keeps the formula from a pole that collapses
     */
    public static double softenedNPerM(double stiffnessNPerM, double massKg, double lengthM) {
        double weightN = massKg * InclineCost.GRAVITY_M_PER_S2;
        return Math.max(stiffnessNPerM - BUCKLING * weightN / lengthM, SOFTEST_SHARE * stiffnessNPerM);
    }
}
