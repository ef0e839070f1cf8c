package limbway.reports.data;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import limbway.model.parameter.Parameter;

/** The record of a run: what is needed to make it again, without anything that the clock or machine decides. */
public final class RunRecord {

    private RunRecord() {}

    static String json(RunInfo info) {
        Map<String, Object> root = new LinkedHashMap<>();
        root.put("scenario", info.scenario());
        root.put("title", info.title());
        root.put("sha256", info.sha256Hex());
        root.put("layout", info.layout());
        root.put("other_layouts", info.otherLayouts());
        root.put("seed", info.settings().seed());
        root.put("replications", info.settings().replications());
        root.put("finished_replications", info.finishedReplications());
        root.put("days", info.settings().days());
        root.put("date", info.settings().date().toString());
        root.put("warm_up_days", info.settings().warmUpDays());
        root.put("worth", info.worth() ? "on" : "off");
        root.put(
                "what_is_told",
                info.worth()
                        ? "charts and tables: worth on; worth_off in the answer and the second table of worth: worth off"
                        : "everything: worth off");
        root.put("threshold_m", info.thresholdM());
        root.put("limbway", info.limbwayVersion());
        root.put("java", info.javaVersion());
        root.put("notes", info.notes());
        root.put("parameters", parameters(info.parameters()));
        return Json.text(root);
    }

    /**
     * Parameters as objects.
     *
     * @param used what took part
     * @return one object for each, with everything that is known of it
     */
    public static List<Object> parameters(List<Parameter> used) {
        List<Object> parameters = new ArrayList<>();
        for (Parameter parameter : used) {
            Map<String, Object> object = new LinkedHashMap<>();
            object.put("name", parameter.name());
            object.put("meaning", parameter.meaning());
            object.put("unit", parameter.unit());
            object.put("value", parameter.value());
            object.put("low", parameter.low());
            object.put("high", parameter.high());
            object.put("standing", parameter.standing().word());
            object.put("source", parameter.source());
            parameters.add(object);
        }
        return parameters;
    }
}
