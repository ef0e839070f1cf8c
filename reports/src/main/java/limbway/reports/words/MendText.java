package limbway.reports.words;

import java.util.ArrayList;
import java.util.List;

import limbway.model.body.Body;
import limbway.model.enclosure.Support;
import limbway.model.explain.Chain;
import limbway.model.explain.Gap;
import limbway.model.explain.GroundReason;
import limbway.model.graph.Grasp;

/** Says what to try where a way leads over the ground. */
public final class MendText {

    private MendText() {}

    /**
     * What would open or cheapen the way off the ground.
     *
     * @param reason why a way leads over the ground
     * @param body who travels
     * @return a clause in the imperative, or {@code nothing} where nothing needs mending
     */
    public static String of(GroundReason reason, Body body) {
        if (reason instanceof GroundReason.Dearer dearer) {
            long more = dearer.offGround().milliJ() - dearer.overGround().milliJ();
            return "make the way off the ground cheaper by more than " + Figures.energy(more / 1000.0)
                    + " a trip with a more direct or less steep link, or hang both places higher, so that the way over "
                    + "the ground costs more";
        } else if (reason instanceof GroundReason.Missing missing) {
            return of(missing.chain(), body);
        } else if (reason instanceof GroundReason.NothingToHold nothing) {
            return "hang " + nothing.resource() + " on a support or platform, or bring one to it";
        } else if (reason instanceof GroundReason.TooFar) {
            return "build supports between the two places";
        }
        return "nothing";
    }

    private static String of(Chain chain, Body body) {
        List<String> clauses = new ArrayList<>();
        if (!chain.gaps().isEmpty()) {
            List<String> places = new ArrayList<>();
            for (Gap gap : chain.gaps()) {
                places.add("from " + gap.from() + " to " + gap.to());
            }
            clauses.add((places.size() > 1 ? "close each gap to " : "close the gap to ")
                    + Figures.metres(body.gapReachM()) + " or less, for example with "
                    + (places.size() > 1 ? "ropes " : "a rope ") + String.join(" and ", places));
        }
        for (Support support : chain.tooThick()) {
            boolean tooWeak = support.diameterM() <= Grasp.thickestM(body, support);
            clauses.add(
                    tooWeak
                            ? "build " + support.id() + " for this body, or hang a rope beside it"
                            : "use a support of " + Figures.thickness(Grasp.thickestM(body, support)) + " or less for "
                                    + support.id() + ", or hang a rope beside it");
        }
        return String.join("; ", clauses);
    }
}
