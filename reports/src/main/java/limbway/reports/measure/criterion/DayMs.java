package limbway.reports.measure.criterion;

/** Lengths of time in journals. */
final class DayMs {

    static final long DAY_MS = 86_400_000;
    static final double HOUR_MS = 3_600_000;
    static final double MINUTE_MS = 60_000;

    private DayMs() {}
}
