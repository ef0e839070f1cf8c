package limbway.scenarios.survey;

import java.time.Duration;
import java.time.Instant;
import java.time.Month;
import java.time.format.TextStyle;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.IntPredicate;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;

import limbway.model.enclosure.Site;
import limbway.model.light.SunPosition;
import limbway.scenarios.problem.Problem;

/**
 * Whether the three columns of light in a weather file agree: what falls on a level surface is the direct light times the
 * sine of the sun's height, plus the light of the sky.
 *
 * <p>A file that fails would make the simulated sun too weak or too strong, and metal safe that is not.
 *
 * @source the three as a check of one another: common practice at radiation stations, which there is held for each minute to
 *     8 % while the sun is above 15 degrees and to 15 % while it is lower (Long and Dutton, BSRN Global Network recommended
 *     QC tests, from memory); all limits here are common sense, no source: the wider of those two for the sums of a year,
 *     twice that for a month
 */
final class EpwLight {

    private static final double YEAR_SHARE = 0.15;
    private static final double MONTH_SHARE = 0.3;

    /** Months with less light [kWh/m²] are not judged: the sun is low, and the middle of an hour stands for it badly. */
    private static final double DARK_MONTH_KWH = 30;

    /** The sun is judged above 5 degrees. */
    private static final double LOW_SINE = StrictMath.sin(StrictMath.toRadians(5));

    /** A single hour is not far off by less than this [Wh/m²]. */
    private static final double SLIGHT_WH = 20;

    /** Everywhere some hour of a year brings more direct light than this [Wh/m²]. */
    private static final double DULLEST_BEAM_WH = 200;

    /** Columns of which hours agree better than this in the mean are not swapped. */
    private static final double SWAP_SHARE = 0.15;

    /** Half an hour is common where the moment of a reading stands for its hour; a whole one is a slip. */
    private static final double SHIFT_HOURS = 0.75;

    /** With hardly any direct light [share of the squares of global light] the hour does not show. */
    private static final double LEAST_BEND = 0.005;

    private static final String RULE = "global = direct times the sine of the sun's height, plus diffuse";

    private static final List<List<EpwField>> PAIRS = List.of(
            List.of(EpwField.DIRECT, EpwField.DIFFUSE),
            List.of(EpwField.GLOBAL, EpwField.DIRECT),
            List.of(EpwField.GLOBAL, EpwField.DIFFUSE));

    private final EpwHeader header;
    private final List<EpwLine> lines;
    private final Map<EpwField, double[]> columns;

    /** Sine of the sun's height in the middle of each hour, from that before the year on to that after it. */
    private final double[] sines;

    EpwLight(EpwHeader header, List<EpwLine> lines, Map<EpwField, double[]> columns) {
        this.header = header;
        this.lines = lines;
        this.columns = columns;
        Site station = new Site(header.latitudeDeg(), header.longitudeDeg(), header.offset());
        Instant before = EpwCalendar.START.toInstant(header.offset()).minus(Duration.ofMinutes(30));
        this.sines = IntStream.range(0, EpwCalendar.HOURS + 2)
                .mapToDouble(hour -> SunPosition.at(station, before.plus(Duration.ofHours(hour)))
                        .direction()
                        .zM())
                .toArray();
    }

    /** The first way in which the columns contradict one another, as a problem. */
    Optional<Problem> mistake() {
        return level().or(this::swapped)
                .or(this::unbalanced)
                .or(this::withoutBeam)
                .or(this::shifted);
    }

    /** Direct light on a level surface instead of on one that faces the sun. */
    private Optional<Problem> level() {
        double[] direct = columns.get(EpwField.DIRECT);
        double[] diffuse = columns.get(EpwField.DIFFUSE);
        double asWritten = meanOff(columns);
        double off = meanOff(columns.get(EpwField.GLOBAL), hour -> direct[hour] + diffuse[hour]);
        if (asWritten <= SWAP_SHARE || off >= asWritten / 3) {
            return Optional.empty();
        }
        return Optional.of(Problem.at(
                        lines.get(firstOff(hour -> true)).place(EpwField.DIRECT.number()),
                        "the direct radiation of this weather file is that on a level surface, it seems")
                .found("hours that are off by " + percent(asWritten) + " in the mean as written, by " + percent(off)
                        + " if direct and diffuse are simply added")
                .allowed(RULE)
                .mend("divide each value of field 15 by the sine of the sun's height, or take a file with direct normal"
                        + " radiation"));
    }

    private Optional<Problem> swapped() {
        double asWritten = meanOff(columns);
        for (List<EpwField> pair : PAIRS) {
            Map<EpwField, double[]> other = new EnumMap<>(columns);
            other.put(pair.get(0), columns.get(pair.get(1)));
            other.put(pair.get(1), columns.get(pair.get(0)));
            double off = meanOff(other);
            if (asWritten > SWAP_SHARE && off < asWritten / 3) {
                String fields =
                        "fields " + pair.get(0).number() + " and " + pair.get(1).number();
                return Optional.of(Problem.at(
                                lines.get(firstOff(hour -> true)).place(EpwField.GLOBAL.number()),
                                "two columns of light in this weather file are swapped, it seems")
                        .found("hours that are off by " + percent(asWritten) + " in the mean as written, by "
                                + percent(off) + " with " + fields + " swapped")
                        .allowed(RULE)
                        .mend("swap " + fields + ": " + named(pair.get(0)) + ", " + named(pair.get(1))));
            }
        }
        return Optional.empty();
    }

    private Optional<Problem> unbalanced() {
        Optional<Problem> year = unbalanced("over the year", YEAR_SHARE, 0, hour -> true);
        for (int month = 1; month <= 12 && year.isEmpty(); month++) {
            Month one = Month.of(month);
            String when = "in " + one.getDisplayName(TextStyle.FULL, Locale.ENGLISH);
            Optional<Problem> problem = unbalanced(
                    when,
                    MONTH_SHARE,
                    DARK_MONTH_KWH,
                    hour -> EpwCalendar.START.plusHours(hour).getMonth() == one);
            if (problem.isPresent()) {
                return problem;
            }
        }
        return year;
    }

    private Optional<Problem> unbalanced(String when, double share, double leastKwh, IntPredicate hours) {
        IntPredicate bright = hours.and(hour -> sines[hour + 1] > LOW_SINE);
        double stated = kwh(bright, EpwField.GLOBAL);
        double added = IntStream.range(0, EpwCalendar.HOURS)
                        .filter(bright)
                        .mapToDouble(hour -> added(columns, hour, 0))
                        .sum()
                / 1000;
        double more = Math.max(stated, added);
        if (more < leastKwh || Math.abs(stated - added) <= share * more) {
            return Optional.empty();
        }
        return Optional.of(Problem.at(
                        lines.get(firstOff(bright)).place(EpwField.GLOBAL.number()),
                        "the columns of light in this weather file do not agree")
                .found(String.format(
                        Locale.ROOT,
                        "%s %.0f kWh/m² of global radiation, but %.0f kWh/m² of direct and diffuse together",
                        when,
                        stated,
                        added))
                .allowed(RULE + "; the two sums within " + percent(share) + " of each other")
                .mend("look at fields " + named(EpwField.GLOBAL) + ", " + named(EpwField.DIRECT) + " and "
                        + named(EpwField.DIFFUSE) + ": correct the column that is wrong, or take another file"));
    }

    /** All light counted as that of the sky adds up as well, and nothing is ever in the sun. */
    private Optional<Problem> withoutBeam() {
        double most = Arrays.stream(columns.get(EpwField.DIRECT)).max().orElse(0);
        return most >= DULLEST_BEAM_WH
                ? Optional.empty()
                : Optional.of(Problem.at(
                                lines.get(0).place(EpwField.DIRECT.number()),
                                "the sun never shines brightly in this weather file")
                        .found("up to " + EpwField.DIRECT.shown(most) + " of direct normal radiation")
                        .allowed("more than " + EpwField.DIRECT.shown(DULLEST_BEAM_WH) + " in the brightest hour")
                        .mend("take a file that tells direct from diffuse light, in fields 15 and 16"));
    }

    /**
     * How far the sun that fits best lies from the hour that is written. The squares of what is left over lie near a parabola
     * over the shift; scatter of the station lifts it without moving its lowest point.
     */
    private Optional<Problem> shifted() {
        double before = squaresOff(-1);
        double after = squaresOff(1);
        double bend = before - 2 * squaresOff(0) + after;
        double all =
                Arrays.stream(columns.get(EpwField.GLOBAL)).map(wh -> wh * wh).sum();
        double hours = (before - after) / (2 * bend);
        if (bend < LEAST_BEND * all || Math.abs(hours) <= SHIFT_HOURS) {
            return Optional.empty();
        }
        boolean late = hours > 0;
        return Optional.of(Problem.at(
                        header.location().place(EpwHeader.ZONE),
                        "the light of this weather file is that of another hour, it seems")
                .found(String.format(
                        Locale.ROOT,
                        "global, direct and diffuse light that agree best with the sun about %.1f hours %s",
                        Math.abs(hours),
                        late ? "later" : "earlier"))
                .allowed("within " + SHIFT_HOURS + " hours of the middle of each hour")
                .mend("if the hours are those of " + EpwPlace.utc(header.zoneHours() + (late ? -1 : 1))
                        + ", write that time zone; otherwise move fields 14, 15 and 16 to the line "
                        + (late ? "after" : "before") + " each"));
    }

    private double squaresOff(int hoursLater) {
        return IntStream.range(0, EpwCalendar.HOURS)
                .mapToDouble(hour -> columns.get(EpwField.GLOBAL)[hour] - added(columns, hour, hoursLater))
                .map(off -> off * off)
                .sum();
    }

    /** How far global light is from what direct and diffuse light make, as a share of all global light. */
    private double meanOff(Map<EpwField, double[]> light) {
        return meanOff(light.get(EpwField.GLOBAL), hour -> added(light, hour, 0));
    }

    private static double meanOff(double[] global, IntToDoubleFunction added) {
        double off = IntStream.range(0, EpwCalendar.HOURS)
                .mapToDouble(hour -> Math.abs(global[hour] - added.applyAsDouble(hour)))
                .sum();
        double all = Arrays.stream(global).sum();
        return all > 0 ? off / all : Double.POSITIVE_INFINITY;
    }

    private double added(Map<EpwField, double[]> light, int hour, int hoursLater) {
        double sine = Math.max(0, sines[hour + 1 + hoursLater]);
        return light.get(EpwField.DIRECT)[hour] * sine + light.get(EpwField.DIFFUSE)[hour];
    }

    private double kwh(IntPredicate hours, EpwField field) {
        return IntStream.range(0, EpwCalendar.HOURS)
                        .filter(hours)
                        .mapToDouble(hour -> columns.get(field)[hour])
                        .sum()
                / 1000;
    }

    /** The first hour that is far off, for the eye. */
    private int firstOff(IntPredicate hours) {
        return IntStream.range(0, EpwCalendar.HOURS)
                .filter(hours)
                .filter(hour -> {
                    double stated = columns.get(EpwField.GLOBAL)[hour];
                    double added = added(columns, hour, 0);
                    return Math.abs(stated - added) > Math.max(SLIGHT_WH, YEAR_SHARE * Math.max(stated, added));
                })
                .findFirst()
                .orElse(0);
    }

    private static String named(EpwField field) {
        return field.number() + " (" + field.word() + ")";
    }

    private static String percent(double share) {
        return String.format(Locale.ROOT, "%.0f %%", 100 * share);
    }
}
