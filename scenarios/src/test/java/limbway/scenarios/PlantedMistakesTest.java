package limbway.scenarios;

import java.util.List;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

/** Whole messages: they are part of what a keeper works with. */
class PlantedMistakesTest {

    @Test
    void theSmallYardItselfIsSound() {
        assertEquals(
                "Small yard",
                Examples.sound(SmallYard.read(SmallYard.TEXT)).study().title());
    }

    @Test
    void allMistakesOfAFileAreToldAtOnceInFileOrder() {
        String broken = """
                title: Broken yard
                site: {latitude: 91, longitude: 110.5, time-zone: Asia/Kuchin}
                ground: {outline: [[0, 0], [30, 0], [0, 20], [30, 20]], surfase: grass}
                supports:
                  - {pole: mast-1, at: [6, 5], height: 7.0, diameter: 90, material: galvanized steel}
                  - {pole: mast-2, at: [15, 6], height: -7, diameter: 0.10, material: timber}
                  - {rope: rope-1, from: mast-1 at 6.5, to: mast-3 at 6.0, diameter: 50 mm, sag: 5}
                  - {platfrom: deck-1, on: mast-1 at 5.0, size: [2.0, 1.5]}
                resources:
                  - {food: hatch, at: [28, 10, 0], portions: 1.5}
                  - {nest: hatch, on: mast-2 top}
                animals:
                  - {name: A, body: adult femal}
                keepers:
                  - {feed: hatsh, at: "25:00", energy-kj: 1e400}
                """;
        assertEquals("""
                yard.yaml:2:18: latitude of site is outside what is plausible
                  found    91 degrees
                  allowed  -90 degrees to 90 degrees
                  mend     correct the number

                yard.yaml:2:51: unknown time zone "Asia/Kuchin"
                  allowed  a name of the IANA time zone list, for example Asia/Kuching
                  mend     did you mean "Asia/Kuching"?

                yard.yaml:3:19: outline of the ground crosses or touches itself
                  found    a crossing at [15, 10]
                  mend     put the corners into the order in which one walks round the edge

                yard.yaml:3:57: unknown key "surfase" in ground
                  allowed  outline, surface, obstacles, heights
                  mend     did you mean "surface"?

                yard.yaml:5:55: diameter of pole "mast-1" is outside what is plausible
                  found    90 m
                  allowed  0.005 m to 2 m
                  mend     did you mean 0.09? (90 mm)

                yard.yaml:5:69: unknown material "galvanized steel" of pole "mast-1"
                  allowed  galvanised steel, painted steel, stainless steel, timber, bark, fibre rope, fire hose, concrete
                  mend     did you mean "galvanised steel"?

                yard.yaml:6:41: height of pole "mast-2" is outside what is plausible
                  found    -7 m
                  allowed  0.1 m to 100 m
                  mend     correct the number

                yard.yaml:7:45: end of rope "rope-1" names an unknown support "mast-3"
                  allowed  mast-1, mast-2, rope-1
                  mend     did you mean "mast-1"?

                yard.yaml:7:70: diameter of rope "rope-1" is in another unit
                  found    "50 mm"
                  allowed  0.005 m to 2 m
                  mend     write 0.05

                yard.yaml:7:82: sag of rope "rope-1" has no unit
                  found    "5"
                  allowed  0 % to 30 %
                  mend     write the percent sign, for example 5 %

                yard.yaml:8:5: this entry of supports does not say what it is
                  found    platfrom, on, size
                  allowed  one of the keys pole, beam, rope, trunk, platform, branch, ladder, hammock
                  mend     did you mean "platform"?

                yard.yaml:10:46: portions of food "hatch" is not a whole number
                  found    1.5
                  allowed  a whole number, 1 to 100

                yard.yaml:11:12: name "hatch" is used twice
                  found    the first is at yard.yaml:10:12
                  mend     give each its own name

                yard.yaml:13:21: unknown body "adult femal" of animal "A"
                  allowed  flanged male, unflanged male, adult female, adolescent, juvenile, white-handed gibbon, siamang, male chimpanzee, female chimpanzee
                  mend     did you mean "adult female"?

                yard.yaml:15:12: there is no food place "hatsh"
                  allowed  hatch
                  mend     did you mean "hatch"?

                yard.yaml:15:23: time of feed "hatsh" is no time of the day
                  found    "25:00"
                  allowed  00:00 to 23:59, one or a list
                  mend     write hours and minutes, for example "08:30"

                yard.yaml:15:43: energy-kj of feed "hatsh" is not a number
                  found    "1e400"
                  allowed  10 kJ to 200000 kJ

                17 problems
                """, Examples.refusal(SmallYard.read(broken)));
    }

    @ParameterizedTest(name = "{0} -> {1}")
    @MethodSource("mistakes")
    void eachMistakeIsToldInOneMessage(String piece, String by, String message) {
        assertEquals(message + "\n1 problem\n", Examples.refusal(SmallYard.with(piece, by)));
    }

    static Stream<Arguments> mistakes() {
        return Stream.of(
                Arguments.of("on: mast-1 at 5.0", "on: mast-1 at 9.0", """
                        yard.yaml:10:28: place of platform "deck-1" is above the top of pole "mast-1"
                          found    9 m
                          allowed  0 m to 7 m, declared at yard.yaml:7:5
                          mend     put it lower, or make mast-1 higher
                        """),
                Arguments.of("at: [28, 10, 0]", "at: [28, 10, 4]", """
                        yard.yaml:12:23: food "hatch" is in mid-air
                          found    [28, 10, 4], 4 m from the ground, the nearest thing
                          allowed  at most 0.6 m from walkable ground, a platform, a support or a crown
                          mend     move it, or hang it on something, for example on: mast-1 at 5.5
                        """),
                Arguments.of("at: [28, 10, 0]", "at: [12, 12, 0]", """
                        yard.yaml:12:23: food "hatch" lies in obstacle "pond"
                          found    [12, 12, 0], 2 m from the ground, the nearest thing
                          allowed  at most 0.6 m from walkable ground, a platform, a support or a crown
                          mend     move it, or hang it on something, for example on: mast-1 at 5.5
                        """),
                Arguments.of("at: [28, 10, 0]", "at: [38, 10, 0]", """
                        yard.yaml:12:23: food "hatch" lies outside the outline of the ground
                          found    [38, 10]
                          mend     move it inside, or make the ground larger
                        """),
                Arguments.of("at: [6, 5]", "at: [6, 25]", """
                        yard.yaml:7:24: foot of pole "mast-1" lies outside the outline of the ground
                          found    [6, 25]
                          mend     move it inside, or make the ground larger
                        """),
                Arguments.of("[14, 14], [10, 14]", "[14, 34], [10, 14]", """
                        yard.yaml:5:41: obstacle "pond" reaches beyond the outline of the ground
                          mend     move its corners inside, or make the ground larger
                        """),
                Arguments.of("to: mast-2 at 6.0", "to: mast-1 at 6.5", """
                        yard.yaml:9:45: rope "rope-1" has no length
                          found    both ends at [6, 5, 6.5]
                          mend     let it end somewhere else
                        """),
                Arguments.of("to: mast-2 at 6.0", "to: rope-1 middle", """
                        yard.yaml:9:45: end of rope "rope-1" closes a ring: each hangs on the next
                          found    rope-1 and again rope-1
                          mend     let one of them stand on the ground or hang on something else
                        """),
                Arguments.of("to: mast-2 at 6.0", "to: mast-2", """
                        yard.yaml:9:45: end of rope "rope-1" does not say where on pole "mast-2"
                          allowed  a height above the ground, or top
                          mend     for example: mast-2 at 3.5
                        """),
                Arguments.of("to: mast-2 at 6.0", "to: mast-2 somewhere", """
                        yard.yaml:9:45: end of rope "rope-1" is no place
                          found    "mast-2 somewhere"
                          allowed  [x, y, z], or words such as: mast-1 at 6.5, mast-1 top, rope-1 middle, rope-1 at 50 %, deck-1
                        """),
                Arguments.of("on: deck-1}", "on: \"deck-1 at [2, 0]\"}", """
                        yard.yaml:13:24: place of nest "nest-1" lies beside platform "deck-1"
                          found    2 m east and 0 m north of its middle
                          mend     stay within its edge
                        """),
                Arguments.of("on: deck-1}", "on: hatch}", """
                        yard.yaml:13:24: place of nest "nest-1" names an unknown support "hatch"
                          found    "hatch" is declared as food, which carries nothing
                          allowed  mast-1, mast-2, rope-1, deck-1
                        """),
                Arguments.of("on: deck-1}", "on: deck-1, at: [1, 1, 0]}", """
                        yard.yaml:13:5: nest "nest-1" must say in one way where it is
                          found    at, on
                          allowed  at: [x, y, z], or on: words such as mast-2 at 5.5
                        """),
                Arguments.of("feed: hatch", "feed: nest-1", """
                        yard.yaml:17:12: "nest-1" cannot be fed, it is declared as nest
                          allowed  hatch
                        """),
                Arguments.of("  - {name: A, body: adult female}", "  []", """
                        yard.yaml:15:3: there are no animals
                          mend     add one, for example {name: Ana, body: adult female}
                        """),
                Arguments.of("  - {feed: hatch, at: 08:00, energy-kj: 2400}", "  []", """
                        yard.yaml:17:3: nobody puts out food
                          mend     add a feeding to keepers, for example {feed: hatch, at: "08:00", energy-kj: 2400}
                        """),
                Arguments.of("energy-kj: 2400", "energy-kj: 2400, portion: 3", """
                        yard.yaml:17:47: unknown key "portion" in feed "hatch"
                          allowed  feed, at, energy-kj, given, handling-min
                          mend     take it out
                        """),
                Arguments.of("energy-kj: 2400", "energy-kj: 2.4", """
                        yard.yaml:17:41: energy-kj of feed "hatch" is outside what is plausible
                          found    2.4 kJ
                          allowed  10 kJ to 200000 kJ
                          mend     did you mean 2400? (2.4 MJ)
                        """),
                Arguments.of("body: adult female", "body: adult female, mass: 38000", """
                        yard.yaml:15:41: mass of animal "A" is outside what is plausible
                          found    38000 kg
                          allowed  2 kg to 200 kg
                          mend     did you mean 38? (38000 g)
                        """),
                Arguments.of("at: [6, 5], height: 7.0", "at: [6, 5], height: 700", """
                        yard.yaml:7:40: height of pole "mast-1" is outside what is plausible
                          found    700 m
                          allowed  0.1 m to 100 m
                          mend     did you mean 7? (700 cm)
                        """),
                Arguments.of("diameter: 0.05", "diameter: \"0,05\"", """
                        yard.yaml:9:70: diameter of rope "rope-1" is not a number
                          found    "0,05"
                          allowed  0.005 m to 2 m
                          mend     write a point, not a comma, before the decimals
                        """),
                Arguments.of(", energy-kj: 2400", "", """
                        yard.yaml:17:5: feed "hatch" has no "energy-kj"
                          mend     add the line or the pair energy-kj: ...
                        """),
                Arguments.of("body: adult female", "body: juvenile, with-infant: true", """
                        yard.yaml:15:44: only a mother carries an infant
                          found    "juvenile"
                          allowed  adult female
                        """),
                Arguments.of("title: Small yard", "title: Small yard\ntitle: again", """
                        yard.yaml:2:1: key "title" is written twice
                          found    the first is at yard.yaml:1:1
                          mend     take one of them out
                        """));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("variantMistakes")
    void mistakesInAVariantPointAtItsChange(String changes, String message) {
        String piece = "[{move: hatch, on: mast-2 at 5.5}]";
        assertEquals(message + "\n1 problem\n", Examples.refusal(SmallYard.with(piece, changes)));
    }

    static Stream<Arguments> variantMistakes() {
        return Stream.of(
                Arguments.of("[{move: hatch, on: mast-2 at 7.5}]", """
                        yard.yaml:19:46: place of food "hatch" is above the top of pole "mast-2", in variant "high"
                          found    7.5 m
                          allowed  0 m to 7 m, declared at yard.yaml:8:5
                          mend     put it lower, or make mast-2 higher
                        """),
                Arguments.of("[{remove: mast-1}]", """
                        yard.yaml:19:37: "mast-1" cannot be removed while others hang on it, in variant "high"
                          found    rope-1, deck-1
                          mend     move or remove these too
                        """),
                Arguments.of("[{alter: mast-2, height: 5}]", """
                        yard.yaml:9:45: end of rope "rope-1" is above the top of pole "mast-2", in variant "high"
                          found    6 m
                          allowed  0 m to 5 m, declared at yard.yaml:19:28
                          mend     put it lower, or make mast-2 higher
                        """),
                Arguments.of("[{move: hatsh, at: [1, 1, 0]}]", """
                        yard.yaml:19:35: there is nothing called "hatsh" to change, in variant "high"
                          allowed  mast-1, mast-2, rope-1, deck-1, hatch, nest-1
                          mend     did you mean "hatch"?
                        """),
                Arguments.of("[{add: {pole: mast-1, at: [1, 1], height: 5, diameter: 0.1, material: timber}}]", """
                        yard.yaml:19:41: name "mast-1" is used twice, in variant "high"
                          found    the first is at yard.yaml:7:12
                          mend     give each its own name
                        """),
                Arguments.of("[{unfeed: hatch}]", """
                        yard.yaml:19:27: nobody puts out food, in variant "high"
                          mend     add a feeding to keepers, for example {feed: hatch, at: "08:00", energy-kj: 2400}
                        """),
                Arguments.of(
                        "[{remove: hatch}, {add: {food: tray, at: [1, 1, 0]}}, {feed: tray, at: 09:00, energy-kj: 500}]",
                        """
                        yard.yaml:19:37: "hatch" cannot be removed while it is fed, in variant "high"
                          mend     add the change {unfeed: hatch}
                        """),
                Arguments.of("[]}\n  - {name: high, changes: []", """
                        yard.yaml:20:12: two variants are called "high"
                          found    the first is at yard.yaml:19:12
                          mend     give each a name of its own
                        """),
                Arguments.of("[]}\n  - {name: \"=1+1\", changes: []", """
                        yard.yaml:20:12: the name of a variant begins like a formula
                          found    "=1+1"
                          mend     begin it with a letter or a digit: spreadsheets would compute it
                        """),
                Arguments.of("[]}\n  - {name: as drawn, changes: []", """
                        yard.yaml:20:12: a variant cannot be called "as drawn"
                          mend     this name means something else: take another
                        """));
    }

    @Test
    void whatIsMissingAsAWholeIsToldOnce() {
        assertEquals("""
                yard.yaml:1:1: scenario has no "site"
                  mend     add the line or the pair site: ...

                yard.yaml:1:1: scenario has no "ground"
                  mend     add the line or the pair ground: ...

                yard.yaml:1:1: scenario has no "resources"
                  mend     add the line or the pair resources: ...

                yard.yaml:1:1: scenario has no "keepers"
                  mend     add the line or the pair keepers: ...

                yard.yaml:2:10: animals is not a list
                  found    "none"
                  allowed  lines that begin with a dash, or a list in square brackets

                5 problems
                """, Examples.refusal(SmallYard.read("title: Nothing\nanimals: none\n")));
    }

    @Test
    void aMistakeOfTheBaseIsNotToldAgainForAVariantThatMovesIt() {
        String broken = SmallYard.TEXT
                .replace(
                        "height: 7.0, diameter: 0.10, material: timber}\n  - {rope",
                        "diameter: 0.10, material: timber}\n  - {rope")
                .replace("[{move: hatch, on: mast-2 at 5.5}]", "[{move: mast-2, at: [16, 6]}]");
        assertEquals("""
                yard.yaml:8:5: pole "mast-2" has no "height"
                  mend     add the line or the pair height: ...

                1 problem
                """, Examples.refusal(SmallYard.read(broken)));
    }

    @Test
    void manyMistakesOfOneKindAreCounted() {
        StringBuilder poles = new StringBuilder("supports:\n");
        for (int i = 0; i < 20; i++) {
            poles.append("  - {pole: p").append(i).append(", at: [3, 3], height: 7, diameter: 90, material: timber}\n");
        }
        String answer = Examples.refusal(SmallYard.with("supports:\n", poles.toString()));
        assertEquals(5, answer.split("did you mean 0\\.09", -1).length - 1);
        assertTrue(answer.endsWith("""

                        and 15 more like: diameter of pole "…" is outside what is plausible
                        20 problems
                        """), answer);
    }

    /** A heavy male would spend more on one straight walk than a move can cost. */
    @Test
    void aGroundWiderThanAnyWalkIsTold() {
        assertEquals(
                """
                yard.yaml:4:12: the ground is too wide
                  found    5657 m from corner to corner
                  allowed  at most 4000 m

                1 problem
                """,
                Examples.refusal(SmallYard.with(
                        "outline: [[0, 0], [30, 0], [30, 20], [0, 20]]",
                        "outline: [[-2000, -2000], [2000, -2000], [2000, 2000], [-2000, 2000]]")));
    }

    @Test
    void clocksThatDoNotFitTheLongitudeAreNoted() {
        Reading.Read read = Examples.sound(SmallYard.with("time-zone: Asia/Kuching", "time-zone: UTC"));
        assertEquals(
                List.of(
                        "The clocks of time zone UTC are 7.4 hours from the sun at longitude 110.5: check the site, because"
                                + " the animals wake and sleep by the sun and are fed by the clock."),
                read.notes());
    }
}
