package limbway.reports.data;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import limbway.model.parameter.Parameter;
import limbway.sim.experiment.RunSettings;
import limbway.sim.experiment.statistics.StoppingRule;

/**
 * Everything needed to make a comparison again.
 *
 * @param scenario name of the scenario file, without its folder
 * @param title what the scenario calls itself
 * @param sha256Hex SHA-256 of the scenario, 64 hexadecimal digits
 * @param layouts names of the layouts
 * @param settings seed, days, date and days of warm-up; its replications are the budget
 * @param rule when differences are known well enough
 * @param required names of the measures whose differences had to be
 * @param worth whether places were worth something beyond needs and energy
 * @param thresholdM height above which an animal counts as up high [m]
 * @param limbwayVersion version of this program
 * @param javaVersion version of the Java runtime
 * @param parameters every number that took part
 * @param notes what the reader of the scenario remarked
 */
public record CompareInfo(
        String scenario,
        String title,
        String sha256Hex,
        List<String> layouts,
        RunSettings settings,
        StoppingRule rule,
        List<String> required,
        boolean worth,
        double thresholdM,
        String limbwayVersion,
        String javaVersion,
        List<Parameter> parameters,
        List<String> notes)
        implements Described {

    /** Keeps copies of the lists. */
    public CompareInfo {
        layouts = List.copyOf(layouts);
        required = List.copyOf(required);
        parameters = List.copyOf(parameters);
        notes = List.copyOf(notes);
    }

    /**
     * What the comparison was made with, for answers that programs read.
     *
     * @return names and values, without the parameters
     */
    public Map<String, Object> record() {
        Map<String, Object> root = new LinkedHashMap<>();
        root.put("scenario", scenario);
        root.put("title", title);
        root.put("sha256", sha256Hex);
        root.put("layouts", layouts);
        root.put("seed", settings.seed());
        root.put("days", settings.days());
        root.put("warm_up_days", settings.warmUpDays());
        root.put("date", settings.date().toString());
        root.put("worth", worth ? "on" : "off");
        root.put("threshold_m", thresholdM);
        root.put("most_replications", settings.replications());
        root.put("first_look", rule.first());
        root.put("batch", rule.batch());
        root.put("precision", rule.precision());
        root.put("relative", rule.relative());
        root.put("required", required);
        root.put("limbway", limbwayVersion);
        root.put("java", javaVersion);
        root.put("notes", notes);
        return root;
    }

    /**
     * All that decides what an animal does in a replication of these settings, whichever layouts are compared and however
     * long.
     *
     * @param measures names of the measures, in order
     * @return one line
     */
    public String question(List<String> measures) {
        return new NotebookQuestion("; ", " ")
                .says("limbway compare " + limbwayVersion)
                .has("scenario", sha256Hex)
                .lives(settings)
                .has("threshold", thresholdM)
                .says(String.join(" ", measures))
                .line();
    }

    @Override
    public Head head() {
        return new Head(
                "limbway-compare",
                title + ": " + String.join(", ", layouts),
                "How layouts of a simulated enclosure differ under the same chance.");
    }
}
