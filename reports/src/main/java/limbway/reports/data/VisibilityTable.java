package limbway.reports.data;

import java.util.List;
import java.util.Map;
import java.util.Optional;

import limbway.reports.measure.Measures;
import limbway.reports.measure.Visibility;
import limbway.sim.experiment.statistics.Interval;

/** How much visitors see of the animals. */
final class VisibilityTable {

    private final CsvTable table = new CsvTable(
            "visibility",
            "share of the time with visitors in which one group can be seen: mean over replications with its 95 % interval",
            List.of(
                    Field.text("layout", "name of the layout"),
                    Field.text("of", "all, body or animal"),
                    Field.text("name", "which body or animal; empty for all"),
                    Field.text("measure", "seen, out_of_sight (of all visitors) or at_retreat"),
                    Field.text(
                            "viewpoint", "from where; empty for anywhere, and the time is that with visitors anywhere"),
                    Field.number("mean", "mean share over replications, 0 to 1"),
                    Field.number("lo", "lower end of the interval; empty with one replication"),
                    Field.number("hi", "upper end of the interval; empty with one replication"),
                    Field.whole("n", "replications that gave a value")));

    private VisibilityTable() {}

    /** One table, or none where no layout has viewpoints. */
    static Optional<CsvTable> of(List<Measures> layouts) {
        if (layouts.stream().allMatch(measures -> measures.visibility().isEmpty())) {
            return Optional.empty();
        }
        VisibilityTable made = new VisibilityTable();
        for (Measures measures : layouts) {
            measures.visibility().ifPresent(visible -> made.add(measures.layout(), visible));
        }
        return Optional.of(made.table);
    }

    private void add(String layout, Visibility visible) {
        add(layout, "all", "", visible.overall());
        visible.byBody().forEach((body, seen) -> add(layout, "body", body, seen));
        visible.byAnimal().forEach((animal, seen) -> add(layout, "animal", animal, seen));
    }

    private void add(String layout, String of, String name, Visibility.Seen seen) {
        for (Map.Entry<String, Interval> from : seen.fromViewpoint().entrySet()) {
            row(layout, of, name, "seen", from.getKey(), from.getValue());
        }
        seen.fromAny().ifPresent(share -> row(layout, of, name, "seen", "", share));
        seen.outOfSight().ifPresent(share -> row(layout, of, name, "out_of_sight", "", share));
        seen.atRetreat().ifPresent(share -> row(layout, of, name, "at_retreat", "", share));
    }

    private void row(String layout, String of, String name, String measure, String viewpoint, Interval share) {
        table.row(
                layout,
                of,
                name,
                measure,
                viewpoint,
                CsvTable.number(share.mean(), 6),
                CsvTable.number(share.lo(), 6),
                CsvTable.number(share.hi(), 6),
                share.n());
    }
}
