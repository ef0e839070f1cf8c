package limbway.scenarios.survey;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import limbway.model.weather.HourlyWeather;
import limbway.scenarios.problem.Problem;
import limbway.scenarios.problem.Problems;

/**
 * The hours of a year, read from a weather file (EPW).
 *
 * @param header where they were recorded
 * @param weather the weather of each hour, in the clock time of the header; the first lasts from 0 to 1 o'clock on the 1st
 *     of January
 * @source file format: EnergyPlus Auxiliary Programs, "EnergyPlus Weather File (EPW) Data Dictionary"
 */
record EpwFile(EpwHeader header, HourlyWeather weather) {

    private static final int FIELDS = 35;

    /** Lines beyond this are not looked at; a year with a 29th of February has fewer. */
    private static final int MOST_LINES = 8_800;

    /** The hours of a file, or empty after problems. */
    static Optional<EpwFile> parse(String file, String text, Problems problems) {
        List<String> all = text.lines().toList();
        int end = all.size();
        while (end > 0 && all.get(end - 1).isBlank()) {
            end--;
        }
        Optional<EpwHeader> header = EpwHeader.read(file, all, problems);
        if (header.isEmpty()) {
            return Optional.empty();
        }
        List<EpwLine> lines = new ArrayList<>();
        boolean sound = true;
        for (int i = EpwHeader.LINES; i < Math.min(end, EpwHeader.LINES + MOST_LINES); i++) {
            EpwLine line = EpwLine.of(file, i + 1, all.get(i));
            lines.add(line);
            if (line.count() != FIELDS) {
                problems.add(Problem.at(line.start(), "this line does not have the fields of an hour")
                        .found(line.found())
                        .allowed(FIELDS + " fields, with commas between")
                        .mend(line.mend(FIELDS)));
                sound = false;
            }
        }
        if (lines.isEmpty()) {
            problems.add(Problem.at(EpwLine.of(file, all.size(), "").start(), "this weather file holds no hours")
                    .allowed(EpwCalendar.HOURS + " lines after the header")
                    .mend("take the whole file"));
        }
        if (!sound || lines.isEmpty()) {
            return Optional.empty();
        }
        Optional<Problem> calendar = EpwCalendar.mistake(lines, end - EpwHeader.LINES);
        calendar.ifPresent(problems::add);
        Optional<Map<EpwField, double[]>> columns = new EpwColumns(lines, problems).read();
        if (calendar.isPresent() || columns.isEmpty()) {
            return Optional.empty();
        }
        Optional<Problem> night =
                new EpwPlace(header.get(), problems).lightAtNight(columns.get().get(EpwField.GLOBAL), lines);
        Optional<Problem> light = night.or(() -> new EpwLight(header.get(), lines, columns.get()).mistake());
        if (light.isPresent()) {
            problems.add(light.get());
            return Optional.empty();
        }
        return Optional.of(new EpwFile(header.get(), weather(file, header.get(), columns.get())));
    }

    private static HourlyWeather weather(String file, EpwHeader header, Map<EpwField, double[]> columns) {
        String name = file.substring(Math.max(file.lastIndexOf('/'), file.lastIndexOf('\\')) + 1);
        return new HourlyWeather(
                "the hours of the weather file " + name,
                header.offset(),
                columns.get(EpwField.DRY_BULB),
                columns.get(EpwField.DIRECT),
                columns.get(EpwField.DIFFUSE),
                columns.get(EpwField.GLOBAL),
                columns.get(EpwField.WIND));
    }
}
