package limbway.model.body;

import java.util.List;

import static limbway.model.body.Sheet.GRIP;
import static limbway.model.body.Sheet.HUG;
import static limbway.model.body.Sheet.LEVEL_LEAP;
import static limbway.model.body.Sheet.SPAN;
import static limbway.model.body.Sheet.WALKWAY;
import static limbway.model.parameter.Standing.ASSUMPTION;
import static limbway.model.parameter.Standing.DERIVED;
import static limbway.model.parameter.Standing.UNVERIFIED;

/** Adult chimpanzees; span, reaches and leap were found for the species only and stand for both sexes. */
final class Chimpanzees {

    private static final String SMITH =
            "Smith and Jungers 1997, J. Hum. Evol. 32:523-559, from memory, volume and pages too: "
                    + "P. t. schweinfurthii, males 42.7, females 33.7 kg; P. t. troglodytes 59.7 and 45.8 kg";
    private static final String CAPTIVE = "a well-fed adult above the wild mean; no figure was found";
    private static final String OVERHEAD = "by comparison with orangutans of that size; no measurement was found";
    private static final String SPECIES = "from memory, for the species";

    private static final String SELDOM =
            "chimpanzees swing by their arms in play and feeding, seldom to travel; from memory";

    private Chimpanzees() {}

    static List<BodyFigures> all() {
        return List.of(male(), female());
    }

    private static BodyFigures male() {
        var of = new Sheet("male chimpanzee");
        return new BodyFigures(
                of.body(),
                of.kg("mass", 43, 35, 60, UNVERIFIED, SMITH),
                of.kg("structural-mass", 70, 55, 90, ASSUMPTION, CAPTIVE),
                of.m("arm-span", 1.9, 1.6, 2.1, UNVERIFIED, SPECIES),
                of.m("gap-reach", 1.5, 1.1, 1.9, DERIVED, SPAN),
                of.m("overhead-reach", 1.9, 1.6, 2.1, ASSUMPTION, OVERHEAD),
                of.m("leap", 2, 1, 4, UNVERIFIED, SPECIES),
                of.takeOff(4.5, 3, 6.5, DERIVED, LEVEL_LEAP + ", rounded up"),
                of.m("grip-diameter", 0.134, 0.09, 0.21, ASSUMPTION, GRIP),
                of.m("hug-diameter", 0.76, 0.5, 1.0, ASSUMPTION, HUG),
                of.m("walkway-diameter", 0.25, 0.12, 0.4, ASSUMPTION, WALKWAY),
                of.brachiates(false, ASSUMPTION, SELDOM));
    }

    private static BodyFigures female() {
        var of = new Sheet("female chimpanzee");
        return new BodyFigures(
                of.body(),
                of.kg("mass", 34, 28, 47, UNVERIFIED, SMITH),
                of.kg("structural-mass", 60, 45, 75, ASSUMPTION, CAPTIVE),
                of.m("arm-span", 1.9, 1.6, 2.1, UNVERIFIED, SPECIES),
                of.m("gap-reach", 1.5, 1.1, 1.9, DERIVED, SPAN),
                of.m("overhead-reach", 1.9, 1.5, 2.1, ASSUMPTION, OVERHEAD),
                of.m("leap", 2, 1, 4, UNVERIFIED, SPECIES),
                of.takeOff(4.5, 3, 6.5, DERIVED, LEVEL_LEAP + ", rounded up"),
                of.m("grip-diameter", 0.123, 0.08, 0.20, ASSUMPTION, GRIP),
                of.m("hug-diameter", 0.76, 0.5, 1.0, ASSUMPTION, HUG),
                of.m("walkway-diameter", 0.24, 0.12, 0.4, ASSUMPTION, WALKWAY),
                of.brachiates(false, ASSUMPTION, SELDOM));
    }
}
