package limbway.model.body;

import java.util.List;

import static limbway.model.body.Sheet.GRIP;
import static limbway.model.body.Sheet.HUG;
import static limbway.model.body.Sheet.SPAN;
import static limbway.model.body.Sheet.WALKWAY;
import static limbway.model.parameter.Standing.ASSUMPTION;
import static limbway.model.parameter.Standing.PUBLISHED;
import static limbway.model.parameter.Standing.UNVERIFIED;

/** Adult white-handed gibbons and siamangs of either sex, which hardly differ in mass. */
final class Gibbons {

    private static final String SMITH =
            "Smith and Jungers 1997, J. Hum. Evol. 32:523-559, from memory, volume and pages too: males ";
    private static final String CAPTIVE = "a well-fed adult above the wild mean; no figure was found";
    private static final String OVERHEAD = "an arm of half the span above a raised body; no measurement was found";
    private static final String WIDEST = "widest gap seen crossed by wild gibbons, 9 m; 42 % of crossings 1.6 to 3.0 m "
            + "(Cannon and Leighton 1994, Am. J. Phys. Anthropol. 93:505-524, abstract)";
    private static final String TAKE_OFF =
            "fastest take-off, 8.3 m/s (Channon et al. 2011, doi 10.1098/rsbl.2011.0574, abstract)";
    private static final String LIKE_GIBBON = "by analogy with the white-handed gibbon: ";

    private static final String SWINGS = "the usual way of travel of gibbons and siamangs, from memory";

    private Gibbons() {}

    static List<BodyFigures> all() {
        return List.of(whiteHanded(), siamang());
    }

    private static BodyFigures whiteHanded() {
        var of = new Sheet("white-handed gibbon");
        return new BodyFigures(
                of.body(),
                of.kg("mass", 5.9, 5, 7, UNVERIFIED, SMITH + "5.9, females 5.3 kg"),
                of.kg("structural-mass", 8, 7, 10, ASSUMPTION, CAPTIVE),
                of.m("arm-span", 1.4, 1.2, 1.6, UNVERIFIED, "from memory"),
                of.m("gap-reach", 1.1, 0.8, 1.4, ASSUMPTION, SPAN),
                of.m("overhead-reach", 1.2, 1.0, 1.4, ASSUMPTION, OVERHEAD),
                of.m("leap", 9, 7, 11, PUBLISHED, WIDEST),
                of.takeOff(8.3, 6, 8.3, PUBLISHED, TAKE_OFF),
                of.m("grip-diameter", 0.07, 0.05, 0.12, ASSUMPTION, GRIP),
                of.m("hug-diameter", 0.56, 0.35, 0.7, ASSUMPTION, HUG),
                of.m("walkway-diameter", 0.12, 0.06, 0.25, ASSUMPTION, WALKWAY),
                of.brachiates(true, UNVERIFIED, SWINGS));
    }

    private static BodyFigures siamang() {
        var of = new Sheet("siamang");
        return new BodyFigures(
                of.body(),
                of.kg("mass", 11.9, 8, 13, UNVERIFIED, SMITH + "11.9, females 10.7 kg"),
                of.kg("structural-mass", 14, 12, 18, ASSUMPTION, CAPTIVE),
                of.m("arm-span", 1.5, 1.3, 1.8, UNVERIFIED, "zoo education notes: up to 1.5 m"),
                of.m("gap-reach", 1.2, 0.9, 1.5, ASSUMPTION, SPAN),
                of.m("overhead-reach", 1.3, 1.1, 1.5, ASSUMPTION, OVERHEAD),
                of.m("leap", 9, 5, 11, ASSUMPTION, LIKE_GIBBON + WIDEST),
                of.takeOff(8.3, 5, 8.3, ASSUMPTION, LIKE_GIBBON + TAKE_OFF),
                of.m("grip-diameter", 0.09, 0.06, 0.15, ASSUMPTION, GRIP),
                of.m("hug-diameter", 0.60, 0.4, 0.75, ASSUMPTION, HUG),
                of.m("walkway-diameter", 0.15, 0.08, 0.3, ASSUMPTION, WALKWAY),
                of.brachiates(true, UNVERIFIED, SWINGS));
    }
}
