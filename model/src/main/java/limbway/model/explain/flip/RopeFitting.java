package limbway.model.explain.flip;

import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleBiFunction;

import limbway.model.geometry.Point;
import limbway.model.route.ReverseTree;

/**
 * Finds the shortest rope between two things that turns a trip.
 *
 * <p>The shortest rope that should turn it is compiled. If it falls short, that much is asked more of the next. Once one turns
 * it, the most favourable of the ropes that are two parts in a hundred shorter is compiled too, until that one does not.
 */
final class RopeFitting {

    /** A rope shorter by this share must not turn the trip. */
    private static final double SHORTER = 0.98;

    private static final int MOST_TRIED = 14;

    /** Places so near to one at which nothing can be built are passed over as well [m]. */
    private static final double BESIDE_M = 0.3;

    private final ChangeTrial trial;
    private final String name;
    private final List<Anchors.Anchor> starts;
    private final List<Anchors.Anchor> ends;
    private final double[] lengthM;
    private final double[] milliJ;
    private final long overGroundMilliJ;
    private double askedMilliJ;

    RopeFitting(
            ChangeTrial trial,
            String name,
            List<Anchors.Anchor> starts,
            List<Anchors.Anchor> ends,
            ToDoubleBiFunction<Point, Point> ropeMilliJ,
            int overGroundMilliJ) {
        this.trial = trial;
        this.name = name;
        this.starts = starts;
        this.ends = ends;
        this.overGroundMilliJ = overGroundMilliJ;
        this.lengthM = new double[starts.size() * ends.size()];
        this.milliJ = new double[lengthM.length];
        for (int i = 0; i < lengthM.length; i++) {
            Anchors.Anchor a = start(i);
            Anchors.Anchor b = end(i);
            lengthM[i] = a.point().distanceM(b.point());
            milliJ[i] = lengthM[i] < Things.SAME_PLACE_M
                    ? Double.POSITIVE_INFINITY
                    : a.milliJ() + ropeMilliJ.applyAsDouble(a.point(), b.point()) + b.milliJ();
        }
    }

    /** The shortest, if it is shorter than a limit. */
    Optional<Flip> shortest(double limitM) {
        Optional<Flip> best = Optional.empty();
        double belowM = limitM;
        for (int tried = 0; tried < MOST_TRIED && trial.canAfford(1); tried++) {
            int i = best.isEmpty() ? shortestPromising(belowM) : mostFavourable(belowM);
            if (i < 0) {
                return best;
            }
            Change rope = new LinkAdded(name, start(i).spot(), end(i).spot(), lengthM[i]);
            Optional<TripCost> cost = trial.cost(rope);
            if (cost.isPresent() && cost.get().isOffGround()) {
                best = trial.flip(rope);
                belowM = SHORTER * lengthM[i];
            } else if (cost.isEmpty() || !cost.get().hasOffGround()) {
                passOver(i);
            } else if (best.isPresent()) {
                return best;
            } else {
                askedMilliJ = Math.max(askedMilliJ + 1, milliJ[i] - overGroundMilliJ + askedMore(i, cost.get()));
            }
        }
        return best;
    }

    /** How much the estimate of a rope fell short of what compiling says. */
    private double askedMore(int i, TripCost cost) {
        return cost.temptationMilliJ() - (milliJ[i] - overGroundMilliJ);
    }

    private int shortestPromising(double belowM) {
        int best = -1;
        for (int i = 0; i < lengthM.length; i++) {
            boolean promising = milliJ[i] + askedMilliJ <= overGroundMilliJ
                    || (overGroundMilliJ == ReverseTree.UNREACHABLE && milliJ[i] < Double.POSITIVE_INFINITY);
            if (promising && lengthM[i] < (best < 0 ? belowM : lengthM[best])) {
                best = i;
            }
        }
        return best;
    }

    private int mostFavourable(double belowM) {
        int best = -1;
        for (int i = 0; i < lengthM.length; i++) {
            if (lengthM[i] <= belowM && milliJ[i] < (best < 0 ? Double.POSITIVE_INFINITY : milliJ[best])) {
                best = i;
            }
        }
        return best;
    }

    private void passOver(int blocked) {
        for (int i = 0; i < lengthM.length; i++) {
            if (start(i).point().distanceM(start(blocked).point()) < BESIDE_M
                    && end(i).point().distanceM(end(blocked).point()) < BESIDE_M) {
                milliJ[i] = Double.POSITIVE_INFINITY;
            }
        }
    }

    private Anchors.Anchor start(int i) {
        return starts.get(i / ends.size());
    }

    private Anchors.Anchor end(int i) {
        return ends.get(i % ends.size());
    }
}
