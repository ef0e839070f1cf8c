package limbway.reports.command;

import java.nio.file.Path;
import java.time.LocalDate;

import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

import limbway.sim.experiment.Assumptions;
import limbway.sim.experiment.RunSettings;

/** How a run is to be made. */
final class RunOptions {

    @Option(
            names = "--out",
            paramLabel = "DIR",
            defaultValue = "out",
            description = "Folder to write into; without it a folder called out.")
    Path out;

    @Option(
            names = "--seed",
            paramLabel = "N",
            defaultValue = "1",
            converter = WholeNumber.class,
            description = "Start of all chance, 1 to 2147483647; without it 1.")
    private int seed;

    @Option(
            names = "--replications",
            paramLabel = "N",
            defaultValue = "20",
            converter = WholeNumber.class,
            description = "How many times the days are lived; without it 20.")
    private int replications;

    @Option(
            names = "--days",
            paramLabel = "N",
            defaultValue = "5",
            converter = WholeNumber.class,
            description = "Days in each repetition; without it 5.")
    private int days;

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

    @Option(
            names = "--worth",
            paramLabel = "on|off",
            defaultValue = "on",
            converter = OnOff.Reader.class,
            description =
                    "Whether places are worth something beyond needs and energy, such as bedding, height or company; "
                            + "without it on. With on, a second run without it is told beside.")
    private OnOff worth;

    @Mixin
    private ThreadOptions threads;

    @Option(
            names = "--threshold",
            paramLabel = "METRES",
            defaultValue = "1.0",
            converter = Metres.class,
            description = "Height above which an animal counts as up high; without it 1.0.")
    double thresholdM;

    @Option(names = "--alone", description = "Leave the other layouts of the file out.")
    boolean alone;

    RunSettings settings() {
        return new RunSettings(seed, replications, days, date, threads.count(), warmUpDays);
    }

    /** Whether places are worth something beyond needs and energy in the run in question. */
    boolean hasWorth() {
        return worth == OnOff.ON;
    }

    /** The numbers of the run in question. */
    Assumptions of(Assumptions assumed) {
        return hasWorth() ? assumed : assumed.withoutWorth();
    }
}
