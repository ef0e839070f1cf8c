package limbway.scenarios;

import java.util.stream.Stream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

import static org.junit.jupiter.api.Assertions.assertEquals;

/** Whole messages about panels, barriers, wires, doors and supports that give way. */
class CageMistakesTest {

    @ParameterizedTest(name = "{0} -> {1}")
    @MethodSource({"supports", "panels", "bounds", "doors"})
    void eachMistakeIsToldInOneMessage(String piece, String by, String message) {
        assertEquals(message + "\n1 problem\n", Examples.refusal(SmallCage.with(piece, by)));
    }

    static Stream<Arguments> supports() {
        return Stream.of(
                Arguments.of("length: 10.6 m", "length: 9.5 m", """
                        cage.yaml:9:75: rope "line" is shorter than the way it spans
                          found    9.5 m
                          allowed  10 m to 12.4 m between its ends, [2, 8, 3] and [12, 8, 3]
                          mend     make it longer, or bring its ends closer
                        """),
                Arguments.of("length: 10.6 m", "length: 13 m", """
                        cage.yaml:9:75: rope "line" is too long to hang free
                          found    13 m
                          allowed  10 m to 12.4 m between its ends, [2, 8, 3] and [12, 8, 3]
                          mend     make it shorter
                        """),
                Arguments.of("length: 10.6 m", "length: 10.6 m, sag: 5 %", """
                        cage.yaml:9:75: rope "line" says both its sag and its length
                          allowed  one of: sag, length
                          mend     take one of them out: each follows from the other
                        """),
                Arguments.of(
                        "height: 4, diameter: 0.10, material: timber}",
                        "height: 40, diameter: 0.10, material: timber}",
                        """
                        cage.yaml:5:5: pole "mast" would bend over under its own weight
                          found    40 m high, 0.1 m thick, of timber
                          allowed  up to 21.53 m high at that thickness (Greenhill 1881)
                          mend     make it thicker or lower
                        """),
                Arguments.of("tip-diameter: 0.06", "tip-diameter: 0.6", """
                        cage.yaml:6:90: tip of pole "prop" is thicker than its other end
                          found    0.6 m
                          allowed  at most the diameter, 0.1 m
                          mend     let it taper towards the tip, or leave tip-diameter out
                        """),
                Arguments.of("stiffness: 9000 N/m", "stiffness: 9 kN/m", """
                        cage.yaml:11:69: stiffness of trunk "tree" is in another unit
                          found    "9 kN/m"
                          allowed  10 N/m to 10000000 N/m
                          mend     write 9000
                        """),
                Arguments.of("bears: 120}", "bears: 120000}", """
                        cage.yaml:10:61: bears of hammock "sling" is outside what is plausible
                          found    120000 kg
                          allowed  1 kg to 20000 kg
                          mend     did you mean 120? (120000 g)
                        """),
                Arguments.of("diameter: 0.08}", "diameter: 0.08, sways: perhaps}", """
                        cage.yaml:7:77: unknown sways "perhaps" of branch "limb"
                          allowed  true, false, yes, no
                          mend     take one of the words above
                        """));
    }

    static Stream<Arguments> panels() {
        return Stream.of(
                Arguments.of("[3, 9, 3], [0, 9, 3]]", "[3, 9, 3], [0, 9, 3.5]]", """
                        cage.yaml:14:27: corners of net "slope" do not lie in one plane
                          found    a corner 0.085 m from the plane of all
                          allowed  at most 0.01 m
                          mend     correct a corner, or divide it into triangles
                        """),
                Arguments.of("[[0, 6, 0], [3, 6, 0], [3, 9, 3], [0, 9, 3]]", "[[0, 6, 0], [0, 7, 1], [0, 8, 2]]", """
                        cage.yaml:14:27: corners of net "slope" span no area
                          found    corners in one line, or in an order that crosses itself
                          mend     put the corners into the order in which one walks round the edge
                        """),
                Arguments.of("[3, 6, 0], [3, 9, 3], [0, 9, 3]]", "[3, 6, 0], [0, 8, 2], [3, 9, 3], [0, 9, 3]]", """
                        cage.yaml:14:27: corners of net "slope" make an edge that crosses or touches itself
                          mend     put the corners into the order in which one walks round the edge
                        """),
                Arguments.of("height: 4.5, opening: 0.04", "height: 4.5, opening: 0.6", """
                        cage.yaml:15:87: opening of mesh "roof" is outside what is plausible
                          found    0.6 m
                          allowed  0.005 m to 0.5 m
                          mend     correct the number
                        """),
                Arguments.of("height: 4.5, opening: 0.04", "height: 4.5, opening: 0.004", """
                        cage.yaml:15:87: opening of mesh "roof" is outside what is plausible
                          found    0.004 m
                          allowed  0.005 m to 0.5 m
                          mend     correct the number
                        """),
                Arguments.of(
                        "outline: [[0, 0], [20, 0], [20, 10], [0, 10]], height",
                        "outline: [[0, 0], [0.01, 0], [0, 0.01]], height",
                        """
                        cage.yaml:15:27: corners of mesh "roof" span no area
                          found    corners in one line, or in an order that crosses itself
                          mend     put the corners into the order in which one walks round the edge
                        """),
                Arguments.of("height: 4.5, opening: 0.04", "opening: 0.04", """
                        cage.yaml:15:5: mesh "roof" has no "height"
                          mend     add height: 4.0
                        """),
                Arguments.of("from: [0, 0], to: [20, 0], top: 4", "from: [0, 0], to: [20, 0], bottom: 5, top: 4", """
                        cage.yaml:13:5: mesh "side" ends where it begins or below
                          found    bottom 5 m, top 4 m
                          allowed  top at least 0.01 m above bottom, both measured from height 0
                          mend     correct top or bottom
                        """),
                Arguments.of("from: [0, 0], to: [20, 0], top: 4", "from: [0, 0], to: [20, 0], top: 4, height: 4", """
                        cage.yaml:13:61: height of mesh "side" is not needed where bottom and top say it
                          mend     take it out
                        """),
                Arguments.of("to: [20, 0], top: 4", "to: [24, 0], top: 4", """
                        cage.yaml:13:24: mesh "side" lies outside the outline of the ground
                          found    [24, 0]
                          mend     move it inside, or make the ground larger
                        """),
                Arguments.of("mesh: side, from: [0, 0], to: [20, 0], top: 4", "mesh: side", """
                        cage.yaml:13:5: mesh "side" must say in one way where it is
                          found    none
                          allowed  one of: corners, from (with to and top), outline (with height)
                        """));
    }

    static Stream<Arguments> bounds() {
        return Stream.of(
                Arguments.of("line: [[0, 10], [20, 10]], top: 3", "line: [[0, 13], [20, 13]], top: 3", """
                        cage.yaml:17:24: wall "back" lies outside the outline of the ground
                          found    [0, 13]
                          mend     move it inside, or make the ground larger
                        """),
                Arguments.of("line: [[20, 2], [20, 6]]", "line: [[16, 2], [19, 2], [19, 6], [16, 6], [16, 2]]", """
                        cage.yaml:18:25: line of glass "pane" closes a ring or crosses itself
                          mend     divide it into two that meet, each with its own name
                        """),
                Arguments.of(
                        "line: [[20, 2], [20, 6]]", "line: [[20, 2], [20, 6]], outline: [[1, 1], [2, 1], [2, 2]]", """
                        cage.yaml:18:5: glass "pane" must say in one way where it is
                          found    line, outline
                          allowed  one of: line, outline
                        """),
                Arguments.of(
                        "outline: [[8, 1], [11, 1], [11, 3], [8, 3]]",
                        "outline: [[8, 11], [11, 11], [11, 13], [8, 13]]",
                        """
                        cage.yaml:19:28: water "pool" lies wholly outside the outline of the ground
                          mend     move it inside, or make the ground larger
                        """),
                Arguments.of("[20, 9.8, 2.8]", "[22, 9.8, 2.8]", """
                        cage.yaml:21:25: strand "hot" lies outside the outline of the ground
                          found    [22, 9.8]
                          mend     move it inside, or make the ground larger
                        """),
                Arguments.of("line: [[0, 9.8, 2.8], [20, 9.8, 2.8]]", "line: [[0, 9.8], [20, 9.8, 2.8]]", """
                        cage.yaml:21:26: a point of line of strand "hot" is not a list of 3 numbers
                          found    a list of 2
                          allowed  [x, y, z] in metres
                          mend     add 1 number
                        """),
                Arguments.of("line: [[0, 9.8, 2.8], [20, 9.8, 2.8]]", "line: [[0, 9.8, 2.8], [0, 9.8, 2.8]]", """
                        cage.yaml:21:25: strand "hot" has no length
                          mend     let it end somewhere else
                        """),
                Arguments.of("top: 1, clearance: 0.3", "top: 0, clearance: 0.3", """
                        cage.yaml:22:5: planting "ferns" ends where it begins or below
                          found    bottom 0 m, top 0 m
                          allowed  top at least 0.01 m above bottom, both measured from height 0
                          mend     correct top or bottom
                        """));
    }

    static Stream<Arguments> doors() {
        return Stream.of(
                Arguments.of(", open: never", "", """
                        cage.yaml:25:5: door "lift" has no "open"
                          mend     add the line or the pair open: ["08:00-16:00"], or always, or never
                        """),
                Arguments.of("open: never", "open: []", """
                        cage.yaml:25:84: hours of door "lift" hold no hours
                          allowed  always, never, or hours such as ["08:00-12:00", "14:00-18:00"]
                          mend     write never for a door that stays shut
                        """),
                Arguments.of("open: never", "open: \"8-12\"", """
                        cage.yaml:25:84: hours of door "lift" are no hours of the day
                          found    "8-12"
                          allowed  always, never, or hours such as ["08:00-12:00", "14:00-18:00"]
                          mend     write when it opens, a dash and when it shuts, for example "08:00-16:00"
                        """),
                Arguments.of("\"8:00-12:00\"", "\"8:00-15:00\"", """
                        cage.yaml:24:63: hours of door "slide" overlap
                          mend     write each hour of the day once
                        """),
                Arguments.of("in: side", "in: sied", """
                        cage.yaml:24:23: door "slide" is in an unknown panel or wall "sied"
                          allowed  side, slope, roof, back, pane
                          mend     did you mean "side"?
                        """),
                Arguments.of("in: side", "in: pool", """
                        cage.yaml:24:23: door "slide" is in an unknown panel or wall "pool"
                          found    "pool" is declared as water, which has no doors
                          allowed  side, slope, roof, back, pane
                        """),
                Arguments.of("from: [3, 0], to: [3.8, 0]", "from: [3, 0.2], to: [3.8, 0]", """
                        cage.yaml:24:5: door "slide" does not lie in mesh "side"
                          found    0.2 m from its plane
                          allowed  within 0.05 m of its plane and within its edge
                          mend     correct from, to, sill or height, or the name after in
                        """),
                Arguments.of("from: [3, 0], to: [3.8, 0]", "from: [3, 0], to: [3.8, 0], sill: 3", """
                        cage.yaml:24:5: door "slide" does not lie in mesh "side"
                          found    0.2 m beyond its edge
                          allowed  within 0.05 m of its plane and within its edge
                          mend     correct from, to, sill or height, or the name after in
                        """),
                Arguments.of("from: [6, 10], to: [7, 10]", "from: [6, 9], to: [7, 10]", """
                        cage.yaml:25:5: door "lift" does not lie in wall "back"
                          found    0.9 m beyond its edge
                          allowed  within 0.05 m of its plane and within its edge
                          mend     correct from, to, sill or height, or the name after in
                        """),
                Arguments.of("sill: 1, height: 1.5", "sill: 2, height: 1.5", """
                        cage.yaml:25:5: door "lift" does not lie in wall "back"
                          found    0.5 m above its edge
                          allowed  within 0.05 m of its plane and within its edge
                          mend     correct from, to, sill or height, or the name after in
                        """),
                Arguments.of("in: side, from: [3, 0], to: [3.8, 0]", "in: roof, from: [3, 0], to: [3.8, 0]", """
                        cage.yaml:24:5: door "slide" does not lie in mesh "roof"
                          found    a panel that does not stand upright
                          allowed  within 0.05 m of its plane and within its edge
                          mend     correct from, to, sill or height, or the name after in
                        """));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("changes")
    void mistakesInAVariantPointAtItsChange(String changes, String message) {
        assertEquals(message + "\n1 problem\n", Examples.refusal(SmallCage.with("changes: []", "changes: " + changes)));
    }

    static Stream<Arguments> changes() {
        return Stream.of(
                Arguments.of("[{remove: back}]", """
                        cage.yaml:36:38: "back" cannot be removed while others hang on it, in variant "other"
                          found    lift
                          mend     move or remove these too
                        """),
                Arguments.of("[{alter: back, top: 2}]", """
                        cage.yaml:25:5: door "lift" does not lie in wall "back", in variant "other"
                          found    0.5 m above its edge
                          allowed  within 0.05 m of its plane and within its edge
                          mend     correct from, to, sill or height, or the name after in
                        """),
                Arguments.of("[{add: {mesh: side, from: [1, 1], to: [2, 1], top: 1}}]", """
                        cage.yaml:36:42: name "side" is used twice, in variant "other"
                          found    the first is at cage.yaml:13:12
                          mend     give each its own name
                        """),
                Arguments.of("[{add: {meshes: m, from: [1, 1], to: [2, 1], top: 1}}]", """
                        cage.yaml:36:35: this entry of add does not say what it is, in variant "other"
                          found    meshes, from, to, top
                          allowed  one of the keys pole, beam, rope, trunk, platform, branch, ladder, hammock, food, water, shade, nest and 12 more
                          mend     did you mean "mesh"?
                        """));
    }

    @Test
    void manyMistakesOfManyListsAreToldAtOnceInFileOrder() {
        String broken = SmallCage.TEXT
                .replace("diameter: 0.08}", "diameter: 80 mm}")
                .replace("mesh: side", "mesh: mast")
                .replace("depth: 1.2", "depths: 1.2")
                .replace("clearance: 0.3", "clearance: 30")
                .replace("gap-reach: 1.6", "gap-reach: 0.6");
        assertEquals("""
                cage.yaml:7:64: diameter of branch "limb" is in another unit
                  found    "80 mm"
                  allowed  0.005 m to 2 m
                  mend     write 0.08

                cage.yaml:13:12: name "mast" is used twice
                  found    the first is at cage.yaml:5:12
                  mend     give each its own name

                cage.yaml:19:64: unknown key "depths" in water "pool"
                  allowed  water, outline, depth, top
                  mend     did you mean "depth"?

                cage.yaml:22:89: clearance of planting "ferns" is outside what is plausible
                  found    30 m
                  allowed  0.05 m to 5 m
                  mend     did you mean 0.3? (30 cm)

                cage.yaml:24:23: door "slide" is in an unknown panel or wall "side"
                  allowed  slope, roof, back, pane

                cage.yaml:30:63: gap-reach of body "Old Tuan" does not fit its arm span
                  found    0.6 m
                  allowed  1.2 m to 2.4 m, from one arm to the whole arm span
                  mend     correct gap-reach or arm-span; where nobody measured, 0.8 of the arm span is usual

                6 problems
                """, Examples.refusal(SmallCage.read(broken)));
    }
}
