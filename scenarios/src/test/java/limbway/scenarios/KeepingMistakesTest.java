package limbway.scenarios;

import java.util.stream.Stream;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

import static org.junit.jupiter.api.Assertions.assertEquals;

/** Whole messages about bedding, closing, staff, visitors and who follows whom. */
class KeepingMistakesTest {

    private static final String FEED = "  - {feed: hatch, at: 08:00, energy-kj: 2400}\n";
    private static final String ANIMAL = "  - {name: A, body: adult female}\n";

    @ParameterizedTest(name = "{1}")
    @MethodSource({"ofKeepers", "ofPlaces", "ofAnimals"})
    void eachMistakeIsToldInOneMessage(String piece, String by, String message) {
        assertEquals(message + "\n1 problem\n", Examples.refusal(SmallYard.with(piece, by)));
    }

    static Stream<Arguments> ofKeepers() {
        return Stream.of(
                Arguments.of(FEED, FEED + "  - {bed: nest-2, at: \"15:30\", bedding: 1}\n", """
                        yard.yaml:18:11: there is no place to rest or sleep called "nest-2"
                          allowed  nest-1
                          mend     did you mean "nest-1"?
                        """),
                Arguments.of(FEED, FEED + "  - {bed: hatch, at: \"15:30\", bedding: 1}\n", """
                        yard.yaml:18:11: "hatch" has no bedding, it is declared as food
                          allowed  nest-1
                        """),
                Arguments.of(FEED, FEED + "  - {close: mast-1, from: \"08:00\", to: \"09:00\"}\n", """
                        yard.yaml:18:13: "mast-1" cannot be shut, it is declared as pole
                          allowed  hatch, nest-1
                          mend     did you mean "nest-1"?
                        """),
                Arguments.of(FEED, FEED + "  - {bed: nest-1, at: \"15:30\", bedding: 0}\n", """
                        yard.yaml:18:41: bed "nest-1" puts out no bedding
                          found    0
                          allowed  above 0, at most 1
                          mend     take the entry out; bedding is taken out by {clean: ...}
                        """),
                Arguments.of(FEED, FEED + "  - {bed: nest-1, at: \"15:30\", bedding: 50}\n", """
                        yard.yaml:18:41: bedding of bed "nest-1" is outside what is plausible
                          found    "50"
                          allowed  0 to 1, or 0 % to 100 %
                          mend     did you mean 50 %?
                        """),
                Arguments.of(FEED, FEED + "  - {bed: nest-1, at: [\"15:30\", \"3:30 pm\"], bedding: 1}\n", """
                        yard.yaml:18:33: time of bed "nest-1" is no time of the day
                          found    "3:30 pm"
                          allowed  00:00 to 23:59, one or a list
                          mend     write hours and minutes, for example "08:30"
                        """),
                Arguments.of(
                        FEED,
                        FEED
                                + "  - {bed: nest-1, at: \"9:00\", bedding: 1}\n  - {bed: nest-1, at: \"09:00\", bedding: 0.5}\n",
                        """
                        yard.yaml:19:5: "nest-1" is bedded twice at 09:00
                          mend     take one of the two out
                        """),
                Arguments.of(FEED, FEED + "  - {clean: nest-1, from: \"09:00\", to: \"09:00\"}\n", """
                        yard.yaml:18:40: end of clean "nest-1" is its start
                          found    09:00
                          mend     write another time, or from 00:00 to 24:00 for the whole day
                        """),
                Arguments.of(FEED, FEED + "  - {clean: nest-1, from: \"24:00\", to: \"09:00\"}\n", """
                        yard.yaml:18:27: start of clean "nest-1" is no time of the day
                          found    "24:00"
                          allowed  00:00 to 23:59
                          mend     write hours and minutes, for example "08:30"
                        """),
                Arguments.of(FEED, FEED + "  - {staff: rope-1, at: [0, 0], from: \"08:00\", to: \"09:00\"}\n", """
                        yard.yaml:18:13: name "rope-1" is used twice
                          found    the first is at yard.yaml:9:12
                          mend     give each its own name
                        """),
                Arguments.of(FEED, FEED + "  - {cleen: nest-1, from: \"09:00\", to: \"09:30\"}\n", """
                        yard.yaml:18:5: this entry of keepers does not say what it is
                          found    cleen, from, to
                          allowed  one of the keys feed, bed, close, clean, staff
                          mend     did you mean "clean"?
                        """),
                Arguments.of("energy-kj: 2400", "energy-kj: 2400, given: scatered", """
                        yard.yaml:17:54: unknown given "scatered" of feed "hatch"
                          allowed  heap, scattered, browse, puzzle
                          mend     did you mean "scattered"?
                        """),
                Arguments.of("energy-kj: 2400", "energy-kj: 2400, handling-min: 3", """
                        yard.yaml:17:61: handling-min of feed "hatch" is not needed unless it says given: puzzle
                          mend     take it out
                        """),
                Arguments.of("energy-kj: 2400", "energy-kj: 2400, given: puzzle, handling-min: 180 s", """
                        yard.yaml:17:76: handling-min of feed "hatch" is in another unit
                          found    "180 s"
                          allowed  0.1 min to 120 min
                          mend     write 3
                        """),
                Arguments.of(FEED, "  - {close: hatch, from: \"09:00\", to: \"09:30\"}\n", """
                        yard.yaml:17:3: nobody puts out food
                          mend     add a feeding to keepers, for example {feed: hatch, at: "08:00", energy-kj: 2400}
                        """),
                Arguments.of("[{move: hatch, on: mast-2 at 5.5}]", "[{stop: nest-1}]", """
                        yard.yaml:19:35: nobody beds, shuts or cleans "nest-1", and no staff are called so, in variant "high"
                          mend     take this change out
                        """));
    }

    static Stream<Arguments> ofPlaces() {
        return Stream.of(
                Arguments.of("portions: 4 at once", "bedding: 0.5", """
                        yard.yaml:12:36: unknown key "bedding" in food "hatch"
                          allowed  food, at, on, portions
                          mend     take it out
                        """),
                Arguments.of(
                        "variants:\n",
                        "visitors: [{viewpoint: gallery, at: [1, 1], from: \"8:00\", to: \"9:00\"}]\nvariants:\n",
                        """
                        yard.yaml:18:37: place of viewpoint "gallery" is not a list of 3 numbers
                          found    a list of 2
                          allowed  [x, y, z] in metres; z is 0 on the ground
                          mend     add 1 number
                        """),
                Arguments.of(
                        "variants:\n",
                        "visitors: [{viewpoint: gallery, at: [1, 1, 2], from: \"8:00\"}]\nvariants:\n",
                        """
                        yard.yaml:18:12: viewpoint "gallery" has no "to"
                          mend     add the line or the pair to: ...
                        """));
    }

    static Stream<Arguments> ofAnimals() {
        return Stream.of(
                Arguments.of(
                        ANIMAL,
                        ANIMAL
                                + "  - {name: Bo, body: juvenile, follows: Melatti}\n  - {name: Melati, body: juvenile}\n",
                        """
                        yard.yaml:16:41: "Bo" follows an unknown animal "Melatti"
                          allowed  A, Bo, Melati
                          mend     did you mean "Melati"?
                        """),
                Arguments.of(ANIMAL, "  - {name: A, body: adult female, follows: A}\n", """
                        yard.yaml:15:44: "A" follows itself
                          found    A and again A
                          mend     let one of them follow nobody
                        """),
                Arguments.of(ANIMAL, """
                          - {name: A, body: juvenile, follows: C}
                          - {name: B, body: juvenile, follows: A}
                          - {name: C, body: juvenile, follows: B}
                          - {name: D, body: juvenile, follows: C}
                        """, """
                        yard.yaml:15:40: animals follow one another in a ring
                          found    A, C, B and again A
                          mend     let one of them follow nobody
                        """),
                Arguments.of(ANIMAL, ANIMAL + "  - {name: Bo, body: juvenile, follows: A, group: upper}\n", """
                        yard.yaml:16:41: "Bo" follows an animal of another group
                          found    "Bo" is of group "upper", "A" of the group without a name
                          mend     give both the same group, or let it follow nobody
                        """),
                Arguments.of(
                        ANIMAL, "  - {name: A, body: adult femal}\n  - {name: Bo, body: juvenile, follows: A}\n", """
                        yard.yaml:15:21: unknown body "adult femal" of animal "A"
                          allowed  flanged male, unflanged male, adult female, adolescent, juvenile, white-handed gibbon, siamang, male chimpanzee, female chimpanzee
                          mend     did you mean "adult female"?
                        """));
    }
}
