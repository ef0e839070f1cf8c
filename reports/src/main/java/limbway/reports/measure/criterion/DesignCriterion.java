package limbway.reports.measure.criterion;

import java.util.OptionalDouble;
import java.util.function.Function;

import limbway.sim.experiment.Outcome;
import limbway.sim.experiment.trial.Criterion;

/** A criterion that can be shown to a designer. */
public final class DesignCriterion implements Criterion {

    /** Unit of a share. */
    static final String SHARE = "1";

    private final String name;
    private final String words;
    private final String unit;
    private final boolean isShare;
    private final Wish wish;
    private final Function<Outcome, OptionalDouble> value;

    private DesignCriterion(
            String name,
            String words,
            String unit,
            boolean isShare,
            Wish wish,
            Function<Outcome, OptionalDouble> value) {
        this.name = name;
        this.words = words;
        this.unit = unit;
        this.isShare = isShare;
        this.wish = wish;
        this.value = value;
    }

    static DesignCriterion share(String name, String words, Wish wish, Function<Outcome, OptionalDouble> value) {
        return new DesignCriterion(name, words, SHARE, true, wish, value);
    }

    static DesignCriterion index(String name, String words, Wish wish, Function<Outcome, OptionalDouble> value) {
        return new DesignCriterion(name, words, SHARE, false, wish, value);
    }

    static DesignCriterion amount(
            String name, String words, String unit, Wish wish, Function<Outcome, OptionalDouble> value) {
        return new DesignCriterion(name, words, unit, false, wish, value);
    }

    @Override
    public String name() {
        return name;
    }

    /**
     * What it is, for people.
     *
     * @return lower-case words without the unit, such as "share of travel off the ground, by distance"
     */
    public String words() {
        return words;
    }

    /**
     * Its unit.
     *
     * @return such as "min/day"; "1" for shares and indices
     */
    public String unit() {
        return unit;
    }

    @Override
    public boolean isShare() {
        return isShare;
    }

    /**
     * In which direction it is usually wanted to go.
     *
     * @return more, less or neither
     */
    public Wish wish() {
        return wish;
    }

    @Override
    public OptionalDouble of(Outcome one) {
        return value.apply(one);
    }
}
