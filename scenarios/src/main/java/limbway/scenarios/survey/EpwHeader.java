package limbway.scenarios.survey;

import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

import limbway.scenarios.format.NumberText;
import limbway.scenarios.problem.Place;
import limbway.scenarios.problem.Problem;
import limbway.scenarios.problem.Problems;
import limbway.scenarios.problem.Wording;

/**
 * Where a weather file was recorded, after its first lines.
 *
 * @param location the line that says it
 * @param latitudeDeg degrees north
 * @param longitudeDeg degrees east
 * @param zoneHours how far its clocks are ahead of UTC [h]
 * @param elevationM height above the sea [m]
 */
record EpwHeader(EpwLine location, double latitudeDeg, double longitudeDeg, double zoneHours, double elevationM) {

    /** Numbers of the fields of the line LOCATION. */
    static final int LATITUDE = 7;

    static final int LONGITUDE = 8;
    static final int ZONE = 9;
    private static final int ELEVATION = 10;

    /** How the lines of the header begin, in their order. */
    private static final List<String> KEYWORDS = List.of(
            "LOCATION",
            "DESIGN CONDITIONS",
            "TYPICAL/EXTREME PERIODS",
            "GROUND TEMPERATURES",
            "HOLIDAYS/DAYLIGHT SAVING",
            "COMMENTS 1",
            "COMMENTS 2",
            "DATA PERIODS");

    static final int LINES = KEYWORDS.size();

    /** Its clocks, which know no summer time. */
    ZoneOffset offset() {
        return ZoneOffset.ofTotalSeconds((int) Math.rint(zoneHours * 3600));
    }

    /** The header of some lines, or empty after problems. */
    static Optional<EpwHeader> read(String file, List<String> lines, Problems problems) {
        for (int i = 0; i < LINES; i++) {
            String line = i < lines.size() ? lines.get(i) : "";
            if (!line.toUpperCase(Locale.ROOT).startsWith(KEYWORDS.get(i))) {
                problems.add(Problem.at(new Place(file, i + 1, 1), "this is not the header of a weather file (EPW)")
                        .found(Wording.quote(line))
                        .allowed("line " + (i + 1) + " begins with " + KEYWORDS.get(i))
                        .mend("check that this is the file you meant, and that no line of its header is missing"));
                return Optional.empty();
            }
        }
        Optional<EpwHeader> header = location(EpwLine.of(file, 1, lines.get(0)), problems);
        EpwLine periods = EpwLine.of(file, LINES, lines.get(LINES - 1));
        // a whole file with semicolons is one mistake
        return (header.isEmpty() && periods.hasSemicolons()) || !isHourly(periods, problems)
                ? Optional.empty()
                : header;
    }

    private static Optional<EpwHeader> location(EpwLine line, Problems problems) {
        if (line.count() != ELEVATION) {
            problems.add(Problem.at(line.start(), "the line LOCATION does not have its " + ELEVATION + " fields")
                    .found(line.found())
                    .allowed(
                            "LOCATION, city, region, country, source, station, latitude, longitude, time zone, elevation")
                    .mend(
                            line.hasSemicolons()
                                    ? line.mend(ELEVATION)
                                    : "write a point before decimals, and names without commas"));
            return Optional.empty();
        }
        List<Double> numbers = new ArrayList<>();
        number(line, LATITUDE, "latitude", 90, problems).ifPresent(numbers::add);
        number(line, LONGITUDE, "longitude", 180, problems).ifPresent(numbers::add);
        number(line, ZONE, "time zone", 14, problems).ifPresent(numbers::add);
        number(line, ELEVATION, "elevation", 9000, problems).ifPresent(numbers::add);
        return numbers.size() < 4
                ? Optional.empty()
                : Optional.of(new EpwHeader(line, numbers.get(0), numbers.get(1), numbers.get(2), numbers.get(3)));
    }

    private static Optional<Double> number(EpwLine line, int field, String what, double most, Problems problems) {
        Optional<Double> value = NumberText.of(line.field(field))
                .filter(number -> number.unit().isEmpty())
                .map(NumberText::value)
                .filter(number -> Math.abs(number) <= most);
        if (value.isEmpty()) {
            problems.add(Problem.at(line.place(field), what + " of the weather file cannot be read")
                    .found(Wording.quote(line.field(field)))
                    .allowed("a number from " + Wording.number(-most) + " to " + Wording.number(most))
                    .mend("write the number alone, with a point before decimals"));
        }
        return value;
    }

    private static boolean isHourly(EpwLine line, Problems problems) {
        if (line.count() < 3 || !line.field(2).equals("1")) {
            problems.add(Problem.at(line.place(Math.min(2, line.count())), "this weather file is not one whole year")
                    .found(line.count() < 3 ? "no number of data periods" : line.field(2) + " data periods")
                    .allowed("1 data period, from the 1st of January to the 31st of December")
                    .mend("take a file of one year"));
            return false;
        }
        if (!line.field(3).equals("1")) {
            problems.add(Problem.at(line.place(3), "this weather file is not hourly")
                    .found(line.field(3) + " records per hour")
                    .allowed("1 record per hour, because the model counts sun and heat by the hour")
                    .mend("take the means of each hour, or the hourly file of the same station"));
            return false;
        }
        return true;
    }
}
