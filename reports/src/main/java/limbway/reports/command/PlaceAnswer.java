package limbway.reports.command;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import limbway.reports.data.Json;
import limbway.reports.data.PlaceInfo;
import limbway.reports.data.RunRecord;
import limbway.reports.measure.placement.LivedLayout;
import limbway.reports.measure.placement.PlacedLayout;
import limbway.reports.measure.placement.PlacingAnswer;
import limbway.reports.measure.placement.PlacingCriteria;
import limbway.reports.page.PlaceReport;
import limbway.reports.page.PlaceText;
import limbway.sim.experiment.placement.CandidatePlace;

/** The machine-readable answer of a placing, and its record. */
final class PlaceAnswer {

    private PlaceAnswer() {}

    static Map<String, Object> of(PlaceReport report) {
        PlaceInfo info = report.info();
        PlacingAnswer answer = report.answer();
        Map<String, Object> root = info.record();
        root.put("sentence", PlaceText.sentence(report));
        List<Object> best = new ArrayList<>();
        for (PlacedLayout layout : answer.layouts()) {
            best.add(layout(report, layout));
        }
        root.put("best", best);
        root.put("as_it_stands", measured(report, answer.before()));
        Map<String, Object> guarantee = new LinkedHashMap<>();
        boolean reached = answer.selected().reached();
        boolean guaranteed = reached && answer.layouts().size() > 1;
        guarantee.put("probability", guaranteed ? (Double) info.probability() : null);
        guarantee.put("indifference", info.indifference());
        guarantee.put("reached", reached);
        guarantee.put("asked_probability", info.probability());
        guarantee.put("layouts_left", answer.selected().left().size());
        guarantee.put("budget_that_would_do", reached ? null : neededBudget(report));
        root.put("guarantee", guarantee);
        Map<String, Object> fresh = new LinkedHashMap<>();
        fresh.put("replications", answer.fresh().values().size());
        fresh.put("best", measured(report, answer.fresh()));
        fresh.put("as_it_stands", measured(report, answer.freshBefore()));
        fresh.put("difference", answer.gain().map(Json::interval).orElse(null));
        fresh.put("better", answer.isBetter());
        root.put("fresh", fresh);
        root.put("evaluated", info.judged());
        root.put("evaluated_all", info.judgedAll());
        Map<String, Object> lived = new LinkedHashMap<>();
        lived.put("layouts", answer.layouts().size());
        lived.put("replications", answer.selected().used());
        root.put("lived_in", lived);
        root.put("parameters", RunRecord.parameters(info.parameters()));
        return root;
    }

    private static Object neededBudget(PlaceReport report) {
        return PlaceText.needed(report);
    }

    private static Map<String, Object> layout(PlaceReport report, PlacedLayout layout) {
        Map<String, Object> object = new LinkedHashMap<>();
        object.put("layout", layout.letter());
        List<Object> places = new ArrayList<>();
        List<String> ids = report.answer().task().ids();
        for (int i = 0; i < ids.size(); i++) {
            CandidatePlace spot = layout.placing().spots().get(i);
            Map<String, Object> place = new LinkedHashMap<>();
            place.put("place", ids.get(i));
            place.put("at", spot.words());
            place.put("on", spot.on());
            place.put("x_m", spot.at().xM());
            place.put("y_m", spot.at().yM());
            place.put("z_m", spot.at().zM());
            place.put("stays", layout.placing().stays(report.before(), i));
            places.add(place);
        }
        object.put("places", places);
        object.putAll(measured(report, layout.lived()));
        object.put("expected_offground", layout.expected().offGround());
        object.put("expected_ground_m_per_trip", layout.expected().groundM());
        object.put("expected_energy_j_per_trip", layout.expected().energyJ());
        object.put("on_front", layout.onFront());
        object.put(
                "hardest_for",
                layout.hardestFor().stream().map(report.animals()::get).toList());
        object.put("dropped", !layout.kept());
        object.put("words", PlaceText.moves(report, layout));
        object.put("changes", layout.placing().lines(report.before()));
        return object;
    }

    private static Map<String, Object> measured(PlaceReport report, LivedLayout lived) {
        Map<String, Object> object = new LinkedHashMap<>();
        object.put(
                "offground",
                lived.by(PlacingCriteria.OFF_GROUND).map(Json::interval).orElse(null));
        object.put(
                PlacingCriteria.NAMES.get(PlacingCriteria.WAITING),
                lived.by(PlacingCriteria.WAITING).map(Json::interval).orElse(null));
        object.put(
                PlacingCriteria.NAMES.get(PlacingCriteria.ENERGY),
                lived.by(PlacingCriteria.ENERGY).map(Json::interval).orElse(null));
        Map<String, Object> energy = new LinkedHashMap<>();
        for (int a = 0; a < report.animals().size(); a++) {
            energy.put(
                    report.animals().get(a),
                    lived.by(PlacingCriteria.FIRST_ANIMAL + a)
                            .map(Json::interval)
                            .orElse(null));
        }
        object.put("travel_kj_by_animal", energy);
        object.put("replications", lived.values().size());
        return object;
    }
}
