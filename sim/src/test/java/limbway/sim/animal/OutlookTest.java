package limbway.sim.animal;

import org.junit.jupiter.api.Test;

import limbway.model.enclosure.ResourceKind;
import limbway.sim.Yard;
import limbway.sim.habitat.Habitat;
import limbway.sim.habitat.Passages;
import limbway.sim.habitat.SunlitWays;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

/** What animals expect of the ways of a yard with a cup that can be reached from a deck and from the ground. */
class OutlookTest {

    @Test
    void aTripIsExpectedToEndWhereTheLikelierWayEnds() {
        Habitat habitat = new Yard()
                .mast("a", 5, 5, 6)
                .deck("deck-a", 5, 5, 0.7)
                .mast("b", 7.4, 5, 6)
                .deck("deck-b", 7.4, 5, 0.7)
                .rope("rope", 5, 5, 1.1, 7.4, 5, 1.1)
                .on("nest", ResourceKind.NEST, "deck-a", 4.6, 5.4, 0.7, 1)
                .at("cup", ResourceKind.WATER, 7.6, 6.2, 0.5, 1)
                .animal("A", "adult female", 1)
                .sharpness(0.5)
                .build();
        DaySettings settings = DaySettings.standard();
        var body = Yard.body("adult female");
        Passages passages = habitat.passages(body).get(0);
        Outlook outlook = new Outlook(
                passages,
                SunlitWays.NOT_MINDED,
                habitat.graph().resources().size(),
                Physiology.of(body, 1.6, settings),
                settings.withoutWorth());
        int apart = 0;
        for (int p = 0; p < passages.count(); p++) {
            if (!passages.isOpen(p)) {
                assertTrue(outlook.likelyEnd(p) < 0);
                continue;
            }
            double share = passages.ways(p).offGroundShare();
            assertEquals(passages.end(p, share >= 0.5), outlook.likelyEnd(p));
            if (share >= 0.5 && share < 1) {
                apart += passages.end(p, true) != passages.end(p, false) ? 1 : 0;
            }
        }
        assertTrue(apart > 0, "both ways must have ended apart somewhere");
    }
}
