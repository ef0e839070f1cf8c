package limbway.model.body;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import limbway.model.parameter.Parameter;
import limbway.model.parameter.Standing;

/**
 * The bodies that a scenario can name, with the source of every figure.
 *
 * <p>Wild masses move; captive masses are for structures. Spans that nobody measured scale with the cube root of mass
 * from the one that was (2.4 m at 74 kg). Reaching over a gap uses 0.8 of the span, an assumption that a keeper should
 * replace by what the own animals do.
 */
public final class BodyCatalogue {

    private static final String RAYADIN = "Rayadin and Spehar 2015, doi 10.1002/ajpa.22709: wild Bornean orangutans";
    private static final String FIELD_GUIDE =
            "Forestry Department Sarawak, species page (secondary): age 7 to 10 years "
                    + "20 to 40 kg; largest male 1.4 m tall, arm span 2.4 m";
    private static final String SPAN = "0.8 of the arm span; span 2.4 m at 74 kg scaled by the cube root of mass";
    private static final String CAPTIVE =
            "above captive adults (113 kg male, 54 kg female; secondary report on Pontzer "
                    + "et al. 2010, doi 10.1073/pnas.1001031107)";
    private static final String GRIP =
            "hook grip twice the full wrap, full wrap = hand length / pi; male hand 25 cm (from "
                    + "memory) scaled by the cube root of mass; no measured limit was found";
    private static final String HUG = "both arms reach half-way round a rough stem: 0.4 of the arm span";
    private static final String WALKWAY =
            "a beam counts as broad from 0.3 m for the largest male, less for smaller bodies";

    private static final Speeds SPEEDS = new Speeds(0.7, 0.3, 0.4, 0.3);

    private final List<BodyFigures> figures;

    private BodyCatalogue(List<BodyFigures> figures) {
        this.figures = List.copyOf(figures);
    }

    /**
     * The four orangutan classes.
     *
     * @return a catalogue in order of mass, heaviest first
     */
    public static BodyCatalogue standard() {
        return new BodyCatalogue(List.of(
                new BodyFigures(
                        "flanged male",
                        figure(
                                "flanged male",
                                "mass",
                                "kg",
                                74,
                                55,
                                91,
                                Standing.PUBLISHED,
                                RAYADIN + ", 74 +/- 9.8, n = 12"),
                        figure("flanged male", "structural-mass", "kg", 120, 90, 150, Standing.DERIVED, CAPTIVE),
                        figure("flanged male", "gap-reach", "m", 1.9, 1.4, 2.3, Standing.DERIVED, SPAN),
                        figure("flanged male", "overhead-reach", "m", 2.2, 1.8, 2.4, Standing.DERIVED, FIELD_GUIDE),
                        figure("flanged male", "grip-diameter", "m", 0.16, 0.10, 0.25, Standing.ASSUMPTION, GRIP),
                        figure("flanged male", "hug-diameter", "m", 0.96, 0.6, 1.2, Standing.ASSUMPTION, HUG),
                        figure("flanged male", "walkway-diameter", "m", 0.30, 0.15, 0.5, Standing.ASSUMPTION, WALKWAY)),
                new BodyFigures(
                        "adult female",
                        figure(
                                "adult female",
                                "mass",
                                "kg",
                                35,
                                25,
                                45,
                                Standing.PUBLISHED,
                                RAYADIN + ", 35.3 +/- 7.3, n = 7"),
                        figure("adult female", "structural-mass", "kg", 60, 45, 80, Standing.DERIVED, CAPTIVE),
                        figure("adult female", "gap-reach", "m", 1.5, 1.1, 1.9, Standing.DERIVED, SPAN),
                        figure("adult female", "overhead-reach", "m", 1.7, 1.4, 1.9, Standing.DERIVED, FIELD_GUIDE),
                        figure("adult female", "grip-diameter", "m", 0.125, 0.08, 0.20, Standing.ASSUMPTION, GRIP),
                        figure("adult female", "hug-diameter", "m", 0.76, 0.5, 1.0, Standing.ASSUMPTION, HUG),
                        figure("adult female", "walkway-diameter", "m", 0.25, 0.12, 0.4, Standing.ASSUMPTION, WALKWAY)),
                new BodyFigures(
                        "adolescent",
                        figure("adolescent", "mass", "kg", 30, 20, 40, Standing.UNVERIFIED, FIELD_GUIDE),
                        figure("adolescent", "structural-mass", "kg", 45, 35, 60, Standing.DERIVED, CAPTIVE),
                        figure("adolescent", "gap-reach", "m", 1.4, 1.0, 1.8, Standing.DERIVED, SPAN),
                        figure("adolescent", "overhead-reach", "m", 1.6, 1.3, 1.8, Standing.DERIVED, FIELD_GUIDE),
                        figure("adolescent", "grip-diameter", "m", 0.118, 0.08, 0.18, Standing.ASSUMPTION, GRIP),
                        figure("adolescent", "hug-diameter", "m", 0.72, 0.45, 0.95, Standing.ASSUMPTION, HUG),
                        figure("adolescent", "walkway-diameter", "m", 0.22, 0.12, 0.4, Standing.ASSUMPTION, WALKWAY)),
                new BodyFigures(
                        "juvenile",
                        figure("juvenile", "mass", "kg", 15, 10, 20, Standing.UNVERIFIED, "from memory"),
                        figure("juvenile", "structural-mass", "kg", 25, 18, 35, Standing.DERIVED, CAPTIVE),
                        figure("juvenile", "gap-reach", "m", 1.1, 0.8, 1.4, Standing.DERIVED, SPAN),
                        figure("juvenile", "overhead-reach", "m", 1.2, 1.0, 1.4, Standing.DERIVED, FIELD_GUIDE),
                        figure("juvenile", "grip-diameter", "m", 0.094, 0.06, 0.14, Standing.ASSUMPTION, GRIP),
                        figure("juvenile", "hug-diameter", "m", 0.56, 0.35, 0.75, Standing.ASSUMPTION, HUG),
                        figure("juvenile", "walkway-diameter", "m", 0.18, 0.1, 0.3, Standing.ASSUMPTION, WALKWAY))));
    }

    /**
     * The names that a scenario may use.
     *
     * @return names in catalogue order
     */
    public List<String> names() {
        return figures.stream().map(BodyFigures::name).toList();
    }

    /**
     * Looks a body up by its name.
     *
     * @param name age-sex class
     * @return the body, or empty if the catalogue has none of that name
     */
    public Optional<Body> find(String name) {
        return figures.stream()
                .filter(body -> body.name().equals(name))
                .findFirst()
                .map(body -> body.toBody(SPEEDS));
    }

    /**
     * Every figure of every body, and the speeds that all share.
     *
     * @return parameters in catalogue order
     */
    public List<Parameter> parameters() {
        List<Parameter> all = new ArrayList<>();
        for (BodyFigures body : figures) {
            all.addAll(body.parameters());
        }
        String source =
                "no primary speed was found; captive animals climb faster than wild ones (Isler and Thorpe 2003)";
        all.add(speed("walk", "speed on ground, platform and broad beam", SPEEDS.walkMPerS(), 0.4, 1.2, source));
        all.add(speed("climb", "speed up a steep support", SPEEDS.climbMPerS(), 0.15, 0.5, source));
        all.add(speed("descend", "speed down a steep support", SPEEDS.descendMPerS(), 0.2, 0.6, source));
        all.add(speed(
                "clamber", "speed along other supports and across gaps", SPEEDS.clamberMPerS(), 0.1, 0.5, source));
        return all;
    }

    private static Parameter figure(
            String body,
            String key,
            String unit,
            double value,
            double low,
            double high,
            Standing standing,
            String source) {
        String name = "body." + body.replace(' ', '-') + "." + key;
        return new Parameter(name, key.replace('-', ' ') + " of a " + body, unit, value, low, high, standing, source);
    }

    private static Parameter speed(String key, String meaning, double value, double low, double high, String source) {
        return new Parameter("speed." + key, meaning, "m/s", value, low, high, Standing.ASSUMPTION, source);
    }
}
