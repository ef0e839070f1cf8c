package limbway.model.shade;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** All roofs of a family over one deck with the same number of screens, from the smallest area up. */
final class RoofSizes {

    /** Areas closer than this are the same [m2]. */
    static final double SAME_AREA_M2 = 1e-9;

    private final RoofFamily family;
    private final DeckFrame frame;
    private final int lowest;
    private final int highestA;
    private final int highestB;

    RoofSizes(RoofFamily family, DeckFrame frame, int screenCount) {
        this.family = family;
        this.frame = frame;
        int beyond = family.steps(screenCount == 0 ? family.overhangM() : family.screenedOverhangM());
        lowest = -beyond;
        highestA = (int) Math.ceil(frame.longA() / family.gridM() - 1e-9) + beyond;
        highestB = (int) Math.ceil(frame.longB() / family.gridM() - 1e-9) + beyond;
    }

    /** One size: how many steps long each way, how high, which screens. */
    record Size(int stepsA, int stepsB, double riseM, int screens, double areaM2) {}

    /** Every size, by area, then by height, screens and sides. */
    List<Size> rising(int screenCount) {
        List<Size> sizes = new ArrayList<>();
        for (double rise : family.risesM()) {
            for (int screens = 0; screens < 1 << RoofSide.values().length; screens++) {
                if (Integer.bitCount(screens) == screenCount) {
                    addSizes(sizes, rise, screens);
                }
            }
        }
        // A stable sort: sizes of the same area stay in the order above.
        sizes.sort(Comparator.comparingDouble(Size::areaM2));
        return sizes;
    }

    private void addSizes(List<Size> sizes, double rise, int screens) {
        for (int stepsA = 1; stepsA <= mostA(); stepsA++) {
            for (int stepsB = 1; stepsB <= mostB(); stepsB++) {
                RoofPlan plan = plan(0, 0, new Size(stepsA, stepsB, rise, screens, 0));
                sizes.add(new Size(stepsA, stepsB, rise, screens, plan.areaM2()));
            }
        }
    }

    int mostA() {
        return Math.min(family.steps(family.longestSideM()), highestA - lowest);
    }

    int mostB() {
        return Math.min(family.steps(family.longestSideM()), highestB - lowest);
    }

    /** Every place of one size, row by row. */
    List<RoofPlan> places(Size size) {
        List<RoofPlan> places = new ArrayList<>();
        for (int a = lowest; a + size.stepsA() <= highestA; a++) {
            for (int b = lowest; b + size.stepsB() <= highestB; b++) {
                places.add(plan(a, b, size));
            }
        }
        return places;
    }

    private RoofPlan plan(int a, int b, Size size) {
        double grid = family.gridM();
        return new RoofPlan(
                size.riseM(),
                a * grid,
                b * grid,
                (a + size.stepsA()) * grid,
                (b + size.stepsB()) * grid,
                size.screens());
    }

    /** How far a roof lies from the middle of the deck, squared. */
    double offCentre2(RoofPlan plan) {
        return plan.offCentre2(frame.longA() / 2, frame.longB() / 2);
    }

    /** A plain roof as large as everything the family reaches: where it fails, every plain roof of that height fails. */
    RoofPlan everything(double riseM) {
        double grid = family.gridM();
        return new RoofPlan(riseM, lowest * grid, lowest * grid, highestA * grid, highestB * grid, 0);
    }
}
