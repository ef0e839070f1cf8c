package limbway.reports.paper;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Calendar;
import java.util.GregorianCalendar;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TimeZone;
import java.util.function.Function;
import java.util.logging.Level;
import java.util.logging.Logger;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.render.DefaultObjectDrawerFactory;
import com.openhtmltopdf.util.XRLog;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.jsoup.Jsoup;
import org.jsoup.helper.W3CDom;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;

import limbway.reports.chart.Picture;

/** Writes a page as a PDF file on A4. */
public final class Pdf {

    /** Width of what is printed on A4 with the margins of the style, in CSS pixels. */
    private static final int LINE_PX = 680;

    /** Letters that the fonts every reader of PDF has do not know, such as Greek ones and signs of comparison. */
    private static final String MORE_LETTERS = "/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf";

    /** Words that must be broken so that a table does not leave the paper; others are kept whole. */
    private static final Pattern LONG_WORD = Pattern.compile("\\S{28,}");

    private Pdf() {}

    /**
     * The page on paper: the same sentences, tables and pictures, without what only a screen can do.
     *
     * @param html a page of this project
     * @param pictures the pictures in it, with the same ids
     * @return bytes of a PDF file; the same page gives the same bytes
     * @throws IllegalArgumentException naming a picture that is on the page and not among them
     */
    public static byte[] of(String html, List<Picture> pictures) {
        Map<String, Picture> byId =
                pictures.stream().collect(Collectors.toMap(Picture::id, Function.identity(), (one, same) -> one));
        // which fonts are looked for is of no use to the reader; held here, as it would be forgotten otherwise
        Logger fonts = Logger.getLogger("org.apache.pdfbox");
        fonts.setLevel(Level.SEVERE);
        Document page = Jsoup.parse(html);
        forPaper(page, byId);
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (PdfBoxRenderer renderer = renderer(page, byId, bytes)) {
            renderer.layout();
            renderer.createPDFWithoutClosing();
            PDDocument document = renderer.getPdfDocument();
            // what the clock decides must not be in a file that is compared byte by byte
            Calendar never = new GregorianCalendar(TimeZone.getTimeZone("UTC"), Locale.ROOT);
            never.setTimeInMillis(0);
            document.getDocumentInformation().setCreationDate(never);
            document.getDocumentInformation().setModificationDate(never);
            document.setDocumentId(0L);
            document.save(bytes);
        } catch (IOException e) {
            throw new UncheckedIOException("the page " + page.title() + " could not be written as PDF", e);
        }
        return bytes.toByteArray();
    }

    private static PdfBoxRenderer renderer(Document page, Map<String, Picture> byId, ByteArrayOutputStream bytes)
            throws IOException {
        XRLog.setLoggingEnabled(false);
        DefaultObjectDrawerFactory drawers = new DefaultObjectDrawerFactory();
        drawers.registerDrawer(PictureDrawer.TYPE, new PictureDrawer(byId));
        PdfRendererBuilder builder = new PdfRendererBuilder();
        builder.useFont(
                () -> PDDocument.class.getResourceAsStream(MORE_LETTERS),
                "Liberation Sans",
                400,
                FontStyle.NORMAL,
                true);
        builder.useObjectDrawerFactory(drawers);
        // nothing is fetched
        builder.useUriResolver((base, uri) -> uri.startsWith("#") ? uri : null);
        builder.withW3cDocument(new W3CDom().fromJsoup(page), null);
        builder.withProducer("limbway");
        builder.toStream(bytes);
        return builder.buildPdfRenderer();
    }

    private static void forPaper(Document page, Map<String, Picture> byId) {
        page.select("script, nav, noscript, .screen-only, .narrow, meta").remove();
        page.select("figure > details, figure > .screen-only").remove();
        page.select("style").remove();
        page.head().appendElement("style").appendText(PaperStyle.CSS);
        for (Element cell : page.select("td, th")) {
            if (LONG_WORD.matcher(cell.text()).find()) {
                cell.addClass("long");
            }
        }
        for (Element svg : page.select("svg")) {
            Picture picture = byId.get(svg.id());
            if (picture == null) {
                throw new IllegalArgumentException("pictures: none with the id " + svg.id() + ", which is on the page");
            }
            svg.replaceWith(placeFor(picture));
        }
    }

    private static Element placeFor(Picture picture) {
        double scale = Math.min(1, (double) LINE_PX / picture.widthPx());
        return new Element("object")
                .attr("type", PictureDrawer.TYPE)
                .attr("data", picture.id())
                .attr("title", picture.title())
                .attr(
                        "style",
                        "width:" + Math.round(picture.widthPx() * scale) + "px;height:"
                                + Math.round(picture.heightPx() * scale) + "px");
    }
}
