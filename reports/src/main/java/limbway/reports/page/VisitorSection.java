package limbway.reports.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import limbway.model.study.Viewpoint;
import limbway.reports.chart.DataTable;
import limbway.reports.measure.Visibility;
import limbway.reports.words.PageText;

/** How much visitors see of the animals. */
final class VisitorSection {

    private VisitorSection() {}

    static void write(Html html, Report report) {
        Optional<Visibility> visible = report.measures().visibility();
        if (visible.isPresent()) {
            html.element("h2 id=\"visitors\"", "Seen by visitors").paragraph(PageText.VISITORS);
            html.table("Share of the time with visitors", table(report, visible.get()));
        }
    }

    private static DataTable table(Report report, Visibility visible) {
        List<String> viewpoints = report.measures().outcome().habitat().layout().keeping().viewpoints().stream()
                .map(Viewpoint::id)
                .toList();
        List<String> headers = new ArrayList<>(List.of("animal"));
        viewpoints.forEach(viewpoint -> headers.add("seen from " + viewpoint));
        headers.addAll(List.of("seen from anywhere", "out of sight of all", "at a retreat"));
        List<List<String>> rows = new ArrayList<>();
        for (Map.Entry<String, Visibility.Seen> animal : visible.byAnimal().entrySet()) {
            rows.add(row(animal.getKey(), viewpoints, animal.getValue()));
        }
        rows.add(row("all", viewpoints, visible.overall()));
        return new DataTable(headers, rows);
    }

    private static List<String> row(String name, List<String> viewpoints, Visibility.Seen seen) {
        List<String> row = new ArrayList<>(List.of(name));
        for (String viewpoint : viewpoints) {
            row.add(Phrases.share(Optional.ofNullable(seen.fromViewpoint().get(viewpoint))));
        }
        row.add(Phrases.share(seen.fromAny()));
        row.add(Phrases.share(seen.outOfSight()));
        row.add(Phrases.share(seen.atRetreat()));
        return row;
    }
}
