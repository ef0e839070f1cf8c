package limbway.model.parameter;

import java.util.List;
import java.util.Map;

import org.junit.jupiter.api.Test;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

class ParameterGroupTest {

    private static final ParameterGroup<Swing> SWING = ParameterGroup.of(
            Swing.class,
            number("swing.length", 2, 1, 4),
            number("swing.seats", 3, 1, 8),
            number("swing.moves", 1, 0, 1));

    /** One number of each kind that a record of parameters may hold. */
    record Swing(double lengthM, int seats, boolean moves) {
        Swing {
            if (lengthM < 0) {
                throw new IllegalArgumentException("swing: lengthM = " + lengthM);
            }
        }
    }

    record OfText(String text) {}

    @Test
    void theRecordIsMadeFromTheDefaults() {
        assertEquals(new Swing(2, 3, true), SWING.standard());
    }

    @Test
    void aNameChangesItsNumberAndNothingElse() {
        Swing standard = SWING.standard();
        assertEquals(new Swing(3.5, 3, true), SWING.with(standard, Map.of("swing.length", 3.5)));
        assertEquals(new Swing(2, 8, true), SWING.with(standard, Map.of("swing.seats", 8.0)));
        assertEquals(new Swing(2, 3, false), SWING.with(standard, Map.of("swing.moves", 0.0)));
    }

    @Test
    void whatWasChangedBeforeStaysChanged() {
        Swing changed = SWING.with(SWING.standard(), Map.of("swing.length", 3.5));
        assertEquals(new Swing(3.5, 4, true), SWING.with(changed, Map.of("swing.seats", 4.0)));
    }

    @Test
    void namesOfOtherGroupsArePassedOver() {
        assertEquals(SWING.standard(), SWING.with(SWING.standard(), Map.of("rope.length", 9.0)));
    }

    @Test
    void wholeNumbersAreRoundedAndTruthBeginsAtOneHalf() {
        Swing standard = SWING.standard();
        assertEquals(5, SWING.with(standard, Map.of("swing.seats", 4.5)).seats());
        assertEquals(4, SWING.with(standard, Map.of("swing.seats", 4.49)).seats());
        assertEquals(true, SWING.with(standard, Map.of("swing.moves", 0.5)).moves());
        assertEquals(false, SWING.with(standard, Map.of("swing.moves", 0.49)).moves());
    }

    @Test
    void theParametersTellTheValuesInUseAndKeepTheirRange() {
        List<Parameter> used = SWING.of(new Swing(3, 7, false));
        assertEquals(
                List.of("swing.length", "swing.seats", "swing.moves"),
                used.stream().map(Parameter::name).toList());
        assertEquals(List.of(3.0, 7.0, 0.0), used.stream().map(Parameter::value).toList());
        assertEquals(number("swing.seats", 7, 1, 8), used.get(1));
    }

    @Test
    void whatTheRecordRefusesIsRefused() {
        IllegalArgumentException refused = assertThrows(
                IllegalArgumentException.class, () -> SWING.with(SWING.standard(), Map.of("swing.length", -1.0)));
        assertEquals("swing: lengthM = -1.0", refused.getMessage());
    }

    @Test
    void eachComponentNeedsAParameter() {
        IllegalArgumentException refused = assertThrows(
                IllegalArgumentException.class, () -> ParameterGroup.of(Swing.class, number("swing.length", 2, 1, 4)));
        assertEquals("parameters of Swing: 1, allowed 3, one for each component", refused.getMessage());
    }

    @Test
    void aRecordOfTextCannotBeMade() {
        ParameterGroup<OfText> group = ParameterGroup.of(OfText.class, number("text", 0, 0, 1));
        assertThrows(IllegalArgumentException.class, group::standard);
    }

    private static Parameter number(String name, double value, double low, double high) {
        return new Parameter(name, "something", "1", value, low, high, Standing.ASSUMPTION, "no source");
    }
}
