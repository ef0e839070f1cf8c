package limbway.reports.patterns;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;

import limbway.sim.experiment.Outcome;
import limbway.sim.journal.Journal;
import limbway.sim.journal.Motive;

/** Shares and means of waking time. */
final class Shares {

    private Shares() {}

    static Predicate<Piece> always() {
        return piece -> true;
    }

    static Predicate<Piece> ofBody(String body) {
        return piece -> piece.body().equals(body);
    }

    static Predicate<Piece> feeding() {
        return piece -> !piece.travels() && piece.motive() == Motive.HUNGER && piece.eatenJ() > 0;
    }

    /** Sitting or lying anywhere, also in a queue; what is neither this nor feeding nor travel is drinking. */
    static Predicate<Piece> resting() {
        return piece -> !piece.travels() && piece.motive() != Motive.THIRST && piece.eatenJ() == 0;
    }

    static Predicate<Piece> higherThan(double metres) {
        return piece -> piece.heightM() > metres;
    }

    /** Share of the waking time of some pieces that others take. */
    static Measurement share(Run run, Predicate<Piece> among, Predicate<Piece> which) {
        return mean(run, among, piece -> which.test(piece) ? 1 : 0);
    }

    /** Mean of a figure over the waking time of some pieces. */
    static Measurement mean(Run run, Predicate<Piece> among, ToDoubleFunction<Piece> figure) {
        return weighted(run, among, Piece::seconds, figure);
    }

    /** Mean of a figure over pieces of some weight. */
    static Measurement weighted(
            Run run, Predicate<Piece> among, ToDoubleFunction<Piece> weight, ToDoubleFunction<Piece> figure) {
        return lives -> {
            Outcome outcome = lives.outcome(run);
            List<Double> found = new ArrayList<>();
            for (Journal journal : outcome.journals()) {
                double[] sums = new double[2];
                Piece.visit(outcome.habitat(), journal, piece -> {
                    if (among.test(piece)) {
                        double w = weight.applyAsDouble(piece);
                        sums[0] += w;
                        sums[1] += w * figure.applyAsDouble(piece);
                    }
                });
                if (sums[0] > 0) {
                    found.add(sums[1] / sums[0]);
                }
            }
            return found;
        };
    }
}
