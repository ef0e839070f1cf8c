package limbway.reports.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

import limbway.reports.chart.DataTable;
import limbway.reports.measure.criterion.DesignCriterion;
import limbway.reports.measure.criterion.Wish;
import limbway.reports.words.Figures;
import limbway.reports.words.Likelihood;
import limbway.sim.experiment.comparison.Compared;
import limbway.sim.experiment.comparison.Difference;
import limbway.sim.experiment.statistics.Bootstrap;

/** The tables of a comparison, as text for the page. */
final class CompareViews {

    private static final String BEST = "\u25c6 best: ";
    private static final String LEVEL = "\u25c7 not told from best: ";

    private CompareViews() {}

    /** Measures down, layouts across, the best of each row marked. */
    static DataTable scorecard(CompareReport report) {
        List<String> headers = new ArrayList<>(List.of("measure", "wanted"));
        report.ranked()
                .forEach(layout -> headers.add(report.compared().layouts().get(layout)));
        List<List<String>> rows = new ArrayList<>();
        for (int c = 0; c < report.criteria().size(); c++) {
            DesignCriterion criterion = report.criteria().get(c);
            List<String> row = new ArrayList<>(List.of(criterion.words(), wanted(criterion.wish())));
            Optional<Integer> best = report.best(c);
            for (int layout : report.ranked()) {
                row.add(mark(report.compared(), layout, best, c)
                        + CompareText.value(criterion, report.compared().mean(layout, c)));
            }
            rows.add(row);
        }
        return new DataTable(headers, rows);
    }

    private static String wanted(Wish wish) {
        return switch (wish) {
            case MORE -> "more";
            case LESS -> "less";
            case NEITHER -> "neither";
        };
    }

    private static String mark(Compared compared, int layout, Optional<Integer> best, int criterion) {
        if (best.isEmpty() || areAlike(compared, criterion)) {
            return "";
        }
        if (isAlike(compared, layout, best.get(), criterion)) {
            return BEST;
        }
        return CompareReport.between(compared, layout, best.get(), criterion)
                .filter(d -> !d.isDeclared())
                .map(d -> LEVEL)
                .orElse("");
    }

    private static boolean isAlike(Compared compared, int layout, int other, int criterion) {
        return layout == other
                || CompareReport.between(compared, layout, other, criterion)
                        .filter(d -> d.paired().mean() == 0 && d.paired().spread() == 0)
                        .isPresent();
    }

    /** Where no layout differs from the first, none is best. */
    private static boolean areAlike(Compared compared, int criterion) {
        return IntStream.range(0, compared.layouts().size()).allMatch(l -> isAlike(compared, l, 0, criterion));
    }

    /** All differences, one row for each pair and measure. */
    static DataTable differences(Compared compared, List<DesignCriterion> criteria) {
        List<List<String>> rows = new ArrayList<>();
        for (Difference d : compared.differences()) {
            DesignCriterion criterion = criteria.get(d.criterion());
            rows.add(List.of(
                    compared.layouts().get(d.a()) + " less "
                            + compared.layouts().get(d.b()),
                    criterion.words(),
                    CompareText.value(criterion, d),
                    Likelihood.p(d.pHolm()),
                    d.median().map(m -> median(criterion, m)).orElse(""),
                    d.ratio()
                            .map(r -> Figures.plain(r.value()) + " (" + Figures.plain(r.lo()) + " to "
                                    + Figures.plain(r.hi()) + ")")
                            .orElse(""),
                    CompareText.correlation(d.paired().correlation())));
        }
        return new DataTable(
                List.of(
                        "layouts",
                        "measure",
                        "difference",
                        "Holm-adjusted p",
                        "median difference",
                        "first over second",
                        "correlation"),
                rows);
    }

    private static String median(DesignCriterion criterion, Bootstrap.Range m) {
        double factor = criterion.isShare() ? 100 : 1;
        return (Figures.plain(factor * m.value()) + " (" + Figures.plain(factor * m.lo()) + " to "
                        + Figures.plain(factor * m.hi()) + ")")
                .replace('-', '\u2212');
    }

    /** Travel off the ground with needs and energy alone. */
    static DataTable alone(CompareReport report, Compared alone) {
        List<List<String>> rows = new ArrayList<>();
        for (int layout : report.ranked()) {
            List<String> row = new ArrayList<>(List.of(alone.layouts().get(layout)));
            for (int c = 0; c < alone.criteria().size(); c++) {
                row.add(Phrases.share(alone.mean(layout, c)));
            }
            rows.add(row);
        }
        List<String> headers = new ArrayList<>(List.of("layout"));
        for (var criterion : alone.criteria()) {
            headers.add(report.criteria().stream()
                    .filter(c -> c.name().equals(criterion.name()))
                    .findFirst()
                    .orElseThrow()
                    .words());
        }
        return new DataTable(headers, rows);
    }

    /** The measures of which there is no difference to tell, for example because there is no weather. */
    static List<String> unknown(CompareReport report) {
        List<String> names = new ArrayList<>();
        for (int c = 0; c < report.criteria().size(); c++) {
            if (report.compared().in(c).isEmpty()) {
                names.add(report.criteria().get(c).words());
            }
        }
        return names;
    }
}
