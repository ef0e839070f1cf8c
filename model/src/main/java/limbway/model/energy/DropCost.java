package limbway.model.energy;

/**
 * What it costs to let go, fall and land: the work of braking, {@code M g h / 1.20}.
 *
 * @source braking efficiency as in {@link InclineCost}; that a landing is braked like a descent is an assumption
 * @validity straight down, onto something that does not give; says nothing of injury
 */
public final class DropCost {

    private final LeapSettings settings;

    /**
     * Costs under given settings.
     *
     * @param settings heaviest body and deepest drop
     */
    public DropCost(LeapSettings settings) {
        this.settings = settings;
    }

    /**
     * Asks whether a body may drop, and at what cost.
     *
     * @param massKg mass that falls [kg], above 0
     * @param dropM height between the feet and the landing [m], above 0
     * @return energy and time, or why not
     * @throws IllegalArgumentException naming the value outside its range
     */
    public Crossing down(double massKg, double dropM) {
        Allowed.aboveZero("drop", "massKg", massKg);
        Allowed.aboveZero("drop", "dropM", dropM);
        if (massKg > settings.heaviestKg()) {
            return new Crossing.Refused(
                    "a body of " + massKg + " kg does not drop, allowed up to " + settings.heaviestKg() + " kg");
        }
        if (dropM > settings.deepestDropM()) {
            return new Crossing.Refused("the drop is " + dropM + " m, allowed up to " + settings.deepestDropM() + " m");
        }
        double workJ = massKg * InclineCost.GRAVITY_M_PER_S2 * dropM;
        return new Crossing.Possible(
                workJ / InclineCost.BRAKING_EFFICIENCY, Math.sqrt(2 * dropM / InclineCost.GRAVITY_M_PER_S2));
    }
}
