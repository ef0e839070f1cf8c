package limbway.reports.command;

import java.nio.file.Path;
import java.util.List;

import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

import limbway.sim.experiment.RunSettings;
import limbway.sim.experiment.statistics.StoppingRule;

/** How layouts are to be compared. */
final class CompareOptions {

    @Option(
            names = "--variants",
            paramLabel = "NAMES",
            description =
                    "The layouts to compare, divided by commas; without it all of the file. \"as drawn\" is the layout "
                            + "without changes.")
    List<String> variants;

    @Option(
            names = "--out",
            paramLabel = "DIR",
            description =
                    "Also write a page with a chart and tables into DIR, and a notebook: the same command with the same "
                            + "DIR goes on where it was stopped.")
    Path out;

    @Option(
            names = "--precision",
            paramLabel = "PERCENT",
            defaultValue = "2",
            converter = NumberInRange.Precision.class,
            description = "Go on until the difference of every two layouts in shares is known to plus or minus so many "
                    + "percentage points; without it 2.")
    double precision;

    @Option(
            names = "--relative",
            paramLabel = "PERCENT",
            defaultValue = "10",
            converter = NumberInRange.Precision.class,
            description =
                    "The same for amounts, in per cent of their size; without it 10. It counts for amounts that --until "
                            + "names.")
    double relative;

    @Option(
            names = "--until",
            paramLabel = "MEASURES",
            defaultValue = "offground_distance,offground_time,offground_energy,time_elevated",
            split = ",",
            description = "Measures whose differences must be known so well, divided by commas; without it "
                    + "offground_distance,offground_time,offground_energy,time_elevated. All measures are told.")
    List<String> until;

    @Option(
            names = "--replications",
            paramLabel = "N",
            defaultValue = "100",
            converter = WholeNumber.class,
            description = "Most times the days are lived in each layout, 10 or more; without it 100.")
    int replications;

    @Option(
            names = "--batch",
            paramLabel = "N",
            defaultValue = "20",
            converter = WholeNumber.class,
            description =
                    "Repetitions between two looks at the precision; without it 20. The first look is never before 10.")
    private int batch;

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
                            + "without it on. With on, the travel off the ground without it is told beside.")
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

    RunSettings settings() {
        return start.settings(replications, days);
    }

    boolean hasWorth() {
        return worth == OnOff.ON;
    }

    /** When to stop; refused if the budget ends before there is anything to tell. */
    StoppingRule rule() throws Refusal {
        if (replications < StoppingRule.LEAST_FIRST) {
            throw Refusal.of(
                    "that is too few repetitions to compare by",
                    "--replications " + replications,
                    StoppingRule.LEAST_FIRST + " or more: with fewer it is not known how much repetitions differ",
                    "give at least --replications " + StoppingRule.LEAST_FIRST + "; fewer --days make them shorter");
        }
        int first = Math.max(StoppingRule.LEAST_FIRST, Math.min(batch, replications));
        return new StoppingRule(precision, relative, first, batch);
    }
}
