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
    void theBestIsToldByTheCheckThatHadNoPartInChoosing() {
        Proposal best = new Proposal(
                List.of(LINK),
                new Gain(0.3, 5),
                Optional.of(difference(0.19, 0.21)),
                Optional.of(difference(0.149, 0.151)));
        String sentence = LinkText.sentence(best);
        assertTrue(sentence.contains("raises the off-ground share by 15 (13.7 to 16.3) points"), sentence);
        assertFalse(sentence.contains("20 ("), sentence);
        assertTrue(LinkText.heldUp(best).contains("in the search it came first with +20 (+7.3 to +32.7) points"));
        Proposal other = new Proposal(List.of(LINK), new Gain(0.3, 5), best.lived(), Optional.empty());
        assertTrue(LinkText.sentence(other).contains("by 20 (7.3 to 32.7) points"), LinkText.sentence(other));
        assertEquals("", LinkText.heldUp(other));
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
        Proposal none =
                new Proposal(List.of(LINK), new Gain(0.3, 5), Optional.of(difference()), Optional.of(difference()));
        assertTrue(LinkText.sentence(none).contains("has no off-ground share to tell, because nobody travels"));
        assertEquals("", LinkText.heldUp(none));
        assertEquals(
                "nobody travels", LinkText.table(List.of(none)).rows().get(0).get(4));
    }

    @Test
    void whatWasNotLivedWithIsOnlyExpected() {
        assertTrue(fall(null).contains("that is expected to cost 20 points of the off-ground share of today's trips"));
    }
}
