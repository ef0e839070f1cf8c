package limbway.reports.data;

import java.util.List;

import limbway.model.parameter.Parameter;
import limbway.sim.experiment.RunSettings;

/**
 * Everything needed to make a run again.
 *
 * @param scenario name of the scenario file, without its folder
 * @param title what the scenario calls itself
 * @param sha256Hex SHA-256 of the scenario, 64 hexadecimal digits
 * @param layout name of the layout
 * @param otherLayouts layouts that were run for comparison
 * @param settings seed, replications, days, date, days of warm-up
 * @param finishedReplications replications that the result rests on
 * @param thresholdM height above which an animal counts as elevated [m]
 * @param limbwayVersion version of this program
 * @param javaVersion version of the Java runtime
 * @param worth whether places were worth something beyond needs and energy in the run in question
 * @param parameters every number that took part
 * @param notes what the reader of the scenario remarked
 */
public record RunInfo(
        String scenario,
        String title,
        String sha256Hex,
        String layout,
        List<String> otherLayouts,
        RunSettings settings,
        int finishedReplications,
        double thresholdM,
        String limbwayVersion,
        String javaVersion,
        boolean worth,
        List<Parameter> parameters,
        List<String> notes) {

    /** Keeps copies of the lists. */
    public RunInfo {
        otherLayouts = List.copyOf(otherLayouts);
        parameters = List.copyOf(parameters);
        notes = List.copyOf(notes);
    }
}
