package limbway.reports.chart;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

import limbway.reports.measure.criterion.DesignCriterion;
import limbway.sim.experiment.comparison.Compared;
import limbway.sim.experiment.comparison.Difference;

/** Draws how layouts differ, with intervals: one panel for the answer, one for other shares, one for amounts. */
public final class DifferenceChart {

    private static final double PERCENT = 100;
    private static final int MOST_PAIRS = 10;
    private static final int MOST_OTHERS = 4;

    private final Compared compared;
    private final List<DesignCriterion> criteria;
    private final List<Integer> ranked;
    private final Optional<Compared> alone;
    private final DifferenceSheet sheet;

    private DifferenceChart(
            Compared compared,
            List<DesignCriterion> criteria,
            List<Integer> ranked,
            Optional<Compared> alone,
            DifferenceSheet sheet) {
        this.sheet = sheet;
        this.compared = compared;
        this.criteria = criteria;
        this.ranked = ranked;
        this.alone = alone;
    }

    /**
     * Draws the differences.
     *
     * @param compared a comparison
     * @param criteria its criteria, in the same order; the first is the answer
     * @param ranked numbers of the layouts, best first
     * @param alone the same with needs and energy alone, if that is known
     * @param table the numbers behind it
     * @return the picture
     */
    public static Picture of(
            Compared compared,
            List<DesignCriterion> criteria,
            List<Integer> ranked,
            Optional<Compared> alone,
            DataTable table) {
        return new DifferenceChart(compared, criteria, ranked, alone, DifferenceSheet.BROAD)
                .picture("differences", table);
    }

    /**
     * Draws the same for a narrow screen, with the labels above the marks.
     *
     * @param compared a comparison
     * @param criteria its criteria, in the same order; the first is the answer
     * @param ranked numbers of the layouts, best first
     * @param alone the same with needs and energy alone, if that is known
     * @param table the numbers behind it
     * @return the picture
     */
    public static Picture narrow(
            Compared compared,
            List<DesignCriterion> criteria,
            List<Integer> ranked,
            Optional<Compared> alone,
            DataTable table) {
        return new DifferenceChart(compared, criteria, ranked, alone, DifferenceSheet.NARROW)
                .picture("differences-narrow", table);
    }

    /**
     * Amounts that may be below 0: a share of their mean means nothing, so they are not drawn among those that are.
     *
     * @param compared a comparison
     * @param criteria its criteria, in the same order
     * @return those that were below 0 in some repetition of some layout and of which a difference is known, in their order
     */
    public static List<DesignCriterion> leftOff(Compared compared, List<DesignCriterion> criteria) {
        return IntStream.range(1, criteria.size())
                .filter(c -> !compared.in(c).isEmpty() && isSigned(compared, criteria, c))
                .mapToObj(criteria::get)
                .toList();
    }

    private static boolean isSigned(Compared compared, List<DesignCriterion> criteria, int criterion) {
        return !criteria.get(criterion).isShare()
                && IntStream.range(0, compared.layouts().size())
                        .anyMatch(layout -> Arrays.stream(compared.sample().of(layout, criterion))
                                .anyMatch(value -> value < 0));
    }

    private Picture picture(String id, DataTable table) {
        List<DifferencePanel> panels = panels();
        return new Picture(
                id,
                "How the layouts differ, with 95 % intervals",
                "Marks with lines to either side, one for each difference of two layouts; the line is its interval. To the right "
                        + "of the heavy upright line the layout named first has more. A filled mark: chance alone would "
                        + "hardly make such a difference; a hollow one: it may. An arrow: the line goes on. No line: it is "
                        + "shorter than its mark.",
                sheet.widthPx(),
                DifferencePanel.heightPx(panels),
                (g, area) -> DifferencePanel.paint(g, panels),
                table);
    }

    private List<DifferencePanel> panels() {
        List<DifferencePanel> panels = new ArrayList<>();
        panels.add(answer());
        String top = compared.layouts().get(ranked.get(0));
        List<String> key = new ArrayList<>();
        others().forEach(other -> key.add("less " + compared.layouts().get(other)));
        List<DifferencePanel.Row> shares = new ArrayList<>();
        List<DifferencePanel.Row> amounts = new ArrayList<>();
        for (int c = 1; c < criteria.size(); c++) {
            List<DifferencePanel.Mark> marks = marks(c);
            if (!marks.isEmpty() && !isSigned(compared, criteria, c)) {
                (criteria.get(c).isShare() ? shares : amounts)
                        .add(new DifferencePanel.Row(criteria.get(c).words(), marks));
            }
        }
        if (!shares.isEmpty()) {
            panels.add(new DifferencePanel("Other shares of " + top + " [percentage points]", key, shares, sheet));
        }
        if (!amounts.isEmpty()) {
            panels.add(new DifferencePanel(
                    "Amounts of " + top + " [% of the mean of the two layouts]", key, amounts, sheet));
        }
        return panels;
    }

    private DifferencePanel answer() {
        List<DifferencePanel.Row> rows = new ArrayList<>();
        boolean allPairs = ranked.size() * (ranked.size() - 1) / 2 <= MOST_PAIRS;
        for (int i = 0; i < ranked.size(); i++) {
            for (int j = i + 1; j < ranked.size(); j++) {
                if (i == 0 || allPairs) {
                    row(ranked.get(i), ranked.get(j)).ifPresent(rows::add);
                }
            }
        }
        List<String> key = alone.isPresent() ? List.of("as it is", "with needs and energy alone") : List.of();
        return new DifferencePanel(
                "S" + criteria.get(0).words().substring(1) + " [percentage points]", key, rows, sheet);
    }

    private Optional<DifferencePanel.Row> row(int first, int second) {
        List<DifferencePanel.Mark> marks = new ArrayList<>();
        between(compared, first, second, 0).ifPresent(d -> marks.add(mark(d, first, PERCENT, 0)));
        alone.flatMap(bare -> between(bare, first, second, 0)).ifPresent(d -> marks.add(mark(d, first, PERCENT, 1)));
        return marks.isEmpty()
                ? Optional.empty()
                : Optional.of(new DifferencePanel.Row(
                        compared.layouts().get(first) + " less "
                                + compared.layouts().get(second),
                        marks));
    }

    private List<Integer> others() {
        return ranked.subList(1, Math.min(ranked.size(), 1 + MOST_OTHERS));
    }

    /** The best layout less each of the others. */
    private List<DifferencePanel.Mark> marks(int criterion) {
        int top = ranked.get(0);
        List<DifferencePanel.Mark> marks = new ArrayList<>();
        List<Integer> others = others();
        for (int i = 0; i < others.size(); i++) {
            int other = others.get(i);
            int shape = i;
            double factor = criteria.get(criterion).isShare() ? PERCENT : PERCENT / size(top, other, criterion);
            if (Double.isFinite(factor)) {
                between(compared, top, other, criterion).ifPresent(d -> marks.add(mark(d, top, factor, shape)));
            }
        }
        return marks;
    }

    /** What an amount is related to: the mean size of the two layouts. */
    private double size(int one, int other, int criterion) {
        double sum = 0;
        for (int layout : List.of(one, other)) {
            sum += compared.mean(layout, criterion)
                    .map(mean -> Math.abs(mean.mean()))
                    .orElse(0.0);
        }
        return sum / 2;
    }

    private static DifferencePanel.Mark mark(Difference d, int first, double factor, int shape) {
        double signed = d.a() == first ? factor : -factor;
        double middle = signed * d.paired().mean();
        double half = Math.abs(factor) * d.paired().halfWidth();
        return new DifferencePanel.Mark(middle, middle - half, middle + half, shape, d.isDeclared());
    }

    private static Optional<Difference> between(Compared in, int one, int other, int criterion) {
        return in.between(Math.min(one, other), Math.max(one, other), criterion);
    }
}
