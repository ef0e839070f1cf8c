package limbway.reports.page;

import java.util.ArrayList;
import java.util.List;

import limbway.model.body.Body;
import limbway.model.parameter.Parameter;
import limbway.reports.chart.DataTable;
import limbway.reports.data.RunInfo;
import limbway.reports.words.Figures;
import limbway.reports.words.PageText;

/** How far to trust the result, every number in it, and how to make it again. */
final class TrustSections {

    private TrustSections() {}

    static void write(Html html, Report report) {
        html.element("h2 id=\"trust\"", "How far to trust this");
        html.element("h3", "What the model is told").list(PageText.IMPOSED);
        html.element("h3", "What comes out of it").list(PageText.EMERGES);
        html.element("h3", "Where not to lean on it").list(PageText.DOUBTFUL);
        html.element("h2 id=\"numbers\"", "Every number used").paragraph(PageText.PARAMETERS);
        html.table("The animals' bodies", bodies(report));
        html.table("Parameters", parameters(report.info().parameters()));
        again(html, report.info());
    }

    private static DataTable bodies(Report report) {
        List<List<String>> rows = new ArrayList<>();
        for (Body body : report.measures().outcome().habitat().bodies()) {
            rows.add(List.of(
                    body.name(),
                    Figures.plain(body.massKg()) + " kg",
                    Figures.metres(body.gapReachM()),
                    Figures.metres(body.overheadReachM()),
                    Figures.thickness(body.gripDiameterM()),
                    Figures.thickness(body.hugDiameterM()),
                    Figures.thickness(body.walkwayDiameterM())));
        }
        return new DataTable(
                List.of(
                        "body",
                        "mass",
                        "reach over a gap",
                        "reach above the feet",
                        "thickest grip",
                        "thickest hug of a rough stem",
                        "thinnest walkway"),
                rows);
    }

    static DataTable parameters(List<Parameter> parameters) {
        List<List<String>> rows = new ArrayList<>();
        for (Parameter parameter : parameters) {
            String unit = parameter.unit().equals("1") ? "" : " " + parameter.unit();
            rows.add(List.of(
                    parameter.meaning(),
                    Figures.plain(parameter.value()) + unit,
                    Figures.plain(parameter.low()) + " to " + Figures.plain(parameter.high()) + unit,
                    parameter.standing().word(),
                    parameter.source(),
                    parameter.name()));
        }
        return new DataTable(List.of("meaning", "value", "range", "standing", "source", "name"), rows);
    }

    private static void again(Html html, RunInfo info) {
        html.element("h2 id=\"again\"", "To make this run again");
        var settings = info.settings();
        html.table(
                "The run",
                new DataTable(
                        List.of("what", "value"),
                        List.of(
                                List.of("scenario", info.scenario()),
                                List.of("SHA-256 of the scenario", info.sha256Hex()),
                                List.of("layout", info.layout()),
                                List.of("seed", Integer.toString(settings.seed())),
                                List.of("repetitions", info.finishedReplications() + " of " + settings.replications()),
                                List.of("days in each", Integer.toString(settings.days())),
                                List.of("days of warm-up before", Integer.toString(settings.warmUpDays())),
                                List.of("worth of places", info.worth() ? "on" : "off, needs and energy alone"),
                                List.of("date of day 1", settings.date().toString()),
                                List.of("Limbway", info.limbwayVersion()),
                                List.of("Java", info.javaVersion()))));
        if (!info.notes().isEmpty()) {
            html.element("h3", "Remarks on the scenario")
                    .list(info.notes().stream().map(Phrases::sentence).toList());
        }
    }
}
