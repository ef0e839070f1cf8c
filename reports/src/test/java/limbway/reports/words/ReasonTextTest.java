package limbway.reports.words;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.SplittableRandom;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

import limbway.model.body.LocomotorMode;
import limbway.model.energy.EnergyByPart;
import limbway.model.explain.Chain;
import limbway.model.explain.Gap;
import limbway.model.explain.GroundReason;
import limbway.model.geometry.Point;
import limbway.model.route.Search;
import limbway.model.route.Way;
import limbway.reports.Pole;

import static org.junit.jupiter.api.Assertions.assertEquals;

@Tag("derived")
class ReasonTextTest {

    private static final int PARTS = LocomotorMode.values().length;

    private static final Point HERE = new Point(0, 0, 0);

    /** Parts in the order level, climb, descent, clamber, bridge. */
    private static Way way(double lengthM, long... milliJ) {
        return new Way(List.of(0), List.of(), EnergyByPart.of(Arrays.copyOf(milliJ, PARTS)), 0, lengthM, 0, 1, 0);
    }

    @Test
    void aMissingGapIsNamedWithBothEndsAndTheReach() {
        Way over = way(12, 61_000, 313_000, 38_000, 0, 0);
        Search.Reached ways = new Search.Reached(over, Optional.empty(), Optional.of(over), 0);
        Gap gap = new Gap("rope-2", "mast-3", HERE, HERE, true, false, 2.3);
        GroundReason reason = new GroundReason.Missing(new Chain(List.of(gap), List.of()));
        assertEquals(
                "over the ground 412 J = 38 down + 61 level + 313 up; off the ground there is no way, because rope-2 "
                        + "ends 2.3 m from mast-3 and this body reaches 1.5 m",
                ReasonText.sentence(ways, reason, Pole.female()));
    }

    @Test
    void aDearerWayIsNamedWithItsLengthAndItsDearestPart() {
        Way over = way(12, 412_000, 0, 0, 0, 0);
        Way off = way(41, 0, 610_000, 110_000, 300_000, 0);
        Search.Reached ways = new Search.Reached(over, Optional.of(off), Optional.of(over), 0);
        assertEquals(
                "over the ground 412 J, all level; off the ground 1 020 J = 110 down + 610 up + 300 clambering, because "
                        + "that way is 41 m long against 12 m and takes 610 J more for climbing up",
                ReasonText.sentence(ways, new GroundReason.Dearer(off, over), Pole.female()));
    }

    @Test
    void roundedPartsAddUpToTheRoundedTotal() {
        // 0.4 + 0.4 + 0.4 = 1.2, printed 1; each part alone would be printed 0
        assertEquals(
                "1 J, all level",
                EnergyText.sum(EnergyByPart.of(Arrays.copyOf(new long[] {400, 400, 400, 0, 0}, PARTS))));
        // 1.6 + 1.6 = 3.2, printed 3 = 2 + 1
        assertEquals(
                "3 J = 2 level + 1 up",
                EnergyText.sum(EnergyByPart.of(Arrays.copyOf(new long[] {1600, 1600, 0, 0, 0}, PARTS))));
    }

    @Test
    void largeEnergiesArePrintedInKilojoulesThatStillAddUp() {
        // 16.66 + 16.66 + 16.68 = 50.00 kJ, printed with tenths as 16.7 + 16.6 + 16.7
        assertEquals(
                "50 kJ = 16.7 down + 16.7 level + 16.6 up",
                EnergyText.sum(
                        EnergyByPart.of(Arrays.copyOf(new long[] {16_660_000, 16_660_000, 16_680_000, 0, 0}, PARTS))));
        assertEquals(
                "120 kJ, all up",
                EnergyText.sum(EnergyByPart.of(Arrays.copyOf(new long[] {0, 120_400_000, 0, 0, 0}, PARTS))));
    }

    @Test
    void numbersStayWithTheirThousandsAndUnits() {
        assertEquals(
                "6\u00a0579\u00a0J in 12.5\u00a0m, <\u00a01\u00a0% of 3 animals",
                Unbroken.text("6 579 J in 12.5 m, < 1 % of 3 animals"));
    }

    @Test
    void aChainOfGapsIsReadInOrder() {
        Gap first = new Gap("deck-1", "stump", HERE, HERE, false, false, 2);
        Gap second = new Gap("stump", "rope-9", HERE, HERE, false, true, 1.75);
        assertEquals(
                "deck-1 and stump are 2 m apart, rope-9 ends 1.75 m from stump and this body reaches 1.5 m",
                ReasonText.missing(new Chain(List.of(first, second), List.of()), Pole.female()));
    }

    @Test
    void fixedDecimalsEqualThoseOfTheLibrary() {
        SplittableRandom random = new SplittableRandom(5);
        for (int i = 0; i < 2000; i++) {
            // a fiftieth of a thousandth away from the middle between two printed numbers, where rounding is not in
            // doubt
            double given = (random.nextInt(2_000_000) - 1_000_000) / 1e4 + 2e-5;
            String expected = String.format(Locale.ROOT, "%.3f", given);
            assertEquals(expected.equals("-0.000") ? "0.000" : expected, Decimals.fixed(given, 3));
        }
        assertEquals("-7", Decimals.fixed(-7.2, 0));
        assertEquals("1" + "0".repeat(20) + ".00", Decimals.fixed(1e20, 2));
    }

    @Test
    void figuresArePrintedTheSameOnEveryMachine() {
        assertEquals("1 234 567.9", Figures.decimals(1234567.891, 1));
        assertEquals("0", Figures.decimals(-0.001, 1));
        assertEquals("< 1 %", Figures.percent(0.001));
        assertEquals("> 99 %", Figures.percent(0.999));
        assertEquals("0 %", Figures.percent(0));
        assertEquals("12.5 cm", Figures.thickness(0.125));
        assertEquals("an adult", Figures.one("adult"));
        assertEquals("12.3 kJ", Figures.energy(12345));
        assertEquals("9 999 J", Figures.energy(9999));
    }
}
