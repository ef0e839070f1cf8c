package limbway.scenarios;

import java.util.stream.Stream;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

import static org.junit.jupiter.api.Assertions.assertEquals;

/** Whole messages about roofs, sails, neighbours and leaves. */
class ShadeMistakesTest {

    @ParameterizedTest(name = "{0} -> {1}")
    @MethodSource({"covers", "places", "neighbours", "leaves", "variants"})
    void eachMistakeIsToldInOneMessage(String piece, String by, String message) {
        assertEquals(message + "\n1 problem\n", Examples.refusal(SmallShade.with(piece, by)));
    }

    static Stream<Arguments> covers() {
        return Stream.of(
                Arguments.of(", transmittance: 20 %", "", """
                        shade.yaml:11:5: sail "cloth" has no "transmittance"
                          mend     add the line or the pair transmittance: 0.2 (cloth sold as 80 % shade; dense cloth 0.05, open net 0.5)
                        """),
                Arguments.of("rise: 2.2", "rise: 2.2, transmittance: 0.3", """
                        shade.yaml:10:73: roof "shelter" has a transmittance, but a roof lets no sunlight through
                          found    "0.3"
                          mend     take it out, or write sail instead of roof
                        """),
                Arguments.of("transmittance: 20 %", "transmittance: 20", """
                        shade.yaml:11:93: transmittance of sail "cloth" is outside what is plausible
                          found    "20"
                          allowed  0 to 0.95, or 0 % to 95 %
                          mend     did you mean 20 %?
                        """),
                Arguments.of("transmittance: 20 %", "transmittance: 120 %", """
                        shade.yaml:11:93: transmittance of sail "cloth" is outside what is plausible
                          found    "120 %"
                          allowed  0 to 0.95, or 0 % to 95 %
                          mend     correct the number
                        """),
                Arguments.of("transmittance: 20 %", "transmittance: some", """
                        shade.yaml:11:93: transmittance of sail "cloth" is not a number
                          found    "some"
                          allowed  0 to 0.95
                        """),
                Arguments.of("[16, 6, 3], [12, 6, 3]]", "[16, 6, 3], [12, 6, 4]]", """
                        shade.yaml:11:28: corners of sail "cloth" do not lie in one plane
                          found    a corner 0.246 m from the plane of all
                          allowed  at most 0.01 m
                          mend     correct a corner, or divide it into triangles
                        """),
                Arguments.of("{roof: shelter, over: deck, size", "{roof: shelter, size", """
                        shade.yaml:10:5: roof "shelter" must say in one way where it is
                          found    none
                          allowed  one of: corners, outline (with height), over (with size and rise)
                        """),
                Arguments.of("rise: 2.2", "height: 2.2", """
                        shade.yaml:10:55: roof "shelter" has a height from the ground and lies over a deck
                          mend     write rise instead: how far above the deck it lies
                        """),
                Arguments.of("rise: 2.2", "rise: 220", """
                        shade.yaml:10:53: rise of roof "shelter" is outside what is plausible
                          found    220 m
                          allowed  0.3 m to 30 m
                          mend     did you mean 2.2? (220 cm)
                        """),
                Arguments.of("shift: [0.5, -0.5]", "shift: 0.5", """
                        shade.yaml:10:65: shift of roof "shelter" is not a list of 2 numbers
                          found    "0.5"
                          allowed  [east, north] in metres
                          mend     write them between [ and ], with commas between
                        """),
                Arguments.of("height: 3.5, transmittance: 0.4", "height: 3.5, rise: 2, transmittance: 0.4", """
                        shade.yaml:12:77: rise of sail "awning" is not needed where the outline is given
                          mend     take it out
                        """));
    }

    static Stream<Arguments> places() {
        return Stream.of(
                Arguments.of("over: deck", "over: deek", """
                        shade.yaml:10:27: roof "shelter" is over an unknown platform "deek"
                          allowed  deck, sling
                          mend     did you mean "deck"?
                        """),
                Arguments.of("over: deck", "over: mast", """
                        shade.yaml:10:27: roof "shelter" is over an unknown platform "mast"
                          found    "mast" is declared as pole, which is no platform
                          allowed  deck, sling
                          mend     write the name of one of these, or give corners instead
                        """),
                Arguments.of("outline: [[18, 3], [20, 3], [20, 6]]", "outline: [[28, 3], [30, 3], [30, 6]]", """
                        shade.yaml:12:29: sail "awning" lies wholly outside the outline of the ground
                          found    its first corner at [28, 3, 3.5]
                          mend     move it inside, or write what stands outside as a building under neighbours
                        """),
                Arguments.of("[16, 6, 3], [12, 6, 3]]", "[16, 6, 3], [12, 6, -3]]", """
                        shade.yaml:11:73: a corner of corners of sail "cloth" is outside what is plausible
                          found    -3 m
                          allowed  0 m to 100 m
                          mend     correct the number
                        """),
                Arguments.of(
                        "[0, 10]]}",
                        "[0, 10]], heights: {points: [[0, 0, 0], [20, 0, 0], [20, 2.9, 0], [20, 10, 9], [0, 10, 0]]}}",
                        """
                        shade.yaml:12:29: sail "awning" lies in the ground
                          found    0.4296 m below the ground at [20, 6, 3.5]
                          mend     put it higher, or move it to where the ground is lower
                        """),
                // a hill with its top at [13.5, 3], inside the edge of the sail, which is 3.75 m high there
                Arguments.of(
                        "[0, 10]]}",
                        "[0, 10]], heights: {points: [[0, 0, 0], [20, 0, 0], [20, 10, 0], [0, 10, 0], [13.5, 3, 3.9],"
                                + " [12.2, 2.2, 0], [14.3, 2.2, 0], [14.3, 3.9, 0], [12.2, 3.9, 0]]}}",
                        """
                        shade.yaml:11:28: sail "cloth" lies in the ground
                          found    0.15 m below the ground at [13.5, 3, 3.75]
                          mend     put it higher, or move it to where the ground is lower
                        """),
                // a ridge across the hammock, all of whose corners are above the ground
                Arguments.of(
                        "[0, 10]]}",
                        "[0, 10]], heights: {points: [[0, 0, 0], [14.4, 0, 0], [15, 0, 2.1], [15.6, 0, 0], [20, 0, 0],"
                                + " [20, 10, 0], [15.6, 10, 0], [15, 10, 2.1], [14.4, 10, 0], [0, 10, 0]]}}",
                        """
                        shade.yaml:7:5: hammock "sling" lies in the ground
                          found    0.1 m below the ground at [15, 4.25, 2]
                          mend     put it higher, or move it to where the ground is lower
                        """));
    }

    static Stream<Arguments> neighbours() {
        return Stream.of(
                Arguments.of("top: 150", "top: 150, bottom: 90, height: 3", """
                        shade.yaml:14:94: unknown key "height" in building "house"
                          allowed  building, outline, top, bottom
                          mend     take it out
                        """),
                Arguments.of("top: 150", "top: 5, bottom: 6", """
                        shade.yaml:14:5: building "house" ends where it begins or below
                          found    bottom 6 m, top 5 m
                          allowed  top at least 0.01 m above bottom, both measured from height 0
                          mend     correct top or bottom
                        """),
                Arguments.of("top: 150", "top: 15000", """
                        shade.yaml:14:77: top of building "house" is outside what is plausible
                          found    15000 m
                          allowed  0.3 m to 400 m
                          mend     did you mean 15? (15000 mm)
                        """),
                Arguments.of("crown-radius: 4, crown-base: 3}", "crown-radius: 4}", """
                        shade.yaml:15:5: tree "plane" has no "crown-base"
                          mend     add the line or the pair crown-base: ...
                        """),
                Arguments.of("crown-base: 3}", "crown-base: 15}", """
                        shade.yaml:15:73: crown of tree "plane" begins above its top
                          found    15 m
                          allowed  below the height, 14 m
                        """),
                Arguments.of("tree: plane", "treee: plane", """
                        shade.yaml:15:5: this entry of neighbours does not say what it is
                          found    treee, at, height, crown-radius, crown-base
                          allowed  one of the keys building, tree
                          mend     did you mean "tree"?
                        """),
                Arguments.of("tree: plane", "tree: oak", """
                        shade.yaml:15:12: name "oak" is used twice
                          found    the first is at shade.yaml:8:13
                          mend     give each its own name
                        """));
    }

    static Stream<Arguments> leaves() {
        return Stream.of(
                Arguments.of("leaf-area-index: 5", "leaf-area-index: 50", """
                        shade.yaml:8:106: leaf-area-index of trunk "oak" is outside what is plausible
                          found    50
                          allowed  0.1 to 12
                          mend     correct the number
                        """),
                Arguments.of("crown-radius: 2, crown-base: 2, leaf-area-index: 5, leaves", "leaves", """
                        shade.yaml:8:65: leaves of trunk "oak" is not needed where there is no crown
                          mend     take it out
                        """),
                Arguments.of("leaves: {from: \"04-15\", to: \"10-31\"}", "leaves: summer", """
                        shade.yaml:8:117: leaves of trunk "oak" do not say when they are there
                          found    "summer"
                          allowed  evergreen, or the first and last day in leaf: {from: "04-15", to: "10-31"}
                        """),
                Arguments.of("to: \"10-31\"", "to: \"31-10\"", """
                        shade.yaml:8:137: last day of leaves of trunk "oak" is no day of the year
                          found    "31-10"
                          allowed  month and day, for example "04-15" for the 15th of April
                          mend     write the month first: "10-31"
                        """),
                Arguments.of("to: \"10-31\"", "to: October", """
                        shade.yaml:8:137: last day of leaves of trunk "oak" is no day of the year
                          found    "October"
                          allowed  month and day, for example "04-15" for the 15th of April
                        """),
                Arguments.of(", to: \"10-31\"", "", """
                        shade.yaml:8:117: leaves has no "to"
                          mend     add the line or the pair to: ...
                        """));
    }

    static Stream<Arguments> variants() {
        return Stream.of(
                Arguments.of("changes: []", "changes: [{alter: shelter, transmittance: 0.5}]", """
                        shade.yaml:23:61: roof "shelter" has a transmittance, but a roof lets no sunlight through, in variant "other"
                          found    "0.5"
                          mend     take it out, or write sail instead of roof
                        """),
                Arguments.of("changes: []", "changes: [{remove: deck}]", """
                        shade.yaml:23:38: "deck" cannot be removed while others hang on it, in variant "other"
                          found    shelter
                          mend     move or remove these too
                        """),
                Arguments.of("changes: []", "changes: [{add: {sail: more, over: deck, size: [1, 1], rise: 1}}]", """
                        shade.yaml:23:35: sail "more" has no "transmittance", in variant "other"
                          mend     add the line or the pair transmittance: 0.2 (cloth sold as 80 % shade; dense cloth 0.05, open net 0.5)
                        """),
                Arguments.of("changes: []", "changes: [{move: shelter, over: plane}]", """
                        shade.yaml:23:51: roof "shelter" is over an unknown platform "plane", in variant "other"
                          found    "plane" is declared as tree, which is no platform
                          allowed  deck, sling
                          mend     write the name of one of these, or give corners instead
                        """));
    }
}
