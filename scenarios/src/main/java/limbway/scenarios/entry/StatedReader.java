package limbway.scenarios.entry;

import java.util.OptionalDouble;

import limbway.scenarios.entry.SupportEntry.Stated;
import limbway.scenarios.problem.Problem;
import limbway.scenarios.problem.Wording;

/** Reads what several kinds of supports may state: how they taper and how they give way. */
final class StatedReader {

    private StatedReader() {}

    static Stated stated(Fields fields) {
        return new Stated(
                fields.number("stiffness", Quantity.STIFFNESS),
                fields.number("bears", Quantity.BEARS),
                fields.yesNo("sways"));
    }

    /** The thickness of the far end; {@code usualShare} of the near one if nothing is said. */
    static double tipDiameterM(Fields fields, double diameterM, double usualShare) {
        OptionalDouble tipM = fields.number("tip-diameter", Quantity.TIP_DIAMETER);
        if (tipM.isPresent() && tipM.getAsDouble() > diameterM) {
            fields.fault(Problem.at(
                            fields.find("tip-diameter").orElseThrow().place(),
                            "tip of " + fields.what() + " is thicker than its other end")
                    .found(Wording.measure(tipM.getAsDouble(), "m"))
                    .allowed("at most the diameter, " + Wording.measure(diameterM, "m"))
                    .mend("let it taper towards the tip, or leave tip-diameter out"));
        }
        return tipM.orElse(usualShare * diameterM);
    }
}
