package limbway.reports.command;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import limbway.reports.data.Json;
import limbway.reports.measure.Activity;
import limbway.reports.measure.Aspect;
import limbway.reports.measure.Budget;
import limbway.reports.measure.ElevatedTime;
import limbway.reports.measure.LayoutDifference;
import limbway.reports.measure.Measures;
import limbway.reports.measure.OffGround;
import limbway.reports.measure.OffGroundShare;
import limbway.reports.measure.Visibility;
import limbway.reports.page.Report;
import limbway.sim.experiment.statistics.Interval;

/** The machine-readable answer of a run. */
final class RunAnswer {

    private RunAnswer() {}

    static Map<String, Object> of(Report report) {
        Map<String, Object> root = new LinkedHashMap<>();
        root.put("scenario", report.info().scenario());
        root.put("sha256", report.info().sha256Hex());
        root.put("layout", report.info().layout());
        root.put("seed", report.info().settings().seed());
        root.put("replications", report.info().finishedReplications());
        root.put("days", report.info().settings().days());
        root.put("date", report.info().settings().date().toString());
        root.put("warm_up_days", report.info().settings().warmUpDays());
        root.put("worth", report.info().worth() ? "on" : "off");
        addMeasures(root, report.measures().offGround(), report.measures().elevated());
        addMore(root, report.measures());
        addAlone(root, report, report.measures().layout());
        List<Object> others = new ArrayList<>();
        for (Measures other : report.others()) {
            Map<String, Object> object = new LinkedHashMap<>();
            object.put("layout", other.layout());
            addMeasures(object, other.offGround(), other.elevated());
            addMore(object, other);
            addAlone(object, report, other.layout());
            Map<String, Object> difference = new LinkedHashMap<>();
            for (Aspect aspect : Aspect.values()) {
                difference.put(
                        aspect.word(),
                        LayoutDifference.of(report.measures(), other, aspect)
                                .map(Json::interval)
                                .orElse(null));
            }
            object.put("offground_difference", difference);
            others.add(object);
        }
        root.put("other_layouts", others);
        return root;
    }

    /** The same measures with needs and energy alone, where that was run. */
    private static void addAlone(Map<String, Object> object, Report report, String layout) {
        report.alone().stream()
                .filter(alone -> alone.layout().equals(layout))
                .findFirst()
                .ifPresent(alone -> {
                    Map<String, Object> worthOff = new LinkedHashMap<>();
                    addMeasures(worthOff, alone.offGround(), alone.elevated());
                    object.put("worth_off", worthOff);
                });
    }

    private static void addMeasures(Map<String, Object> object, OffGround offGround, ElevatedTime time) {
        Map<String, Object> shares = shares(offGround.overall());
        shares.put("by_body", each(offGround.byBody()));
        shares.put("by_animal", each(offGround.byAnimal()));
        object.put("offground", shares);
        Map<String, Object> elevated = new LinkedHashMap<>();
        time.share().ifPresent(share -> elevated.putAll(Json.interval(share)));
        elevated.put("threshold_m", time.thresholdM());
        object.put("time_elevated", elevated);
    }

    private static void addMore(Map<String, Object> object, Measures measures) {
        object.put("waiting_min_per_day", Json.interval(measures.waiting().minutesPerDay()));
        object.put("displacements_per_day", Json.interval(measures.waiting().displacementsPerDay()));
        object.put("activity", activity(measures.budget()));
        measures.visibility().ifPresent(visible -> object.put("visible", visible(visible)));
    }

    /** Shares of waking time; rest is also comfort and company, and what is left over is waiting. */
    private static Map<String, Object> activity(Budget budget) {
        Map<String, Object> object = new LinkedHashMap<>();
        object.put("feed", interval(budget, Activity.FEEDING));
        object.put("rest", budget.atRest().map(Json::interval).orElse(null));
        object.put("move", interval(budget, Activity.MOVING));
        object.put("other", interval(budget, Activity.WAITING));
        return object;
    }

    private static Map<String, Object> interval(Budget budget, Activity activity) {
        Interval share = budget.waking().get(activity);
        return share == null ? null : Json.interval(share);
    }

    private static Map<String, Object> visible(Visibility visible) {
        Map<String, Object> object = seen(visible.overall());
        Map<String, Object> byBody = new LinkedHashMap<>();
        visible.byBody().forEach((name, seen) -> byBody.put(name, seen(seen)));
        Map<String, Object> byAnimal = new LinkedHashMap<>();
        visible.byAnimal().forEach((name, seen) -> byAnimal.put(name, seen(seen)));
        object.put("by_body", byBody);
        object.put("by_animal", byAnimal);
        return object;
    }

    private static Map<String, Object> seen(Visibility.Seen seen) {
        Map<String, Object> object = new LinkedHashMap<>();
        object.put("overall", seen.fromAny().map(Json::interval).orElse(null));
        object.put("out_of_sight", seen.outOfSight().map(Json::interval).orElse(null));
        object.put("at_retreat", seen.atRetreat().map(Json::interval).orElse(null));
        Map<String, Object> byViewpoint = new LinkedHashMap<>();
        seen.fromViewpoint().forEach((name, share) -> byViewpoint.put(name, Json.interval(share)));
        object.put("by_viewpoint", byViewpoint);
        return object;
    }

    private static Map<String, Object> each(Map<String, OffGroundShare> byName) {
        Map<String, Object> object = new LinkedHashMap<>();
        byName.forEach((name, share) -> object.put(name, shares(share)));
        return object;
    }

    private static Map<String, Object> shares(OffGroundShare share) {
        Map<String, Object> object = new LinkedHashMap<>();
        for (Aspect aspect : Aspect.values()) {
            object.put(aspect.word(), share.by(aspect).map(Json::interval).orElse(null));
        }
        return object;
    }
}
