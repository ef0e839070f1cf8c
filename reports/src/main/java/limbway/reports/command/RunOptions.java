package limbway.reports.command;

import java.nio.file.Path;

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
            names = "--worth",
            paramLabel = "on|off",
            defaultValue = "on",
            converter = OnOff.Reader.class,
            description =
                    "Whether places are worth something beyond needs and energy, such as bedding, height or company; "
                            + "without it on. With on, a second run without it is told beside.")
    private OnOff worth;

    @Mixin
    private StartOptions start;

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
        return start.settings(replications, days);
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
