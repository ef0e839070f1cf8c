package limbway.model.shade;

import java.util.List;
import java.util.Optional;

import limbway.model.geometry.Point;

/** Looks through the roofs over one deck that carry a given number of screens. */
final class RoofHunt {

    private final RoofFamily family;
    private final RoofSizes sizes;
    private final RoofTrial trial;
    private final int screenCount;

    RoofHunt(RoofFamily family, DeckFrame frame, int screenCount, List<List<Point>> points, List<RoofDemand> demands) {
        this.family = family;
        this.screenCount = screenCount;
        sizes = new RoofSizes(family, frame, screenCount);
        trial = new RoofTrial(frame, points, demands);
    }

    /**
     * The smallest roof that ends the breach at every moment; among equal ones the lowest, then that with its middle nearest
     * to that of the deck, then the first in the order of the list.
     *
     * @param belowM2 only roofs with a smaller area than this
     */
    Optional<RoofPlan> smallest(double belowM2) {
        List<Double> hopeless =
                family.risesM().stream().filter(this::isHopeless).toList();
        RoofPlan best = null;
        for (RoofSizes.Size size : sizes.rising(screenCount)) {
            double limit = best == null ? belowM2 : best.areaM2() + 2 * RoofSizes.SAME_AREA_M2;
            if (size.areaM2() >= limit - RoofSizes.SAME_AREA_M2) {
                break;
            }
            if ((best != null && size.riseM() > best.riseM()) || hopeless.contains(size.riseM())) {
                continue;
            }
            for (RoofPlan place : sizes.places(size)) {
                if (isBetter(place, best) && trial.endsAll(place)) {
                    best = place;
                }
            }
        }
        return Optional.ofNullable(best);
    }

    private boolean isBetter(RoofPlan place, RoofPlan best) {
        return best == null
                || place.riseM() < best.riseM()
                || sizes.offCentre2(place) < sizes.offCentre2(best) - RoofSizes.SAME_AREA_M2;
    }

    /** Whether no plain roof of a height can do, since one as large as all of them together does not. */
    private boolean isHopeless(double riseM) {
        return screenCount == 0 && !trial.endsAll(sizes.everything(riseM));
    }

    /** Of the largest roofs the one that leaves the fewest moments. */
    RoofPlan bestOfLargest() {
        RoofPlan best = null;
        int fewest = Integer.MAX_VALUE;
        for (double rise : family.risesM()) {
            for (int screens = 0; screens < 1 << RoofSide.values().length; screens++) {
                if (Integer.bitCount(screens) != screenCount) {
                    continue;
                }
                RoofSizes.Size largest = new RoofSizes.Size(sizes.mostA(), sizes.mostB(), rise, screens, 0);
                for (RoofPlan place : sizes.places(largest)) {
                    int left = trial.left(place);
                    if (left < fewest) {
                        fewest = left;
                        best = place;
                    }
                }
            }
        }
        return best;
    }

    boolean ends(RoofPlan plan, int demand) {
        return trial.ends(plan, demand);
    }

    int left(RoofPlan plan) {
        return trial.left(plan);
    }
}
