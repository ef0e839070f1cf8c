package limbway.scenarios;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalTime;
import java.util.List;

import org.junit.jupiter.api.Test;

import limbway.model.enclosure.Enclosure;
import limbway.model.study.Study;
import limbway.scenarios.problem.Problem;
import limbway.scenarios.problem.ProblemReport;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

class SweepTest {

    private static final List<String> DRAWN = List.of("as drawn");

    private static SweepReading reading(String sweep) {
        String text = SmallYard.TEXT + "assume: {need.tiring: 300}\n" + sweep;
        return Sweep.read("yard.yaml", text.getBytes(StandardCharsets.UTF_8), Path.of("."), Examples.ASSUMABLE);
    }

    private static Sweep sweep(String sweep) {
        return reading(sweep) instanceof SweepReading.Read read
                ? read.sweep()
                : fail(ProblemReport.text(((SweepReading.Refused) reading(sweep)).problems()));
    }

    private static String refusal(String sweep) {
        return ProblemReport.text(
                assertInstanceOf(SweepReading.Refused.class, reading(sweep)).problems());
    }

    private static Study at(Sweep sweep, SweepPoint point, List<String> layouts) {
        return Examples.sound(sweep.read(point, layouts)).study();
    }

    private static double lowestOfRope(Enclosure enclosure) {
        return enclosure.supports().stream()
                .filter(support -> support.id().equals("rope-1"))
                .findFirst()
                .orElseThrow()
                .axis()
                .points()
                .stream()
                .mapToDouble(place -> place.zM())
                .min()
                .orElseThrow();
    }

    @Test
    void everyCombinationIsReadAsIfItHadBeenWritten() {
        Sweep sweep = sweep("""
                sweep:
                  vary:
                    - {of: rope-1, key: sag, values: [5 %, 12 %]}
                    - {of: deck-1, key: on, values: [mast-1 at 5.0, mast-2 at 3.0, mast-2 at 4.0]}
                """);
        List<SweepPoint> points = sweep.plan().combinations();
        assertEquals(6, points.size());
        assertEquals(
                "rope-1.sag = 5 %, deck-1.on = mast-1 at 5.0", points.get(0).words());
        assertEquals(
                "rope-1.sag = 12 %, deck-1.on = mast-2 at 4.0", points.get(5).words());
        assertEquals(List.of(), sweep.check(points, DRAWN));
        Study base = at(sweep, points.get(0), DRAWN);
        Study changed = at(sweep, points.get(5), DRAWN);
        Study written = Examples.sound(ScenarioReader.read(
                        "yard.yaml",
                        SmallYard.TEXT
                                        .replace("sag: 5 %", "sag: 12 %")
                                        .replace("on: mast-1 at 5.0", "on: mast-2 at 4.0")
                                + "assume: {need.tiring: 300}\n",
                        Path.of("."),
                        Examples.ASSUMABLE))
                .study();
        assertEquals(written.base(), changed.base());
        assertTrue(lowestOfRope(changed.base().enclosure())
                < lowestOfRope(base.base().enclosure()) - 0.3);
        assertEquals(List.of(), changed.variants());
        assertEquals(
                "high",
                at(sweep, points.get(0), List.of("high")).variants().get(0).name());
    }

    /** Keys of feedings, animals and assumed numbers; a value of another kind than words; weather is not there. */
    @Test
    void keepersAnimalsAndAssumedNumbersCanBeVaried() {
        Sweep sweep = sweep("""
                sweep:
                  vary:
                    - {of: hatch, key: energy-kj, values: [2400, 5000]}
                    - {of: A, key: body, values: [adult female, juvenile]}
                    - {of: mast-2, key: at, values: [[15, 6], [16, 7]]}
                    - {assume: need.tiring, from: 100, to: 300, steps: 3}
                    - {assume: worth.cover, values: [0.03, 0.1]}
                """);
        List<SweepPoint> points = sweep.plan().combinations();
        assertEquals(2 * 2 * 2 * 3 * 2, points.size());
        Study last = at(sweep, points.get(points.size() - 1), DRAWN);
        assertEquals(5000, last.base().feedings().get(0).energyKj(), 1e-9);
        assertEquals("juvenile", last.animals().get(0).body().name());
        assertEquals("{need.tiring=300.0, worth.cover=0.1}", last.assumed().toString());
        assertEquals(
                "{need.tiring=100.0, worth.cover=0.03}",
                at(sweep, points.get(0), DRAWN).assumed().toString());
        assertTrue(points.get(points.size() - 1).words().contains("mast-2.at = [16, 7]"));
    }

    /** Where a place is and when it is fed are both called at. */
    @Test
    void listsTellEntriesOfOneNameApart() {
        Sweep sweep = sweep("""
                sweep:
                  vary:
                    - {of: hatch, key: at, in: keepers, values: [08:00, 09:00]}
                    - {of: hatch, key: at, in: resources, values: [[28, 10, 0], [27, 10, 0]]}
                """);
        assertEquals(
                List.of("keepers.hatch.at", "resources.hatch.at"),
                sweep.plan().factors().stream().map(SweepFactor::name).toList());
        Study last = at(sweep, sweep.plan().combinations().get(3), DRAWN);
        assertEquals(LocalTime.of(9, 0), last.base().feedings().get(0).at());
        assertEquals(27, last.base().enclosure().resources().get(0).at().xM());
    }

    @Test
    void aPlaceOnASupportReplacesOneInTheOpen() {
        Sweep sweep =
                sweep("sweep: {vary: [{of: hatch, key: on, in: resources, values: [mast-1 at 2, mast-2 at 5.5]}]}\n");
        Study high = at(sweep, sweep.plan().combinations().get(1), DRAWN);
        assertEquals(
                at(sweep, sweep.plan().combinations().get(1), List.of("high"))
                        .variants()
                        .get(0)
                        .enclosure()
                        .resources(),
                high.base().enclosure().resources());
    }

    @Test
    void pointsOfARangeAreSpread() {
        Sweep sweep = sweep("""
                sweep:
                  plan: latin
                  points: 4
                  vary:
                    - {of: rope-1, key: sag, from: 2 %, to: 10 %}
                    - {of: deck-1, key: on, values: [mast-1 at 5.0, mast-2 at 3.0]}
                """);
        assertEquals(4, sweep.plan().count());
        SweepPoint point = sweep.plan().at(List.of(0.25, 0.75));
        assertEquals(List.of("4 %", "mast-2 at 3.0"), point.values());
        assertEquals(0.25, point.position(0));
        assertEquals(1, point.position(1));
        assertEquals(
                List.of("mast-1 at 5.0"),
                sweep.plan().at(List.of(1.0, 0.499)).values().subList(1, 2));
        assertEquals("10 %", sweep.plan().at(List.of(1.0, 1.0)).values().get(0));
        assertEquals(List.of("2 %", "10 %"), sweep.plan().factors().get(0).levels());
    }

    @Test
    void allMistakesOfAPlanAreToldAtOnce() {
        String said = refusal("""
                sweep:
                  plan: ful
                  points: 3
                  variants: [hihg, as drawn, as drawn]
                  vary:
                    - {of: rop-1, key: sag, values: [2 %, 5 %]}
                    - {of: rope-1, key: sagg, values: [2 %, 5 %]}
                    - {of: rope-1, key: sag, values: [2 %]}
                    - {of: rope-1, key: diameter, values: [0.05, 0.05, 0.06]}
                    - {of: hatch, key: at, values: [1, 2]}
                    - {assume: need.tirring, values: [100, 200]}
                    - {of: mast-1, key: height, from: 9, to: 8, steps: 3}
                    - {of: mast-1, key: height, from: 7 m, to: 8}
                    - {of: mast-1, key: at, values: [1, 2], from: 3}
                    - {key: height, values: [1, 2]}
                    - {of: deck-1, key: at, values: [[1, 1, 1], [2, 2, 2]]}
                    - {of: deck-1, key: on, values: [mast-1 at 4, mast-1 at 3]}
                    - {of: deck-1, key: size, from: 1, to: 2}
                """);
        for (String expected : List.of(
                "unknown plan \"ful\" of sweep",
                "points of sweep is not needed where all combinations are tried",
                "there is no variant called \"hihg\"",
                "did you mean \"high\"?",
                "this variant is named twice",
                "there is nothing called \"rop-1\" to vary",
                "did you mean \"rope-1\"?",
                "\"rope-1\" has no key \"sagg\"",
                "one value is no sweep: add another",
                "this value is written twice",
                "several lists have a \"hatch\" with the key \"at\"",
                "say which is meant: in: resources",
                "there is no parameter \"need.tirring\" to vary",
                "to of vary is not above from",
                "from and to of vary are in different units",
                "vary must say in one way what values it takes",
                "vary must say in one way what is varied",
                "deck-1.on cannot be varied beside deck-1.at",
                "vary has no \"steps\"")) {
            assertTrue(said.contains(expected), expected + "\n" + said);
        }
        assertTrue(said.contains("yard.yaml:26:12: there is nothing called \"rop-1\""), said);
    }

    @Test
    void anUnknownAssumedNumberIsAnsweredAsUnderAssume() {
        for (String name : List.of("need.tirring", "tiring")) {
            String said = refusal("""
                    sweep:
                      vary:
                        - {assume: %s, values: [100, 200]}
                    """.formatted(name));
            assertTrue(said.contains("there is no parameter \"" + name + "\" to vary\n  allowed  "), said);
            assertTrue(said.contains("need."), said);
            assertTrue(said.contains("mend     did you mean \"need.tiring\"?"), said);
        }
    }

    @Test
    void tooManyPointsAreCounted() {
        assertEquals("""
                yard.yaml:22:3: this sweep has too many points
                  found    50 × 50 = 2500 combinations
                  allowed  at most 1000
                  mend     give fewer values, or spread the points: plan: latin, points: 100
                """, refusal("""
                sweep:
                  vary:
                    - {of: rope-1, key: sag, from: 1 %, to: 9 %, steps: 50}
                    - {of: mast-1, key: height, from: 7, to: 8, steps: 50}
                """).replaceAll("\n\n.*(?s:.*)", "\n"));
    }

    /** A value that no rope can have, and a mast that is too short for what hangs on it. */
    @Test
    void valuesThatTheReaderRefusesAreToldWhereTheyStand() {
        Sweep sweep = sweep("""
                sweep:
                  vary:
                    - {of: rope-1, key: sag, values: [5 %, 5, 60 %]}
                    - {of: mast-1, key: height, values: [7, 6]}
                """);
        List<Problem> problems = sweep.check(sweep.plan().combinations(), DRAWN);
        String said = ProblemReport.text(problems);
        assertTrue(said.contains("yard.yaml:23:44: sag of rope \"rope-1\" has no unit"), said);
        assertTrue(said.contains("yard.yaml:23:47: sag of rope \"rope-1\" is outside what is plausible"), said);
        assertTrue(said.contains(", with mast-1.height = 6"), said);
    }

    /** Each value is sound alone: the rope hangs from 6.5 m or 4 m, the mast is 7 m or 5 m high. */
    @Test
    void combinationsThatAreNotSoundAreToldByTheirValues() {
        Sweep sweep = sweep("""
                sweep:
                  vary:
                    - {of: rope-1, key: to, values: [mast-2 at 4.0, mast-2 at 6.0]}
                    - {of: mast-2, key: height, values: [7, 6.5]}
                    - {of: rope-1, key: from, values: [mast-1 at 6.5, mast-2 at 6.0]}
                """);
        List<Problem> problems = sweep.check(sweep.plan().combinations(), DRAWN);
        assertTrue(!problems.isEmpty());
        assertTrue(
                problems.get(0).headline().contains("with rope-1.to = mast-2 at 6.0")
                        || problems.get(0).headline().contains("with rope-1.from = mast-2 at 6.0"),
                problems.get(0).text());
    }

    @Test
    void whatAVariantAddsCanBeVaried() {
        String text = SmallYard.TEXT.replace(
                        "[{move: hatch, on: mast-2 at 5.5}]",
                        "[{add: {rope: link, from: mast-1 at 3, to: mast-2 at 3, diameter: 0.05}}]")
                + "sweep: {variants: [high], vary: [{of: link, key: diameter, values: [0.03, 0.08]}]}\n";
        Sweep sweep = ((SweepReading.Read) Sweep.read(
                        "yard.yaml", text.getBytes(StandardCharsets.UTF_8), Path.of("."), Examples.ASSUMABLE))
                .sweep();
        assertEquals(List.of("high"), sweep.plan().layouts());
        Study thick = at(sweep, sweep.plan().combinations().get(1), List.of("high"));
        assertTrue(thick.variants().get(0).enclosure().supports().stream()
                .anyMatch(support -> support.id().equals("link") && support.diameterM() == 0.08));
    }

    @Test
    void aScenarioWithoutASweepIsToldWhatToAdd() {
        assertTrue(refusal("").contains("this scenario says nothing to sweep"));
        assertTrue(refusal("").contains("sweep: {vary: [{of: rope-1, key: sag, values: [2 %, 5 %]}]}"));
    }
}
