package limbway.reports.patterns;

import java.util.List;
import java.util.function.Predicate;

import limbway.sim.experiment.statistics.Interval;

/** How waking time divides, beside the spread between the sites that were published. */
final class BudgetTable {

    private static final String HEADER = """
            | group | feeding | resting | moving | drinking |
            |---|---|---|---|---|
            | published, least to most of six sites | 13 to 47 % | 27 to 60 % | 9 to 33 % | |
            """;

    private final Lives lives;

    BudgetTable(Lives lives) {
        this.lives = lives;
    }

    String render() {
        Run forest = CalibrationPatterns.FOREST;
        return HEADER
                + row("`yard.yaml`", Run.of("yard"))
                + row("bare island of pattern 4", Run.of("patterns/04-bare-island"))
                + row("forest of pattern 16, much fruit", forest)
                + row("forest of pattern 16, little fruit", forest.in("little fruit"));
    }

    private String row(String group, Run run) {
        Predicate<Piece> drinking =
                Shares.feeding().or(Shares.resting()).or(Piece::travels).negate();
        return "| " + group + " | "
                + String.join(
                        " | ",
                        List.of(
                                share(run, Shares.feeding()),
                                share(run, Shares.resting()),
                                share(run, Piece::travels),
                                share(run, drinking)))
                + " |\n";
    }

    private String share(Run run, Predicate<Piece> which) {
        List<Double> found = Shares.share(run, Shares.always(), which).of(lives);
        return Unit.PERCENT.number(Interval.of(found).orElseThrow().mean()) + " %";
    }
}
