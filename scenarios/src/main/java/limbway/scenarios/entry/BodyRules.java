package limbway.scenarios.entry;

import java.util.Map;
import java.util.OptionalDouble;

import limbway.scenarios.format.Node;
import limbway.scenarios.problem.Place;
import limbway.scenarios.problem.Problem;
import limbway.scenarios.problem.Wording;

/** Whether the figures of a body fit one another. */
final class BodyRules {

    private static final double GRAVITY_M_PER_S2 = 9.80665;

    private BodyRules() {}

    static void check(Fields fields, Map<Quantity, Double> figures) {
        if (figures.containsKey(Quantity.GAP_REACH) && figures.containsKey(Quantity.ARM_SPAN)) {
            checkReach(fields, figures.get(Quantity.GAP_REACH), figures.get(Quantity.ARM_SPAN));
        }
        OptionalDouble structuralKg = fields.number(Quantity.STRUCTURAL_MASS.key(), Quantity.STRUCTURAL_MASS);
        if (structuralKg.isPresent()
                && figures.containsKey(Quantity.MASS)
                && structuralKg.getAsDouble() < figures.get(Quantity.MASS)) {
            fields.fault(Problem.at(
                            placeOf(fields, "structural-mass"),
                            "structural-mass of " + fields.what() + " is below its mass")
                    .found(Wording.measure(structuralKg.getAsDouble(), "kg"))
                    .allowed("at least " + Wording.measure(figures.get(Quantity.MASS), "kg"))
                    .mend("leave it out, or write the heaviest that the animal may become"));
        }
        double leapM = figures.getOrDefault(Quantity.LEAP, 0.0);
        double takeOffMPerS = figures.getOrDefault(Quantity.TAKE_OFF, 0.0);
        if (leapM > 0 && takeOffMPerS == 0) {
            fields.fault(Problem.at(placeOf(fields, "leap"), fields.what() + " leaps without a take-off")
                    .found("leap " + Wording.measure(leapM, "m") + ", take-off 0 m/s")
                    .allowed("both leap and take-off, or none of them")
                    .mend("add take-off: ..., in m/s; a level gap of that width needs "
                            + Wording.number(Math.ceil(10 * Math.sqrt(GRAVITY_M_PER_S2 * leapM)) / 10)));
        } else if (leapM == 0 && takeOffMPerS > 0) {
            fields.fault(Problem.at(placeOf(fields, "take-off"), fields.what() + " has a take-off but no leap")
                    .found("leap 0 m, take-off " + Wording.measure(takeOffMPerS, "m/s"))
                    .allowed("both leap and take-off, or none of them")
                    .mend("add leap: ..., the widest gap in metres"));
        }
    }

    private static void checkReach(Fields fields, double reachM, double spanM) {
        if (reachM < spanM / 2 || reachM > spanM) {
            fields.fault(Problem.at(
                            placeOf(fields, fields.find("gap-reach").isPresent() ? "gap-reach" : "arm-span"),
                            "gap-reach of " + fields.what() + " does not fit its arm span")
                    .found(Wording.measure(reachM, "m"))
                    .allowed(Wording.measure(spanM / 2, "m") + " to " + Wording.measure(spanM, "m")
                            + ", from one arm to the whole arm span")
                    .mend("correct gap-reach or arm-span; where nobody measured, 0.8 of the arm span is usual"));
        }
    }

    private static Place placeOf(Fields fields, String key) {
        return fields.find(key).map(Node::place).orElse(fields.place());
    }
}
