package limbway.sim.experiment.link;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

import limbway.model.geometry.Point;
import limbway.model.link.Candidate;
import limbway.model.link.Gain;
import limbway.model.link.LinkKind;
import limbway.model.link.Tie;
import limbway.sim.experiment.Outcome;
import limbway.sim.experiment.RunSettings;
import limbway.sim.experiment.statistics.Interval;
import limbway.sim.experiment.trial.Criterion;
import limbway.sim.experiment.trial.Notebook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

/** Everything was noted before, so nothing is lived. */
class ProposalCheckTest {

    private static final int FRESH = 100_000;

    private record Named(String name) implements Criterion {

        @Override
        public boolean isShare() {
            return true;
        }

        @Override
        public OptionalDouble of(Outcome one) {
            throw new IllegalStateException("nothing is to be judged");
        }
    }

    /** Seven links: the first to the sixth gain less and less in the search, the seventh loses; only the third holds up. */
    private static final class Noted implements Notebook {

        @Override
        public Optional<double[]> find(String key) {
            int replication = Integer.parseInt(key.substring(key.lastIndexOf('#') + 1));
            if (key.startsWith("as it stands")) {
                return Optional.of(new double[] {0.2, 8});
            }
            int link = key.charAt(key.indexOf("from-") + 5) - '0';
            double searched = link == 6 ? 0.1 : 0.9 - 0.1 * link;
            double afresh = (link == 2 ? 0.4 : 0.2) + 0.01 * (replication % 3 - 1);
            return Optional.of(new double[] {replication > FRESH ? afresh : searched, 8});
        }

        @Override
        public void note(String key, double[] values) {
            throw new IllegalStateException("nothing is to be noted");
        }
    }

    private static List<Proposal> proposals() {
        List<Candidate> all = new ArrayList<>();
        List<Choice> choices = new ArrayList<>();
        for (int i = 0; i < 7; i++) {
            all.add(new Candidate(
                    LinkKind.ROPE,
                    new Tie("from-" + i, "from-" + i + " at 4", new Point(0, i, 4)),
                    new Tie("to-" + i, "to-" + i + " at 4", new Point(5, i, 4)),
                    0.05));
            choices.add(new Choice(List.of(i), new Gain(0.9 - 0.1 * i, 1)));
        }
        RunSettings settings = new RunSettings(1, 3, 1, LocalDate.of(2024, 3, 20), 1, 0);
        LinkQuestion question =
                new LinkQuestion(null, null, null, settings, 1, null, 1, 7, 1, new Named("share"), new Named("trips"));
        SearchProgress progress = new SearchProgress() {
            @Override
            public void at(String stage, int done, int total) {
                // nothing is lived
            }

            @Override
            public boolean wantsStop() {
                return false;
            }
        };
        Lives lives = new Lives(question, () -> null, new Noted(), progress);
        return new ProposalCheck(question, lives, all).of(choices).orElseThrow();
    }

    @Test
    void everyGainAmongTheFirstIsCheckedUnderFreshChanceAndWhatHeldUpLeads() {
        List<Proposal> proposals = proposals();
        assertEquals(
                List.of("from-2", "from-0", "from-1", "from-3", "from-4", "from-5", "from-6"),
                proposals.stream().map(one -> one.links().get(0).from().on()).toList());
        assertEquals(
                List.of(true, true, true, true, true, false, false),
                proposals.stream().map(one -> one.fresh().isPresent()).toList());
        assertEquals(
                List.of(true, false, false, false, false, false, false),
                proposals.stream().map(Proposal::heldUp).toList());
        assertEquals(5, proposals.get(0).fresh().orElseThrow().checked());
        // what the search gave is still told
        assertEquals(0.5, proposals.get(0).offGroundGain(), 1e-12);
    }

    /** With 2 degrees of freedom p is 1 - t / sqrt(2 + t²); for 2, 3, 4 t² is 27, so p = 0.03510; three times that is 0.1053. */
    @Test
    @Tag("derived")
    void whatOneQuestionWouldDeclareThreeTogetherDoNot() {
        Interval gain = Interval.of(List.of(0.2, 0.3, 0.4)).orElseThrow();
        LivedDifference difference = new LivedDifference(Optional.of(gain), gain, 1);
        FreshCheck alone = FreshCheck.of(List.of(difference)).get(0);
        // the last digit of the value above
        assertEquals(0.03510, alone.pHolm(), 5e-6);
        assertTrue(alone.heldUp());
        assertEquals(gain, alone.difference().offGround().orElseThrow());
        for (FreshCheck one : FreshCheck.of(List.of(difference, difference, difference))) {
            // rounding of the value above, three times
            assertEquals(0.1053, one.pHolm(), 1.5e-5);
            assertFalse(one.heldUp());
            Interval wider = one.difference().offGround().orElseThrow();
            assertTrue(wider.lo().orElseThrow() < 0 && wider.hi().orElseThrow() > 0.6, wider.toString());
        }
    }

    @Test
    void aLossNeverHoldsUpHoweverSureItIs() {
        Interval loss = Interval.of(List.of(-0.25, -0.25, -0.25)).orElseThrow();
        FreshCheck check = FreshCheck.of(List.of(new LivedDifference(Optional.of(loss), loss, 1)))
                .get(0);
        assertEquals(0, check.pHolm(), 0);
        assertFalse(check.heldUp());
        FreshCheck nobody = FreshCheck.of(List.of(new LivedDifference(Optional.empty(), loss, 1)))
                .get(0);
        assertEquals(1, nobody.pHolm(), 0);
        assertFalse(nobody.heldUp());
    }
}
