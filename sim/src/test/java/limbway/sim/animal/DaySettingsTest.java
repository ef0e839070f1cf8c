package limbway.sim.animal;

import java.lang.reflect.RecordComponent;

import org.junit.jupiter.api.Test;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

class DaySettingsTest {

    private final DaySettings settings = DaySettings.standard();

    @Test
    void everyNumberIsListedAsAParameter() {
        int numbers = 0;
        for (RecordComponent group : DaySettings.class.getRecordComponents()) {
            numbers += group.getType().getRecordComponents().length;
        }
        assertEquals(numbers, settings.parameters().size());
        assertEquals(
                numbers,
                settings.parameters().stream().map(p -> p.name()).distinct().count());
    }

    @Test
    void everyDefaultLiesInTheRangeWorthTrying() {
        settings.parameters()
                .forEach(p -> assertTrue(p.low() <= p.value() && p.value() <= p.high(), () -> p.name() + " " + p));
    }
}
