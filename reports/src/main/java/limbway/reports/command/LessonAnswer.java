package limbway.reports.command;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import limbway.reports.data.RunRecord;
import limbway.reports.lesson.AnswerChoice;
import limbway.reports.lesson.Costs;
import limbway.reports.lesson.LeftOut;
import limbway.reports.lesson.Question;
import limbway.reports.lesson.Step;
import limbway.reports.lesson.TaughtTrip;
import limbway.reports.page.LessonReport;

/** The machine-readable record of a lesson; shares from 0 to 1. */
final class LessonAnswer {

    private LessonAnswer() {}

    static Map<String, Object> of(LessonReport report) {
        Map<String, Object> root = report.info().record();
        root.put("trip", report.lesson().trip().map(LessonAnswer::trip).orElse(null));
        List<Object> steps = new ArrayList<>();
        for (Step step : report.lesson().steps()) {
            Map<String, Object> entry = new LinkedHashMap<>();
            entry.put("step", step.id());
            entry.put("title", step.title());
            entry.put(
                    "questions",
                    step instanceof Step.Asked asked
                            ? asked.questions().stream()
                                    .map(LessonAnswer::question)
                                    .toList()
                            : List.of());
            steps.add(entry);
        }
        root.put("steps", steps);
        List<Object> leftOut = new ArrayList<>();
        for (LeftOut one : report.lesson().leftOut()) {
            Map<String, Object> entry = new LinkedHashMap<>();
            entry.put("title", one.what());
            entry.put("why", one.why());
            leftOut.add(entry);
        }
        root.put("left_out", leftOut);
        root.put("parameters", RunRecord.parameters(report.info().parameters()));
        return root;
    }

    private static Map<String, Object> trip(TaughtTrip trip) {
        Map<String, Object> entry = new LinkedHashMap<>();
        entry.put("body", trip.body().name());
        entry.put("from", trip.from());
        entry.put("to", trip.to());
        entry.put("takes_ground", trip.takesGround());
        entry.put("trips_per_day", trip.tripsPerDay());
        entry.put("ground_trips_per_day", trip.groundTripsPerDay());
        put(entry, trip.costs());
        return entry;
    }

    private static Map<String, Object> question(Question question) {
        Map<String, Object> entry = new LinkedHashMap<>();
        entry.put("question", question.id());
        entry.put("asked", question.asked());
        entry.put("answer", question.answer());
        List<Object> choices = new ArrayList<>();
        for (AnswerChoice choice : question.choices()) {
            Map<String, Object> one = new LinkedHashMap<>();
            one.put("answer", choice.words());
            one.put("right", choice.isRight());
            one.put("feedback", choice.feedback());
            choice.costs().ifPresent(costs -> {
                put(one, costs);
                one.put("line", choice.line());
            });
            choices.add(one);
        }
        entry.put("choices", choices);
        return entry;
    }

    private static void put(Map<String, Object> entry, Costs costs) {
        entry.put(
                "over_ground_mj",
                costs.overMilliJ().isPresent() ? costs.overMilliJ().getAsLong() : null);
        entry.put(
                "off_ground_mj",
                costs.offMilliJ().isPresent() ? costs.offMilliJ().getAsLong() : null);
        entry.put("p_offground", costs.offGroundShare());
    }
}
