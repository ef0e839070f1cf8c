package limbway.sim.experiment;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

import org.junit.jupiter.api.Test;

import limbway.model.parameter.Parameter;
import limbway.sim.animal.WorthSettings;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

class AssumptionsTest {

    /** Whole numbers and truth values: they are rounded. */
    private static final Set<String> WHOLE = Set.of("sway.cycles", "sway.softened");

    private final Assumptions standard = Assumptions.standard();

    @Test
    void eachNameChangesItsNumberAndNothingElse() {
        for (Parameter parameter : standard.parameters()) {
            // the middle between the default and an end of the range that is not the default, which no record refuses
            double end = parameter.value() == parameter.high() ? parameter.low() : parameter.high();
            double middle = (parameter.value() + end) / 2;
            double changed = WHOLE.contains(parameter.name()) ? Math.round(middle) : middle;
            Map<String, Double> before = values(standard);
            before.put(parameter.name(), changed);
            assertNotEquals(parameter.value(), changed, parameter.name());
            assertEquals(before, values(standard.with(Map.of(parameter.name(), changed))), parameter.name());
        }
    }

    @Test
    void noNameIsUsedTwice() {
        List<String> names = standard.parameters().stream().map(Parameter::name).toList();
        assertEquals(names.stream().distinct().toList(), names);
    }

    @Test
    void nothingChangedIsTheSame() {
        assertEquals(standard, standard.with(Map.of()));
        assertEquals(standard, standard.with(values(standard)));
    }

    @Test
    void aNameThatIsNoneIsRefused() {
        IllegalArgumentException refused =
                assertThrows(IllegalArgumentException.class, () -> standard.with(Map.of("worth.hight", 0.1)));
        assertEquals("assumptions: \"worth.hight\" is no parameter that can be set", refused.getMessage());
    }

    @Test
    void withoutWorthEveryTermOfWorthIsNothingAndAllElseIsAsBefore() {
        Assumptions without = standard.withoutWorth();
        assertEquals(WorthSettings.none(), without.day().worth());
        Map<String, Double> expected = values(standard);
        expected.replaceAll((name, value) -> name.startsWith("worth.") ? 0.0 : value);
        assertEquals(expected, values(without));
        assertTrue(expected.keySet().stream().anyMatch(name -> name.startsWith("worth.")));
    }

    private static Map<String, Double> values(Assumptions assumptions) {
        Map<String, Double> values = new LinkedHashMap<>();
        assumptions.parameters().forEach(p -> values.put(p.name(), p.value()));
        return values;
    }
}
