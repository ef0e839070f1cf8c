package limbway.sim.day;

import java.util.List;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

import limbway.model.study.FeedingMethod;
import limbway.sim.food.GainCurve;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

class LarderTest {

    private static final long HOUR_MS = 3_600_000;

    @Test
    void aPlaceIsAsItsLastDeliveryMadeIt() {
        Larder larder = new Larder(1);
        larder.deliver(new Delivery.Portion(0, 1000, FeedingMethod.PUZZLE, 60_000));
        assertEquals(60_000, larder.handlingMs(0));
        assertEquals(700, larder.take(0, 700));
        larder.deliver(new Delivery.Portion(0, 500, FeedingMethod.SCATTERED, 0));
        assertEquals(GainCurve.EXPONENTIAL, larder.curve(0));
        assertEquals(0, larder.handlingMs(0));
        assertEquals(800, larder.putOutJ(0));
        assertEquals(800, larder.leftJ(0));
    }

    /** 6 kJ at 08:00 and 12 kJ at 20:00: 6/2 for half a day and 12/2 for the other half. Once a day: half of it. */
    @Test
    @Tag("derived")
    void anOrdinaryMomentFindsHalfOfWhatWasPutOut() {
        List<Delivery> plan = List.of(
                new Delivery(8 * HOUR_MS, List.of(heap(0, 6000), heap(1, 5000))),
                new Delivery(20 * HOUR_MS, List.of(heap(0, 12_000))));
        assertArrayEquals(new double[] {4500, 2500, 0}, Delivery.ordinaryJ(plan, 3), 1e-9);
    }

    private static Delivery.Portion heap(int resource, double joule) {
        return new Delivery.Portion(resource, joule, FeedingMethod.HEAP, 0);
    }
}
