package limbway.reports.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

import limbway.reports.measure.criterion.DesignCriterion;
import limbway.reports.words.Effort;
import limbway.reports.words.Figures;
import limbway.reports.words.IntervalText;
import limbway.reports.words.Likelihood;
import limbway.sim.experiment.comparison.Compared;
import limbway.sim.experiment.comparison.Difference;
import limbway.sim.experiment.comparison.Stopped;
import limbway.sim.experiment.statistics.Holm;
import limbway.sim.experiment.statistics.Interval;

/** What a comparison found, in words for the terminal and the page. */
public final class CompareText {

    private static final double POINTS = 100;
    private static final int MOST_PAIRS = 10;

    private CompareText() {}

    /**
     * All that is said of it, most important first.
     *
     * @param report the comparison
     * @return sentences
     */
    public static List<String> sentences(CompareReport report) {
        List<String> all = new ArrayList<>();
        all.add(order(report));
        all.addAll(differences(report));
        report.alone().ifPresent(alone -> all.add(alone(report, alone)));
        besides(report).ifPresent(all::add);
        all.add(stopped(report));
        report.supplements().forEach(supplement -> all.addAll(supplement.sentences()));
        return all;
    }

    /** All layouts with their shares of travel, most first. */
    static String order(CompareReport report) {
        List<String> parts = new ArrayList<>();
        for (int layout : report.ranked()) {
            parts.add(report.compared().layouts().get(layout) + " "
                    + share(report.compared().mean(layout, 0)));
        }
        return "Travel off the ground by distance" + (report.info().worth() ? "" : ", with needs and energy alone")
                + ", most first: " + String.join("; ", parts) + ".";
    }

    private static String share(Optional<Interval> share) {
        return Phrases.share(share);
    }

    /** Every pair, the layout with more first; of many layouts only the pairs with the best. */
    static List<String> differences(CompareReport report) {
        Compared compared = report.compared();
        List<Integer> ranked = report.ranked();
        List<String> all = new ArrayList<>();
        boolean allPairs = ranked.size() * (ranked.size() - 1) / 2 <= MOST_PAIRS;
        for (int i = 0; i < ranked.size(); i++) {
            for (int j = i + 1; j < ranked.size(); j++) {
                if (i == 0 || allPairs) {
                    int more = ranked.get(i);
                    int less = ranked.get(j);
                    CompareReport.between(compared, more, less, 0)
                            .ifPresent(difference -> all.add(sentence(compared, difference, more, less)));
                }
            }
        }
        return all;
    }

    /** One pair in the share of travel off the ground. */
    static String sentence(Compared compared, Difference d, int more, int less) {
        String first = compared.layouts().get(more);
        String second = compared.layouts().get(less);
        if (d.paired().mean() == 0 && d.paired().halfWidth() == 0) {
            return first + " and " + second
                    + " have exactly the same share of travel off the ground in every repetition.";
        }
        double sign = d.a() == more ? 1 : -1;
        double mean = sign * d.paired().mean();
        String interval = "(" + points(mean - d.paired().halfWidth()) + " to "
                + points(mean + d.paired().halfWidth()) + "), Holm-adjusted " + Likelihood.p(d.pHolm());
        if (d.isDeclared()) {
            return first + " has " + points(mean) + " points more of its travel off the ground than " + second + " "
                    + interval + ".";
        }
        return "Between " + first + " and " + second + " chance alone may make the difference of " + points(mean)
                + " points " + interval + ".";
    }

    static String alone(CompareReport report, Compared alone) {
        List<String> parts = new ArrayList<>();
        for (int layout : report.ranked()) {
            parts.add(alone.layouts().get(layout) + " " + share(alone.mean(layout, 0)));
        }
        List<String> turned = new ArrayList<>();
        boolean apart = false;
        for (Difference d : report.compared().in(0)) {
            Optional<Difference> bare = alone.between(d.a(), d.b(), 0);
            apart |= d.isDeclared();
            if (d.isDeclared() && bare.isPresent() && !isSame(d, bare.get())) {
                turned.add(
                        alone.layouts().get(d.a()) + " and " + alone.layouts().get(d.b()));
            }
        }
        return "With needs and energy alone, without what places are assumed to be worth beyond them: "
                + String.join("; ", parts) + "." + verdict(apart, turned);
    }

    private static String verdict(boolean apart, List<String> turned) {
        if (!turned.isEmpty()) {
            return " The difference does not hold there between " + String.join(", between ", turned)
                    + ": it rests on assumed worth.";
        }
        return apart ? " All that are told apart above are told apart there too, the same way round." : "";
    }

    private static boolean isSame(Difference with, Difference without) {
        return without.isDeclared()
                && Math.signum(with.paired().mean())
                        == Math.signum(without.paired().mean());
    }

    /**
     * What the layout with most travel off the ground does worse than another. All other measures are looked through, so p
     * values are corrected for their number, too: chance alone says this of a layout in one of twenty cases at most.
     */
    static Optional<String> besides(CompareReport report) {
        int top = report.ranked().get(0);
        List<Integer> looked = new ArrayList<>();
        List<Double> p = new ArrayList<>();
        for (int c = 1; c < report.criteria().size(); c++) {
            Optional<Integer> best = report.best(c);
            if (best.isPresent()) {
                looked.add(c);
                // where it is the best itself nothing speaks for its being worse
                p.add(
                        best.get() == top
                                ? 1
                                : CompareReport.between(report.compared(), top, best.get(), c)
                                        .map(Difference::pHolm)
                                        .orElse(1.0));
            }
        }
        double[] adjusted =
                Holm.adjusted(p.stream().mapToDouble(Double::doubleValue).toArray());
        List<String> worse = new ArrayList<>();
        for (int i = 0; i < adjusted.length; i++) {
            if (adjusted[i] < Difference.LEVEL) {
                int c = looked.get(i);
                int best = report.best(c).orElseThrow();
                worse.add(report.criteria().get(c).words() + ": "
                        + value(report.criteria().get(c), report.compared().mean(top, c)) + " against "
                        + value(report.criteria().get(c), report.compared().mean(best, c)) + " in "
                        + report.compared().layouts().get(best));
            }
        }
        return worse.isEmpty()
                ? Optional.empty()
                : Optional.of(report.compared().layouts().get(top) + " is not best in everything: "
                        + String.join("; ", worse) + ". (Holm-adjusted for the " + looked.size()
                        + (looked.size() == 1 ? " measure" : " measures") + " looked through.)");
    }

    /** Why it ended, and what it would take. */
    static String stopped(CompareReport report) {
        Compared compared = report.compared();
        String made = "This rests on " + Figures.count(compared.replications()) + " repetitions of each layout";
        Optional<Difference> widest = compared.widest();
        if (compared.stopped() == Stopped.PRECISE) {
            return made + ", after which every difference that was to be known to plus or minus " + wanted(report)
                    + " was.";
        }
        String why = compared.stopped() == Stopped.BUDGET
                ? made + "; that is all that was allowed"
                : made + "; it was interrupted";
        String unknown = unknown(report);
        if (widest.isEmpty() || widest.get().isPrecise()) {
            return why + "." + unknown;
        }
        Difference d = widest.get();
        DesignCriterion criterion = report.criteria().get(d.criterion());
        return why + ". The difference least known is that of "
                + compared.layouts().get(d.a()) + " and "
                + compared.layouts().get(d.b()) + " in the " + criterion.words() + ": plus or minus "
                + amount(criterion, d.paired().halfWidth()) + ", and "
                + amount(criterion, d.targetHalfWidth()) + " were asked for. That would take "
                + Effort.repetitions(d.replicationsNeeded())
                + (Effort.isAbsurd(d.replicationsNeeded())
                        ? "; ask for a wider half-width (" + (criterion.isShare() ? "--precision" : "--relative") + ")."
                        : " (--replications).")
                + unknown;
    }

    /** Differences that had to be known and of which nothing is, with a space before them. */
    private static String unknown(CompareReport report) {
        Compared compared = report.compared();
        List<String> parts = new ArrayList<>();
        for (Compared.Missing missing : compared.missing()) {
            parts.add(compared.layouts().get(missing.a()) + " and "
                    + compared.layouts().get(missing.b()) + " in the "
                    + report.criteria().get(missing.criterion()).words());
        }
        return parts.isEmpty()
                ? ""
                : " Not known is the difference of " + String.join(", of ", parts)
                        + ": fewer than two repetitions give both a value.";
    }

    /** How well differences were to be known: shares, amounts or both, whichever were asked for. */
    private static String wanted(CompareReport report) {
        List<String> parts = new ArrayList<>();
        for (boolean share : new boolean[] {true, false}) {
            if (report.criteria().stream()
                    .anyMatch(c ->
                            c.isShare() == share && report.info().required().contains(c.name()))) {
                parts.add(
                        share
                                ? points(report.info().rule().precision()) + " points"
                                : points(report.info().rule().relative()) + " % of its size");
            }
        }
        return String.join(" or ", parts);
    }

    private static String points(double share) {
        return Figures.decimals(POINTS * share, 1).replace('-', '\u2212');
    }

    private static String amount(DesignCriterion criterion, double value) {
        if (criterion.isShare()) {
            return points(value) + " points";
        }
        return Figures.plain(value).replace('-', '\u2212') + unit(criterion);
    }

    private static String unit(DesignCriterion criterion) {
        return criterion.unit().equals("1") ? "" : " " + criterion.unit();
    }

    /** A mean with its interval, in the unit of the criterion. */
    static String value(DesignCriterion criterion, Optional<Interval> mean) {
        if (mean.isEmpty()) {
            return "no value";
        }
        Interval i = mean.get();
        if (criterion.isShare()) {
            return IntervalText.percent(i.mean(), i.lo(), i.hi());
        }
        return Figures.plain(i.mean()).replace('-', '\u2212') + ends(i.lo(), i.hi()) + unit(criterion);
    }

    private static String ends(OptionalDouble lo, OptionalDouble hi) {
        return lo.isEmpty() || hi.isEmpty()
                ? ""
                : " ("
                        + (Figures.plain(lo.getAsDouble()) + " to " + Figures.plain(hi.getAsDouble()))
                                .replace('-', '\u2212')
                        + ")";
    }

    /** A difference with its interval, in the unit of the criterion. */
    static String value(DesignCriterion criterion, Difference d) {
        double factor = criterion.isShare() ? POINTS : 1;
        String text = figure(factor * d.paired().mean()) + " ("
                + figure(factor * d.paired().lo()) + " to "
                + figure(factor * d.paired().hi()) + ")";
        return text + (criterion.isShare() ? " points" : unit(criterion));
    }

    private static String figure(double value) {
        String text = Figures.plain(value);
        return value > 0 && !text.equals("0") ? "+" + text : text.replace('-', '\u2212');
    }

    /** A correlation in words. */
    static String correlation(OptionalDouble correlation) {
        return correlation.isEmpty()
                ? "none varies"
                : String.format(Locale.ROOT, "%.2f", correlation.getAsDouble()).replace('-', '\u2212');
    }
}
