package limbway.reports.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

import limbway.model.alteration.FreeNames;
import limbway.model.enclosure.Enclosure;
import limbway.model.geometry.Segment;
import limbway.model.link.Candidate;
import limbway.model.link.Limit;
import limbway.reports.chart.DataTable;
import limbway.reports.chart.EnclosureDrawing;
import limbway.reports.chart.Picture;
import limbway.reports.data.LinkInfo;
import limbway.reports.words.Figures;
import limbway.reports.words.PageText;
import limbway.sim.experiment.link.Fragile;
import limbway.sim.experiment.link.LinkSearch;
import limbway.sim.experiment.link.Proposal;

/** A search for links as one HTML page that needs no other file, no script and no network. */
public final class LinkPage {

    private static final int MOST_SENTENCES = 5;
    private static final int MOST_ROWS = 20;

    private static final List<String> DOUBTFUL = List.of(
            "Ropes entangle: loose ends, loops and crossing ropes can strangle. Nothing here looks at that.",
            "Anchors and loads belong to licensed people. A support that is named as an anchor was only looked at for one still "
                    + "animal, and a mast that carries one rope more is pulled sideways.",
            "A link that shortens a trip may shorten the way out. Those within reach of what is drawn as a barrier were left "
                    + "out; what is not drawn is not known.",
            "The expected gain goes by the trips that are made today. With a new link animals go elsewhere too, wait for each "
                    + "other there, and use a link only if they dare: that the best proposals were lived with tells the first two, "
                    + "and nothing here tells the third.",
            "Where something fails, all that hangs on it is taken to come down. In truth some of it may hold, and a fall is "
                    + "worse than a longer way.");

    private LinkPage() {}

    /**
     * Writes the page.
     *
     * @param report what to tell
     * @return HTML, ending with a line end; the same report gives the same text
     */
    public static String html(LinkReport report) {
        LinkInfo info = report.info();
        Html html = Html.page((info.links() > 0 ? "Which links to add: " : "What hurts most if it fails: ")
                + info.title() + ", " + info.layout());
        html.close("header").open("main");
        if (info.links() > 0) {
            html.element("h2 id=\"answer\"", "The answer");
            answer(html, report);
        }
        contents(html, info);
        if (info.links() > 0) {
            proposals(html, report);
        }
        fragile(html, report);
        html.element("h2 id=\"trust\"", "Where not to trust this").list(DOUBTFUL);
        means(html, report);
        html.element("h2 id=\"numbers\"", "Every number used").paragraph(PageText.PARAMETERS);
        html.table("Parameters", TrustSections.parameters(info.parameters()));
        again(html, info);
        return html.end();
    }

    /**
     * The pictures of the page, to be written as files too.
     *
     * @param report what to tell
     * @return the plan with the best proposals, or nothing where there are none
     */
    public static List<Picture> pictures(LinkReport report) {
        if (report.found().proposals().isEmpty()) {
            return List.of();
        }
        Proposal best = report.found().proposals().get(0);
        Enclosure with = report.enclosure();
        List<Segment> lines = new ArrayList<>();
        for (int i = 0; i < best.links().size(); i++) {
            Candidate link = best.links().get(i);
            with = link.alteration(FreeNames.ofLink(report.enclosure(), i)).applyTo(with);
            lines.addAll(link.axis().pieces());
        }
        return List.of(EnclosureDrawing.proposed(
                "links",
                "The best proposal in its place",
                with,
                lines,
                "what is proposed, named link",
                LinkText.table(report.found().proposals().subList(0, 1))));
    }

    private static void answer(Html html, LinkReport report) {
        List<Proposal> proposals = report.found().proposals();
        if (proposals.isEmpty()) {
            html.element("p class=\"answer\"", "No link within the limits brings a trip of today off the ground.");
        } else {
            html.element("p class=\"answer\"", LinkText.sentence(proposals.get(0)));
            String heldUp = LinkText.heldUp(proposals.get(0));
            if (!heldUp.isEmpty()) {
                html.paragraph(heldUp);
            }
            html.element("pre", String.join("\n", LinkText.lines(report, proposals.get(0))));
        }
        html.paragraph(LinkText.looked(report));
    }

    private static void contents(Html html, LinkInfo info) {
        html.open("nav aria-label=\"Contents\"").open("ul");
        if (info.links() > 0) {
            html.link("links", "Proposals");
        }
        html.link("fragile", "What hurts most if it fails");
        html.link("trust", "Where not to trust this");
        html.link("means", "How it was found");
        html.link("numbers", "Every number used");
        html.link("again", "To search again");
        html.link("cautions", "Before anything is built");
        html.close("ul").close("nav");
    }

    private static void proposals(Html html, LinkReport report) {
        List<Proposal> proposals = report.found().proposals();
        html.element("h2 id=\"links\"", "Proposals, best first");
        pictures(report).forEach(html::figure);
        for (Proposal proposal : proposals.subList(0, Math.min(MOST_SENTENCES, proposals.size()))) {
            html.paragraph((LinkText.sentence(proposal) + " " + LinkText.heldUp(proposal)).strip());
            html.element("pre", String.join("\n", LinkText.lines(report, proposal)));
        }
        html.table("Proposals", LinkText.table(proposals.subList(0, Math.min(MOST_ROWS, proposals.size()))));
    }

    private static void fragile(Html html, LinkReport report) {
        List<Fragile> fragile = report.found().fragile();
        html.element("h2 id=\"fragile\"", "What hurts most if it fails: look at these first");
        for (Fragile one : fragile.subList(0, Math.min(MOST_SENTENCES, fragile.size()))) {
            html.paragraph(LinkText.sentence(one));
        }
        html.table("Inspection list", LinkText.falls(fragile));
    }

    private static void means(Html html, LinkReport report) {
        LinkInfo info = report.info();
        html.element("h2 id=\"means\"", "How it was found");
        html.paragraph("Trips were counted in " + info.demandReplications() + " repetitions of "
                + info.settings().days() + " days. Every pair of places to which something can be tied was looked at; "
                + "the limits took away: " + LinkText.refused(report.found().candidates()) + ".");
        List<List<String>> rows = new ArrayList<>();
        for (Map.Entry<Limit, Integer> entry :
                report.found().candidates().refused().entrySet()) {
            rows.add(List.of(entry.getKey().words(), Figures.count(entry.getValue())));
        }
        html.table("Pairs that each limit took away", new DataTable(List.of("limit", "pairs"), rows));
        html.list(List.of(
                "Expected points: how much more of the length of today's trips would be off the ground if each were made "
                        + "again and chose its way with the link in place. Costs with a link are those of the model compiled "
                        + "with it.",
                "Points when lived with: the group lives with and without the links under the same chance, in repetitions from "
                        + Figures.count(LinkSearch.CHECK_FROM)
                        + " on, which had no part in the search; the interval is of the differences. "
                        + "The best of several is always a little flattered: so those of the first "
                        + LinkSearch.MOST_FRESH
                        + " that gained are lived with again in repetitions from "
                        + Figures.decimals(LinkSearch.HELD_UP_FROM, 0)
                        + " on. That is the fresh chance; sentences lead with its figures, and the table has both. Its intervals and "
                        + "p values are corrected by Holm's method for as many as were checked: held up means a gain with a "
                        + "corrected p below 0.05. Those that held up come first.",
                "Sets of links: ropes one after the other may be worth nothing singly and much together. They are looked for "
                        + "along the cheapest way of every trip that crosses so many new links."));
    }

    private static void again(Html html, LinkInfo info) {
        List<List<String>> rows = new ArrayList<>();
        info.record().forEach((name, value) -> {
            if (!name.equals("notes")) {
                rows.add(List.of(name.replace('_', ' '), String.valueOf(value)));
            }
        });
        html.element("h2 id=\"again\"", "To search again");
        html.table("The search", new DataTable(List.of("what", "value"), rows));
        if (!info.notes().isEmpty()) {
            html.element("h3", "Remarks on the scenario")
                    .list(info.notes().stream().map(Phrases::sentence).toList());
        }
    }
}
