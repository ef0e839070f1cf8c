package limbway.reports.data;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import limbway.model.link.LinkLimits;
import limbway.model.parameter.Parameter;
import limbway.sim.experiment.RunSettings;
import limbway.sim.experiment.link.LinkSearch;

/**
 * Everything needed to search for links again.
 *
 * @param scenario name of the scenario file, without its folder
 * @param title what the scenario calls itself
 * @param sha256Hex SHA-256 of the scenario, 64 hexadecimal digits
 * @param layout name of the layout
 * @param settings seed, replications of a check, days, date
 * @param demandReplications replications in which trips were counted
 * @param limits what might be tied where
 * @param links the most links in one proposal; 0 where only falls were looked at
 * @param limbwayVersion version of this program
 * @param javaVersion version of the Java runtime
 * @param parameters every number that took part
 * @param notes what the reader of the scenario remarked
 */
public record LinkInfo(
        String scenario,
        String title,
        String sha256Hex,
        String layout,
        RunSettings settings,
        int demandReplications,
        LinkLimits limits,
        int links,
        String limbwayVersion,
        String javaVersion,
        List<Parameter> parameters,
        List<String> notes)
        implements Described {

    /** Keeps copies of the lists. */
    public LinkInfo {
        parameters = List.copyOf(parameters);
        notes = List.copyOf(notes);
    }

    /**
     * What the search was made with, for answers that programs read.
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
        root.put("replications", settings.replications());
        root.put("first_replication", LinkSearch.CHECK_FROM);
        root.put("held_up_first_replication", LinkSearch.HELD_UP_FROM);
        root.put("demand_replications", demandReplications);
        root.put("days", settings.days());
        root.put("warm_up_days", settings.warmUpDays());
        root.put("date", settings.date().toString());
        root.put("kind", limits.kind().word());
        root.put("diameter_m", limits.diameterM());
        root.put("shortest_m", limits.shortestM());
        root.put("longest_m", limits.longestM());
        root.put("steepest_deg", limits.steepestDeg());
        root.put("clearance_m", limits.clearanceM());
        root.put("spacing_m", limits.spacingM());
        root.put("on_ropes", limits.onRopes());
        root.put("most_links", links);
        root.put("limbway", limbwayVersion);
        root.put("java", javaVersion);
        root.put("notes", notes);
        return root;
    }

    @Override
    public Head head() {
        return new Head(
                "limbway-link",
                title + ", " + layout,
                "Which ropes or poles would bring trips off the ground, and which supports hurt most if they fail.");
    }
}
