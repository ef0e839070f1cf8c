package limbway.reports.data;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import limbway.model.body.LocomotorMode;
import limbway.model.route.Way;
import limbway.reports.measure.RouteCard;
import limbway.reports.measure.RouteCards;
import limbway.reports.words.CardText;
import limbway.reports.words.FlipText;
import limbway.reports.words.MendText;
import limbway.reports.words.ReasonText;

/** The cards of trips, row by row. */
final class RouteCardTable {

    private RouteCardTable() {}

    static CsvTable of(String layout, RouteCards cards) {
        CsvTable table = new CsvTable(
                "route_cards",
                "the trips of one body between two places with the doors in one state; most metres on the ground first, and "
                        + "no more than " + RouteCards.MOST_CARDS,
                fields());
        for (RouteCard card : cards.cards()) {
            List<Object> row = new ArrayList<>(List.of(
                    layout,
                    card.body().name(),
                    card.from(),
                    card.to(),
                    card.atSecond().isEmpty()
                            ? ""
                            : CardText.clock(card.atSecond().getAsInt()),
                    card.tripsAbove(),
                    card.tripsOnGround(),
                    CsvTable.number(card.groundM(), 3),
                    CsvTable.number(card.ways().offGroundShare(), 6)));
            way(row, card.ways().overGround());
            way(row, card.ways().offGround());
            row.add(ReasonText.sentence(card.ways(), card.reason(), card.body()));
            row.add(MendText.of(card.reason(), card.body()));
            row.add(card.flip().map(FlipText::of).orElse(""));
            table.row(row.toArray());
        }
        return table;
    }

    private static List<Field> fields() {
        List<Field> fields = new ArrayList<>(List.of(
                Field.text("layout", "name of the layout"),
                Field.text("body", "who"),
                Field.text("from", "resource where the trips start"),
                Field.text("to", "resource where they end"),
                Field.text("doors_at", "doors are as at this time of day; empty with all doors open that ever are"),
                Field.whole("trips_off_ground", "trips off the ground, in all repetitions"),
                Field.whole("trips_over_ground", "trips over the ground, in all repetitions"),
                Field.number("ground_m", "metres on the ground on all of them [m]"),
                Field.number("off_ground_share", "share of such trips that stay off the ground by their energy")));
        fields(fields, "over_ground", "way over the ground");
        fields(fields, "off_ground", "way off the ground");
        fields.add(Field.text("sentence", "both ways and the reason, in words"));
        fields.add(Field.text("mend", "what to try, in words"));
        fields.add(Field.text(
                "flip",
                "a change that turns such trips off the ground, in words; empty where none was looked for or found"));
        return fields;
    }

    private static void fields(List<Field> fields, String prefix, String way) {
        String cheapest = " of the cheapest " + way;
        fields.add(
                Field.number(prefix + "_j", "energy" + cheapest + " [J]; empty where there is none, as what follows"));
        fields.add(Field.number(prefix + "_length_m", "length" + cheapest + " [m]"));
        fields.add(Field.number(prefix + "_s", "time" + cheapest + " [s]"));
        for (LocomotorMode mode : LocomotorMode.values()) {
            fields.add(
                    Field.number(prefix + "_" + mode.part() + "_j", "energy for " + mode.word() + cheapest + " [J]"));
        }
    }

    private static void way(List<Object> row, Optional<Way> way) {
        row.add(way.map(w -> joules(w.milliJ())).orElse(""));
        row.add(way.map(w -> CsvTable.number(w.lengthM(), 3)).orElse(""));
        row.add(way.map(w -> CsvTable.number(w.seconds(), 3)).orElse(""));
        for (LocomotorMode mode : LocomotorMode.values()) {
            row.add(way.map(w -> joules(w.energy().part(mode))).orElse(""));
        }
    }

    private static String joules(long milliJ) {
        return CsvTable.number(milliJ / 1000.0, 3);
    }
}
