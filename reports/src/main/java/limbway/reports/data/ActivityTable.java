package limbway.reports.data;

import java.util.List;
import java.util.Map;

import limbway.reports.measure.Activity;
import limbway.reports.measure.Budget;
import limbway.reports.measure.Measures;
import limbway.sim.experiment.statistics.Interval;

/** How the animals divide their day. */
final class ActivityTable {

    private final CsvTable table = new CsvTable(
            "activity",
            "share of the time of all animals together that one activity takes: mean over replications with its 95 % "
                    + "interval",
            List.of(
                    Field.text("layout", "name of the layout"),
                    Field.text(
                            "hour",
                            "hour of the day, 0 to 23, of all time in which the share is; empty for the share of waking "
                                    + "time of the whole day"),
                    Field.text(
                            "activity",
                            "feeding (eating, drinking), moving (trips, also to bed), waiting (for a stall), resting "
                                    + "(tired or hot), comfort and company, or in bed (by hour only)"),
                    Field.number("mean", "mean share over replications, 0 to 1"),
                    Field.number("lo", "lower end of the interval; empty with one replication"),
                    Field.number("hi", "upper end of the interval; empty with one replication"),
                    Field.whole("n", "replications that gave a value")));

    private ActivityTable() {}

    static CsvTable of(List<Measures> layouts) {
        ActivityTable made = new ActivityTable();
        for (Measures measures : layouts) {
            made.add(measures.layout(), "", measures.budget().waking());
            for (Budget.Hour hour : measures.budget().byHour()) {
                made.add(measures.layout(), Integer.toString(hour.hour()), hour.shares());
            }
        }
        return made.table;
    }

    private void add(String layout, String hour, Map<Activity, Interval> shares) {
        shares.forEach((activity, share) -> table.row(
                layout,
                hour,
                activity.word(),
                CsvTable.number(share.mean(), 6),
                CsvTable.number(share.lo(), 6),
                CsvTable.number(share.hi(), 6),
                share.n()));
    }
}
