package limbway.scenarios.layout;

import java.util.OptionalDouble;

import limbway.model.geometry.Point;
import limbway.scenarios.entry.SupportEntry.Length;
import limbway.scenarios.entry.SupportEntry.Sag;
import limbway.scenarios.entry.SupportEntry.Span;
import limbway.scenarios.problem.Problem;
import limbway.scenarios.problem.Problems;
import limbway.scenarios.problem.Wording;

/**
 * How far a rope hangs through at its middle, from its stated sag or its stated length.
 *
 * <p>A length L over a distance d gives {@code L = d (1 + 8/3 (f/d)²)} for a sag f at right angles to the line between
 * the ends; between ends of unequal height f is the upright sag times the square of the cosine of the slope.
 *
 * @source first terms of the length of a parabola, textbook
 * @validity sag up to about a third of the distance
 */
final class RopeSag {

    /** The most that a rope may hang through, as a share of its distance in plan; as for a stated sag. */
    private static final double MOST_SHARE = 0.3;

    /** A length may miss the distance by this much [m]: a centimetre, as measured. */
    private static final double MEASURED_M = 0.01;

    private RopeSag() {}

    /** The upright sag at the middle [m]; empty after a problem. */
    static OptionalDouble sagM(Span span, Point from, Point to, Problems problems) {
        double planM = from.planDistanceM(to);
        if (span.slack() instanceof Sag sag) {
            return OptionalDouble.of(sag.share() * planM);
        }
        Length stated = (Length) span.slack();
        double distanceM = from.distanceM(to);
        double cosine = planM / distanceM;
        double most = MOST_SHARE * cosine * cosine * cosine;
        double longestM = distanceM * (1 + 8.0 / 3 * most * most);
        if (stated.lengthM() < distanceM - MEASURED_M || stated.lengthM() > longestM + MEASURED_M) {
            boolean isShort = stated.lengthM() < distanceM;
            problems.add(Problem.at(
                            stated.place(),
                            span.what() + (isShort ? " is shorter than the way it spans" : " is too long to hang free"))
                    .found(Wording.measure(stated.lengthM(), "m"))
                    .allowed(Wording.measure(up(distanceM), "m") + " to " + Wording.measure(up(longestM), "m")
                            + " between its ends, " + Builder.shown(from) + " and " + Builder.shown(to))
                    .mend(isShort ? "make it longer, or bring its ends closer" : "make it shorter"));
            return OptionalDouble.empty();
        }
        if (stated.lengthM() <= distanceM || cosine == 0) {
            return OptionalDouble.of(0);
        }
        double acrossM = distanceM * Math.sqrt(3.0 / 8 * (stated.lengthM() / distanceM - 1));
        return OptionalDouble.of(Math.min(MOST_SHARE * planM, acrossM / (cosine * cosine)));
    }

    private static double up(double lengthM) {
        return Math.ceil(lengthM * 100 - 1e-6) / 100;
    }
}
