package limbway.reports.data;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

import limbway.model.body.LocomotorMode;
import limbway.model.route.Way;
import limbway.reports.measure.AnimalEnergy;
import limbway.reports.measure.Aspect;
import limbway.reports.measure.HeightBand;
import limbway.reports.measure.HourOfDay;
import limbway.reports.measure.Measures;
import limbway.reports.measure.OffGroundShare;
import limbway.reports.measure.PairUse;
import limbway.reports.measure.Waiting;
import limbway.reports.words.ReasonText;
import limbway.sim.experiment.statistics.Interval;
import limbway.sim.journal.Motive;

/** What was computed: every measure with its interval, and where the ground is used. */
final class MeasureTables {

    private final List<Measures> layouts;

    MeasureTables(List<Measures> layouts) {
        this.layouts = List.copyOf(layouts);
    }

    CsvTable measures() {
        CsvTable table = new CsvTable(
                "measures",
                "one measure of one group in one layout: mean over replications with its 95 % interval",
                List.of(
                        Field.text("layout", "name of the layout"),
                        Field.text("measure", "what is measured"),
                        Field.text("of", "all, body, animal, place, hour or band"),
                        Field.text(
                                "name",
                                "which body, animal, place, hour of the day or band of height [m]; empty for all"),
                        Field.text("unit", "unit of the values; 1 for a share"),
                        Field.number("mean", "mean over replications, in the unit of the row"),
                        Field.number("lo", "lower end of the interval; empty with one replication"),
                        Field.number("hi", "upper end of the interval; empty with one replication"),
                        Field.whole("n", "replications that gave a value")));
        for (Measures measures : layouts) {
            shares(table, measures, "all", "", measures.offGround().overall());
            for (Map.Entry<String, OffGroundShare> body :
                    measures.offGround().byBody().entrySet()) {
                shares(table, measures, "body", body.getKey(), body.getValue());
            }
            for (Map.Entry<String, OffGroundShare> animal :
                    measures.offGround().byAnimal().entrySet()) {
                shares(table, measures, "animal", animal.getKey(), animal.getValue());
            }
            for (HourOfDay hour : measures.offGround().byHour()) {
                shares(table, measures, "hour", Integer.toString(hour.hour()), hour.share());
            }
            String elevated =
                    "waking_time_above_" + CsvTable.number(measures.elevated().thresholdM(), 2) + "_m";
            measures.elevated().share().ifPresent(i -> row(table, measures, elevated, "all", "", "1", i));
            for (HeightBand band : measures.heights()) {
                String name = CsvTable.number(band.fromM(), 2) + " to " + CsvTable.number(band.toM(), 2);
                row(table, measures, "waking_time_at_height", "band", name, "1", band.share());
            }
            Waiting waiting = measures.waiting();
            row(table, measures, "waiting", "all", "", "min/day", waiting.minutesPerDay());
            row(table, measures, "displacements", "all", "", "1/day", waiting.displacementsPerDay());
            waiting.byPlace().forEach((place, i) -> row(table, measures, "displacements", "place", place, "1/day", i));
            for (Waiting.OfAnimal animal : waiting.byAnimal()) {
                row(table, measures, "waiting", "animal", animal.animal(), "min/day", animal.minutesPerDay());
                row(table, measures, "displacements_won", "animal", animal.animal(), "1/day", animal.wonPerDay());
                row(table, measures, "displacements_lost", "animal", animal.animal(), "1/day", animal.lostPerDay());
            }
            for (AnimalEnergy energy : measures.energy()) {
                String name = energy.animal();
                row(table, measures, "moving_energy", "animal", name, "J/day", energy.movedTotalJPerDay());
                row(table, measures, "resting_energy", "animal", name, "J/day", energy.restingJPerDay());
                row(table, measures, "other_energy", "animal", name, "J/day", energy.otherJPerDay());
                row(table, measures, "eaten_energy", "animal", name, "J/day", energy.eatenJPerDay());
                row(table, measures, "travel", "animal", name, "m/day", energy.travelMPerDay());
            }
        }
        return table;
    }

    CsvTable groundUse() {
        CsvTable table = new CsvTable(
                "ground_use",
                "a pair of resources between which a body was on the ground",
                List.of(
                        Field.text("layout", "name of the layout"),
                        Field.text("body", "who"),
                        Field.text("from", "resource where the trips start"),
                        Field.text("to", "resource where they end"),
                        Field.text("motives", "why, most frequent first, separated by spaces"),
                        Field.number("trips_per_day", "trips a day, over the ground or not [1/day]"),
                        Field.number("ground_trips_per_day", "trips a day over the ground [1/day]"),
                        Field.number("ground_m_per_day", "metres on the ground a day [m/day]"),
                        Field.number("ground_m_lo", "lower end of its interval [m/day]; empty with one replication"),
                        Field.number("ground_m_hi", "upper end of its interval [m/day]; empty with one replication"),
                        Field.number(
                                "over_ground_j", "energy of the way over the ground [J]; empty where there is none"),
                        Field.number("off_ground_j", "energy of the way off the ground [J]; empty where there is none"),
                        Field.text("parts", "energy of both ways [J] by part: " + partNames()),
                        Field.text("reason", "why the ground wins, in words")));
        for (Measures measures : layouts) {
            for (PairUse use : measures.groundUse()) {
                Interval metres = use.groundMPerDay();
                table.row(
                        measures.layout(),
                        use.body().name(),
                        use.from(),
                        use.to(),
                        String.join(
                                " ", use.motives().stream().map(Motive::word).toList()),
                        CsvTable.number(use.tripsPerDay(), 4),
                        CsvTable.number(use.groundTripsPerDay(), 4),
                        CsvTable.number(metres.mean(), 3),
                        CsvTable.number(metres.lo(), 3),
                        CsvTable.number(metres.hi(), 3),
                        joules(use.ways().overGround()),
                        joules(use.ways().offGround()),
                        "over: " + parts(use.ways().overGround()) + "; off: "
                                + parts(use.ways().offGround()),
                        ReasonText.because(use.reason(), use.body()));
            }
        }
        return table;
    }

    private static void shares(CsvTable table, Measures measures, String of, String name, OffGroundShare share) {
        for (Aspect aspect : Aspect.values()) {
            share.by(aspect)
                    .ifPresent(i -> row(table, measures, "off_ground_share_by_" + aspect.word(), of, name, "1", i));
        }
    }

    private static void row(
            CsvTable table, Measures measures, String measure, String of, String name, String unit, Interval value) {
        table.row(
                measures.layout(),
                measure,
                of,
                name,
                unit,
                CsvTable.number(value.mean(), 6),
                CsvTable.number(value.lo(), 6),
                CsvTable.number(value.hi(), 6),
                value.n());
    }

    private static String joules(Optional<Way> way) {
        return way.map(w -> CsvTable.number(w.milliJ() / 1000.0, 3)).orElse("");
    }

    private static String partNames() {
        return String.join(
                ", ", Stream.of(LocomotorMode.values()).map(LocomotorMode::part).toList());
    }

    private static String parts(Optional<Way> way) {
        if (way.isEmpty()) {
            return "none";
        }
        StringBuilder text = new StringBuilder();
        for (LocomotorMode mode : LocomotorMode.values()) {
            text.append(text.isEmpty() ? "" : " ")
                    .append(mode.part())
                    .append('=')
                    .append(CsvTable.number(way.get().energy().part(mode) / 1000.0, 3));
        }
        return text.toString();
    }
}
