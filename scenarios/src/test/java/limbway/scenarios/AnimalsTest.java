package limbway.scenarios;

import java.util.List;

import org.junit.jupiter.api.Test;

import limbway.model.parameter.Parameter;
import limbway.model.study.Animal;

import static org.junit.jupiter.api.Assertions.assertEquals;

/** Names, bodies and ranks of a group. */
class AnimalsTest {

    private static Reading.Read group(String animals) {
        return Examples.sound(SmallYard.with("  - {name: A, body: adult female}\n", animals));
    }

    private static List<String> told(String animals) {
        return group(animals).study().animals().stream()
                .map(a -> a.rank() + " " + a.name() + ", " + a.body().massKg() + " kg")
                .toList();
    }

    @Test
    void withoutRanksTheHeavierComesFirst() {
        assertEquals(
                List.of("4 juvenile 1, 15.0 kg", "2 Ana, 35.0 kg", "1 flanged male 1, 74.0 kg", "3 Bea, 35.0 kg"),
                told("""
                          - {body: juvenile}
                          - {name: Ana, body: adult female}
                          - {body: flanged male}
                          - {name: Bea, body: adult female}
                        """));
    }

    @Test
    void rankedAnimalsKeepTheirRankAndTheOthersTakeTheFreeOnes() {
        assertEquals(
                List.of("3 young 1, 15.0 kg", "4 young 2, 15.0 kg", "1 Ana, 35.0 kg", "2 male, 74.0 kg"), told("""
                          - {name: young, body: juvenile, count: 2}
                          - {name: Ana, body: adult female, rank: 1}
                          - {name: male, body: flanged male}
                        """));
    }

    @Test
    void anInfantAndAnOwnMassAddUp() {
        Reading.Read read = group("  - {name: A, body: adult female, mass: 38 kg, with-infant: true}\n");
        Animal mother = read.study().animals().get(0);
        assertEquals(43, mother.body().massKg());
        assertEquals("adult female of 38 kg and infant", mother.body().name());
        assertEquals(
                List.of("body.infant.mass"),
                read.parameters().stream().map(Parameter::name).toList());
    }

    @Test
    void twoAnimalsOfOneNameOrRankAreRefused() {
        assertEquals("""
                yard.yaml:16:12: two animals are called "A"
                  found    the first is at yard.yaml:15:12
                  mend     give each animal a name of its own

                yard.yaml:16:37: two animals have rank 1
                  found    the first is at yard.yaml:15:37
                  mend     give each animal a rank of its own

                2 problems
                """, Examples.refusal(SmallYard.with("  - {name: A, body: adult female}\n", """
                          - {name: A, body: juvenile, rank: 1}
                          - {name: A, body: juvenile, rank: 1}
                        """)));
    }
}
