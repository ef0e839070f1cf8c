package limbway.reports.data;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import limbway.sim.experiment.RunSettings;

/**
 * Everything needed to make a sweep again.
 *
 * @param scenario name of the scenario file, without its folder
 * @param title what the scenario calls itself
 * @param sha256Hex SHA-256 of the scenario, 64 hexadecimal digits
 * @param isFull whether all combinations were tried
 * @param layouts names of the layouts
 * @param settings seed, replications, days, date
 * @param thresholdM height above which an animal counts as up high [m]
 * @param limbwayVersion version of this program
 * @param javaVersion version of the Java runtime
 * @param notes what the reader of the scenario remarked
 */
public record SweepInfo(
        String scenario,
        String title,
        String sha256Hex,
        boolean isFull,
        List<String> layouts,
        RunSettings settings,
        double thresholdM,
        String limbwayVersion,
        String javaVersion,
        List<String> notes)
        implements Described {

    /** Keeps copies of the lists. */
    public SweepInfo {
        layouts = List.copyOf(layouts);
        notes = List.copyOf(notes);
    }

    /**
     * The same question always has the same line, and another question another; more replications are no other question.
     *
     * @param criteria names of what is measured, in the order of the values
     * @return one line
     */
    public String question(List<String> criteria) {
        return new NotebookQuestion(" ", "=")
                .says("sweep", sha256Hex)
                .lives(settings)
                .has("threshold", thresholdM)
                .has("limbway", limbwayVersion)
                .says(String.join(",", criteria))
                .line();
    }

    /**
     * What the sweep was made with, for answers that programs read.
     *
     * @return names and values
     */
    public Map<String, Object> record() {
        Map<String, Object> root = new LinkedHashMap<>();
        root.put("scenario", scenario);
        root.put("title", title);
        root.put("sha256", sha256Hex);
        root.put("plan", isFull ? "full" : "latin");
        root.put("layouts", layouts);
        root.put("seed", settings.seed());
        root.put("replications", settings.replications());
        root.put("days", settings.days());
        root.put("warm_up_days", settings.warmUpDays());
        root.put("date", settings.date().toString());
        root.put("threshold_m", thresholdM);
        root.put("limbway", limbwayVersion);
        root.put("java", javaVersion);
        root.put("notes", notes);
        return root;
    }

    @Override
    public Head head() {
        return new Head(
                "limbway-sweep",
                title + ", " + String.join(", ", layouts),
                "What was measured of a simulated group of apes at each point of a sweep through values of its scenario.");
    }
}
