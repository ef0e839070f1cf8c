package limbway.reports.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

import limbway.model.parameter.Parameter;
import limbway.reports.measure.criterion.DesignCriterion;
import limbway.reports.words.Figures;
import limbway.reports.words.IntervalText;
import limbway.sim.experiment.screening.Factor;
import limbway.sim.experiment.statistics.ShareInterval;
import limbway.sim.experiment.worlds.InputEffect;
import limbway.sim.experiment.worlds.PairFound;
import limbway.sim.experiment.worlds.Reversal;
import limbway.sim.experiment.worlds.WorldsFound;

/** What plausible worlds tell, in words for the terminal and the page. */
public final class WorldsText {

    private static final double POINTS = 100;

    private final WorldsFound found;
    private final List<DesignCriterion> criteria;

    /**
     * Words for worlds.
     *
     * @param found what was found
     * @param criteria what the layouts are compared by, in the same order
     */
    public WorldsText(WorldsFound found, List<DesignCriterion> criteria) {
        this.found = found;
        this.criteria = List.copyOf(criteria);
    }

    /**
     * All that is said, most important first.
     *
     * @return sentences
     */
    public List<String> sentences() {
        List<String> all = new ArrayList<>(List.of(drawn()));
        for (PairFound pair : found.pairs()) {
            if (pair.criterion() == 0) {
                all.add(answer(pair));
                all.add(movers(pair));
                turns(pair).ifPresent(all::add);
            }
        }
        if (all.size() == 1) {
            all.add("Too few of them give a difference to say anything.");
        }
        return all;
    }

    private String drawn() {
        String refused = found.refused().isEmpty()
                ? ""
                : " " + found.refused().size()
                        + " of them the model refuses, because their values do not go together; they "
                        + "are left out.";
        return "In " + found.settings().worlds() + " plausible worlds "
                + found.inputs().size()
                + " numbers that are not known differ all together, each over its range: costs, needs, worth of places, masses"
                + (hasWeather() ? " and warmth" : "") + "." + refused;
    }

    private boolean hasWeather() {
        return found.inputs().stream()
                .anyMatch(input -> input.parameter().name().startsWith("weather."));
    }

    /** How often which of the two has more. */
    private String answer(PairFound pair) {
        DesignCriterion criterion = criteria.get(pair.criterion());
        boolean aFirst = pair.more() >= pair.less();
        String first = found.layouts().get(aFirst ? pair.a() : pair.b());
        String second = found.layouts().get(aFirst ? pair.b() : pair.a());
        int more = aFirst ? pair.more() : pair.less();
        int n = pair.share().n();
        double sign = aFirst ? 1 : -1;
        double low = sign * pair.quantiles().get(aFirst ? 0 : 4);
        double high = sign * pair.quantiles().get(aFirst ? 4 : 0);
        if (pair.equal() == n) {
            return first + " and " + second + " have exactly as much in every world: " + criterion.words() + ".";
        }
        ShareInterval share = ShareInterval.wilson(more, n);
        String often = more == n
                ? "in every one of the " + n + " worlds (at least " + Figures.percent(share.lo())
                        + " of all such worlds)"
                : "in "
                        + IntervalText.percent(
                                share.share(), OptionalDouble.of(share.lo()), OptionalDouble.of(share.hi()))
                        + " of the worlds";
        return first + " has more than " + second + " " + often + ": " + criterion.words() + ". The difference is "
                + amount(criterion, sign * pair.quantiles().get(2)) + " in the middle world and "
                + amount(criterion, low) + " to " + amount(criterion, high) + " in nine of ten.";
    }

    /** What decides how large it is. */
    private String movers(PairFound pair) {
        String names = pairName(pair);
        List<InputEffect> main = pair.main();
        if (pair.equal() == pair.share().n()) {
            return names + ": nothing moves the difference.";
        }
        double floor = pair.effects().get(0).index().floor();
        String chance = pair.chanceShare().isPresent()
                ? " Chance within the worlds makes "
                        + Figures.percent(pair.chanceShare().getAsDouble()) + " of the spread."
                : "";
        if (main.isEmpty()) {
            return names
                    + ": no single number explains more of the spread of the difference than could come by accident ("
                    + Figures.percent(floor) + "); more worlds would tell." + chance;
        }
        List<String> parts = new ArrayList<>();
        for (InputEffect effect : main) {
            parts.add(meaning(effect.input()) + " ("
                    + Figures.percent(effect.index().index()) + ")");
        }
        return names + ": most of what can be told apart in the spread of the difference comes from "
                + String.join("; ", parts) + ". Up to " + Figures.percent(floor) + " could come by accident." + chance;
    }

    /** Where the strongest inputs turn the answer. */
    private Optional<String> turns(PairFound pair) {
        List<String> turned = new ArrayList<>();
        List<String> not = new ArrayList<>();
        for (Reversal reversal : pair.reversals()) {
            if (reversal.turn().isPresent()) {
                turned.add("The reversal comes where "
                        + turn(pair, reversal, reversal.turn().get()) + ".");
            } else if (reversal.asAssumed() != 0 && Double.isFinite(reversal.asAssumed())) {
                not.add(meaning(reversal.input()) + " (" + range(reversal.input()) + ")");
            }
        }
        if (!not.isEmpty()) {
            turned.add("With everything else as assumed there is no reversal within the range of "
                    + String.join(", nor of ", not) + ".");
        }
        return turned.isEmpty() ? Optional.empty() : Optional.of(pairName(pair) + ": " + String.join(" ", turned));
    }

    private String turn(PairFound pair, Reversal reversal, Reversal.Turn turn) {
        Parameter p = reversal.input().parameter();
        double sign = reversal.asAssumed() > 0 ? 1 : -1;
        String winner = found.layouts().get(sign > 0 ? pair.b() : pair.a());
        String sure = turn.confirmed().isPresent()
                ? "other chance agrees at " + value(p, turn.confirmed().get().low()) + " and "
                        + value(p, turn.confirmed().get().high())
                : "other chance does not confirm it: the difference is small there, and chance decides";
        return meaning(reversal.input()) + " is " + (turn.above() ? "above " : "below ") + value(p, turn.value())
                + ", everything else as assumed (assumed is " + value(p, p.value()) + ", tried were "
                + range(reversal.input()) + "); there " + winner + " has more; " + sure;
    }

    /**
     * Both layouts of a pair.
     *
     * @param pair the pair
     * @return for example {@code high less low}
     */
    String pairName(PairFound pair) {
        return found.layouts().get(pair.a()) + " less " + found.layouts().get(pair.b());
    }

    /** A difference with its unit. */
    static String amount(DesignCriterion criterion, double value) {
        double shown = criterion.isShare() ? POINTS * value : value;
        String text = criterion.isShare() ? Figures.decimals(shown, 1) : Figures.plain(shown);
        String unit = criterion.isShare() ? " points" : criterion.unit().equals("1") ? "" : " " + criterion.unit();
        return (shown > 0 && !text.equals("0") ? "+" + text : text.replace('-', '\u2212')) + unit;
    }

    /** What an input stands for, without what is added after a semicolon. */
    static String meaning(Factor input) {
        return input.parameter().meaning().split(";", 2)[0];
    }

    /** The range of an input with its unit. */
    static String range(Factor input) {
        Parameter p = input.parameter();
        return number(p.low()) + " to " + value(p, p.high());
    }

    /** A value of an input with its unit. */
    static String value(Parameter p, double value) {
        return number(value) + (p.unit().equals("1") ? "" : " " + p.unit());
    }

    private static String number(double value) {
        return Figures.plain(value).replace('-', '\u2212');
    }
}
