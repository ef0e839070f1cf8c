package limbway.sim.experiment.worlds;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BooleanSupplier;
import java.util.stream.Stream;

import limbway.sim.experiment.screening.Factor;
import limbway.sim.experiment.statistics.PairedDifference;
import limbway.sim.experiment.worlds.Reversal.Surroundings;
import limbway.sim.experiment.worlds.Reversal.Turn;

/**
 * Follows one input over its range, everything else as assumed, to the point nearest to what is assumed at which the
 * difference between two layouts changes its sign; then looks to either side of it under other chance.
 *
 * <p>Other chance confirms it if the difference has the one sign below and the other above, and chance alone is an unlikely
 * reason for either: the paired p value of each is below 0.05 divided by the number of distances that are tried. Both must
 * be, so this is not divided by two.
 *
 * @source dividing by the number of tries: Bonferroni; both at once: Berger 1982, Technometrics 24:295-300, from memory
 */
final class TurnSearch {

    /** Where a range is first tried, as shares of it. */
    static final List<Double> GRID = List.of(0.0, 0.25, 0.5, 0.75, 1.0);

    /** How often the place of the turn is halved: from a quarter of the range to a 256th. */
    private static final int HALVINGS = 6;

    /** How far to either side other chance is asked, as shares of the range; the first that confirms is told. */
    private static final List<Double> ASIDE = List.of(0.02, 0.05, 0.1);

    /** Other chance is asked so many times as often. */
    private static final int MORE_REPLICATIONS = 2;

    /** Either difference is called sure below this, so that all distances together err in one of twenty cases at most. */
    private static final double LEVEL = 0.05 / ASIDE.size();

    /** A point of the range that was tried. */
    private record Tried(double share, double difference) {}

    /** Two neighbours between which the sign changes. */
    private record Bracket(Tried before, Tried after) {}

    /** Ends the search without result. */
    private static final class GivenUp extends Exception {
        private static final long serialVersionUID = 1;
    }

    private final WorldModel model;
    private final PairFound pair;
    private final Factor input;
    private final int replications;
    private final BooleanSupplier stop;

    TurnSearch(WorldModel model, PairFound pair, Factor input, int replications, BooleanSupplier stop) {
        this.model = model;
        this.pair = pair;
        this.input = input;
        this.replications = replications;
        this.stop = stop;
    }

    /** What the input does, or nothing if it was given up. */
    Optional<Reversal> follow() {
        try {
            double assumed = input.shareOf(input.parameter().value());
            Tried base = new Tried(assumed, difference(Map.of(), 1, replications));
            List<Tried> down = walk(base, -1);
            List<Tried> up = walk(base, 1);
            double sign = Math.signum(base.difference);
            Optional<Bracket> nearest = Stream.of(bracket(down, sign), bracket(up, sign))
                    .flatMap(Optional::stream)
                    .min(Comparator.comparingDouble(bracket -> Math.abs(bracket.after.share - assumed)));
            List<Double> met = Stream.concat(down.stream(), up.stream())
                    .map(Tried::difference)
                    .filter(Double::isFinite)
                    .toList();
            return Optional.of(new Reversal(
                    input,
                    base.difference,
                    met.stream().mapToDouble(d -> d).min().orElse(Double.NaN),
                    met.stream().mapToDouble(d -> d).max().orElse(Double.NaN),
                    nearest.isPresent() ? Optional.of(narrowed(nearest.get(), sign)) : Optional.empty()));
        } catch (GivenUp e) {
            return Optional.empty();
        }
    }

    /** From what is assumed to one end of the range. */
    private List<Tried> walk(Tried base, int side) throws GivenUp {
        List<Tried> points = new ArrayList<>(List.of(base));
        for (int i = 0; i < GRID.size(); i++) {
            double share = GRID.get(side > 0 ? i : GRID.size() - 1 - i);
            if (side * (share - base.share) > 0) {
                points.add(at(share, 1, replications));
            }
        }
        return points;
    }

    private static Optional<Bracket> bracket(List<Tried> points, double sign) {
        for (int i = 1; i < points.size(); i++) {
            if (isTurned(points.get(i), sign)) {
                return Optional.of(new Bracket(points.get(i - 1), points.get(i)));
            }
        }
        return Optional.empty();
    }

    private static boolean isTurned(Tried point, double sign) {
        return sign != 0 && Math.signum(point.difference) == -sign;
    }

    private Turn narrowed(Bracket bracket, double sign) throws GivenUp {
        Tried inner = bracket.before;
        Tried outer = bracket.after;
        for (int i = 0; i < HALVINGS; i++) {
            Tried middle = at((inner.share + outer.share) / 2, 1, replications);
            if (isTurned(middle, sign)) {
                outer = middle;
            } else {
                inner = middle;
            }
        }
        double share = (inner.share + outer.share) / 2;
        boolean above = bracket.after.share > bracket.before.share;
        return new Turn(input.at(share), above, confirmed(share, above ? sign : -sign));
    }

    private Optional<Surroundings> confirmed(double share, double signBelow) throws GivenUp {
        for (double aside : ASIDE) {
            double low = input.at(Math.max(0, share - aside));
            double high = input.at(Math.min(1, share + aside));
            Optional<PairedDifference> atLow = byOtherChance(low);
            Optional<PairedDifference> atHigh = byOtherChance(high);
            if (isSure(atLow, signBelow) && isSure(atHigh, -signBelow)) {
                return Optional.of(new Surroundings(
                        low,
                        high,
                        atLow.orElseThrow().mean(),
                        atHigh.orElseThrow().mean()));
            }
        }
        return Optional.empty();
    }

    private static boolean isSure(Optional<PairedDifference> difference, double sign) {
        return difference
                .filter(d -> Math.signum(d.mean()) == sign && d.p() < LEVEL)
                .isPresent();
    }

    private Optional<PairedDifference> byOtherChance(double value) throws GivenUp {
        return lived(
                        Map.of(input.parameter().name(), value),
                        replications + 1,
                        Math.max(2, MORE_REPLICATIONS * replications))
                .flatMap(found -> found.paired(pair.a(), pair.b(), pair.criterion()));
    }

    private Tried at(double share, int first, int count) throws GivenUp {
        return new Tried(share, difference(Map.of(input.parameter().name(), input.at(share)), first, count));
    }

    /** The difference; not a number where the model refuses the value or gives none. */
    private double difference(Map<String, Double> values, int first, int count) throws GivenUp {
        return lived(values, first, count)
                .map(found -> found.difference(pair.a(), pair.b(), pair.criterion()))
                .filter(OptionalDouble::isPresent)
                .map(OptionalDouble::getAsDouble)
                .orElse(Double.NaN);
    }

    private Optional<ByLayout> lived(Map<String, Double> values, int first, int count) throws GivenUp {
        WorldModel.Lived lived = model.live(values, first, count, stop);
        if (lived instanceof WorldModel.Lived.GivenUp) {
            throw new GivenUp();
        }
        return lived instanceof WorldModel.Lived.Values found ? Optional.of(found.values()) : Optional.empty();
    }
}
