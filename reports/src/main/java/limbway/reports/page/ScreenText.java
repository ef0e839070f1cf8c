package limbway.reports.page;

import java.util.ArrayList;
import java.util.List;

import limbway.model.parameter.Parameter;
import limbway.reports.chart.DataTable;
import limbway.reports.measure.Movers;
import limbway.reports.measure.ScreenedAnswer;
import limbway.reports.words.Decimals;
import limbway.reports.words.Figures;
import limbway.reports.words.IntervalText;
import limbway.sim.experiment.screening.Effect;
import limbway.sim.experiment.statistics.Interval;

/** What a screening found, in words for the terminal and the page. */
public final class ScreenText {

    /** Headers of {@link #table}. */
    public static final List<String> HEADERS = List.of(
            "what is assumed", "range tried", "mean absolute effect [points]", "spread [points]", "direction", "name");

    private static final int MOST_NAMED = 5;
    private static final double POINTS = 100;

    /** An effect has a direction if its mean is so much of its mean absolute effect. Assumption. */
    private static final double ONE_WAY = 0.8;

    private static final List<String> NUMBERS =
            List.of("No", "One", "Two", "Three", "Four", "Five", "Six", "Seven", "Eight", "Nine", "Ten");

    private ScreenText() {}

    /**
     * The answer in a sentence or two.
     *
     * @param report the screening
     * @param answer which answer
     * @return which assumptions move it, by how much, and what the others do
     */
    public static String sentence(ScreenReport report, ScreenedAnswer answer) {
        Movers movers = report.of(answer);
        if (movers.effects().isEmpty()) {
            return "Nothing can be said: nobody travels.";
        }
        if (report.trajectories() < 2) {
            return "Nothing can be said yet: one walk through the assumptions does not tell how much they differ.";
        }
        List<Effect> sure = movers.sure();
        String of = " of " + report.factors() + " assumptions " + (sure.size() == 1 ? "moves" : "move") + " "
                + what(report, answer);
        StringBuilder text = new StringBuilder(number(sure.size())).append(of);
        if (!sure.isEmpty()) {
            text.append(": ").append(named(sure));
        }
        text.append('.');
        if (!movers.unsure().isEmpty()) {
            text.append(" Of ")
                    .append(movers.unsure().size())
                    .append(" more the walks tell too little: they do much in a few places and little in most: ")
                    .append(named(movers.unsure()))
                    .append('.');
        }
        if (!movers.others().isEmpty()) {
            long idle = movers.others().stream()
                    .filter(effect -> effect.meanAbsolute() == 0)
                    .count();
            text.append(" The other ")
                    .append(movers.others().size())
                    .append(" move it by less than ")
                    .append(points(movers.leastMove()))
                    .append(" each")
                    .append(idle > 0 ? ", " + idle + " of them by exactly nothing" : "")
                    .append('.');
        }
        return text.toString();
    }

    /**
     * The answer as the scenario stands and the answers at all points that were tried.
     *
     * @param report the screening
     * @param answer which answer
     * @return a sentence
     */
    public static String range(ScreenReport report, ScreenedAnswer answer) {
        Movers movers = report.of(answer);
        if (movers.base().isEmpty() || movers.tried().isEmpty()) {
            return "As the scenario stands nobody travels.";
        }
        Interval base = movers.base().get();
        double least = movers.tried().get(0);
        double greatest = movers.tried().get(movers.tried().size() - 1);
        String all = " over the " + movers.tried().size() + " combinations tried it lay between ";
        if (report.info().against().isEmpty()) {
            return "As the scenario stands the " + answer.words() + " is "
                    + IntervalText.percent(base.mean(), base.lo(), base.hi()) + ";" + all + Figures.percent(least)
                    + " and " + Figures.percent(greatest) + ".";
        }
        return "As the scenario stands the difference is "
                + IntervalText.points(base.mean(), base.lo(), base.hi()) + " points;" + all + signed(least) + " and "
                + signed(greatest) + ", with the same sign in " + Figures.percent(movers.sameSign()) + " of them.";
    }

    /**
     * What counts as moving the answer.
     *
     * @param movers the answer
     * @return a sentence
     */
    public static String rule(Movers movers) {
        return "An assumption counts as moving the answer if its mean absolute effect is "
                + points(movers.leastMove()) + " or more and, less " + Movers.ERRORS
                + " of its standard errors, still above the " + points(movers.chance())
                + " that a number would show that did no more than to reshuffle chance; a number that takes no part shows exactly 0.";
    }

    /**
     * The largest effects.
     *
     * @param effects effects in the order of the rows
     * @return one row for each
     */
    public static DataTable table(List<Effect> effects) {
        List<List<String>> rows = new ArrayList<>();
        for (Effect effect : effects) {
            Parameter p = effect.factor().parameter();
            rows.add(List.of(
                    p.meaning(),
                    Figures.plain(p.low()) + " to " + Figures.plain(p.high())
                            + (p.unit().equals("1") ? "" : " " + p.unit()),
                    tenths(effect.meanAbsolute())
                            + (effect.standardError().isPresent()
                                    ? " ± " + tenths(effect.standardError().getAsDouble())
                                    : ""),
                    effect.spread().isPresent() ? tenths(effect.spread().getAsDouble()) : "unknown",
                    direction(effect),
                    p.name()));
        }
        return new DataTable(HEADERS, rows);
    }

    /**
     * Which way the answer goes as a number grows.
     *
     * @param effect its effect
     * @return up, down, either way, or none
     */
    public static String direction(Effect effect) {
        if (effect.meanAbsolute() == 0) {
            return "none";
        }
        if (Math.abs(effect.mean()) < ONE_WAY * effect.meanAbsolute()) {
            return "either way";
        }
        return effect.mean() > 0 ? "up" : "down";
    }

    /**
     * The layout, or the two whose difference is asked for.
     *
     * @param report the screening
     * @return names of layouts
     */
    public static String layouts(ScreenReport report) {
        return report.info().layout()
                + report.info().against().map(other -> " less " + other).orElse("");
    }

    private static String what(ScreenReport report, ScreenedAnswer answer) {
        return (report.info().against().isPresent() ? "the difference in the " : "the ") + answer.words();
    }

    private static String named(List<Effect> effects) {
        List<String> names = new ArrayList<>();
        for (Effect effect : effects.subList(0, Math.min(MOST_NAMED, effects.size()))) {
            names.add(shortly(effect.factor().parameter()) + " (" + points(effect.meanAbsolute()) + ")");
        }
        int left = effects.size() - names.size();
        return String.join("; ", names) + (left > 0 ? "; and " + left + " more" : "");
    }

    /** What a number stands for, without what is added after a semicolon. */
    private static String shortly(Parameter parameter) {
        return parameter.meaning().split(";", 2)[0];
    }

    private static String number(int count) {
        return count < NUMBERS.size() ? NUMBERS.get(count) : Integer.toString(count);
    }

    private static String points(double share) {
        return tenths(share) + " points";
    }

    private static String tenths(double share) {
        return Decimals.fixed(POINTS * share, 1);
    }

    private static String signed(double share) {
        String text = Figures.decimals(POINTS * share, 0);
        return share > 0 && !text.equals("0") ? "+" + text : text.replace('-', '\u2212');
    }
}
