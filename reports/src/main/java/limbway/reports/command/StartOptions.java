package limbway.reports.command;

import java.time.LocalDate;

import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

import limbway.sim.experiment.RunSettings;

/** With what chance and on what day animals begin to live, and on how many threads. */
final class StartOptions {

    @Option(
            names = "--seed",
            paramLabel = "N",
            defaultValue = "1",
            converter = WholeNumber.class,
            description = "Start of all chance, 1 to 2147483647; without it 1.")
    private int seed;

    @Option(
            names = "--date",
            paramLabel = "YYYY-MM-DD",
            defaultValue = "2026-03-21",
            converter = CalendarDate.class,
            description = "Date of the first day; without it 2026-03-21.")
    private LocalDate date;

    @Option(
            names = "--warm-up",
            paramLabel = "N",
            defaultValue = "3",
            converter = NumberInRange.WarmUp.class,
            description = "Days lived before day 1 and left out of the result; without it 3.")
    private int warmUpDays;

    @Mixin
    private ThreadOptions threads;

    /** The settings of a run of given length. */
    RunSettings settings(int replications, int days) {
        return new RunSettings(seed, replications, days, date, threads.count(), warmUpDays);
    }

    int threads() {
        return threads.count();
    }
}
