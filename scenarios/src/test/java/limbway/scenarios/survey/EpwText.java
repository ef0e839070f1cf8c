package limbway.scenarios.survey;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.DoubleUnaryOperator;

/** A made-up weather file: every day is alike, fine and warm, near the equator. */
public final class EpwText {

    private static final String HEADER = """
            LOCATION,Made-up,-,-,invented,000000,1.5,110.5,8.0,20.0
            DESIGN CONDITIONS,0
            TYPICAL/EXTREME PERIODS,0
            GROUND TEMPERATURES,0
            HOLIDAYS/DAYLIGHT SAVINGS,No,0,0,0
            COMMENTS 1,Invented for a test.
            COMMENTS 2,
            DATA PERIODS,1,1,Data,Sunday,1/1,12/31
            """;

    private final List<String> lines = new ArrayList<>();

    private EpwText() {
        lines.addAll(HEADER.lines().toList());
        LocalDateTime start = LocalDateTime.of(2023, 1, 1, 0, 0);
        for (int i = 0; i < 8760; i++) {
            LocalDateTime hour = start.plusHours(i);
            // the sun is highest at 12:38 by these clocks
            double high = Math.max(0, Math.cos(Math.toRadians(15 * (hour.getHour() + 0.5 - 12.63))));
            double airC = 28 + 4 * Math.cos(Math.toRadians(15 * (hour.getHour() - 14)));
            lines.add(String.format(
                    Locale.ROOT,
                    "2023,%d,%d,%d,60,?9,%.1f,22.0,80,101000,0,0,400,%.0f,%.0f,%.0f,0,0,0,0,180,%.1f,5,5,20.0,77777,"
                            + "9,999999999,0,0.1,0,88,0.2,0.0,0.0",
                    hour.getMonthValue(),
                    hour.getDayOfMonth(),
                    hour.getHour() + 1,
                    airC,
                    950 * high,
                    high > 0 ? 700.0 : 0.0,
                    250 * high,
                    1.5 + high));
        }
    }

    /** A sound file. */
    public static EpwText sound() {
        return new EpwText();
    }

    /** The file with another field in one line; lines and fields are counted from 1. */
    public EpwText with(int line, int field, String text) {
        String[] fields = lines.get(line - 1).split(",", -1);
        fields[field - 1] = text;
        lines.set(line - 1, String.join(",", fields));
        return this;
    }

    /** The file with a field changed in every hour. */
    EpwText withAll(int field, DoubleUnaryOperator change) {
        for (int line = 9; line <= lines.size(); line++) {
            double value = Double.parseDouble(lines.get(line - 1).split(",", -1)[field - 1]);
            with(line, field, String.format(Locale.ROOT, "%.2f", change.applyAsDouble(value)));
        }
        return this;
    }

    /** The file with another field in every hour of a month. */
    EpwText withMonth(int month, int field, String text) {
        for (int line = 9; line <= lines.size(); line++) {
            if (lines.get(line - 1).startsWith("2023," + month + ",")) {
                with(line, field, text);
            }
        }
        return this;
    }

    /** The file with one field written over another in every hour. */
    EpwText copied(int from, int to) {
        for (int line = 9; line <= lines.size(); line++) {
            with(line, to, field(line, from));
        }
        return this;
    }

    /** The file with two fields swapped in every hour. */
    EpwText swapped(int one, int other) {
        for (int line = 9; line <= lines.size(); line++) {
            String first = field(line, one);
            with(line, one, field(line, other)).with(line, other, first);
        }
        return this;
    }

    private String field(int line, int field) {
        return lines.get(line - 1).split(",", -1)[field - 1];
    }

    /** The file without some lines, the first and last included. */
    EpwText without(int from, int to) {
        lines.subList(from - 1, to).clear();
        return this;
    }

    /** The file with a line more. */
    EpwText insert(int line, String text) {
        lines.add(line - 1, text);
        return this;
    }

    String line(int line) {
        return lines.get(line - 1);
    }

    /** What is written in the file. */
    public String text() {
        return String.join("\n", lines) + "\n";
    }
}
