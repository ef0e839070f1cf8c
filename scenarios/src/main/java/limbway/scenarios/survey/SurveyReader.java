package limbway.scenarios.survey;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

import limbway.scenarios.entry.Fields;
import limbway.scenarios.entry.Form;
import limbway.scenarios.entry.Quantity;
import limbway.scenarios.entry.Values;
import limbway.scenarios.format.MappingNode;
import limbway.scenarios.format.ScalarNode;
import limbway.scenarios.problem.Problem;
import limbway.scenarios.problem.Problems;
import limbway.scenarios.problem.Wording;

/** Reads the entry {@code survey} and the table that it names. */
public final class SurveyReader {

    /** Fetches the text of a table that a scenario names. */
    public interface Tables {

        /**
         * Fetches a table.
         *
         * @param name name of the file, with where it is written
         * @return name for messages and text, or empty after a problem
         */
        Optional<Table> fetch(ScalarNode name);
    }

    /**
     * The text of a table.
     *
     * @param file name for messages
     * @param text its content
     */
    public record Table(String file, String text) {}

    private static final Map<String, Double> UNITS_M = Map.of("m", 1.0, "cm", 0.01, "mm", 0.001);
    private static final List<String> UNITS = List.of("cm", "m", "mm");

    private final Tables tables;
    private final Problems problems;
    private final Values values;

    /**
     * A reader of surveys.
     *
     * @param tables where tables come from
     * @param problems where mistakes go
     */
    public SurveyReader(Tables tables, Problems problems) {
        this.tables = tables;
        this.problems = problems;
        this.values = new Values(problems);
    }

    /**
     * Reads the trees.
     *
     * @param node the entry
     * @return the trees, or empty if a problem was added
     */
    public Optional<Survey> read(MappingNode node) {
        Fields fields = Fields.of(node, Form.SURVEY, problems);
        ScalarNode name = fields.placedWords("table", "the name of a file, seen from the folder of the scenario");
        String prefix = fields.words("prefix", "a short name, for example waka", "tree");
        if (!Fields.isId(prefix + "-" + CsvTable.MOST_ROWS)) {
            fields.fault(Problem.at(fields.find("prefix").orElse(node).place(), "this prefix cannot be used")
                    .found(Wording.quote(prefix))
                    .allowed("letters, digits, - and _, at most 34 of them, no spaces"));
        }
        double unitM = UNITS_M.get(fields.oneOf("diameter-unit", UNITS, "cm"));
        int kept = fields.count(Quantity.TALLEST, 0);
        Optional<Fields> columns = fields.read("columns", value -> values.mapping(value, "columns of the survey"))
                .map(mapping -> Fields.of(mapping, Form.COLUMNS, problems));
        Optional<Allometry> allometry = fields.find("allometry").isEmpty()
                ? Optional.of(Allometry.with(Map.of()))
                : fields.read(
                        "allometry", value -> values.mapping(value, "allometry").flatMap(this::allometry));
        if (fields.build(() -> name).isEmpty() || columns.isEmpty() || allometry.isEmpty()) {
            return Optional.empty();
        }
        return tables.fetch(name).flatMap(table -> CsvTable.parse(table.file(), table.text(), problems)
                .flatMap(csv -> StemRows.of(csv, columns.get(), problems))
                .flatMap(rows -> rows.read(unitM, allometry.get()))
                .map(stems -> {
                    StemMap map = new StemMap(table.file(), stems);
                    List<Stem> trees = map.trees(kept == 0 ? OptionalInt.empty() : OptionalInt.of(kept));
                    return new Survey(
                            trees.stream().map(stem -> stem.toEntry(prefix)).toList(),
                            allometry.get().parameters(c -> isUsed(c, columns.get())),
                            map.notes());
                }));
    }

    private static boolean isUsed(Coefficient coefficient, Fields columns) {
        return switch (coefficient) {
            case HEIGHT_CONSTANT, HEIGHT_SLOPE, HEIGHT_CURVE, HEIGHT_STRESS ->
                columns.find("height").isEmpty();
            case CROWN_RADIUS_FACTOR, CROWN_RADIUS_EXPONENT ->
                columns.find("crown-radius").isEmpty();
            case CROWN_BASE_SHARE -> true;
        };
    }

    private Optional<Allometry> allometry(MappingNode node) {
        Fields fields = Fields.of(node, Form.ALLOMETRY, problems);
        Map<Coefficient, Double> replaced = new EnumMap<>(Coefficient.class);
        for (Coefficient coefficient : Coefficient.values()) {
            Quantity quantity =
                    coefficient == Coefficient.CROWN_BASE_SHARE ? Quantity.BASE_SHARE : Quantity.COEFFICIENT;
            OptionalDouble value = fields.number(coefficient.key(), quantity);
            value.ifPresent(number -> replaced.put(coefficient, number));
        }
        return fields.build(() -> Allometry.with(replaced));
    }
}
