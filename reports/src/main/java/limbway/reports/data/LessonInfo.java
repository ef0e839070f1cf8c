package limbway.reports.data;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import limbway.model.parameter.Parameter;
import limbway.sim.experiment.RunSettings;

/**
 * Everything needed to make a lesson again.
 *
 * @param scenario name of the scenario file, without its folder
 * @param title what the scenario calls itself
 * @param sha256Hex SHA-256 of the scenario, 64 hexadecimal digits
 * @param layouts names of the layouts that were lived in, the one that is taught first
 * @param settings seed, replications, days, date and days of warm-up
 * @param thresholdM height above which an animal counts as up high [m]
 * @param limbwayVersion version of this program
 * @param javaVersion version of the Java runtime
 * @param parameters every number that took part
 * @param notes what the reader of the scenario remarked
 */
public record LessonInfo(
        String scenario,
        String title,
        String sha256Hex,
        List<String> layouts,
        RunSettings settings,
        double thresholdM,
        String limbwayVersion,
        String javaVersion,
        List<Parameter> parameters,
        List<String> notes)
        implements Described {

    /** Keeps copies of the lists. */
    public LessonInfo {
        layouts = List.copyOf(layouts);
        parameters = List.copyOf(parameters);
        notes = List.copyOf(notes);
    }

    /**
     * What the lesson was made with, for answers that programs read.
     *
     * @return names and values, without the parameters
     */
    public Map<String, Object> record() {
        Map<String, Object> root = new LinkedHashMap<>();
        root.put("scenario", scenario);
        root.put("title", title);
        root.put("sha256", sha256Hex);
        root.put("layout", layouts.get(0));
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
                "limbway-lesson",
                title + ", " + layouts.get(0),
                "The questions of a lesson about an enclosure, the answers to choose from, which are right, and their numbers.");
    }
}
