package limbway.model.energy;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import static org.junit.jupiter.api.Assertions.assertEquals;

class DailyExpenditureTest {

    /** 1600 kcal a day for females of 120 lb and 2000 for a male of 250 lb, as the press gave Pontzer et al. 2010. */
    @ParameterizedTest
    @Tag("published")
    @CsvSource({"54.4, 1600", "113.4, 2000"})
    void theLineRunsThroughBothAnimals(double massKg, double kcal) {
        // the exponent is given to three digits: 0.0005 * ln(113.4 / 54.4) = 0.04 % of 2000
        assertEquals(kcal, DailyExpenditure.jPerDay(massKg) / 4184, 1);
    }

    /** 40 kg 44 W, 80 kg 54 W: the same line worked by hand, divided by 1.6 and by a day. */
    @ParameterizedTest
    @Tag("derived")
    @CsvSource({"40, 44", "80, 54"})
    void restingPowerIsAShareOfIt(double massKg, double watts) {
        assertEquals(watts, DailyExpenditure.restingW(massKg, 1.6), 0.5);
    }
}
