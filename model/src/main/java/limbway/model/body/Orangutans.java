package limbway.model.body;

import java.util.List;

import static limbway.model.body.Sheet.GRIP;
import static limbway.model.body.Sheet.HUG;
import static limbway.model.body.Sheet.LEVEL_LEAP;
import static limbway.model.body.Sheet.REACH_OF_SCALED_SPAN;
import static limbway.model.body.Sheet.SCALED_SPAN;
import static limbway.model.body.Sheet.WALKWAY;
import static limbway.model.parameter.Standing.ASSUMPTION;
import static limbway.model.parameter.Standing.DERIVED;
import static limbway.model.parameter.Standing.PUBLISHED;
import static limbway.model.parameter.Standing.UNVERIFIED;

/** The classes of orangutans; a mother with her infant is the adult female {@link Body#carrying carrying} it. */
final class Orangutans {

    private static final String RAYADIN = "Rayadin and Spehar 2015, doi 10.1002/ajpa.22709: wild Bornean orangutans";
    private static final String FIELD_GUIDE =
            "Forestry Department Sarawak, species page (secondary): age 7 to 10 years "
                    + "20 to 40 kg; largest male 1.4 m tall, arm span 2.4 m";
    private static final String CAPTIVE =
            "above captive adults (113 kg male, 54 kg female; secondary report on Pontzer "
                    + "et al. 2010, doi 10.1073/pnas.1001031107)";
    private static final String UNFLANGED =
            "between female and flanged male: the young ones are of female size, the older between (Kralick et al. "
                    + "2023, Integr. Comp. Biol. 63:907-921)";
    private static final String NO_LEAP =
            "orangutans of this size sway or reach over; leaps are nearly absent (Thorpe and Crompton 2006, doi "
                    + "10.1002/ajpa.20422, share from memory)";
    private static final String SHORT_LEAP = "lighter animals cross gaps large for their size (Chappell et al. 2015, "
            + "doi 10.1371/journal.pone.0130291, abstract); the metres are this project's";

    private static final String ORTHOGRADE =
            "suspended orangutans clamber with feet and hands; arm-swinging is rare (Thorpe and Crompton 2006, doi "
                    + "10.1002/ajpa.20422, rank order from memory)";

    private Orangutans() {}

    static List<BodyFigures> all() {
        return List.of(flangedMale(), unflangedMale(), adultFemale(), adolescent(), juvenile());
    }

    private static BodyFigures flangedMale() {
        var of = new Sheet("flanged male");
        return new BodyFigures(
                of.body(),
                of.kg("mass", 74, 55, 91, PUBLISHED, RAYADIN + ", 74 +/- 9.8, n = 12"),
                of.kg("structural-mass", 120, 90, 150, DERIVED, CAPTIVE),
                of.m("arm-span", 2.4, 2.0, 2.4, UNVERIFIED, FIELD_GUIDE),
                of.m("gap-reach", 1.9, 1.4, 2.3, DERIVED, REACH_OF_SCALED_SPAN),
                of.m("overhead-reach", 2.2, 1.8, 2.4, DERIVED, FIELD_GUIDE),
                of.m("leap", 0, 0, 0, ASSUMPTION, NO_LEAP),
                of.takeOff(0, 0, 0, ASSUMPTION, NO_LEAP),
                of.m("grip-diameter", 0.16, 0.10, 0.25, ASSUMPTION, GRIP),
                of.m("hug-diameter", 0.96, 0.6, 1.2, ASSUMPTION, HUG),
                of.m("walkway-diameter", 0.30, 0.15, 0.5, ASSUMPTION, WALKWAY),
                of.brachiates(false, UNVERIFIED, ORTHOGRADE));
    }

    private static BodyFigures unflangedMale() {
        var of = new Sheet("unflanged male");
        return new BodyFigures(
                of.body(),
                of.kg("mass", 47, 35, 60, ASSUMPTION, UNFLANGED + "; the middle of the range that this implies"),
                of.kg("structural-mass", 70, 55, 90, DERIVED, UNFLANGED + "; " + CAPTIVE),
                of.m("arm-span", 2.06, 1.9, 2.2, DERIVED, SCALED_SPAN),
                of.m("gap-reach", 1.6, 1.2, 2.0, DERIVED, REACH_OF_SCALED_SPAN),
                of.m("overhead-reach", 1.9, 1.6, 2.1, DERIVED, FIELD_GUIDE),
                of.m("leap", 0.5, 0, 1, ASSUMPTION, SHORT_LEAP),
                of.takeOff(2.3, 1.5, 3.2, DERIVED, LEVEL_LEAP + ", rounded up"),
                of.m("grip-diameter", 0.138, 0.09, 0.22, ASSUMPTION, GRIP),
                of.m("hug-diameter", 0.82, 0.5, 1.05, ASSUMPTION, HUG),
                of.m("walkway-diameter", 0.27, 0.13, 0.45, ASSUMPTION, WALKWAY),
                of.brachiates(false, UNVERIFIED, ORTHOGRADE));
    }

    private static BodyFigures adultFemale() {
        var of = new Sheet("adult female");
        return new BodyFigures(
                of.body(),
                of.kg("mass", 35, 25, 45, PUBLISHED, RAYADIN + ", 35.3 +/- 7.3, n = 7"),
                of.kg("structural-mass", 60, 45, 80, DERIVED, CAPTIVE),
                of.m("arm-span", 1.9, 1.6, 2.1, DERIVED, SCALED_SPAN),
                of.m("gap-reach", 1.5, 1.1, 1.9, DERIVED, REACH_OF_SCALED_SPAN),
                of.m("overhead-reach", 1.7, 1.4, 1.9, DERIVED, FIELD_GUIDE),
                of.m("leap", 0, 0, 0, ASSUMPTION, NO_LEAP),
                of.takeOff(0, 0, 0, ASSUMPTION, NO_LEAP),
                of.m("grip-diameter", 0.125, 0.08, 0.20, ASSUMPTION, GRIP),
                of.m("hug-diameter", 0.76, 0.5, 1.0, ASSUMPTION, HUG),
                of.m("walkway-diameter", 0.25, 0.12, 0.4, ASSUMPTION, WALKWAY),
                of.brachiates(false, UNVERIFIED, ORTHOGRADE));
    }

    private static BodyFigures adolescent() {
        var of = new Sheet("adolescent");
        return new BodyFigures(
                of.body(),
                of.kg("mass", 30, 20, 40, UNVERIFIED, FIELD_GUIDE),
                of.kg("structural-mass", 45, 35, 60, DERIVED, CAPTIVE),
                of.m("arm-span", 1.8, 1.5, 2.0, DERIVED, SCALED_SPAN),
                of.m("gap-reach", 1.4, 1.0, 1.8, DERIVED, REACH_OF_SCALED_SPAN),
                of.m("overhead-reach", 1.6, 1.3, 1.8, DERIVED, FIELD_GUIDE),
                of.m("leap", 1, 0, 2, ASSUMPTION, SHORT_LEAP),
                of.takeOff(3.2, 2, 4.5, DERIVED, LEVEL_LEAP + ", rounded up"),
                of.m("grip-diameter", 0.118, 0.08, 0.18, ASSUMPTION, GRIP),
                of.m("hug-diameter", 0.72, 0.45, 0.95, ASSUMPTION, HUG),
                of.m("walkway-diameter", 0.22, 0.12, 0.4, ASSUMPTION, WALKWAY),
                of.brachiates(false, UNVERIFIED, ORTHOGRADE));
    }

    private static BodyFigures juvenile() {
        var of = new Sheet("juvenile");
        return new BodyFigures(
                of.body(),
                of.kg("mass", 15, 10, 20, UNVERIFIED, "from memory"),
                of.kg("structural-mass", 25, 18, 35, DERIVED, CAPTIVE),
                of.m("arm-span", 1.4, 1.2, 1.6, DERIVED, SCALED_SPAN),
                of.m("gap-reach", 1.1, 0.8, 1.4, DERIVED, REACH_OF_SCALED_SPAN),
                of.m("overhead-reach", 1.2, 1.0, 1.4, DERIVED, FIELD_GUIDE),
                of.m("leap", 1, 0, 2, ASSUMPTION, SHORT_LEAP),
                of.takeOff(3.2, 2, 4.5, DERIVED, LEVEL_LEAP + ", rounded up"),
                of.m("grip-diameter", 0.094, 0.06, 0.14, ASSUMPTION, GRIP),
                of.m("hug-diameter", 0.56, 0.35, 0.75, ASSUMPTION, HUG),
                of.m("walkway-diameter", 0.18, 0.1, 0.3, ASSUMPTION, WALKWAY),
                of.brachiates(false, UNVERIFIED, ORTHOGRADE));
    }
}
