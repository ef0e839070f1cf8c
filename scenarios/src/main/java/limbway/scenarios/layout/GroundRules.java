package limbway.scenarios.layout;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

import limbway.model.enclosure.Obstacle;
import limbway.model.enclosure.Panel;
import limbway.model.geometry.Outline;
import limbway.model.geometry.Point;
import limbway.scenarios.entry.CoverEntry;
import limbway.scenarios.entry.PlaceWords;
import limbway.scenarios.entry.ResourceEntry;
import limbway.scenarios.entry.SupportEntry;
import limbway.scenarios.entry.SupportEntry.DeckBySize;
import limbway.scenarios.entry.SupportEntry.Span;
import limbway.scenarios.entry.SupportEntry.Upright;
import limbway.scenarios.problem.Place;
import limbway.scenarios.problem.Problem;
import limbway.scenarios.problem.Problems;
import limbway.scenarios.problem.Wording;

/** Whether things stand where they can: within the enclosure, not in a pond, not in mid-air. */
final class GroundRules {

    /** A resource by coordinates must have something to hold on to within this distance [m]. */
    private static final double WITHIN_M = 0.6;

    private final Surroundings surroundings;
    private final Problems problems;
    private final Set<String> misplaced = new TreeSet<>();

    GroundRules(Surroundings surroundings, Problems problems) {
        this.surroundings = surroundings;
        this.problems = problems;
    }

    /** Checks all supports, those with a foot first. */
    void checkAll(List<Built> supports) {
        for (Built built : supports) {
            if (built.entry() instanceof Upright pole) {
                checkUpright(pole, ((Built.Member) built).support().axis().end());
            }
        }
        supports.forEach(this::checkEdges);
    }

    private void checkEdges(Built built) {
        SupportEntry entry = built.entry();
        if (entry instanceof Span span) {
            checkEnd(span.from(), "start of " + span.what());
            checkEnd(span.to(), "end of " + span.what());
        } else if (built instanceof Built.Deck deck && !hangsOnMisplaced(entry)) {
            List<Point> corners = deck.platform().outline().corners().stream()
                    .map(corner -> corner.atHeight(deck.platform().zM()))
                    .toList();
            if (areInside(entry.place(), entry.what(), corners)) {
                isAbove(entry.place(), entry.what(), corners);
            }
        }
    }

    private boolean isAbove(Place place, String what, List<Point> corners) {
        Optional<Burial> deepest = surroundings.deepest(corners);
        deepest.ifPresent(burial -> problems.add(Problem.at(place, what + " lies in the ground")
                .found(Wording.measure(burial.belowM(), "m") + " below the ground at " + Builder.shown(burial.point()))
                .mend("put it higher, or move it to where the ground is lower")));
        return deepest.isEmpty();
    }

    /** A deck on a pole that stands outside lies outside too; that needs no second message. */
    private boolean hangsOnMisplaced(SupportEntry entry) {
        return entry instanceof DeckBySize deck
                && deck.middle() instanceof PlaceWords.OnNamed words
                && misplaced.contains(words.id());
    }

    private void checkUpright(Upright pole, Point top) {
        Point foot = pole.foot().point();
        if (!isInside(pole.foot().place(), "foot of " + pole.what(), foot)) {
            misplaced.add(pole.id());
            return;
        }
        isInside(pole.foot().place(), "top of " + pole.what(), top);
    }

    private void checkEnd(PlaceWords words, String what) {
        if (words instanceof PlaceWords.Coordinates coordinates) {
            isInside(words.place(), what, coordinates.point());
        }
    }

    /** Whether a point lies within the outline of the ground, in plan. */
    boolean isWithin(Point point) {
        return surroundings.isWithin(point);
    }

    /** Whether a point lies within the outline of the ground; otherwise a problem is added. */
    boolean isInside(Place place, String what, Point point) {
        if (surroundings.isWithin(point)) {
            return true;
        }
        problems.add(Problem.at(place, what + " lies outside the outline of the ground")
                .found("[" + Wording.number(point.xM()) + ", " + Wording.number(point.yM()) + "]")
                .mend("move it inside, or make the ground larger"));
        return false;
    }

    /** Whether all points lie within the outline of the ground; otherwise a problem is added for the first. */
    boolean areInside(Place place, String what, List<Point> points) {
        return points.stream().allMatch(point -> isInside(place, what, point));
    }

    /** Whether some of an area lies within the outline of the ground; otherwise a problem is added. */
    boolean overlaps(Place place, String what, Outline area) {
        if (surroundings.overlaps(area.toPolygon())) {
            return true;
        }
        problems.add(Problem.at(place, what + " lies wholly outside the outline of the ground")
                .mend("move it inside, or make the ground larger"));
        return false;
    }

    /** Whether a roof or sail lies above the ground and at least in part over it; otherwise a problem is added. */
    boolean covers(CoverEntry cover, List<Point> corners) {
        if (!isAbove(cover.shapePlace(), cover.what(), corners)) {
            return false;
        }
        if (surroundings.reaches(corners)) {
            return true;
        }
        problems.add(Problem.at(cover.shapePlace(), cover.what() + " lies wholly outside the outline of the ground")
                .found("its first corner at " + Builder.shown(corners.get(0)))
                .mend("move it inside, or write what stands outside as a building under neighbours"));
        return false;
    }

    /** Checks a resource that was placed by coordinates. */
    void check(ResourceEntry resource, Point at, List<Extent> supports, List<Panel> panels) {
        Place place = resource.where().place();
        if (!isInside(place, resource.what(), at)) {
            return;
        }
        double aboveM = surroundings.aboveGroundM(at);
        if (aboveM < -WITHIN_M) {
            problems.add(Problem.at(place, resource.what() + " lies in the ground")
                    .found(Builder.shown(at) + ", " + Wording.measure(-aboveM, "m") + " below the ground")
                    .mend("write [x, y] without a height for a place on the ground"));
            return;
        }
        Nearest nearest = surroundings.nearest(at, supports, panels);
        if (nearest.distanceM() <= WITHIN_M) {
            return;
        }
        Optional<Obstacle> obstacle = aboveM <= WITHIN_M ? surroundings.obstacleAt(at) : Optional.empty();
        String headline =
                obstacle.map(o -> " lies in obstacle " + Wording.quote(o.id())).orElse(" is in mid-air");
        problems.add(Problem.at(place, resource.what() + headline)
                .found(Builder.shown(at) + ", " + Wording.measure(nearest.distanceM(), "m") + " from " + nearest.what()
                        + ", the nearest thing")
                .allowed("at most " + Wording.measure(WITHIN_M, "m")
                        + " from walkable ground, a platform, a support or a crown")
                .mend("move it, or hang it on something, for example on: mast-1 at 5.5"));
    }
}
