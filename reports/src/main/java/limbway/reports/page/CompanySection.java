package limbway.reports.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

import limbway.reports.chart.DataTable;
import limbway.reports.measure.Waiting;
import limbway.reports.words.IntervalText;
import limbway.reports.words.PageText;
import limbway.sim.experiment.statistics.Interval;

/** Who waits for whom, and who gives way. */
final class CompanySection {

    private CompanySection() {}

    static void write(Html html, Report report) {
        Waiting waiting = report.measures().waiting();
        html.element("h2 id=\"company\"", "Company at feeders").paragraph(PageText.COMPANY);
        html.table("Waiting for a stall [min a day] and stalls that changed hands [a day]", table(waiting));
        if (!waiting.byPlace().isEmpty()) {
            List<String> places = new ArrayList<>();
            for (Map.Entry<String, Interval> place : waiting.byPlace().entrySet()) {
                places.add(place.getKey() + ": " + aDay(place.getValue()));
            }
            html.paragraph("Stalls changed hands at:").list(places);
        }
    }

    private static DataTable table(Waiting waiting) {
        List<List<String>> rows = new ArrayList<>();
        for (Waiting.OfAnimal animal : waiting.byAnimal()) {
            rows.add(List.of(
                    animal.animal(),
                    text(animal.minutesPerDay(), "min"),
                    aDay(animal.wonPerDay()),
                    aDay(animal.lostPerDay())));
        }
        return new DataTable(List.of("animal", "waiting", "took a stall from another", "gave its stall up"), rows);
    }

    private static String aDay(Interval interval) {
        return text(interval, "a day");
    }

    private static String text(Interval interval, String unit) {
        return IntervalText.amount(interval.mean(), interval.lo(), interval.hi(), 1, unit);
    }
}
