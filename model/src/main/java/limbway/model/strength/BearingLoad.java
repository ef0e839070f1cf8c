package limbway.model.strength;

import java.util.OptionalDouble;

import limbway.model.enclosure.Material;
import limbway.model.enclosure.Support;
import limbway.model.energy.Elasticities;
import limbway.model.energy.InclineCost;

/**
 * The heaviest body that a support bears. It warns; it is never a structural calculation: joints, footings, rot, rust, wind
 * and two animals at once are left out, and licensed practice decides.
 *
 * <p>A stated load goes before any formula. Otherwise a beam is a bar on two ends that may turn, a branch or leaning pole a
 * cantilever built in at its first end, both with one weight on them, and only the level part of the lever counts; a rope
 * takes the tension of a weight in its middle. Uniform bars give the textbook {@code stress pi d³ (1 - s⁴) / (8 L)} in the
 * middle of a beam and {@code stress pi d³ (1 - s⁴) / (32 L)} at the tip of a branch, s the inner share of a tube.
 *
 * @source Euler-Bernoulli beam and statics of a cord, textbook; strengths in {@link Strengths}
 * @validity one animal that hangs or sits still, round straight members, no push or pull along a steep member
 */
public final class BearingLoad {

    private static final int SEARCHED_PLACES = 64;

    private final Strengths strengths;
    private final Elasticities elasticities;

    /**
     * Limits by given materials.
     *
     * @param strengths at what stress they break
     * @param elasticities which members are tubes
     */
    public BearingLoad(Strengths strengths, Elasticities elasticities) {
        this.strengths = strengths;
        this.elasticities = elasticities;
    }

    /**
     * The heaviest body that may go anywhere on a support.
     *
     * @param support what it goes on
     * @return the limit with its reason
     */
    public BearingLimit of(Support support) {
        double lengthM = support.axis().lengthM();
        return switch (support.kind()) {
            case BEAM ->
                support.tipDiameterM() == support.diameterM()
                        ? at(support, lengthM / 2)
                        : weakestPlace(support, lengthM);
            case BRANCH, POLE, ROPE, TRUNK, LADDER -> at(support, lengthM);
        };
    }

    /**
     * The heaviest body that may be at one place of a support; of a rope, at its middle.
     *
     * @param support what it is on
     * @param alongM where, from the first end [m], 0 to the length of the axis
     * @return the limit with its reason
     */
    public BearingLimit at(Support support, double alongM) {
        OptionalDouble stated = support.bearing().bearsKg();
        if (stated.isPresent()) {
            return new BearingLimit.Stated(stated.getAsDouble());
        }
        return switch (support.kind()) {
            case BEAM -> bending(support, alongM, true);
            case BRANCH, POLE -> bending(support, alongM, false);
            case ROPE -> tension(support);
            case TRUNK -> new BearingLimit.Unlimited("the stem of a tree is taken to bear every animal");
            case LADDER -> new BearingLimit.Unlimited("no load was stated for the ladder");
        };
    }

    private BearingLimit weakestPlace(Support beam, double lengthM) {
        BearingLimit least = at(beam, lengthM / 2);
        for (int i = 1; i < SEARCHED_PLACES; i++) {
            BearingLimit here = at(beam, lengthM * i / SEARCHED_PLACES);
            least = here.heaviestKg() < least.heaviestKg() ? here : least;
        }
        return least;
    }

    private BearingLimit bending(Support support, double alongM, boolean twoEnds) {
        OptionalDouble limitPa = strengths.limitPa(support.material());
        double lengthM = support.axis().lengthM();
        double levelShare = support.axis().start().planDistanceM(support.axis().end()) / lengthM;
        if (limitPa.isEmpty()) {
            return new BearingLimit.Unlimited(
                    "no bending strength of " + support.material().word() + " is known");
        }
        if (levelShare == 0) {
            return new BearingLimit.Unlimited("it stands upright, so that a weight does not bend it");
        }
        double stressPa = limitPa.getAsDouble() * filled(support) / levelShare;
        double thinning = (support.diameterM() - support.tipDiameterM()) / lengthM;
        if (!twoEnds) {
            return alongM == 0 ? atAnEnd() : cantilever(support, alongM, thinning, stressPa);
        }
        return alongM == 0 || alongM >= lengthM ? atAnEnd() : beam(support, alongM, thinning, stressPa);
    }

    private static BearingLimit atAnEnd() {
        return new BearingLimit.Unlimited("a weight where it is held does not bend it");
    }

    private static BearingLimit cantilever(Support support, double alongM, double thinning, double stressPa) {
        Lever lever = new Lever(support.diameterAtM(alongM), thinning, alongM);
        return new BearingLimit.Bending(massKg(lever.forceN(stressPa)), alongM, alongM - lever.weakestM());
    }

    /** Each end bears the share of the weight that its lever leaves to it. */
    private static BearingLimit beam(Support support, double alongM, double thinning, double stressPa) {
        double lengthM = support.axis().lengthM();
        double restM = lengthM - alongM;
        Lever first = new Lever(support.diameterM(), -thinning, alongM);
        Lever last = new Lever(support.tipDiameterM(), thinning, restM);
        double byFirstN = first.forceN(stressPa) * lengthM / restM;
        double byLastN = last.forceN(stressPa) * lengthM / alongM;
        return byFirstN <= byLastN
                ? new BearingLimit.Bending(massKg(byFirstN), alongM, first.weakestM())
                : new BearingLimit.Bending(massKg(byLastN), alongM, lengthM - last.weakestM());
    }

    private BearingLimit tension(Support rope) {
        if (rope.material() != Material.FIBRE_ROPE) {
            return new BearingLimit.Unlimited(
                    "no strength of a rope of " + rope.material().word() + " is known");
        }
        double perLoad = RopeTension.perLoad(rope.axis(), strengths.rope().stretchShare());
        return new BearingLimit.Tension(massKg(strengths.rope().limitN(rope.diameterM()) / perLoad), perLoad);
    }

    private double filled(Support support) {
        return elasticities
                .of(support.material())
                .map(elasticity -> elasticity.innerShare() * elasticity.innerShare())
                .map(square -> 1 - square * square)
                .orElse(1.0);
    }

    private static double massKg(double forceN) {
        return forceN / InclineCost.GRAVITY_M_PER_S2;
    }
}
