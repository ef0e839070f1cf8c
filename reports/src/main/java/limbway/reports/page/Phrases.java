package limbway.reports.page;

import java.util.List;
import java.util.Optional;

import limbway.reports.words.Figures;
import limbway.reports.words.IntervalText;
import limbway.sim.experiment.statistics.Interval;
import limbway.sim.journal.Motive;

/** Measures as words of a sentence or cell. */
final class Phrases {

    private Phrases() {}

    static String share(Optional<Interval> share) {
        return share.map(i -> IntervalText.percent(i.mean(), i.lo(), i.hi())).orElse("no travel");
    }

    static String kiloJ(Interval joules) {
        return Figures.decimals(joules.mean() / 1000, 0);
    }

    static String metres(Interval metres) {
        return IntervalText.amount(metres.mean(), metres.lo(), metres.hi(), metres.mean() < 100 ? 1 : 0, "m");
    }

    static String motives(List<Motive> motives) {
        return String.join(", ", motives.stream().map(Motive::word).toList());
    }

    static String sentence(String clause) {
        return Character.toUpperCase(clause.charAt(0)) + clause.substring(1) + ".";
    }
}
