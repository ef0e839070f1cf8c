package limbway.reports.words;

import java.util.ArrayList;
import java.util.List;

import limbway.model.explain.Chain;
import limbway.model.explain.GroundReason;
import limbway.model.explain.flip.Change;
import limbway.model.explain.flip.EndExtended;
import limbway.model.explain.flip.EndRetied;
import limbway.model.explain.flip.Flip;
import limbway.model.explain.flip.Flips;
import limbway.model.explain.flip.LinkAdded;
import limbway.model.explain.flip.NoFlip;
import limbway.model.explain.flip.PlaceMoved;
import limbway.model.explain.flip.PoleMoved;
import limbway.model.explain.flip.PriceTurn;
import limbway.model.explain.flip.Spot;
import limbway.model.explain.flip.Thinned;
import limbway.model.explain.flip.Tightened;
import limbway.model.parameter.Parameter;

/** Says what would turn a trip off the ground, and on which assumed costs the answer hangs. */
public final class FlipText {

    /** What is meant by turning, for a reader who sees a list of changes. */
    public static final String MEANING =
            "Each was tried by compiling the changed layout: the way off the ground was then the cheapest, so that at least "
                    + "half of such trips stay off the ground. In the second line it is written as a change of a variant.";

    private static final String OVER_WALKING = " over walking";

    private FlipText() {}

    /** Share of trips below which a change is said to do no more than turn them. Assumption. */
    private static final double SURE = 0.75;

    /**
     * One change and what comes of it.
     *
     * @param flip a change that turns the trip
     * @return a clause in the imperative, then what both ways cost and how many trips stay off the ground
     */
    public static String of(Flip flip) {
        String over = flip.then().overGroundMilliJ() == Integer.MAX_VALUE
                ? "there is no way over the ground"
                : "over it " + energy(flip.then().overGroundMilliJ());
        return what(flip.change()) + "; then off the ground "
                + energy(flip.then().offGroundMilliJ()) + ", " + over + ", and " + Figures.percent(flip.share())
                + " of such trips stay off the ground"
                + (flip.share() < SURE ? ", just where it turns: more of it would be surer" : "");
    }

    /**
     * The change alone.
     *
     * @param change a change of a layout
     * @return a clause in the imperative
     */
    public static String what(Change change) {
        if (change instanceof LinkAdded link) {
            return "hang a rope over " + Figures.metres(link.amountM()) + " from " + place(link.from()) + " to "
                    + place(link.to());
        } else if (change instanceof PlaceMoved moved) {
            return placed(moved);
        } else if (change instanceof EndExtended end) {
            return "carry the free end of " + end.support() + " on by " + length(end.amountM());
        } else if (change instanceof PoleMoved pole) {
            return "put " + pole.pole() + " nearer by " + length(pole.amountM());
        } else if (change instanceof EndRetied tie) {
            return "tie " + tie.support() + " to " + tie.pole() + " " + length(tie.amountM())
                    + (tie.up() ? " higher" : " lower") + ", at a height of " + length(tie.heightM());
        } else if (change instanceof Tightened rope) {
            return "pull " + rope.rope() + " tighter, so that its middle is " + length(rope.amountM()) + " higher";
        }
        Thinned thin = (Thinned) change;
        return "use a support of " + Figures.thickness(thin.diameterM()) + " or less for " + thin.support()
                + " instead of " + Figures.thickness(thin.beforeM());
    }

    private static String placed(PlaceMoved moved) {
        boolean raised = moved.at() instanceof Spot.AtHeight && moved.baseM() > 0;
        return raised
                ? "hang " + moved.resource() + " " + length(moved.amountM()) + " higher, at " + place(moved.at())
                : "put " + moved.resource() + " on " + place(moved.at()) + (moved.isLowest() ? " or higher" : "") + ", "
                        + Figures.path(moved.movedM()) + " from where it is";
    }

    private static String place(Spot spot) {
        if (spot instanceof Spot.AtHeight upright) {
            return upright.on() + " at a height of " + length(upright.heightM());
        }
        return spot instanceof Spot.Along along
                ? along.on() + " at " + length(along.alongM()) + " from its start"
                : spot.on();
    }

    /** A length to the millimetre, since a rounded one might fall short. */
    private static String length(double metres) {
        return Figures.decimals(metres, 3) + " m";
    }

    /**
     * Why a kind of change does not turn the trip.
     *
     * @param none the kind
     * @param reason why the trip leads over the ground
     * @return a sentence without a full stop
     */
    public static String of(NoFlip none, GroundReason reason) {
        String what =
                switch (none.kind()) {
                    case LINK -> "one more rope of up to " + Figures.metres(Flips.LONGEST_LINK_M);
                    case END -> "another place for where it leads to";
                    case START -> "another place for where it starts";
                    case GAP -> "a shorter gap";
                    case THINNER -> "a thinner support";
                    case DETOUR -> "a rope or beam of the way tied higher, lower or tighter";
                };
        return switch (none.why()) {
            case USED_FROM_GROUND -> what + " is not enough, because the other place is used from the ground only";
            case SEVERAL_THINGS_MISSING -> what + " is not enough, because " + missing(reason);
            case NOTHING_MOVABLE ->
                what + " was not found: no end at the gap is free, and no pole there can be moved alone";
            case NOT_ENOUGH -> what + " was tried and is not enough";
            case CUT_SHORT -> what + " was not tried to the end, because this layout is so large that it takes long";
        };
    }

    private static String missing(GroundReason reason) {
        return Flips.severalMissing(reason)
                .map(Chain::gaps)
                .filter(gaps -> gaps.size() > 1)
                .map(gaps -> gaps.size() + " gaps lie on the way where least is missing: "
                        + String.join(
                                " and ", gaps.stream().map(ReasonText::gap).toList()))
                .orElse("more than one thing is missing");
    }

    /**
     * How firm the answer is.
     *
     * @param turns assumed costs on which it hangs, the least change first
     * @return one sentence for each, the first few
     */
    public static List<String> firmness(List<PriceTurn> turns) {
        List<String> sentences = new ArrayList<>();
        List<PriceTurn> plausible =
                turns.stream().filter(PriceTurn::isPlausible).toList();
        for (PriceTurn turn : plausible) {
            sentences.add("not firm: the way " + (turn.toOffGround() ? "off" : "over")
                    + " the ground would be the cheapest if " + assumed(turn));
        }
        if (plausible.isEmpty()) {
            String farthest = turns.isEmpty() ? "" : "; it would turn only if " + assumed(turns.get(0));
            sentences.add("no single assumed cost within its range turns this answer" + farthest);
        }
        return sentences;
    }

    /** A condition such as: clambering cost 1.6 instead of 2 times walking. */
    private static String assumed(PriceTurn turn) {
        Parameter parameter = turn.parameter();
        String then = Figures.plain(turn.turnsAt()) + " instead of " + Figures.plain(parameter.value());
        String name = parameter.name() + ", range " + Figures.plain(parameter.low()) + " to "
                + Figures.plain(parameter.high());
        int over = parameter.meaning().indexOf(OVER_WALKING);
        if (over > 0) {
            return parameter.meaning().substring(0, over) + " cost " + then + " times walking (" + name + ")";
        }
        String unit = parameter.unit().equals("1") ? "" : " " + parameter.unit();
        return parameter.name() + " were " + then + unit + " (" + parameter.meaning() + "; range "
                + Figures.plain(parameter.low()) + " to " + Figures.plain(parameter.high()) + ")";
    }

    private static String energy(int milliJ) {
        return Figures.energy(milliJ / 1000.0);
    }
}
