package limbway.reports.data;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import limbway.model.parameter.Parameter;
import limbway.sim.experiment.RunSettings;

/**
 * Everything needed to make a screening again.
 *
 * @param scenario name of the scenario file, without its folder
 * @param title what the scenario calls itself
 * @param sha256Hex SHA-256 of the scenario, 64 hexadecimal digits
 * @param layout name of the layout
 * @param against name of the layout that it is compared with; empty if it stands alone
 * @param settings seed, replications, days, date
 * @param trajectories walks asked for
 * @param thresholdM height above which an animal counts as up high [m]
 * @param limbwayVersion version of this program
 * @param javaVersion version of the Java runtime
 * @param parameters every number that took part, with its value as the scenario stands
 * @param notes what the reader of the scenario remarked
 */
public record ScreenInfo(
        String scenario,
        String title,
        String sha256Hex,
        String layout,
        Optional<String> against,
        RunSettings settings,
        int trajectories,
        double thresholdM,
        String limbwayVersion,
        String javaVersion,
        List<Parameter> parameters,
        List<String> notes)
        implements Described {

    /** Keeps copies of the lists. */
    public ScreenInfo {
        parameters = List.copyOf(parameters);
        notes = List.copyOf(notes);
    }

    /**
     * What the screening was made with, for answers that programs read.
     *
     * @return names and values, without the parameters
     */
    public Map<String, Object> record() {
        Map<String, Object> root = new LinkedHashMap<>();
        root.put("scenario", scenario);
        root.put("title", title);
        root.put("sha256", sha256Hex);
        root.put("layout", layout);
        root.put("against", against.orElse(null));
        root.put("seed", settings.seed());
        root.put("replications", settings.replications());
        root.put("days", settings.days());
        root.put("warm_up_days", settings.warmUpDays());
        root.put("date", settings.date().toString());
        root.put("wanted_trajectories", trajectories);
        root.put("threshold_m", thresholdM);
        root.put("limbway", limbwayVersion);
        root.put("java", javaVersion);
        root.put("notes", notes);
        return root;
    }

    @Override
    public Head head() {
        return new Head(
                "limbway-screen",
                title + ", " + layout,
                "Which assumptions of a simulated enclosure move its answers, and by how much.");
    }
}
