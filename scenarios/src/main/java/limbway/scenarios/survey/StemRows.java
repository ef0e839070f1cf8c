package limbway.scenarios.survey;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;

import limbway.model.geometry.Corner;
import limbway.scenarios.entry.Fields;
import limbway.scenarios.entry.Form;
import limbway.scenarios.entry.Quantity;
import limbway.scenarios.entry.Values;
import limbway.scenarios.format.NumberText;
import limbway.scenarios.format.ScalarNode;
import limbway.scenarios.problem.Problem;
import limbway.scenarios.problem.Problems;
import limbway.scenarios.problem.Wording;

/** Reads the cells of a stem map. */
final class StemRows {

    private final CsvTable table;
    private final Map<String, Integer> columns;
    private final Problems problems;
    private final Values values;

    private StemRows(CsvTable table, Map<String, Integer> columns, Problems problems) {
        this.table = table;
        this.columns = columns;
        this.problems = problems;
        this.values = new Values(problems);
    }

    /** Looks the columns up, or adds a problem for each that the table lacks. */
    static Optional<StemRows> of(CsvTable table, Fields names, Problems problems) {
        Map<String, Integer> columns = new TreeMap<>();
        for (String key : Form.COLUMNS.keys()) {
            if (names.find(key).isPresent()) {
                ScalarNode name = names.placedWords(key, "the name of a column");
                int column = table.column(name.text());
                if (column < 0) {
                    names.fault(Problem.at(name.place(), "the table has no column " + name.shown())
                            .allowed(Wording.list(table.names()))
                            .mend(problems.didYouMean(name.text(), table.names(), "take a name of its first line")));
                }
                if (column != table.names().lastIndexOf(name.text()) && column >= 0) {
                    names.fault(Problem.at(name.place(), "the table has more than one column " + name.shown())
                            .mend("give each column its own name in the first line of the table"));
                }
                columns.put(key, column);
            }
        }
        return names.build(() -> new StemRows(table, columns, problems));
    }

    /** The stems in the order of the table, or empty after problems. */
    Optional<List<Stem>> read(double unitM, Allometry allometry) {
        List<Stem> stems = new ArrayList<>();
        for (int row = 1; row <= table.rows().size(); row++) {
            List<ScalarNode> cells = table.rows().get(row - 1);
            OptionalDouble xM = number(cells, "x", Quantity.POSITION);
            OptionalDouble yM = number(cells, "y", Quantity.POSITION);
            OptionalDouble diameterM = diameter(cells.get(columns.get("diameter")), unitM);
            OptionalDouble heightM = number(cells, "height", Quantity.HEIGHT);
            OptionalDouble radiusM = number(cells, "crown-radius", Quantity.CROWN_RADIUS);
            boolean heightMissing = columns.containsKey("height") && heightM.isEmpty();
            boolean radiusMissing = columns.containsKey("crown-radius") && radiusM.isEmpty();
            if (xM.isPresent() && yM.isPresent() && diameterM.isPresent() && !heightMissing && !radiusMissing) {
                double thickM = diameterM.getAsDouble();
                double highM = heightM.orElseGet(() -> allometry.heightM(thickM));
                stems.add(new Stem(
                        row,
                        new Corner(xM.getAsDouble(), yM.getAsDouble()),
                        cells.get(columns.get("x")).place(),
                        thickM,
                        cells.get(columns.get("diameter")).place(),
                        highM,
                        radiusM.orElseGet(() -> allometry.crownRadiusM(thickM)),
                        allometry.crownBaseM(highM)));
            }
        }
        return stems.size() == table.rows().size() ? Optional.of(stems) : Optional.empty();
    }

    private OptionalDouble number(List<ScalarNode> cells, String key, Quantity quantity) {
        Integer column = columns.get(key);
        if (column == null) {
            return OptionalDouble.empty();
        }
        ScalarNode cell = cells.get(column);
        return values.number(cell.place(), cell.text(), quantity, key + " of a stem");
    }

    private OptionalDouble diameter(ScalarNode cell, double unitM) {
        Optional<Double> diameterM = NumberText.of(cell.text())
                .filter(number -> number.unit().isEmpty())
                .map(number -> number.value() * unitM);
        Quantity quantity = Quantity.TRUNK_DIAMETER;
        if (diameterM.isPresent() && quantity.allows(diameterM.get())) {
            return OptionalDouble.of(diameterM.get());
        }
        String headline = diameterM.isPresent() ? " is outside what is plausible" : " is not a number";
        problems.add(Problem.at(cell.place(), "diameter of a stem" + headline)
                .found(diameterM.isPresent() ? Wording.measure(diameterM.get(), "m") : cell.shown())
                .allowed(quantity.range())
                .mend(diameterM.isPresent() ? "correct the number, or the diameter-unit of the survey" : ""));
        return OptionalDouble.empty();
    }
}
