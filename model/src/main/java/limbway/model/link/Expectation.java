package limbway.model.link;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

import limbway.model.body.Body;
import limbway.model.route.ChoiceSharpness;
import limbway.model.route.ReverseTree;
import limbway.model.route.Routes;
import limbway.model.route.Search;

/**
 * How often the trips of today would take the way off the ground at other costs: the choice between the two ways of each
 * errand, weighted by how often and how far it is made.
 *
 * <p>It is no forecast: where animals go, and how often, stays as it is. A simulation tells that.
 */
public final class Expectation {

    private final List<Errand> errands;
    private final ChoiceSharpness sharpness;
    private final List<WayCosts> before;
    private final double[] shareBefore;
    private final double metresPerDay;

    /**
     * What is expected as it stands.
     *
     * @param errands trips of a day
     * @param routes the ways of every body
     * @param sharpness how strictly the cheaper way is taken
     */
    public Expectation(List<Errand> errands, Map<Body, Routes> routes, ChoiceSharpness sharpness) {
        this.errands = List.copyOf(errands);
        this.sharpness = sharpness;
        this.shareBefore = new double[errands.size()];
        List<WayCosts> costs = new ArrayList<>();
        double metres = 0;
        for (int i = 0; i < shareBefore.length; i++) {
            Errand errand = errands.get(i);
            Routes ways = routes.get(errand.body());
            costs.add(new WayCosts(
                    ways.offGroundMilliJ(errand.fromHold(), errand.toResource()),
                    ways.overGroundMilliJ(errand.fromHold(), errand.toResource())));
            shareBefore[i] = ways.find(errand.fromHold(), errand.toResource()) instanceof Search.Reached reached
                    ? reached.offGroundShare()
                    : 0;
            metres += errand.metresPerDay();
        }
        this.before = List.copyOf(costs);
        this.metresPerDay = metres;
    }

    /**
     * What changes at other costs.
     *
     * @param costs one for each errand
     * @return the gain; negative where less is off the ground
     */
    public Gain gain(List<WayCosts> costs) {
        double metres = 0;
        double trips = 0;
        for (int i = 0; i < shareBefore.length; i++) {
            double more = share(i, costs.get(i)) - shareBefore[i];
            metres += more * errands.get(i).metresPerDay();
            trips += more * errands.get(i).tripsPerDay();
        }
        return new Gain(metresPerDay > 0 ? metres / metresPerDay : 0, trips);
    }

    /**
     * A way over the ground that only leaves a way off it and comes back is no rival, and a new link makes it none. Where
     * something fails the way off the ground may become the dearer one; what is cheaper than it is a rival.
     */
    private double share(int errand, WayCosts costs) {
        if (costs.equals(before.get(errand))) {
            return shareBefore[errand];
        }
        if (!costs.leadsOffGround()) {
            return 0;
        }
        boolean hasNoRival = before.get(errand).leadsOffGround()
                && shareBefore[errand] == 1
                && costs.overMilliJ() >= costs.offMilliJ();
        if (hasNoRival || costs.overMilliJ() == ReverseTree.UNREACHABLE || costs.offMilliJ() == 0) {
            return 1;
        }
        return sharpness.shareOfFirst(costs.offMilliJ(), costs.overMilliJ());
    }
}
