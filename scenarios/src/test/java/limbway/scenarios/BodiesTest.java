package limbway.scenarios;

import java.util.List;

import org.junit.jupiter.api.Test;

import limbway.model.body.Body;
import limbway.model.body.BodyCatalogue;
import limbway.model.parameter.Parameter;
import limbway.model.parameter.Standing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

/** Bodies that a scenario defines. */
class BodiesTest {

    private static final String TUAN = "{body: Old Tuan, like: flanged male, mass: 92, gap-reach: 1.6}";
    private static final String GIBBON =
            "{body: ours, mass: 6, arm-span: 1.5, gap-reach: 1.2, overhead-reach: 1.2, leap: 6, take-off: 8, "
                    + "grip-diameter: 0.06, hug-diameter: 0.5, walkway-diameter: 0.1, brachiates: yes}";

    private static Body body(String definition, String name) {
        return Examples.sound(SmallCage.read(
                        SmallCage.TEXT.replace(TUAN, definition).replace("body: old tuan", "body: " + name)))
                .study()
                .animals()
                .get(0)
                .body();
    }

    @Test
    void whatIsNotSaidIsAsInTheBodyThatItIsLike() {
        Body tuan = body(TUAN, "Old Tuan");
        Body male = BodyCatalogue.standard().find("flanged male").orElseThrow();
        assertEquals("Old Tuan", tuan.name());
        assertEquals(92, tuan.massKg());
        assertEquals(1.6, tuan.gapReachM());
        assertEquals(male.armSpanM(), tuan.armSpanM());
        assertEquals(male.speeds(), tuan.speeds());
        assertEquals(120, tuan.structuralMassKg());
    }

    @Test
    void structuresAreDesignedForTheHeaviestThatIsKnown() {
        assertEquals(
                140, body("{body: big, like: flanged male, mass: 140}", "big").structuralMassKg());
    }

    @Test
    void aBodyMayBeLikeNoOther() {
        Body ours = body(GIBBON, "ours");
        assertEquals(6, ours.structuralMassKg());
        assertEquals(6, ours.leapM());
        assertTrue(ours.brachiates());
    }

    @Test
    void speedsAreReadOneByOne() {
        Body slow = body("{body: slow, like: juvenile, speeds: {walk: 0.5 m/s, brachiate: 0.9}}", "slow");
        assertEquals(0.5, slow.speeds().walkMPerS());
        assertEquals(0.9, slow.speeds().brachiateMPerS());
        assertEquals(0.3, slow.speeds().climbMPerS());
    }

    @Test
    void aBodyLikeAMotherCarriesAnInfant() {
        Body mother = Examples.sound(SmallCage.read(SmallCage.TEXT
                        .replace(TUAN, "{body: Ibu, like: adult female, mass: 40}")
                        .replace("body: old tuan", "body: ibu, with-infant: true")))
                .study()
                .animals()
                .get(0)
                .body();
        assertEquals("Ibu and infant", mother.name());
        assertEquals(45, mother.massKg());
    }

    @Test
    void itsFiguresStandAmongTheParametersWithTheirSource() {
        List<Parameter> all = Examples.sound(SmallCage.read(SmallCage.TEXT)).parameters();
        Parameter mass = find(all, "body.Old-Tuan.mass");
        assertEquals(92, mass.value());
        assertEquals("scenario", mass.source());
        assertEquals(Standing.UNVERIFIED, mass.standing());
        assertEquals("kg", mass.unit());
        Parameter span = find(all, "body.Old-Tuan.arm-span");
        assertEquals(2.4, span.value());
        assertTrue(span.source().startsWith("Forestry Department Sarawak"), span.source());
        assertEquals(11, all.size());
    }

    private static Parameter find(List<Parameter> all, String name) {
        return all.stream()
                .filter(parameter -> parameter.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private static String told(String definition) {
        String text = SmallCage.TEXT.replace(TUAN, definition).replace("body: old tuan", "body: juvenile");
        return Examples.refusal(SmallCage.read(text));
    }

    @Test
    void reachThatDoesNotFitTheArmsIsTold() {
        assertEquals("""
                cage.yaml:30:63: gap-reach of body "Old Tuan" does not fit its arm span
                  found    0.9 m
                  allowed  1.2 m to 2.4 m, from one arm to the whole arm span
                  mend     correct gap-reach or arm-span; where nobody measured, 0.8 of the arm span is usual

                1 problem
                """, told(TUAN.replace("1.6", "0.9")));
        assertEquals("""
                cage.yaml:30:63: gap-reach of body "Old Tuan" does not fit its arm span
                  found    2.5 m
                  allowed  1.2 m to 2.4 m, from one arm to the whole arm span
                  mend     correct gap-reach or arm-span; where nobody measured, 0.8 of the arm span is usual

                1 problem
                """, told(TUAN.replace("1.6", "2.5")));
    }

    @Test
    void aLeapWithoutATakeOffIsTold() {
        assertEquals("""
                cage.yaml:30:85: body "ours" leaps without a take-off
                  found    leap 6 m, take-off 0 m/s
                  allowed  both leap and take-off, or none of them
                  mend     add take-off: ..., in m/s; a level gap of that width needs 7.7

                1 problem
                """, told(GIBBON.replace(" take-off: 8,", "")));
        assertEquals("""
                cage.yaml:30:89: body "ours" has a take-off but no leap
                  found    leap 0 m, take-off 8 m/s
                  allowed  both leap and take-off, or none of them
                  mend     add leap: ..., the widest gap in metres

                1 problem
                """, told(GIBBON.replace(" leap: 6,", "")));
    }

    @Test
    void aStructuralMassBelowTheMassIsTold() {
        assertEquals("""
                cage.yaml:30:69: structural-mass of body "Old Tuan" is below its mass
                  found    80 kg
                  allowed  at least 92 kg
                  mend     leave it out, or write the heaviest that the animal may become

                1 problem
                """, told(TUAN.replace("gap-reach: 1.6", "structural-mass: 80")));
    }

    @Test
    void animalsAreReadThoughABodyIsWrong() {
        String broken = SmallCage.TEXT.replace("mass: 92", "mass: 920").replace("name: Tuan", "nam: Tuan");
        assertEquals("""
                cage.yaml:30:48: mass of body "Old Tuan" is outside what is plausible
                  found    920 kg
                  allowed  2 kg to 200 kg
                  mend     correct the number

                cage.yaml:32:6: unknown key "nam" in animal
                  allowed  body, name, count, with-infant, rank, mass, follows, group
                  mend     did you mean "name"?

                2 problems
                """, Examples.refusal(SmallCage.read(broken)));
    }

    @Test
    void whatIsMissingIsListed() {
        assertEquals("""
                cage.yaml:30:5: body "ours" does not say enough
                  found    nothing of arm-span, gap-reach, overhead-reach, grip-diameter, hug-diameter, walkway-diameter
                  allowed  all of these, or the name of a body that it is like
                  mend     add the missing figures, or for example like: adult female

                1 problem
                """, told("{body: ours, mass: 6}"));
    }

    @Test
    void namesOfTheCatalogueAndNamesUsedTwiceAreTold() {
        assertEquals("""
                cage.yaml:30:12: the catalogue has a body of that name
                  found    "juvenile"
                  mend     take another name, and say like: juvenile

                1 problem
                """, told("{body: juvenile, like: adolescent}"));
        assertEquals("""
                cage.yaml:31:12: two bodies are called "Old Tuan"
                  found    the first is at cage.yaml:30:12
                  mend     give each a name of its own

                1 problem
                """, told(TUAN + "\n  - {body: Old Tuan, like: juvenile}"));
    }

    @Test
    void anUnknownBodyIsToldWithThoseOfTheScenario() {
        assertTrue(Examples.refusal(SmallCage.with("body: old tuan", "body: old tuna"))
                .contains("mend     did you mean \"Old Tuan\"?"));
    }
}
