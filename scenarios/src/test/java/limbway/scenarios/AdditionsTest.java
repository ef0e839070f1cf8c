package limbway.scenarios;

import java.util.Set;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import static org.junit.jupiter.api.Assertions.assertEquals;

/** What is new to an animal that knows the layout as drawn. */
class AdditionsTest {

    @ParameterizedTest(name = "{0} -> {1}")
    @CsvSource(
            delimiter = '|',
            value = {
                "[] | ''",
                "[{remove: rope-1}] | ''",
                "'[{move: hatch, on: mast-2 at 5.5}]' | hatch",
                // what hangs on a moved thing stands elsewhere too
                "'[{move: mast-1, at: [7, 8]}]' | 'mast-1 rope-1 deck-1 nest-1'",
                "'[{move: deck-1, on: mast-2 at 5.0}]' | 'deck-1 nest-1'",
                // the deck hangs at 5 m as before, the rope at 6.5 m
                "'[{alter: mast-1, height: 9}]' | mast-1",
                "'[{alter: nest-1, bedding: 1}]' | nest-1",
                "'[{alter: mast-1, bears: 200}]' | ''",
                // a pole to which something is tied sways no more, and is still the old pole
                "'[{add: {rope: r, from: mast-2 at 3, to: [9, 9], diameter: 0.05}}]' | r",
                "'[{add: {mesh: m, from: [1, 1], to: [4, 1], top: 3}}, {add: {water: tap, at: [2, 2]}}]' | 'm tap'",
                "'[{remove: rope-1}, {add: {rope: rope-1, from: mast-1 at 6.5, to: mast-2 at 6.0, diameter: 0.05, sag: 5 %}}]' | ''"
            })
    void isFoundByComparingTheLayouts(String changes, String expected) {
        Set<String> added = Examples.sound(SmallYard.with("[{move: hatch, on: mast-2 at 5.5}]", changes))
                .study()
                .variants()
                .get(0)
                .added();
        assertEquals(expected.isEmpty() ? Set.of() : Set.of(expected.split(" ")), added);
    }

    @Test
    void nothingIsNewInTheBase() {
        assertEquals(
                Set.of(),
                Examples.sound(SmallYard.read(SmallYard.TEXT)).study().base().added());
    }
}
