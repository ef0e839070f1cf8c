package limbway.scenarios.entry;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;

import limbway.model.body.Body;
import limbway.model.body.BodyCatalogue;
import limbway.model.body.Speeds;
import limbway.model.parameter.Parameter;
import limbway.model.parameter.Standing;

/** The figures of a body that a scenario defines, as parameters. */
final class BodyParameters {

    /** Source of what the scenario states; nobody but its author knows where that comes from. */
    private static final String STATED = "scenario";

    private static final Map<String, ToDoubleFunction<Speeds>> SPEEDS = new TreeMap<>(Map.of(
            "walk", Speeds::walkMPerS,
            "climb", Speeds::climbMPerS,
            "descend", Speeds::descendMPerS,
            "clamber", Speeds::clamberMPerS,
            "brachiate", Speeds::brachiateMPerS));

    private BodyParameters() {}

    /** What is stated stands with the scenario as its source; the rest with the source of the body that it is like. */
    static List<Parameter> of(Body body, Fields fields, String like, BodyCatalogue catalogue) {
        Map<String, Parameter> known = new TreeMap<>();
        String before = prefix(like);
        catalogue.parameters().stream()
                .filter(parameter -> !like.isEmpty() && parameter.name().startsWith(before))
                .forEach(parameter -> known.put(parameter.name().substring(before.length()), parameter));
        List<Parameter> all = new ArrayList<>();
        for (BodyReader.Figure figure : BodyReader.FIGURES) {
            Quantity quantity = figure.quantity();
            double value = figure.of().applyAsDouble(body);
            all.add(parameter(
                    body.name(), quantity.key(), quantity.unit(), value, inherited(known, fields, quantity.key())));
        }
        double brachiates = body.brachiates() ? 1 : 0;
        all.add(parameter(body.name(), "brachiates", "1", brachiates, inherited(known, fields, "brachiates")));
        if (fields.find("speeds").isPresent()) {
            SPEEDS.forEach((key, speed) -> all.add(parameter(
                    body.name(), key + "-speed", "m/s", speed.applyAsDouble(body.speeds()), Optional.empty())));
        }
        return all;
    }

    private static Optional<Parameter> inherited(Map<String, Parameter> known, Fields fields, String key) {
        return fields.find(key).isPresent() ? Optional.empty() : Optional.ofNullable(known.get(key));
    }

    private static Parameter parameter(
            String body, String key, String unit, double value, Optional<Parameter> inherited) {
        String name = prefix(body) + key;
        String meaning = key.replace('-', ' ') + " of " + body;
        return inherited
                .filter(model -> model.value() == value)
                .map(model -> new Parameter(
                        name, meaning, unit, value, model.low(), model.high(), model.standing(), model.source()))
                .orElseGet(() -> new Parameter(name, meaning, unit, value, value, value, Standing.UNVERIFIED, STATED));
    }

    private static String prefix(String body) {
        return "body." + body.replace(' ', '-') + ".";
    }
}
