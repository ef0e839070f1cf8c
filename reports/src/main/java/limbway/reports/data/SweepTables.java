package limbway.reports.data;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import limbway.reports.measure.criterion.DesignCriterion;
import limbway.reports.measure.sweep.MainEffect;
import limbway.reports.measure.sweep.Swept;
import limbway.reports.measure.sweep.SweptCase;
import limbway.reports.measure.sweep.SweptFactor;
import limbway.sim.experiment.statistics.Interval;

/** A sweep as tables in which each row is one value. */
public final class SweepTables {

    private static final int DECIMALS = 6;

    private SweepTables() {}

    /**
     * The measures at all points, and what each factor does to them.
     *
     * @param swept what came out
     * @return two tables
     */
    public static List<CsvTable> of(Swept swept) {
        return List.of(points(swept), effects(swept));
    }

    private static CsvTable points(Swept swept) {
        List<Field> fields = new ArrayList<>(List.of(Field.whole("point", "number of the point, from 1")));
        for (SweptFactor factor : swept.factors()) {
            fields.add(Field.text(factor.name(), "value of this key or parameter at the point, as it is written"));
        }
        fields.add(Field.text("layout", "name of the layout that was lived in"));
        fields.add(Field.text("measure", "name of the measure"));
        fields.add(Field.text("unit", "its unit, 1 for shares and indices"));
        fields.addAll(interval());
        CsvTable table = new CsvTable("sweep", "one measure of one layout at one point", fields);
        for (SweptCase one : swept.cases()) {
            for (DesignCriterion criterion : swept.criteria()) {
                List<Object> cells = new ArrayList<>(List.of(one.point()));
                cells.addAll(one.values());
                cells.addAll(List.of(one.layout(), criterion.name(), criterion.unit()));
                cells.addAll(cells(swept.value(one, criterion)));
                table.row(cells.toArray());
            }
        }
        return table;
    }

    private static CsvTable effects(Swept swept) {
        List<Field> fields = new ArrayList<>(List.of(
                Field.text("factor", "what was varied"),
                Field.text("value", "its value; of a range one of its ends, by the straight line that fits best"),
                Field.text("measure", "name of the measure"),
                Field.text("unit", "its unit, 1 for shares and indices")));
        fields.addAll(interval());
        CsvTable table = new CsvTable("effects", "the mean of one measure over all points with one value", fields);
        for (DesignCriterion criterion : swept.criteria()) {
            for (MainEffect effect : swept.effects(criterion)) {
                for (int level = 0; level < effect.levels().size(); level++) {
                    List<Object> cells = new ArrayList<>(List.of(
                            effect.factor().name(),
                            effect.factor().levels().get(level),
                            criterion.name(),
                            criterion.unit()));
                    cells.addAll(cells(effect.levels().get(level)));
                    table.row(cells.toArray());
                }
            }
        }
        return table;
    }

    private static List<Field> interval() {
        return List.of(
                Field.number("mean", "mean over the replications; empty where there is no value"),
                Field.number("lo", "lower end of its 95 % interval; empty with fewer than two values"),
                Field.number("hi", "upper end"),
                Field.whole("n", "replications that gave a value"));
    }

    private static List<Object> cells(Optional<Interval> interval) {
        return interval.isEmpty()
                ? List.of("", "", "", 0)
                : List.of(
                        CsvTable.number(interval.get().mean(), DECIMALS),
                        CsvTable.number(interval.get().lo(), DECIMALS),
                        CsvTable.number(interval.get().hi(), DECIMALS),
                        interval.get().n());
    }
}
