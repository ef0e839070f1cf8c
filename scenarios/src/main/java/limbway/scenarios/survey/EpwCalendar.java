package limbway.scenarios.survey;

import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;

import limbway.model.weather.HourlyWeather;
import limbway.scenarios.problem.Place;
import limbway.scenarios.problem.Problem;
import limbway.scenarios.problem.Wording;

/** Whether the lines of a weather file are the hours of a year, one after the other. */
final class EpwCalendar {

    static final int HOURS = HourlyWeather.HOURS;

    /** Any year without a 29th of February: the months of one file come from several years. */
    static final LocalDateTime START = LocalDateTime.of(2023, 1, 1, 0, 0);

    private EpwCalendar() {}

    /** The first line that is not the hour that it should be, or a wrong {@code count} of lines, as a problem. */
    static Optional<Problem> mistake(List<EpwLine> lines, int count) {
        for (int i = 0; i < Math.min(lines.size(), HOURS); i++) {
            Optional<Problem> problem = mistake(lines.get(i), START.plusHours(i));
            if (problem.isPresent()) {
                return problem;
            }
        }
        if (lines.size() == HOURS) {
            return Optional.empty();
        }
        boolean isShort = lines.size() < HOURS;
        EpwLine last = lines.get(Math.min(lines.size() - 1, HOURS));
        return Optional.of(Problem.at(
                        last.start(),
                        isShort ? "the weather ends before the year does" : "the weather goes on after a year")
                .found(count + " hours")
                .allowed(HOURS + " hours")
                .mend(isShort ? "take the whole file" : "take the lines after the 31st of December out"));
    }

    private static Optional<Problem> mistake(EpwLine line, LocalDateTime start) {
        String due = start.getMonthValue() + "," + start.getDayOfMonth() + "," + (start.getHour() + 1);
        String found = plain(line.field(2)) + "," + plain(line.field(3)) + "," + plain(line.field(4));
        if (found.equals(due)) {
            return Optional.empty();
        }
        Place place = line.place(2);
        Problem problem = Problem.at(place, "this line is not the next hour of the year")
                .found("month, day and hour " + Wording.quote(found))
                .allowed(due);
        if (found.startsWith("2,29,")) {
            return Optional.of(problem.mend("take the 24 lines of the 29th of February out: a year has 365 days here"));
        }
        boolean fromZero = found.equals("1,1,0");
        return Optional.of(problem.mend(
                fromZero
                        ? "count the hours of a day from 1 to 24: hour 1 lasts from 0 to 1 o'clock"
                        : "look for lines that are missing or twice before this one"));
    }

    /** Digits without zeros or a point before and after them, as some programs write them. */
    private static String plain(String text) {
        return text.replaceFirst("^0+(?=\\d)", "").replaceFirst("\\.0*$", "");
    }
}
