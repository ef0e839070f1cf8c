package limbway.reports.data;

import java.util.List;
import java.util.Optional;

import limbway.reports.measure.criterion.DesignCriterion;
import limbway.sim.experiment.comparison.Compared;
import limbway.sim.experiment.comparison.Difference;
import limbway.sim.experiment.statistics.Bootstrap;
import limbway.sim.experiment.statistics.Interval;

/** A comparison of layouts as tables. */
public final class CompareTables {

    private static final int DECIMALS = 6;

    private CompareTables() {}

    /**
     * Measures by layout, differences by pair, and the values of every repetition.
     *
     * @param compared the comparison
     * @param criteria its criteria, in the same order
     * @return three tables
     */
    public static List<CsvTable> of(Compared compared, List<DesignCriterion> criteria) {
        return List.of(measures(compared, criteria), differences(compared, criteria), values(compared, criteria));
    }

    private static CsvTable measures(Compared compared, List<DesignCriterion> criteria) {
        CsvTable table = new CsvTable(
                "scorecard",
                "one measure of one layout",
                List.of(
                        Field.text("layout", "name of the layout"),
                        Field.text("measure", "name of the measure"),
                        Field.text("meaning", "what it is"),
                        Field.text("unit", "its unit; 1 for shares and indices"),
                        Field.text("wish", "which way it is wanted to go"),
                        Field.number("mean", "mean over the repetitions, in that unit"),
                        Field.number("lo", "lower end of its 95 % interval, in that unit"),
                        Field.number("hi", "upper end of its 95 % interval, in that unit"),
                        Field.whole("n", "repetitions that gave a value")));
        for (int c = 0; c < criteria.size(); c++) {
            DesignCriterion criterion = criteria.get(c);
            for (int layout = 0; layout < compared.layouts().size(); layout++) {
                Optional<Interval> mean = compared.mean(layout, c);
                if (mean.isPresent()) {
                    table.row(
                            compared.layouts().get(layout),
                            criterion.name(),
                            criterion.words(),
                            criterion.unit(),
                            criterion.wish().words(),
                            CsvTable.number(mean.get().mean(), DECIMALS),
                            CsvTable.number(mean.get().lo(), DECIMALS),
                            CsvTable.number(mean.get().hi(), DECIMALS),
                            mean.get().n());
                }
            }
        }
        return table;
    }

    private static CsvTable differences(Compared compared, List<DesignCriterion> criteria) {
        CsvTable table = new CsvTable(
                "differences",
                "two layouts in one measure: the first less the second, under the same chance",
                List.of(
                        Field.text("a", "first layout"),
                        Field.text("b", "second layout"),
                        Field.text("measure", "name of the measure"),
                        Field.text("unit", "its unit; 1 for shares and indices"),
                        Field.number("mean", "mean difference, in that unit"),
                        Field.number("lo", "lower end of its 95 % interval, in that unit"),
                        Field.number("hi", "upper end of its 95 % interval, in that unit"),
                        Field.number("p", "p value of the paired t test"),
                        Field.number("p_holm", "p value corrected for all pairs of layouts in this measure"),
                        Field.whole("n", "pairs of repetitions"),
                        Field.number("correlation", "correlation of the two over the repetitions"),
                        Field.number("target_half_width", "half-width that is good enough, in that unit"),
                        Field.number("median", "median difference, in that unit"),
                        Field.number("median_lo", "lower end of its 95 % bootstrap interval, in that unit"),
                        Field.number("median_hi", "upper end of its 95 % bootstrap interval, in that unit"),
                        Field.number("ratio", "mean of the first over mean of the second; amounts above 0 only"),
                        Field.number("ratio_lo", "lower end of its 95 % bootstrap interval"),
                        Field.number("ratio_hi", "upper end of its 95 % bootstrap interval")));
        for (Difference d : compared.differences()) {
            DesignCriterion criterion = criteria.get(d.criterion());
            table.row(
                    compared.layouts().get(d.a()),
                    compared.layouts().get(d.b()),
                    criterion.name(),
                    criterion.unit(),
                    CsvTable.number(d.paired().mean(), DECIMALS),
                    CsvTable.number(d.paired().lo(), DECIMALS),
                    CsvTable.number(d.paired().hi(), DECIMALS),
                    CsvTable.number(d.paired().p(), DECIMALS),
                    CsvTable.number(d.pHolm(), DECIMALS),
                    d.paired().n(),
                    CsvTable.number(d.paired().correlation(), DECIMALS),
                    CsvTable.number(d.targetHalfWidth(), DECIMALS),
                    cell(d.median(), 0),
                    cell(d.median(), 1),
                    cell(d.median(), 2),
                    cell(d.ratio(), 0),
                    cell(d.ratio(), 1),
                    cell(d.ratio(), 2));
        }
        return table;
    }

    private static String cell(Optional<Bootstrap.Range> range, int which) {
        return range.map(r -> CsvTable.number(which == 0 ? r.value() : which == 1 ? r.lo() : r.hi(), DECIMALS))
                .orElse("");
    }

    private static CsvTable values(Compared compared, List<DesignCriterion> criteria) {
        CsvTable table = new CsvTable(
                "replications",
                "one measure of one layout in one repetition; the same number means the same chance in every layout",
                List.of(
                        Field.whole("replication", "number of the repetition, from 1"),
                        Field.text("layout", "name of the layout"),
                        Field.text("measure", "name of the measure"),
                        Field.number("value", "its value, in the unit that the scorecard tells")));
        for (int c = 0; c < criteria.size(); c++) {
            for (int layout = 0; layout < compared.layouts().size(); layout++) {
                double[] values = compared.sample().of(layout, c);
                for (int r = 0; r < values.length; r++) {
                    if (Double.isFinite(values[r])) {
                        table.row(
                                r + 1,
                                compared.layouts().get(layout),
                                criteria.get(c).name(),
                                CsvTable.number(values[r], DECIMALS));
                    }
                }
            }
        }
        return table;
    }
}
