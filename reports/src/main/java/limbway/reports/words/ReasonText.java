package limbway.reports.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import limbway.model.body.Body;
import limbway.model.body.LocomotorMode;
import limbway.model.enclosure.Support;
import limbway.model.explain.Chain;
import limbway.model.explain.Gap;
import limbway.model.explain.GroundReason;
import limbway.model.graph.GraphSettings;
import limbway.model.graph.Grasp;
import limbway.model.route.Search;
import limbway.model.route.Way;

/** Says in a sentence why a way leads over the ground. */
public final class ReasonText {

    private ReasonText() {}

    /**
     * Both ways with their energy by part, and the reason.
     *
     * @param ways the ways that are open
     * @param reason why they lead where they lead
     * @param body who travels
     * @return one sentence without a full stop
     */
    public static String sentence(Search.Reached ways, GroundReason reason, Body body) {
        List<String> clauses = new ArrayList<>();
        ways.overGround().ifPresent(way -> clauses.add("over the ground " + EnergyText.sum(way.energy())));
        Optional<Way> off = ways.offGround();
        if (off.isEmpty()) {
            clauses.add("off the ground there is no way, because " + because(reason, body));
        } else if (reason instanceof GroundReason.Dearer dearer) {
            clauses.add("off the ground " + EnergyText.sum(off.get().energy()) + ", because that way "
                    + dearer(dearer.offGround(), dearer.overGround()));
        } else {
            clauses.add("off the ground " + EnergyText.sum(off.get().energy()) + ", which is the cheapest way");
        }
        return String.join("; ", clauses);
    }

    /**
     * The reason alone.
     *
     * @param reason why a way leads over the ground
     * @param body who travels
     * @return a clause that can follow "because"
     */
    public static String because(GroundReason reason, Body body) {
        if (reason instanceof GroundReason.Dearer dearer) {
            return "the way off the ground " + dearer(dearer.offGround(), dearer.overGround());
        } else if (reason instanceof GroundReason.Missing missing) {
            return missing(missing.chain(), body);
        } else if (reason instanceof GroundReason.NothingToHold nothing) {
            return nothing.resource() + " has nothing to hold within " + Figures.metres(GraphSettings.USE_REACH_M)
                    + nothing.nearest()
                            .map(name -> ": the nearest, " + name + ", is " + Figures.metres(nothing.awayM()) + " away")
                            .orElse(", and nothing stands in the enclosure");
        } else if (reason instanceof GroundReason.TooFar tooFar) {
            return "no gaps of " + Figures.metres(tooFar.searchedM()) + " or less would join the two places";
        }
        return "the dearer way is still taken now and then";
    }

    /**
     * The gaps and supports of a chain.
     *
     * @param chain what is missing
     * @param body who travels
     * @return a clause, for example {@code rope-2 ends 2.3 m from mast-3 and this body reaches 1.5 m}
     */
    public static String missing(Chain chain, Body body) {
        List<String> clauses = new ArrayList<>();
        for (Gap gap : chain.gaps()) {
            clauses.add(gap(gap));
        }
        if (!chain.gaps().isEmpty()) {
            clauses.add("this body reaches " + Figures.metres(body.gapReachM()));
        }
        for (Support support : chain.tooThick()) {
            clauses.add(tooThick(support, body));
        }
        return join(clauses);
    }

    /**
     * The gaps and supports of a chain, whoever meets them.
     *
     * @param chain what is missing
     * @return a clause, for example {@code rope-2 ends 2.3 m from mast-3 and log-4 is 17 cm thick (bears 900 kg)}
     */
    public static String obstacles(Chain chain) {
        List<String> clauses = new ArrayList<>();
        chain.gaps().forEach(gap -> clauses.add(gap(gap)));
        for (Support support : chain.tooThick()) {
            double bearsKg = Grasp.bearsKg(support);
            String thick = support.id() + " is " + Figures.thickness(support.diameterM()) + " thick";
            clauses.add(
                    Double.isInfinite(bearsKg) ? thick : thick + " (bears " + Figures.decimals(bearsKg, 0) + " kg)");
        }
        return join(clauses);
    }

    /**
     * One gap.
     *
     * @param gap a gap
     * @return a clause that names both sides and the distance
     */
    public static String gap(Gap gap) {
        String wide = Figures.metres(gap.clearM());
        if (gap.fromAtEnd() == gap.toAtEnd()) {
            return gap.from() + " and " + gap.to() + " are " + wide + " apart";
        }
        return gap.fromAtEnd()
                ? gap.from() + " ends " + wide + " from " + gap.to()
                : gap.to() + " ends " + wide + " from " + gap.from();
    }

    /**
     * One support that is too thick, or too weak.
     *
     * @param support the support
     * @param body who cannot be on it
     * @return a clause with its thickness and what the body holds, or with what it bears and the body weighs
     */
    public static String tooThick(Support support, Body body) {
        double bearsKg = Grasp.bearsKg(support);
        if (body.massKg() > bearsKg) {
            return support.id() + " bears " + Figures.decimals(bearsKg, 0) + " kg where this body weighs "
                    + Figures.decimals(body.massKg(), 0) + " kg";
        }
        String holds = support.material().isRough() ? "can hug up to " : "can grip up to ";
        return support.id() + " is " + Figures.thickness(support.diameterM()) + " thick where this body " + holds
                + Figures.thickness(Grasp.thickestM(body, support));
    }

    private static String dearer(Way off, Way over) {
        String length = off.lengthM() > over.lengthM()
                ? "is " + Figures.path(off.lengthM()) + " long against " + Figures.path(over.lengthM())
                : "is harder to move on, though no longer,";
        LocomotorMode dearest = LocomotorMode.QUADRUPEDAL_WALK;
        long most = 0;
        for (LocomotorMode mode : LocomotorMode.values()) {
            long more = off.energy().part(mode) - over.energy().part(mode);
            if (more > most) {
                most = more;
                dearest = mode;
            }
        }
        return length + " and takes " + Figures.energy(most / 1000.0) + " more for " + PartText.doing(dearest);
    }

    private static String join(List<String> clauses) {
        int last = clauses.size() - 1;
        return last <= 0
                ? String.join("", clauses)
                : String.join(", ", clauses.subList(0, last)) + " and " + clauses.get(last);
    }
}
