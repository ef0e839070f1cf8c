package limbway.scenarios.survey;

import java.util.Arrays;
import java.util.Optional;

import limbway.scenarios.problem.Place;
import limbway.scenarios.problem.Problem;

/**
 * Recognises a column of a weather file that is in another unit.
 *
 * <p>All limits are common sense, no source: nowhere is the air above 36 °C or the wind above 9 m/s in the mean of a year
 * where animals are kept, and everywhere the brightest hour of a year brings more than 450 Wh/m².
 */
final class EpwUnits {

    private static final double HOTTEST_MEAN_C = 36;
    private static final double COLDEST_K = 150;
    private static final double WINDIEST_MEAN_M_PER_S = 9;
    private static final double DULLEST_BRIGHT_WH = 450;
    private static final double KJ_PER_WH = 3.6;

    /** So many hours beyond the range are no slips of single values. */
    private static final int MANY = 24;

    private EpwUnits() {}

    /** The problem of a whole column; {@code place} is where its first value stands. */
    static Optional<Problem> mistake(EpwField field, double[] values, Place place) {
        double least = Arrays.stream(values).min().orElse(0);
        double most = Arrays.stream(values).max().orElse(0);
        double mean = Arrays.stream(values).average().orElse(0);
        boolean manyAbove =
                Arrays.stream(values).filter(value -> value > field.most()).count() >= MANY;
        Problem problem = Problem.at(place, "the " + field.word() + " of the whole file is in another unit, it seems")
                .found(field.shown(least) + " to " + field.shown(most) + ", " + field.shown(Math.rint(mean * 10) / 10)
                        + " in the mean");
        return switch (field) {
            case DRY_BULB -> temperature(problem, least, mean, manyAbove);
            case WIND ->
                mean > WINDIEST_MEAN_M_PER_S
                        ? Optional.of(problem.allowed("up to " + field.shown(WINDIEST_MEAN_M_PER_S) + " in the mean")
                                .mend("if these are km/h, divide them by 3.6"))
                        : Optional.empty();
            case GLOBAL, DIRECT, DIFFUSE -> radiation(field, problem, most, manyAbove);
        };
    }

    private static Optional<Problem> temperature(Problem problem, double least, double mean, boolean manyAbove) {
        if (least > COLDEST_K) {
            return Optional.of(
                    problem.allowed(EpwField.DRY_BULB.range()).mend("these look like kelvins: take 273.15 from each"));
        }
        return mean > HOTTEST_MEAN_C || manyAbove
                ? Optional.of(problem.allowed("up to " + EpwField.DRY_BULB.shown(HOTTEST_MEAN_C) + " in the mean")
                        .mend("these look like degrees Fahrenheit: take 32 from each and divide by 1.8"))
                : Optional.empty();
    }

    private static Optional<Problem> radiation(EpwField field, Problem problem, double most, boolean manyAbove) {
        if (manyAbove) {
            boolean joules = most / KJ_PER_WH <= field.most();
            return Optional.of(problem.allowed(field.range())
                    .mend(
                            joules
                                    ? "these look like kJ/m²: divide each by 3.6"
                                    : "write watt-hours for each square metre"));
        }
        if (field == EpwField.GLOBAL && most < DULLEST_BRIGHT_WH) {
            String mend = most <= 5
                    ? "these look like kWh/m² or MJ/m²: write Wh/m²"
                    : "if these are J/cm², divide each by 0.36";
            return Optional.of(problem.allowed("more than " + field.shown(DULLEST_BRIGHT_WH) + " in the brightest hour")
                    .mend(most == 0 ? "take a file that holds sunlight" : mend));
        }
        return Optional.empty();
    }
}
