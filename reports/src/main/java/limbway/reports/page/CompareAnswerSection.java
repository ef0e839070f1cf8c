package limbway.reports.page;

import java.util.ArrayList;
import java.util.List;

import limbway.reports.measure.Measures;
import limbway.reports.words.Figures;

/** Which layout, by how much, how sure, why, and what to change. */
final class CompareAnswerSection {

    private CompareAnswerSection() {}

    static void write(Html html, CompareReport report) {
        html.element("h2 id=\"answer\"", "The answer");
        report.best(0)
                .ifPresent(best -> html.element(
                        "p class=\"big\"",
                        report.compared().layouts().get(best) + ": "
                                + Figures.percent(report.compared()
                                        .mean(best, 0)
                                        .orElseThrow()
                                        .mean())
                                + " off the ground"));
        html.element("p class=\"answer\"", CompareText.order(report));
        List<String> pairs = CompareText.differences(report);
        List<String> firm = new ArrayList<>(pairs.stream().limit(1).toList());
        report.alone().ifPresent(alone -> firm.add(CompareText.alone(report, alone)));
        firm.add(CompareText.stopped(report));
        report.supplements().forEach(supplement -> firm.addAll(supplement.sentences()));
        html.list(firm);
        why(html, report.watched());
        List<String> more = new ArrayList<>(pairs.stream().skip(1).toList());
        CompareText.besides(report).ifPresent(more::add);
        if (!more.isEmpty()) {
            html.open("details").element("summary", "The other pairs, and where another layout is better");
            html.list(more).close("details");
        }
    }

    /** The pair of places with most metres on the ground in each layout; told of the repetition that can be watched. */
    private static void why(Html html, List<Measures> watched) {
        if (watched.isEmpty()) {
            return;
        }
        html.element("h3", "Why, and what to change");
        html.list(watched.stream()
                .map(layout -> layout.layout() + ": "
                        + Remedies.of(layout, 1).stream().findFirst().orElse("the ground was not used on any trip."))
                .toList());
        html.paragraph(
                "Metres are those of the first repetition. limbway run tells all of it for one layout, limbway explain for one "
                        + "trip.");
    }
}
