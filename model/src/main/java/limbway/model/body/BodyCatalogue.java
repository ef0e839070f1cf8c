package limbway.model.body;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import limbway.model.parameter.Parameter;
import limbway.model.parameter.Standing;

/**
 * The bodies that a scenario can name, with the source of every figure.
 *
 * <p>Wild masses move; captive masses are for structures. Spans of orangutans that nobody measured scale with the cube
 * root of mass from the one that was (2.4 m at 74 kg). Reaching over a gap uses 0.8 of the span, an assumption that a
 * keeper should replace by what the own animals do. Speeds are the same for all.
 */
public final class BodyCatalogue {

    private static final Speeds SPEEDS = new Speeds(0.7, 0.3, 0.4, 0.3, 0.8);

    private static final String NO_SWING_SPEED = "above clambering, as fast as walking; no measurement was found";

    private final List<BodyFigures> figures;

    private BodyCatalogue(List<BodyFigures> figures) {
        this.figures = List.copyOf(figures);
    }

    /**
     * Orangutans, gibbons and chimpanzees.
     *
     * @return a catalogue by genus, the largest class of each first
     */
    public static BodyCatalogue standard() {
        return new BodyCatalogue(Stream.of(Orangutans.all(), Gibbons.all(), Chimpanzees.all())
                .flatMap(List::stream)
                .toList());
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
                "clamber",
                "speed along other supports, on panels and across gaps",
                SPEEDS.clamberMPerS(),
                0.1,
                0.5,
                source));
        all.add(speed(
                "brachiate", "speed hand over hand below supports", SPEEDS.brachiateMPerS(), 0.4, 2, NO_SWING_SPEED));
        return all;
    }

    private static Parameter speed(String key, String meaning, double value, double low, double high, String source) {
        return new Parameter("speed." + key, meaning, "m/s", value, low, high, Standing.ASSUMPTION, source);
    }
}
