package limbway.sim.habitat;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;

import limbway.model.enclosure.Resource;
import limbway.model.enclosure.ResourceKind;
import limbway.model.geometry.Point;
import limbway.model.graph.RouteGraph;
import limbway.model.study.Attendance;
import limbway.model.study.Variant;
import limbway.model.study.Viewpoint;

/**
 * What the places are like at which animals stop, besides what they go there for; looked up by number of a start as in
 * {@link Passages}. It never changes.
 *
 * <p>What is seen, and what hangs over a place, is taken at eye level, half a metre above the hold, with the leaves of
 * midsummer; both are assumptions.
 */
public final class PlaceCharacter {

    private final int starts;
    private final KeepersHours hours;
    private final double[] cover;
    private final double[] heightM;
    private final double[] edgeM;
    private final double[] lookOut;
    private final boolean[][] isSeen;
    private final double[] seenShare;
    private final double[] staffM;
    private final float[] separationM;

    private PlaceCharacter(RouteGraph graph, Variant layout, Passages any, KeepersHours hours) {
        starts = any.startCount();
        this.hours = hours;
        cover = new double[starts];
        heightM = new double[starts];
        edgeM = new double[starts];
        lookOut = new double[starts];
        separationM = new float[starts * starts];
        List<Viewpoint> viewpoints = layout.keeping().viewpoints();
        List<Point> staff =
                layout.keeping().staff().stream().map(Attendance::at).toList();
        List<Point> watched = Stream.concat(
                        graph.resources().stream()
                                .filter(resource -> resource.kind() == ResourceKind.FOOD)
                                .map(Resource::at),
                        staff.stream())
                .toList();
        isSeen = new boolean[viewpoints.size()][starts];
        Sights sights = new Sights(layout.enclosure());
        Edges edges = new Edges(layout.enclosure());
        double[] toStaffM = new double[starts * staff.size()];
        for (int start = 0; start < starts; start++) {
            Point hold = graph.place(any.hold(start));
            Point eye = Sights.eye(hold);
            cover[start] = sights.cover(eye);
            heightM[start] = graph.heightAboveGroundM(any.hold(start));
            edgeM[start] = edges.distanceM(hold);
            lookOut[start] = watched.stream()
                    .mapToInt(target -> sights.sees(eye, target) ? 1 : 0)
                    .average()
                    .orElse(0);
            for (int viewpoint = 0; viewpoint < isSeen.length; viewpoint++) {
                isSeen[viewpoint][start] = sights.sees(viewpoints.get(viewpoint).at(), eye);
            }
            for (int post = 0; post < staff.size(); post++) {
                toStaffM[start * staff.size() + post] = hold.distanceM(staff.get(post));
            }
            for (int other = 0; other < starts; other++) {
                separationM[start * starts + other] = (float) hold.distanceM(graph.place(any.hold(other)));
            }
        }
        seenShare = new double[hours.stretches() * starts];
        staffM = new double[hours.stretches() * starts];
        fillByHours(staff.size(), toStaffM);
    }

    private void fillByHours(int posts, double[] toStaffM) {
        Arrays.fill(staffM, Double.POSITIVE_INFINITY);
        for (int stretch = 0; stretch < hours.stretches(); stretch++) {
            for (int start = 0; start < starts; start++) {
                int at = stretch * starts + start;
                int present = 0;
                for (int viewpoint = 0; viewpoint < isSeen.length; viewpoint++) {
                    if (hours.hasVisitors(viewpoint, stretch)) {
                        present++;
                        seenShare[at] += isSeen[viewpoint][start] ? 1 : 0;
                    }
                }
                seenShare[at] /= Math.max(1, present);
                for (int post = 0; post < posts; post++) {
                    if (hours.hasStaff(post, stretch)) {
                        staffM[at] = Math.min(staffM[at], toStaffM[start * posts + post]);
                    }
                }
            }
        }
    }

    /**
     * Looks at every place once.
     *
     * @param graph the compiled layout
     * @param layout what stands there, and what people do
     * @param any the passages of any body: the holds and their order are the same for all
     * @return what the places are like
     * @throws IllegalArgumentException if bedding or a closure names a place that is not there
     */
    public static PlaceCharacter of(RouteGraph graph, Variant layout, Passages any) {
        return new PlaceCharacter(graph, layout, any, new KeepersHours(layout.keeping(), graph.resources()));
    }

    /**
     * How much of the sky is hidden by roofs, leaves, decks and what stands around, weighted as it lights a level surface:
     * what hangs straight above counts most.
     *
     * @param start number of a start
     * @return share, 0 (open) to 1
     */
    public double cover(int start) {
        return cover[start];
    }

    /**
     * How high a place is above the ground straight below it.
     *
     * @param start number of a start
     * @return metres, negative below the ground
     */
    public double heightM(int start) {
        return heightM[start];
    }

    /**
     * Level distance to the nearest edge of the enclosure: the end of the ground, a barrier, or a wall of mesh.
     *
     * @param start number of a start
     * @return metres, 0 or more
     */
    public double edgeM(int start) {
        return edgeM[start];
    }

    /**
     * How much there is to watch: the share of the places of food and of the posts of staff that can be seen.
     *
     * @param start number of a start
     * @return share, 0 to 1; 0 where there are none
     */
    public double lookOut(int start) {
        return lookOut[start];
    }

    /**
     * Whether visitors can see an animal at a place.
     *
     * @param viewpoint number of a viewpoint, in the order of the plan
     * @param start number of a start
     * @return true if they can, whether or not anybody is there
     */
    public boolean isSeen(int viewpoint, int start) {
        return isSeen[viewpoint][start];
    }

    /**
     * From how many of the viewpoints at which visitors are an animal at a place can be seen.
     *
     * @param start number of a start
     * @param clockMs milliseconds since midnight before day 1
     * @return share, 0 to 1; 0 while there are no visitors
     */
    public double seenShare(int start, long clockMs) {
        return seenShare[hours.stretch(clockMs) * starts + start];
    }

    /**
     * How far off the nearest staff are.
     *
     * @param start number of a start
     * @param clockMs milliseconds since midnight before day 1
     * @return distance in a straight line [m]; {@link Double#POSITIVE_INFINITY} while there are none
     */
    public double staffM(int start, long clockMs) {
        return staffM[hours.stretch(clockMs) * starts + start];
    }

    /**
     * How far two places are from each other.
     *
     * @param start number of a start
     * @param other number of a start
     * @return distance in a straight line [m], 0 or more
     */
    public double separationM(int start, int other) {
        return separationM[start * starts + other];
    }
}
