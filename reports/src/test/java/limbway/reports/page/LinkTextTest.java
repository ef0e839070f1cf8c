package limbway.reports.page;

import java.util.List;
import java.util.Optional;
import java.util.Set;

import org.junit.jupiter.api.Test;

import limbway.model.geometry.Point;
import limbway.model.link.Candidate;
import limbway.model.link.Fall;
import limbway.model.link.Gain;
import limbway.model.link.LinkKind;
import limbway.model.link.Tie;
import limbway.sim.experiment.link.Fragile;
import limbway.sim.experiment.link.FreshCheck;
import limbway.sim.experiment.link.LivedDifference;
import limbway.sim.experiment.link.Proposal;
import limbway.sim.experiment.statistics.Interval;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

class LinkTextTest {

    private static final Candidate LINK = new Candidate(
            LinkKind.POLE,
            new Tie("a", "a at 4", new Point(0, 0, 4)),
            new Tie("b", "b at 4", new Point(5, 0, 4)),
            0.08);

    private static LivedDifference difference(double... shares) {
        return new LivedDifference(
                Interval.of(java.util.Arrays.stream(shares).boxed().toList()),
                Interval.of(List.of(3.0, 3.0)).orElseThrow(),
                1001);
    }

    private static String fall(LivedDifference lived) {
        Fall fall = new Fall("mast", Set.of("line"), null, Set.of("tray"));
        return LinkText.sentence(new Fragile(fall, new Gain(-0.2, -4), Optional.ofNullable(lived)));
    }

    @Test
    void aProposalIsToldByTheCheckThatHadNoPartInChoosing() {
        Proposal best = new Proposal(
                List.of(LINK),
                new Gain(0.3, 5),
                Optional.of(difference(0.19, 0.21)),
                Optional.of(new FreshCheck(difference(0.149, 0.151), 0.012, 3)));
        String sentence = LinkText.sentence(best);
        assertTrue(sentence.contains("raises the off-ground share by 15 (13.7 to 16.3) points"), sentence);
        assertFalse(sentence.contains("20 ("), sentence);
        assertEquals(
                "It held up on fresh chance (Holm-adjusted for the 3 checked: p = 0.012); in the search it gave +20 (+7.3 to "
                        + "+32.7) points.",
                LinkText.heldUp(best));
        assertEquals(
                "+15 (+13.7 to +16.3): held up",
                LinkText.table(List.of(best)).rows().get(0).get(1));
        Proposal other = new Proposal(List.of(LINK), new Gain(0.3, 5), best.lived(), Optional.empty());
        assertTrue(LinkText.sentence(other).contains("by 20 (7.3 to 32.7) points"), LinkText.sentence(other));
        assertEquals("", LinkText.heldUp(other));
        assertEquals("not checked", LinkText.table(List.of(other)).rows().get(0).get(1));
    }

    @Test
    void whatDidNotHoldUpIsSaidPlainly() {
        Proposal flattered = new Proposal(
                List.of(LINK),
                new Gain(0.3, 5),
                Optional.of(difference(0.19, 0.21)),
                Optional.of(new FreshCheck(difference(-0.1, 0.12), 0.9, 2)));
        assertTrue(
                LinkText.sentence(flattered).contains("changes the off-ground share by no more than chance may: +1 ("),
                LinkText.sentence(flattered));
        assertEquals(
                "It did not hold up on fresh chance (Holm-adjusted for the 2 checked: p = 0.90); in the search it gave +20 "
                        + "(+7.3 to +32.7) points.",
                LinkText.heldUp(flattered));
        assertTrue(LinkText.table(List.of(flattered)).rows().get(0).get(1).endsWith(": did not hold up"));
    }

    @Test
    void tripsThatGoAnotherWayThanTheShareAreExplained() {
        Interval share = Interval.of(List.of(0.1, 0.1)).orElseThrow();
        Interval more = Interval.of(List.of(-1.0, -1.0)).orElseThrow();
        assertEquals(
                "A pole of 5 m from a at 4 to b at 4 raises the off-ground share by 10 (10 to 10) points, although 1 more trip a "
                        + "day touches the ground: the share goes by metres of travel, not by trips.",
                lived(new LivedDifference(Optional.of(share), more, 1001)));
        Proposal proposal = new Proposal(
                List.of(LINK),
                new Gain(0.3, 5),
                Optional.of(new LivedDifference(Optional.of(share), more, 1001)),
                Optional.empty());
        assertEquals("\u22121", LinkText.table(List.of(proposal)).rows().get(0).get(5));
        Interval unsure = Interval.of(List.of(-3.0, 1.0)).orElseThrow();
        assertEquals(
                "A pole of 5 m from a at 4 to b at 4 raises the off-ground share by 10 (10 to 10) points; how many trips a day "
                        + "touch the ground differs by no more than chance may.",
                lived(new LivedDifference(Optional.of(share), unsure, 1001)));
    }

    private static String lived(LivedDifference difference) {
        return LinkText.sentence(
                new Proposal(List.of(LINK), new Gain(0.3, 5), Optional.of(difference), Optional.empty()));
    }

    @Test
    void aFallWhoseIntervalHoldsNothingIsNoMoreThanChance() {
        assertEquals(
                "If mast fails, and with it line, that changes the off-ground share by no more than chance may: "
                        + "\u22125 (\u221268.5 to +58.5) points; tray is then used from the ground.",
                fall(difference(-0.1, 0)));
        assertEquals(
                "If mast fails, and with it line, that lowers the off-ground share by 20 (7.3 to 32.7) points; tray is then "
                        + "used from the ground.",
                fall(difference(-0.19, -0.21)));
    }

    @Test
    void whereNobodyTravelsThatIsSaid() {
        assertEquals(
                "If mast fails, and with it line, that leaves no off-ground share to tell, because nobody travels; tray is "
                        + "then used from the ground.",
                fall(difference()));
        Proposal none = new Proposal(
                List.of(LINK),
                new Gain(0.3, 5),
                Optional.of(difference()),
                Optional.of(new FreshCheck(difference(), 1, 1)));
        assertTrue(LinkText.sentence(none).contains("has no off-ground share to tell, because nobody travels"));
        assertEquals("It did not hold up on fresh chance: nobody travels there.", LinkText.heldUp(none));
        assertEquals(
                "nobody travels", LinkText.table(List.of(none)).rows().get(0).get(2));
    }

    @Test
    void whatWasNotLivedWithIsOnlyExpected() {
        assertTrue(fall(null).contains("that is expected to cost 20 points of the off-ground share of today's trips"));
    }
}
