package limbway.scenarios.survey;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;

import limbway.scenarios.format.NumberText;
import limbway.scenarios.problem.Problem;
import limbway.scenarios.problem.Problems;
import limbway.scenarios.problem.Wording;

/** Reads the fields of the hours of a weather file, each as a column of numbers. */
final class EpwColumns {

    private final List<EpwLine> lines;
    private final Problems problems;

    EpwColumns(List<EpwLine> lines, Problems problems) {
        this.lines = lines;
        this.problems = problems;
    }

    /** All columns, or empty after problems. */
    Optional<Map<EpwField, double[]>> read() {
        Map<EpwField, double[]> columns = new EnumMap<>(EpwField.class);
        for (EpwField field : EpwField.values()) {
            column(field).ifPresent(values -> columns.put(field, values));
        }
        return columns.size() == EpwField.values().length ? Optional.of(columns) : Optional.empty();
    }

    private Optional<double[]> column(EpwField field) {
        double[] values = new double[lines.size()];
        BitSet missing = new BitSet();
        boolean sound = true;
        for (int i = 0; i < values.length; i++) {
            String text = lines.get(i).field(field.number());
            Optional<Double> value = NumberText.of(text)
                    .filter(number -> number.unit().isEmpty())
                    .map(NumberText::value);
            if (text.isEmpty()
                    || value.filter(number -> field.isMissing(text, number)).isPresent()) {
                missing.set(i);
            } else if (value.isEmpty()) {
                problems.add(
                        Problem.at(lines.get(i).place(field.number()), field.word() + " is not a number")
                                .found(Wording.quote(text))
                                .allowed(field.range())
                                .mend(
                                        "write the number alone, with a point before decimals; fill a gap from a station near by"));
                sound = false;
            } else {
                values[i] = value.get();
            }
        }
        if (sound && missing.cardinality() < values.length) {
            double[] known = IntStream.range(0, values.length)
                    .filter(i -> !missing.get(i))
                    .mapToDouble(i -> values[i])
                    .toArray();
            Optional<Problem> unit = EpwUnits.mistake(field, known, lines.get(0).place(field.number()));
            unit.ifPresent(problems::add);
            sound = unit.isEmpty() && areAllowed(field, values);
        }
        if (!missing.isEmpty()) {
            problems.add(gap(field, missing));
        }
        return sound && missing.isEmpty() ? Optional.of(values) : Optional.empty();
    }

    private boolean areAllowed(EpwField field, double[] values) {
        boolean sound = true;
        for (int i = 0; i < values.length; i++) {
            if (!field.allows(values[i])) {
                problems.add(
                        Problem.at(lines.get(i).place(field.number()), field.word() + " is outside what is plausible")
                                .found(field.shown(values[i]))
                                .allowed(field.range())
                                .mend("correct the number"));
                sound = false;
            }
        }
        return sound;
    }

    private Problem gap(EpwField field, BitSet missing) {
        return Problem.at(
                        lines.get(missing.nextSetBit(0)).place(field.number()),
                        field.word() + " is missing in " + missing.cardinality() + " of " + lines.size() + " hours")
                .found("nothing, or the code for nothing, in " + runs(missing))
                .allowed("a value in every hour: gaps are not filled silently")
                .mend("fill the gaps from a station near by and say so under COMMENTS 1, or take another file");
    }

    /** For example: lines 9 to 12, 40. */
    private String runs(BitSet missing) {
        List<String> runs = new ArrayList<>();
        for (int from = missing.nextSetBit(0); from >= 0; from = missing.nextSetBit(missing.nextClearBit(from))) {
            int first = lines.get(from).number();
            int last = lines.get(missing.nextClearBit(from) - 1).number();
            runs.add(first == last ? Integer.toString(first) : first + " to " + last);
        }
        return (missing.cardinality() == 1 ? "line " : "lines ") + Wording.list(runs);
    }
}
