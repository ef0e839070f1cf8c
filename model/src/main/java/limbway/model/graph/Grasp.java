package limbway.model.graph;

import java.util.ArrayList;
import java.util.List;

import limbway.model.body.Body;
import limbway.model.enclosure.Support;
import limbway.model.energy.Elasticities;
import limbway.model.geometry.Segment;
import limbway.model.strength.BearingLoad;
import limbway.model.strength.Strengths;

/** Whether a body can be on a support at all, by the same rule that decides its moves. */
public final class Grasp {

    private Grasp() {}

    /**
     * The heaviest body that a support bears.
     *
     * @param support what would be loaded
     * @return mass [kg], as stated or as its material and measures have it; infinite where no limit is known
     */
    public static double bearsKg(Support support) {
        return standardLoads().of(support).heaviestKg();
    }

    private static BearingLoad standardLoads() {
        return new BearingLoad(Strengths.standard(), Elasticities.standard());
    }

    /**
     * Whether a body can grip, hug or walk on every straight piece of a support.
     *
     * @param body who would be on it
     * @param support what it would be on
     * @return false where the support is too thick to hold and not a walkway
     */
    public static boolean canUse(Body body, Support support) {
        for (Segment line : support.axis().pieces()) {
            if (line.lengthM() > Pieces.SAME_PLACE_M
                    && !Carrier.of(Piece.of(line, support, 0), standardLoads()).canUse(body)) {
                return false;
            }
        }
        return true;
    }

    /**
     * The straight pieces of some supports that a body can hold or walk on.
     *
     * <p>Supports that continue each other in one line are joined first, so drawing one in two changes nothing.
     *
     * @param body who would be on them
     * @param supports what stands there
     * @return pieces in the order of the supports; on each the body can go from end to end
     */
    public static List<UsableLine> usableLines(Body body, List<Support> supports) {
        List<UsableLine> lines = new ArrayList<>();
        BearingLoad loads = standardLoads();
        for (Piece piece : Pieces.of(supports)) {
            if (Carrier.of(piece, loads).canUse(body)) {
                lines.add(new UsableLine(piece.line(), piece.diameterM()));
            }
        }
        return lines;
    }

    /**
     * The thickest support of that surface that a body can hold.
     *
     * @param body who would hold it
     * @param support whose surface decides between gripping and hugging
     * @return diameter [m]
     */
    public static double thickestM(Body body, Support support) {
        return support.material().isRough()
                ? Math.max(body.gripDiameterM(), body.hugDiameterM())
                : body.gripDiameterM();
    }
}
