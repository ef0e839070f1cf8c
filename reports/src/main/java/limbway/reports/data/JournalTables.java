package limbway.reports.data;

import java.util.List;

import limbway.model.route.Way;
import limbway.model.study.Animal;
import limbway.sim.experiment.Outcome;
import limbway.sim.journal.Displacement;
import limbway.sim.journal.Journal;
import limbway.sim.journal.Reserve;
import limbway.sim.journal.Stay;
import limbway.sim.journal.Stock;
import limbway.sim.journal.Trip;

/** What happened, row by row: trips, stays, displacements, and the accounts of animals and food places. */
final class JournalTables {

    private static final Field REPLICATION = Field.whole("replication", "number of the replication, from 1");
    private static final Field ANIMAL = Field.text("animal", "name of the animal");
    private static final Field BODY = Field.text("body", "name of its body");

    private final Outcome outcome;

    JournalTables(Outcome outcome) {
        this.outcome = outcome;
    }

    CsvTable trips() {
        CsvTable table = new CsvTable(
                "trips",
                "one trip of one animal from a resource to the next",
                List.of(
                        REPLICATION,
                        Field.whole("day", "day of the run, from 1"),
                        ANIMAL,
                        BODY,
                        Field.number("start_s", "start [s since midnight before day 1]"),
                        Field.number("end_s", "end [s since midnight before day 1]"),
                        Field.text("from", "resource where it starts"),
                        Field.text("to", "resource where it ends"),
                        Field.text(
                                "motive", "why it was made: hunger, thirst, fatigue, heat, comfort, company or night"),
                        Field.number("distance_m", "length of the path [m]"),
                        Field.number("offground_m", "part of the length off the ground [m]"),
                        Field.number("energy_j", "net energy of its moves [J]"),
                        Field.number("offground_energy_j", "part of the energy spent off the ground [J]"),
                        Field.number("cheapest_j", "energy of the cheapest way there was [J]"),
                        Field.number(
                                "cheapest_offground_j",
                                "energy of the cheapest way off the ground [J]; empty where there is none"),
                        Field.number("seconds", "time on the way [s]"),
                        Field.number("offground_s", "part of the time off the ground [s]")));
        for (Journal journal : outcome.journals()) {
            for (Trip trip : journal.trips()) {
                Way way = trip.way();
                table.row(
                        journal.replication(),
                        trip.day(),
                        animal(trip.animal()).name(),
                        animal(trip.animal()).body().name(),
                        seconds(trip.startMs()),
                        seconds(trip.endMs()),
                        resource(trip.fromResource()),
                        resource(trip.toResource()),
                        trip.motive().word(),
                        CsvTable.number(way.lengthM(), 3),
                        CsvTable.number(way.offGroundM(), 3),
                        joules(way.milliJ()),
                        joules(way.offGroundMilliJ()),
                        joules(trip.ways().cheapest().milliJ()),
                        trip.ways().offGround().map(off -> joules(off.milliJ())).orElse(""),
                        CsvTable.number(way.seconds(), 3),
                        CsvTable.number(way.offGroundSeconds(), 3));
            }
        }
        return table;
    }

    CsvTable stays() {
        CsvTable table = new CsvTable(
                "stays",
                "one stay of one animal at a resource",
                List.of(
                        REPLICATION,
                        Field.whole("day", "day of the run, from 1"),
                        ANIMAL,
                        BODY,
                        Field.number("start_s", "start [s since midnight before day 1]"),
                        Field.number("end_s", "end [s since midnight before day 1]"),
                        Field.text("at", "resource"),
                        Field.number("height_m", "height of the place above the ground [m]"),
                        Field.text("motive", "why: hunger, thirst, fatigue, heat, comfort, company or night"),
                        Field.yesNo("waiting", "true while it waits because all stalls are taken"),
                        Field.number("eaten_j", "energy eaten [J]"),
                        Field.number("drunk_ml", "water drunk [ml]")));
        for (Journal journal : outcome.journals()) {
            for (Stay stay : journal.stays()) {
                table.row(
                        journal.replication(),
                        stay.day(),
                        animal(stay.animal()).name(),
                        animal(stay.animal()).body().name(),
                        seconds(stay.startMs()),
                        seconds(stay.endMs()),
                        resource(stay.resource()),
                        CsvTable.number(outcome.habitat().graph().heightAboveGroundM(stay.hold()), 3),
                        stay.motive().word(),
                        stay.waiting(),
                        CsvTable.number(stay.eatenJ(), 3),
                        CsvTable.number(stay.drunkMl(), 3));
            }
        }
        return table;
    }

    CsvTable reserves() {
        CsvTable table = new CsvTable(
                "reserves",
                "energy account of one animal over one replication",
                List.of(
                        REPLICATION,
                        ANIMAL,
                        BODY,
                        Field.number("start_j", "reserve at the start, relative to being full [J]"),
                        Field.number("eaten_j", "energy eaten [J]"),
                        Field.number("moved_j", "energy spent on moves [J]"),
                        Field.number("resting_j", "energy spent by the second whatever it does [J]"),
                        Field.number("other_j", "energy spent evenly while awake on all that is not moving about [J]"),
                        Field.number("end_j", "reserve at the end [J]")));
        for (Journal journal : outcome.journals()) {
            for (Reserve reserve : journal.reserves()) {
                table.row(
                        journal.replication(),
                        animal(reserve.animal()).name(),
                        animal(reserve.animal()).body().name(),
                        CsvTable.number(reserve.startJ(), 3),
                        CsvTable.number(reserve.eatenJ(), 3),
                        CsvTable.number(reserve.movedJ(), 3),
                        CsvTable.number(reserve.restingJ(), 3),
                        CsvTable.number(reserve.otherJ(), 3),
                        CsvTable.number(reserve.endJ(), 3));
            }
        }
        return table;
    }

    CsvTable stocks() {
        CsvTable table = new CsvTable(
                "stocks",
                "account of one food place over one replication",
                List.of(
                        REPLICATION,
                        Field.text("resource", "food place"),
                        Field.number("delivered_j", "energy put out [J]"),
                        Field.number("eaten_j", "energy eaten [J]"),
                        Field.number("left_j", "energy that lies there at the end [J]")));
        for (Journal journal : outcome.journals()) {
            for (Stock stock : journal.stocks()) {
                table.row(
                        journal.replication(),
                        resource(stock.resource()),
                        CsvTable.number(stock.deliveredJ(), 3),
                        CsvTable.number(stock.eatenJ(), 3),
                        CsvTable.number(stock.leftJ(), 3));
            }
        }
        return table;
    }

    CsvTable displacements() {
        CsvTable table = new CsvTable(
                "displacements",
                "one animal that took the stall of another",
                List.of(
                        REPLICATION,
                        Field.whole("day", "day of the run, from 1"),
                        Field.number("time_s", "when [s since midnight before day 1]"),
                        Field.text("at", "resource"),
                        Field.text("winner", "name of the animal that took the stall"),
                        Field.text("loser", "name of the animal that gave way"),
                        Field.text(
                                "motive", "why the winner came: hunger, thirst, fatigue, heat, comfort or company")));
        for (Journal journal : outcome.journals()) {
            for (Displacement displacement : journal.displacements()) {
                table.row(
                        journal.replication(),
                        displacement.day(),
                        seconds(displacement.timeMs()),
                        resource(displacement.resource()),
                        animal(displacement.winner()).name(),
                        animal(displacement.loser()).name(),
                        displacement.motive().word());
            }
        }
        return table;
    }

    private Animal animal(int number) {
        return outcome.habitat().animals().get(number);
    }

    private String resource(int number) {
        return outcome.habitat().graph().resources().get(number).id();
    }

    private static String seconds(long ms) {
        return CsvTable.number(ms / 1000.0, 3);
    }

    /** Energies are whole millijoules, so three decimals lose nothing. */
    private static String joules(long milliJ) {
        return CsvTable.number(milliJ / 1000.0, 3);
    }
}
