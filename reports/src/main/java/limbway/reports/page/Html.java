package limbway.reports.page;

import java.util.List;
import java.util.regex.Pattern;

import limbway.reports.chart.DataTable;
import limbway.reports.chart.Picture;
import limbway.reports.chart.PictureFormat;
import limbway.reports.words.Xml;

/** Writes HTML; every text is escaped here and nowhere else. */
final class Html {

    private static final Pattern DIGITS = Pattern.compile("(\\d) (?=\\d{3}(?!\\d))");
    private static final Pattern UNIT = Pattern.compile("([\\d<>]) (%|m|cm|J|kJ|s|kg|\\d)(?![\\w])");

    private final StringBuilder out = new StringBuilder();

    Html open(String tag) {
        out.append('<').append(tag).append('>');
        return this;
    }

    Html close(String tag) {
        out.append("</").append(tag).append(">\n");
        return this;
    }

    Html text(String text) {
        out.append(glued(Xml.escape(text)));
        return this;
    }

    /** A number keeps its unit and its thousands on the same line. */
    private static String glued(String text) {
        String thousands = DIGITS.matcher(text).replaceAll("$1&nbsp;");
        return UNIT.matcher(thousands).replaceAll("$1&nbsp;$2");
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
        markup("<div class=\"scroll\" tabindex=\"0\" role=\"region\" aria-label=\"" + Xml.escape(caption) + "\">");
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
        open("figure")
                .markup("<div class=\"scroll\" tabindex=\"0\" role=\"region\" aria-label=\""
                        + Xml.escape(picture.title()) + "\">");
        markup(PictureFormat.svg(picture)).close("div");
        open("figcaption").element("strong", picture.title()).close("figcaption");
        open("details").element("summary", "The numbers behind this picture");
        return table(picture.title(), picture.table()).close("details").close("figure");
    }

    @Override
    public String toString() {
        return out.toString();
    }
}
