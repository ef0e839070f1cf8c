package limbway.reports.patterns;

import java.time.LocalDate;

/**
 * What is lived once and measured in several ways.
 *
 * @param scenario file name in {@code scenarios/examples}, without its ending
 * @param layout name of a layout of that file
 * @param date date of day 1
 * @param days days in each replication
 * @param replications independent repetitions
 */
record Run(String scenario, String layout, LocalDate date, int days, int replications) {

    private static final LocalDate EQUINOX = LocalDate.of(2026, 3, 21);

    /** The layout as drawn, five days from the equinox on, a dozen times. */
    static Run of(String scenario) {
        return new Run(scenario, "as drawn", EQUINOX, 5, 12);
    }

    Run in(String otherLayout) {
        return new Run(scenario, otherLayout, date, days, replications);
    }

    Run on(LocalDate otherDate) {
        return new Run(scenario, layout, otherDate, days, replications);
    }

    Run lasting(int otherDays, int otherReplications) {
        return new Run(scenario, layout, date, otherDays, otherReplications);
    }
}
