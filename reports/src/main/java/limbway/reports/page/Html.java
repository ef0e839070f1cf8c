package limbway.reports.page;

import java.util.List;

import limbway.reports.chart.DataTable;
import limbway.reports.chart.Picture;
import limbway.reports.chart.PictureFormat;
import limbway.reports.words.Cautions;
import limbway.reports.words.Directions;
import limbway.reports.words.Unbroken;
import limbway.reports.words.Xml;

/** Writes HTML; every text is escaped here and nowhere else. */
final class Html {

    private final StringBuilder out = new StringBuilder();

    /** The head of a page without scripts: its title and the caution over everything; the header is left open. */
    static Html page(String title) {
        return page(title, "'none'", "");
    }

    /** The head of a page that runs the scripts that stand in it, and no others. */
    static Html pageWithScripts(String title) {
        return pageWithScripts(title, "");
    }

    /** The same with more of a style sheet. */
    static Html pageWithScripts(String title, String moreCss) {
        return page(title, "'unsafe-inline' data:", moreCss);
    }

    /** Whatever a name may hold, a browser requests nothing and runs nothing that is not allowed here. */
    private static Html page(String title, String scripts, String moreCss) {
        Html html = new Html();
        html.markup("<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n"
                + "<meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'; script-src " + scripts
                + "; style-src 'unsafe-inline'; img-src data:; base-uri 'none'; form-action 'none'\">\n"
                + "<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n<title>"
                + Xml.escape(title) + "</title>\n<style>\n" + Stylesheet.CSS + moreCss + "</style>\n</head>\n<body>\n");
        html.open("header").element("h1", title);
        return html.element("p class=\"caution\" role=\"note\"", Cautions.IN_SHORT);
    }

    /** Closes the main part, adds the cautions in full, and ends the page. */
    String end() {
        close("main").open("footer").element("h2 id=\"cautions\"", "Before anything is built");
        paragraph(Cautions.IN_SHORT).list(Cautions.inFull());
        return close("footer").markup("</body>\n</html>\n").toString();
    }

    /** An entry of the list of contents. */
    Html link(String id, String words) {
        return open("li").element("a href=\"#" + id + "\"", words).close("li");
    }

    Html open(String tag) {
        out.append('<').append(tag).append('>');
        return this;
    }

    Html close(String tag) {
        out.append("</").append(tag).append(">\n");
        return this;
    }

    /** Names from right to left are kept apart, so that they turn nothing beside them. */
    Html text(String text) {
        for (Directions.Part part : Directions.parts(Unbroken.text(text))) {
            String escaped = Xml.escape(part.text()).replace("\u00a0", "&nbsp;");
            out.append(part.turned() ? "<bdi>" + escaped + "</bdi>" : escaped);
        }
        return this;
    }

    /** Markup made by this project: style sheets and pictures. */
    Html markup(String markup) {
        out.append(markup);
        return this;
    }

    Html element(String tag, String text) {
        return open(tag).text(text).close(tag.split(" ", 2)[0]);
    }

    Html paragraph(String text) {
        return element("p", text);
    }

    Html list(List<String> items) {
        open("ul");
        items.forEach(item -> element("li", item));
        return close("ul");
    }

    Html table(String caption, DataTable table) {
        return table(caption, caption, table);
    }

    /** A table in a frame that scrolls; frames have names of their own, by which a screen reader tells them apart. */
    private Html table(String frame, String caption, DataTable table) {
        markup("<div class=\"scroll\" tabindex=\"0\" role=\"region\" aria-label=\"" + Xml.escape(frame) + "\">");
        open("table").element("caption", caption).open("thead").open("tr");
        table.headers().forEach(header -> element("th scope=\"col\"", header));
        close("tr").close("thead").open("tbody");
        for (List<String> row : table.rows()) {
            open("tr");
            for (int c = 0; c < row.size(); c++) {
                element(c == 0 ? "th scope=\"row\"" : "td", row.get(c));
            }
            close("tr");
        }
        return close("tbody").close("table").close("div");
    }

    /** A picture with its title, and the numbers behind it to unfold. */
    Html figure(Picture picture) {
        open("figure").drawn("scroll", picture);
        return told(picture);
    }

    /** A picture that is drawn twice, for broad and for narrow screens; each shows one of them. */
    Html figure(Picture broad, Picture narrow) {
        open("figure").drawn("scroll broad", broad).drawn("narrow", narrow);
        return told(broad);
    }

    private Html drawn(String classes, Picture picture) {
        markup("<div class=\"" + classes + "\" tabindex=\"0\" role=\"region\" aria-label=\""
                + Xml.escape(picture.title()) + "\">");
        return markup(PictureFormat.svg(picture)).close("div");
    }

    private Html told(Picture picture) {
        open("figcaption").element("strong", picture.title()).close("figcaption");
        open("details").element("summary", "The numbers behind this picture");
        return table("Numbers: " + picture.title(), picture.title(), picture.table())
                .close("details")
                .close("figure");
    }

    @Override
    public String toString() {
        return out.toString();
    }
}
