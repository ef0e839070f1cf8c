package limbway.reports.command;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

import limbway.model.enclosure.Enclosure;
import limbway.model.explain.GroundReason;
import limbway.model.explain.flip.Change;
import limbway.model.explain.flip.EndExtended;
import limbway.model.explain.flip.EndRetied;
import limbway.model.explain.flip.Flip;
import limbway.model.explain.flip.FlipAnswer;
import limbway.model.explain.flip.LinkAdded;
import limbway.model.explain.flip.NoFlip;
import limbway.model.explain.flip.PlaceMoved;
import limbway.model.explain.flip.PoleMoved;
import limbway.model.explain.flip.PriceTurn;
import limbway.model.explain.flip.Tightened;
import limbway.reports.words.ChangeLine;
import limbway.reports.words.FlipText;

/** What would turn a trip, as lines of a terminal and as an answer for other programs. */
final class FlipAnswers {

    private FlipAnswers() {}

    static List<String> lines(FlipAnswer answer, GroundReason reason, Enclosure enclosure) {
        List<String> lines = new ArrayList<>();
        for (Flip flip : answer.flips()) {
            lines.add("  To flip it: " + FlipText.of(flip) + ".");
            lines.add("    - " + ChangeLine.of(flip.change(), enclosure));
        }
        for (NoFlip none : answer.none()) {
            lines.add("  Not enough: " + FlipText.of(none, reason) + ".");
        }
        if (!answer.flips().isEmpty()) {
            lines.add("  " + FlipText.MEANING);
        }
        return lines;
    }

    static List<String> firmness(FlipAnswer answer) {
        return FlipText.firmness(answer.turns()).stream()
                .map(sentence -> "  How firm: " + sentence + ".")
                .toList();
    }

    static void put(Map<String, Object> root, FlipAnswer answer, GroundReason reason, Enclosure enclosure) {
        root.put(
                "flips",
                answer.flips().stream().map(flip -> entry(flip, enclosure)).toList());
        List<Map<String, Object>> none = new ArrayList<>();
        for (NoFlip one : answer.none()) {
            Map<String, Object> entry = new LinkedHashMap<>();
            entry.put("kind", one.kind().name().toLowerCase(Locale.ROOT));
            entry.put("why", FlipText.of(one, reason));
            none.add(entry);
        }
        root.put("no_flips", none);
        root.put("turns", answer.turns().stream().map(FlipAnswers::entry).toList());
    }

    private static Map<String, Object> entry(Flip flip, Enclosure enclosure) {
        Map<String, Object> entry = new LinkedHashMap<>();
        entry.put("kind", kind(flip.change()));
        entry.put("change", FlipText.what(flip.change()));
        entry.put("amount", flip.change().amountM());
        entry.put("unit", "m");
        entry.put("line", ChangeLine.of(flip.change(), enclosure));
        entry.put("offground_mj", flip.then().offGroundMilliJ());
        entry.put("cheapest_mj", flip.then().cheapestMilliJ());
        entry.put("p_offground", flip.share());
        return entry;
    }

    private static Map<String, Object> entry(PriceTurn turn) {
        Map<String, Object> entry = new LinkedHashMap<>();
        entry.put("parameter", turn.parameter().name());
        entry.put("value", turn.parameter().value());
        entry.put("turns_at", turn.turnsAt());
        entry.put("factor", turn.factor());
        entry.put("low", turn.parameter().low());
        entry.put("high", turn.parameter().high());
        entry.put("in_range", turn.isPlausible());
        entry.put("then", turn.toOffGround() ? "off the ground" : "over the ground");
        return entry;
    }

    private static String kind(Change change) {
        if (change instanceof LinkAdded) {
            return "link";
        } else if (change instanceof PlaceMoved) {
            return "place";
        } else if (change instanceof EndExtended || change instanceof PoleMoved) {
            return "gap";
        } else if (change instanceof EndRetied) {
            return "retie";
        }
        return change instanceof Tightened ? "tighten" : "thinner";
    }
}
