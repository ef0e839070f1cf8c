package limbway.reports.command;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import limbway.reports.data.SweepInfo;
import limbway.reports.measure.criterion.DesignCriterion;
import limbway.reports.measure.sweep.MainEffect;
import limbway.reports.measure.sweep.Swept;
import limbway.reports.measure.sweep.SweptCase;
import limbway.reports.measure.sweep.SweptFactor;
import limbway.reports.words.Figures;
import limbway.reports.words.IntervalText;
import limbway.reports.words.WrappedLines;
import limbway.sim.experiment.statistics.Interval;

/** The answer of a sweep as lines of a terminal. */
final class SweepLines {

    private final Swept swept;
    private final DesignCriterion criterion;
    private final WrappedLines lines = new WrappedLines();

    private SweepLines(Swept swept, DesignCriterion criterion) {
        this.swept = swept;
        this.criterion = criterion;
    }

    static List<String> of(SweepInfo info, Swept swept, DesignCriterion criterion) {
        SweepLines text = new SweepLines(swept, criterion);
        int points = swept.cases().size() / swept.layouts().size();
        int times = info.settings().replications();
        int days = info.settings().days();
        String plan = info.isFull() ? " points, all combinations" : " points spread over all ranges";
        text.add(points + plan + ", in " + String.join(", ", swept.layouts()) + "; each lived "
                + (times == 1 ? "once" : times + " times") + " for " + days + (days == 1 ? " day" : " days")
                + " under the same chance.");
        text.best();
        text.effects();
        return text.lines.all();
    }

    private void best() {
        List<SweptCase> ranked = swept.ranked(criterion);
        if (ranked.isEmpty()) {
            add("Nothing can be said of the " + criterion.words() + ": no point gave a value.");
            return;
        }
        SweptCase best = ranked.get(0);
        add("Best by the " + criterion.words() + " (" + criterion.wish().words() + "): " + words(best) + ": "
                + text(swept.value(best, criterion)) + ".");
        if (ranked.size() > 1) {
            SweptCase next = ranked.get(1);
            add("  Next: " + words(next) + ": " + text(swept.value(next, criterion)) + ". " + sure(best, next));
            List<String> assumed = swept.factors().stream()
                    .filter(SweptFactor::isAssumed)
                    .map(SweptFactor::name)
                    .toList();
            if (!assumed.isEmpty()) {
                add("  Nobody can choose " + String.join(", ", assumed)
                        + ": where points differ in nothing else, this is their mean.");
            }
            add("  The best of many looks better than it is: live through it again with another seed.");
        }
    }

    private String sure(SweptCase best, SweptCase next) {
        Optional<Interval> difference = best.lessThat(next, swept.criteria().indexOf(criterion));
        if (difference.isEmpty() || difference.get().halfWidth().isEmpty()) {
            return "One repetition cannot tell them apart.";
        }
        boolean apart =
                Math.abs(difference.get().mean()) > difference.get().halfWidth().getAsDouble();
        return "Between them " + difference(difference.get()) + (apart ? "." : ": not told apart.");
    }

    private void effects() {
        add("What each value does to it, the mean over all others:");
        for (MainEffect effect : swept.effects(criterion)) {
            List<String> levels = new ArrayList<>();
            for (int level = 0; level < effect.levels().size(); level++) {
                levels.add(effect.factor().levels().get(level) + " gives "
                        + effect.levels()
                                .get(level)
                                .map(Interval::mean)
                                .map(this::figure)
                                .orElse("nothing"));
            }
            add("  " + effect.factor().name() + ": " + String.join(", ", levels)
                    + effect.between()
                            .map(this::difference)
                            .map(d -> "; between these " + d)
                            .orElse("")
                    + (effect.factor().isRange() ? " (straight line)" : ""));
        }
    }

    private String words(SweptCase one) {
        List<String> words = new ArrayList<>();
        for (int f = 0; f < swept.factors().size(); f++) {
            if (!one.values().get(f).equals(Swept.ALL)) {
                words.add(swept.factors().get(f).name() + " = " + one.values().get(f));
            }
        }
        if (swept.layouts().size() > 1) {
            words.add("in " + one.layout());
        }
        return words.isEmpty() ? "as it stands" : String.join(", ", words);
    }

    private String figure(double value) {
        return criterion.isShare() ? Figures.percent(value) : amount(value);
    }

    private String amount(double value) {
        return Figures.plain(value) + (criterion.unit().equals("1") ? "" : " " + criterion.unit());
    }

    private String text(Optional<Interval> value) {
        Interval interval = value.orElseThrow();
        if (criterion.isShare()) {
            return IntervalText.percent(interval.mean(), interval.lo(), interval.hi());
        }
        return amount(interval.mean()) + ends(interval);
    }

    private String difference(Interval interval) {
        if (criterion.isShare()) {
            return IntervalText.points(interval.mean(), interval.lo(), interval.hi()) + " points";
        }
        return amount(interval.mean()) + ends(interval);
    }

    private static String ends(Interval interval) {
        return interval.halfWidth().isEmpty()
                ? ""
                : " (" + Figures.plain(interval.lo().orElseThrow()) + " to "
                        + Figures.plain(interval.hi().orElseThrow()) + ")";
    }

    private void add(String text) {
        lines.add(text);
    }
}
