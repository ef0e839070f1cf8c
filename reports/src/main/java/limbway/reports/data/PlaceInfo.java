package limbway.reports.data;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import limbway.model.parameter.Parameter;
import limbway.sim.experiment.RunSettings;
import limbway.sim.experiment.placement.PlacingRule;
import limbway.sim.experiment.placement.PlacingRules;

/**
 * Everything needed to place again, and how many candidates there were.
 *
 * @param scenario name of the scenario file, without its folder
 * @param title what the scenario calls itself
 * @param sha256Hex SHA-256 of the scenario, 64 hexadecimal digits
 * @param layout name of the layout
 * @param settings seed, first replications, days, date
 * @param worth whether places are worth something beyond needs and energy
 * @param rules what a place must satisfy
 * @param spacingM distance between candidates that were made [m]; empty if they were given
 * @param candidates candidates before any was left out
 * @param out how many each rule left out
 * @param unreachable how many were left out because some body does not get there and back
 * @param staying how many places may also stay where they are while others are moved
 * @param judged choices that were judged without a simulation
 * @param judgedAll whether these were all there are
 * @param probability probability, asked for, of selecting the best if it leads by the indifference
 * @param indifference smallest difference of shares that matters
 * @param budget replications that the selection might use
 * @param limbwayVersion version of this program
 * @param javaVersion version of the Java runtime
 * @param parameters every number that took part
 * @param notes what the reader of the scenario remarked
 */
public record PlaceInfo(
        String scenario,
        String title,
        String sha256Hex,
        String layout,
        RunSettings settings,
        boolean worth,
        PlacingRules rules,
        Optional<Double> spacingM,
        int candidates,
        Map<PlacingRule, Integer> out,
        int unreachable,
        int staying,
        long judged,
        boolean judgedAll,
        double probability,
        double indifference,
        int budget,
        String limbwayVersion,
        String javaVersion,
        List<Parameter> parameters,
        List<String> notes)
        implements Described {

    /** Keeps copies. */
    public PlaceInfo {
        out = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(out));
        parameters = List.copyOf(parameters);
        notes = List.copyOf(notes);
    }

    /**
     * What it was made with, for answers that programs read.
     *
     * @return names and values, without the parameters
     */
    public Map<String, Object> record() {
        Map<String, Object> root = new LinkedHashMap<>();
        root.put("scenario", scenario);
        root.put("title", title);
        root.put("sha256", sha256Hex);
        root.put("layout", layout);
        root.put("seed", settings.seed());
        root.put("first_replications", settings.replications());
        root.put("days", settings.days());
        root.put("warm_up_days", settings.warmUpDays());
        root.put("date", settings.date().toString());
        root.put("worth", worth);
        root.put("spacing_m", spacingM.orElse(null));
        root.put("budget", budget);
        root.put("limbway", limbwayVersion);
        root.put("java", javaVersion);
        root.put("notes", notes);
        Map<String, Object> asked = new LinkedHashMap<>();
        asked.put("keeper_reach_m", Json.orNull(rules.keeperReachM()));
        asked.put("hoist", rules.hoist());
        asked.put("apart_m", rules.apartM());
        asked.put("load_kg", Json.orNull(rules.loadKg()));
        asked.put("shaded", rules.shaded());
        asked.put("no_hotter", rules.noHotter());
        asked.put("barrier_distance_m", rules.barrierM());
        root.put("rules", asked);
        Map<String, Object> left = new LinkedHashMap<>();
        left.put("considered", candidates);
        out.forEach((rule, count) -> left.put("left_out_by_" + rule.word().replace('-', '_'), count));
        left.put("left_out_as_unreachable", unreachable);
        left.put("as_they_are", staying);
        root.put("candidates", left);
        return root;
    }

    @Override
    public Head head() {
        return new Head(
                "limbway-place",
                title + ", " + layout,
                "Where places of an enclosure should be so that apes travel off the ground, by simulation.");
    }
}
