package limbway.model.explain.flip;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

import limbway.model.explain.Chain;
import limbway.model.explain.GroundReason;
import limbway.model.graph.Grasp;
import limbway.model.graph.RouteGraph;

/**
 * Finds the smallest single changes that turn a trip off the ground.
 *
 * <p>Every change named was made and the layout compiled anew; the way off the ground was then the cheapest. What is not
 * named may still do it: only the kinds of {@link FlipKind} are tried, within stated limits.
 */
public final class Flips {

    /** So many holds are compiled in all at the most, whatever the layout: some seconds. Assumption. */
    public static final long HOLDS_ALLOWED = 250_000;

    /** Longest rope that is looked at [m]. */
    public static final double LONGEST_LINK_M = AddedLinkSearch.LONGEST_M;

    private final ChangeTrial trial;
    private final TripTrees trees;
    private final TripQuestion question;
    private final GroundReason reason;
    private final List<Flip> flips = new ArrayList<>();
    private final List<NoFlip> none = new ArrayList<>();

    private Flips(TripQuestion question, RouteGraph graph, GroundReason reason, BuildLimits limits, long holdsAllowed) {
        this.question = question;
        this.reason = reason;
        this.trees = new TripTrees(question, graph);
        this.trial = new ChangeTrial(question, limits, graph.holdCount(), holdsAllowed);
    }

    /**
     * Looks for changes of every kind, and for assumed costs on which the answer hangs.
     *
     * @param question the trip
     * @param graph its layout, compiled with its settings
     * @param reason why the trip leads over the ground, or that it does not
     * @param limits what must not be built
     * @return changes only where the trip leads over the ground now
     */
    public static FlipAnswer find(TripQuestion question, RouteGraph graph, GroundReason reason, BuildLimits limits) {
        Flips search = new Flips(question, graph, reason, limits, HOLDS_ALLOWED);
        if (!(reason instanceof GroundReason.OffGroundIsCheapest)) {
            search.findChanges(Set.of(FlipKind.values()));
        }
        List<PriceTurn> turns =
                search.trees.now().hasOffGround() ? new PriceSearch(question, search.trees).find() : List.of();
        return new FlipAnswer(search.flips, search.none, turns, search.trial.compiled());
    }

    /**
     * Looks for changes of some kinds only, and compiles no more than so many holds.
     *
     * @param question the trip, which leads over the ground
     * @param graph its layout, compiled with its settings
     * @param reason why the trip leads over the ground
     * @param limits what must not be built
     * @param kinds what to try
     * @param holdsAllowed holds that may be compiled in all
     * @return changes, without assumed costs
     */
    public static FlipAnswer find(
            TripQuestion question,
            RouteGraph graph,
            GroundReason reason,
            BuildLimits limits,
            Set<FlipKind> kinds,
            long holdsAllowed) {
        Flips search = new Flips(question, graph, reason, limits, holdsAllowed);
        search.findChanges(kinds);
        return new FlipAnswer(search.flips, search.none, List.of(), search.trial.compiled());
    }

    private void findChanges(Set<FlipKind> kinds) {
        if (kinds.contains(FlipKind.GAP)) {
            gap();
        }
        if (kinds.contains(FlipKind.THINNER) && !(reason instanceof GroundReason.NothingToHold) && hasTooThick()) {
            found(FlipKind.THINNER, new ThinSearch(trial).find().stream().toList());
        }
        if (kinds.contains(FlipKind.LINK)) {
            link();
        }
        if (kinds.contains(FlipKind.DETOUR) && reason instanceof GroundReason.Dearer dearer) {
            found(FlipKind.DETOUR, new DetourSearch(trial, trees).find(dearer.offGround()));
        }
        if (kinds.contains(FlipKind.END)) {
            place(true);
        }
        if (kinds.contains(FlipKind.START)) {
            place(false);
        }
    }

    private void found(FlipKind kind, List<Flip> some) {
        flips.addAll(some);
        if (some.isEmpty()) {
            none.add(new NoFlip(kind, trial.canAfford(1) ? NoFlip.Why.NOT_ENOUGH : NoFlip.Why.CUT_SHORT));
        }
    }

    private void gap() {
        if (!(reason instanceof GroundReason.Missing missing)
                || missing.chain().gaps().isEmpty()) {
            return;
        }
        Chain chain = missing.chain();
        if (chain.gaps().size() + chain.tooThick().size() > 1) {
            none.add(new NoFlip(FlipKind.GAP, NoFlip.Why.SEVERAL_THINGS_MISSING));
            return;
        }
        GapSearch search = new GapSearch(trial);
        if (search.canChange(chain.gaps().get(0))) {
            found(FlipKind.GAP, search.find(chain.gaps().get(0)));
        } else {
            none.add(new NoFlip(FlipKind.GAP, NoFlip.Why.NOTHING_MOVABLE));
        }
    }

    private boolean hasTooThick() {
        return question.enclosure().supports().stream()
                .anyMatch(one ->
                        one.diameterM() > Grasp.thickestM(question.body(), one) && !Grasp.canUse(question.body(), one));
    }

    private void link() {
        if (reason instanceof GroundReason.NothingToHold) {
            none.add(new NoFlip(FlipKind.LINK, NoFlip.Why.USED_FROM_GROUND));
            return;
        }
        found(FlipKind.LINK, new AddedLinkSearch(trial, trees).find().stream().toList());
    }

    /** Moving one place helps nothing while the other is used from the ground only. */
    private void place(boolean end) {
        String other = end ? question.from() : question.to();
        if (reason instanceof GroundReason.NothingToHold nothing
                && nothing.resource().equals(other)) {
            none.add(new NoFlip(end ? FlipKind.END : FlipKind.START, NoFlip.Why.USED_FROM_GROUND));
            return;
        }
        found(end ? FlipKind.END : FlipKind.START, new PlaceSearch(trial, trees).find(end));
    }

    /**
     * The gap that is looked at, if there is just one thing missing.
     *
     * @param reason why a trip leads over the ground
     * @return the chain with more than one thing missing, or empty
     */
    public static Optional<Chain> severalMissing(GroundReason reason) {
        return reason instanceof GroundReason.Missing missing
                        && missing.chain().gaps().size()
                                        + missing.chain().tooThick().size()
                                > 1
                ? Optional.of(missing.chain())
                : Optional.empty();
    }
}
