package limbway.reports.measure;

import java.util.List;
import java.util.Optional;
import java.util.Set;

import limbway.model.body.Body;
import limbway.model.containment.Brink;
import limbway.model.containment.Brinks;
import limbway.model.containment.LiveSpace;
import limbway.model.enclosure.Enclosure;
import limbway.model.enclosure.Resource;
import limbway.model.enclosure.Support;
import limbway.model.explain.flip.BuildLimits;
import limbway.model.geometry.Point;

/**
 * Keeps what is proposed out of the space of live wire and away from where animals would be out, by the rules by which a
 * layout is checked.
 *
 * <p>It looks at reach alone, not at sways and leaps; it is no pass.
 */
public final class SafeBuilding implements BuildLimits {

    private static final double STEP_M = 0.05;

    private final Enclosure before;
    private final LiveSpace live;
    private final List<Brink> brinks;
    private final double reachM;
    private final double overheadM;

    /**
     * Limits for a layout and those who live there.
     *
     * @param before what stands there
     * @param bodies the bodies of the group, at least one
     */
    public SafeBuilding(Enclosure before, List<Body> bodies) {
        this.before = before;
        this.live = new LiveSpace(before.bounds().hotWires());
        this.brinks = Brinks.of(before);
        this.reachM = bodies.stream().mapToDouble(Body::gapReachM).max().orElseThrow();
        this.overheadM = bodies.stream().mapToDouble(Body::overheadReachM).max().orElseThrow();
    }

    @Override
    public boolean allow(Enclosure changed, Set<String> subjects) {
        for (Support support : changed.supports()) {
            if (subjects.contains(support.id())) {
                List<Point> places = along(support);
                if (places.stream().anyMatch(live::holds)
                        || (isNearBrink(support, places) && !wasNearBrink(support.id()))) {
                    return false;
                }
            }
        }
        for (Resource resource : changed.resources()) {
            if (subjects.contains(resource.id()) && live.holds(resource.at())) {
                return false;
            }
        }
        return true;
    }

    private boolean wasNearBrink(String id) {
        Optional<Support> old =
                before.supports().stream().filter(one -> one.id().equals(id)).findFirst();
        return old.map(support -> isNearBrink(support, along(support))).orElse(false);
    }

    private boolean isNearBrink(Support support, List<Point> places) {
        double withinM = reachM + support.diameterM() / 2;
        for (Brink brink : brinks) {
            for (Point place : places) {
                double aboveM = before.ground().terrain().aboveM(place);
                boolean counts = aboveM > 0 && (!brink.anyHeight() || aboveM > overheadM);
                if (counts && brink.nearestTo(place).distanceM(place) <= withinM) {
                    return true;
                }
            }
        }
        return false;
    }

    private static List<Point> along(Support support) {
        return support.axis().pieces().stream()
                .flatMap(piece -> piece.every(STEP_M).stream())
                .toList();
    }
}
