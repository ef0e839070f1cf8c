package limbway.reports.data;

import java.util.ArrayList;
import java.util.List;

import limbway.sim.experiment.screening.Factor;
import limbway.sim.experiment.worlds.InputEffect;
import limbway.sim.experiment.worlds.PairFound;
import limbway.sim.experiment.worlds.Reversal;
import limbway.sim.experiment.worlds.World;
import limbway.sim.experiment.worlds.WorldsFound;

/** Plausible worlds as tables. */
public final class WorldsTables {

    private static final int DECIMALS = 6;

    private WorldsTables() {}

    /**
     * The worlds with their inputs and differences, and what each input explains.
     *
     * @param found what was found
     * @return three tables
     */
    public static List<CsvTable> of(WorldsFound found) {
        return List.of(worlds(found), differences(found), inputs(found));
    }

    private static CsvTable worlds(WorldsFound found) {
        List<Field> fields = new ArrayList<>(List.of(Field.whole("world", "number of the world")));
        for (Factor input : found.inputs()) {
            fields.add(Field.number(
                    input.parameter().name(),
                    input.parameter().meaning() + " [" + input.parameter().unit() + "]"));
        }
        CsvTable table = new CsvTable("worlds", "one plausible world: the values of all inputs", fields);
        for (World world : found.worlds()) {
            List<Object> row = new ArrayList<>(List.of(world.number()));
            for (Factor input : found.inputs()) {
                row.add(CsvTable.number(world.values().get(input.parameter().name()), DECIMALS));
            }
            table.row(row.toArray());
        }
        return table;
    }

    private static CsvTable differences(WorldsFound found) {
        CsvTable table = new CsvTable(
                "world_differences",
                "two layouts in one measure in one world: the first less the second, under the same chance",
                List.of(
                        Field.whole("world", "number of the world"),
                        Field.text("a", "first layout"),
                        Field.text("b", "second layout"),
                        Field.text("measure", "name of the measure"),
                        Field.number(
                                "difference", "mean difference over the repetitions, in the unit of the measure")));
        for (World world : found.worlds()) {
            for (PairFound pair : found.pairs()) {
                table.row(
                        world.number(),
                        found.layouts().get(pair.a()),
                        found.layouts().get(pair.b()),
                        found.criteria().get(pair.criterion()),
                        CsvTable.number(world.difference(pair.a(), pair.b(), pair.criterion()), DECIMALS));
            }
        }
        return table;
    }

    private static CsvTable inputs(WorldsFound found) {
        CsvTable table = new CsvTable(
                "world_inputs",
                "one input and one difference: how much the input explains, and where it turns the sign",
                List.of(
                        Field.text("a", "first layout"),
                        Field.text("b", "second layout"),
                        Field.text("measure", "name of the measure"),
                        Field.text("input", "name of the input"),
                        Field.text("unit", "unit of the input"),
                        Field.number("low", "low end of its range"),
                        Field.number("high", "high end of its range"),
                        Field.number("assumed", "value as assumed"),
                        Field.number("index", "first-order index: share of the variance of the difference"),
                        Field.number("floor", "what that index could reach by accident"),
                        Field.number("where_low", "mean difference in the fifth of the worlds where it is lowest"),
                        Field.number("where_high", "mean difference in the fifth where it is highest"),
                        Field.number("reversal", "value at which the sign turns; empty if none or not looked for"),
                        Field.yesNo("looked_for", "whether a reversal was looked for"),
                        Field.yesNo("confirmed", "whether other chance finds the reversal too")));
        for (PairFound pair : found.pairs()) {
            for (InputEffect effect : pair.effects()) {
                List<Reversal> own = pair.reversals().stream()
                        .filter(reversal -> reversal.input().equals(effect.input()))
                        .toList();
                List<Reversal.Turn> turn =
                        own.stream().flatMap(r -> r.turn().stream()).toList();
                table.row(
                        found.layouts().get(pair.a()),
                        found.layouts().get(pair.b()),
                        found.criteria().get(pair.criterion()),
                        effect.input().parameter().name(),
                        effect.input().parameter().unit(),
                        effect.input().parameter().low(),
                        effect.input().parameter().high(),
                        effect.input().parameter().value(),
                        CsvTable.number(effect.index().index(), DECIMALS),
                        CsvTable.number(effect.index().floor(), DECIMALS),
                        CsvTable.number(effect.whereLow(), DECIMALS),
                        CsvTable.number(effect.whereHigh(), DECIMALS),
                        turn.isEmpty() ? "" : CsvTable.number(turn.get(0).value(), DECIMALS),
                        !own.isEmpty(),
                        !turn.isEmpty() && turn.get(0).confirmed().isPresent());
            }
        }
        return table;
    }
}
