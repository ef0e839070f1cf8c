package limbway.reports.replay;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import limbway.model.body.LocomotorMode;
import limbway.model.enclosure.Enclosure;
import limbway.model.explain.flip.Flip;
import limbway.model.route.Way;
import limbway.reports.measure.RouteCard;
import limbway.reports.measure.RouteCards;
import limbway.reports.words.CardText;
import limbway.reports.words.ChangeLine;
import limbway.reports.words.FlipText;
import limbway.reports.words.MendText;
import limbway.reports.words.PartText;
import limbway.reports.words.ReasonText;

/** The cards of trips as entries of a layout. */
final class CardEntries {

    private final Enclosure enclosure;
    private final WayRows ways;
    private final CardText text;
    private final boolean hasReasons;

    /**
     * Entries of one layout.
     *
     * @param enclosure what stands there
     * @param ways gathers the ways
     * @param text words of the cards
     * @param hasReasons whether they tell why, and what would mend or turn it
     */
    CardEntries(Enclosure enclosure, WayRows ways, CardText text, boolean hasReasons) {
        this.enclosure = enclosure;
        this.ways = ways;
        this.text = text;
        this.hasReasons = hasReasons;
    }

    List<Map<String, Object>> of(RouteCards cards) {
        return cards.cards().stream().map(this::entry).toList();
    }

    private Map<String, Object> entry(RouteCard card) {
        Map<String, Object> entry = new LinkedHashMap<>();
        entry.put("body", card.body().name());
        entry.put("from", card.from());
        entry.put("to", card.to());
        entry.put(
                "at",
                card.atSecond().isEmpty()
                        ? null
                        : CardText.clock(card.atSecond().getAsInt()));
        entry.put("doors", text.doors(card.atSecond()));
        List<Map<String, Object>> both = new ArrayList<>();
        card.ways().overGround().ifPresent(way -> both.add(way(card, way, "ground", CardText.OVER_GROUND)));
        card.ways().offGround().ifPresent(way -> both.add(way(card, way, "above", CardText.OFF_GROUND)));
        entry.put("ways", both);
        Map<String, Object> taken = new LinkedHashMap<>();
        taken.put("above", card.tripsAbove());
        taken.put("ground", card.tripsOnGround());
        entry.put("taken", taken);
        entry.put("groundM", Math.rint(card.groundM() * 1000) / 1000);
        entry.put("offGroundShare", card.ways().offGroundShare());
        entry.put("sentence", hasReasons ? ReasonText.sentence(card.ways(), card.reason(), card.body()) : "");
        entry.put("mend", hasReasons ? MendText.of(card.reason(), card.body()) : "");
        entry.put("flip", hasReasons ? card.flip().map(this::flip).orElse(null) : null);
        entry.put(
                "flipNote",
                hasReasons
                        ? CardText.flipNote(
                                card.tripsOnGround() > 0,
                                card.flipAsked(),
                                card.flip().isPresent())
                        : "");
        entry.put("command", text.command(card.body().name(), card.from(), card.to(), card.atSecond()));
        return entry;
    }

    private Map<String, Object> flip(Flip found) {
        Map<String, Object> flip = new LinkedHashMap<>();
        flip.put("sentence", FlipText.of(found));
        flip.put("change", "- " + ChangeLine.of(found.change(), enclosure));
        return flip;
    }

    private Map<String, Object> way(RouteCard card, Way way, String kind, String name) {
        Map<String, Object> entry = new LinkedHashMap<>();
        entry.put("name", name);
        entry.put("kind", kind);
        entry.put("way", ways.number(card.body(), way));
        entry.put("milliJ", way.milliJ());
        entry.put("lengthM", Math.rint(way.lengthM() * 1000) / 1000);
        entry.put("offGroundM", Math.rint(way.offGroundM() * 1000) / 1000);
        entry.put("seconds", Math.rint(way.seconds() * 1000) / 1000);
        List<Map<String, Object>> parts = new ArrayList<>();
        for (LocomotorMode mode : PartText.asTold()) {
            if (way.energy().part(mode) > 0) {
                Map<String, Object> part = new LinkedHashMap<>();
                part.put("part", mode.part());
                part.put("milliJ", way.energy().part(mode));
                parts.add(part);
            }
        }
        entry.put("parts", parts);
        return entry;
    }
}
