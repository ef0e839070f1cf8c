package limbway.reports.data;

import java.util.List;
import java.util.Locale;

import limbway.model.parameter.Parameter;
import limbway.reports.measure.Movers;
import limbway.sim.experiment.screening.Effect;

/** The effects of a screening as a table. */
public final class ScreenTables {

    private static final double POINTS = 100;
    private static final int DECIMALS = 4;

    private ScreenTables() {}

    /**
     * One row for each answer and assumption.
     *
     * @param answers what was screened for
     * @return one table
     */
    public static List<CsvTable> of(List<Movers> answers) {
        CsvTable table = new CsvTable(
                "screening",
                "the effect of one assumption on one answer, greatest mean absolute effect first",
                List.of(
                        Field.text("answer", "off_ground or elevated"),
                        Field.text("parameter", "name of the assumption"),
                        Field.text("meaning", "what it stands for"),
                        Field.text("unit", "its unit"),
                        Field.number("low", "low end of its range"),
                        Field.number("high", "high end of its range"),
                        Field.number("mean", "mean effect over the whole range [percentage points]"),
                        Field.number("mean_abs", "mean absolute effect [percentage points]"),
                        Field.number("sd", "spread of the effects [percentage points]"),
                        Field.number("se", "standard error of the mean absolute effect [percentage points]"),
                        Field.whole("walks", "number of effects"),
                        Field.yesNo("moves", "whether it moves the answer by the rule of the page")));
        for (Movers answer : answers) {
            for (Effect effect : answer.effects()) {
                Parameter p = effect.factor().parameter();
                table.row(
                        answer.answer().name().toLowerCase(Locale.ROOT),
                        p.name(),
                        p.meaning(),
                        p.unit(),
                        p.low(),
                        p.high(),
                        CsvTable.number(POINTS * effect.mean(), DECIMALS),
                        CsvTable.number(POINTS * effect.meanAbsolute(), DECIMALS),
                        effect.spread().isPresent()
                                ? CsvTable.number(POINTS * effect.spread().getAsDouble(), DECIMALS)
                                : "",
                        effect.standardError().isPresent()
                                ? CsvTable.number(
                                        POINTS * effect.standardError().getAsDouble(), DECIMALS)
                                : "",
                        effect.n(),
                        answer.isMover(effect));
            }
        }
        return List.of(table);
    }
}
