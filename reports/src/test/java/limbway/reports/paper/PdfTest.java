package limbway.reports.paper;

import java.awt.Color;
import java.io.IOException;
import java.util.List;

import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;

import limbway.reports.chart.DataTable;
import limbway.reports.chart.Picture;
import limbway.reports.chart.PictureFormat;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

/** Pages on paper, read back with PDFBox. */
class PdfTest {

    private static final Picture BLACK = new Picture(
            "black",
            "A black square",
            "All of it is black.",
            600,
            600,
            (g, area) -> {
                g.setColor(Color.BLACK);
                g.fill(area);
            },
            new DataTable(List.of("what"), List.of(List.of("black"))));

    private static String page(String body) {
        return "<!DOCTYPE html><html lang=\"en\"><head><meta charset=\"utf-8\"><title>Two ways</title></head><body>"
                + body + "</body></html>";
    }

    private static String figure() {
        return "<figure>" + PictureFormat.svg(BLACK)
                + "<details><summary>The numbers</summary><p>not printed</p></details></figure>";
    }

    @Test
    void wordsAndLettersBeyondLatinArePrinted() throws IOException {
        byte[] pdf = Pdf.of(page("<h1>Gap ≥ 0.6 m − Ω</h1><nav>jump</nav><script>run()</script>"), List.of());
        try (PDDocument document = Loader.loadPDF(pdf)) {
            String text = new PDFTextStripper().getText(document);
            assertTrue(text.contains("Gap ≥ 0.6 m − Ω"), text);
            assertTrue(text.contains("1 / 1"), text);
            assertFalse(text.contains("jump"), text);
            assertFalse(text.contains("run()"), text);
            PDRectangle sheet = document.getPage(0).getMediaBox();
            assertEquals(PDRectangle.A4.getWidth(), sheet.getWidth(), 0.5);
            assertEquals(PDRectangle.A4.getHeight(), sheet.getHeight(), 0.5);
        }
    }

    @Test
    void picturesAreDrawnWithoutTheTableThatUnfoldsOnAScreen() throws IOException {
        try (PDDocument document = Loader.loadPDF(Pdf.of(page(figure()), List.of(BLACK)))) {
            assertFalse(new PDFTextStripper().getText(document).contains("not printed"));
            var image = new PDFRenderer(document).renderImageWithDPI(0, 72);
            // 600 px are 450 pt, from the margins of 15 and 16 mm on
            assertEquals(Color.BLACK.getRGB(), image.getRGB(60, 70));
            assertEquals(Color.BLACK.getRGB(), image.getRGB(480, 480));
            assertEquals(Color.WHITE.getRGB(), image.getRGB(530, 300));
        }
    }

    @Test
    void aPictureThatIsNotGivenIsNamed() {
        IllegalArgumentException e =
                assertThrows(IllegalArgumentException.class, () -> Pdf.of(page(figure()), List.of()));
        assertTrue(e.getMessage().contains("black"), e.getMessage());
    }

    @Test
    void longNamesStayOnThePaperAndShortWordsWhole() throws IOException {
        String table = "<table><tr><th>hatch</th><td>" + "x".repeat(200) + "</td><td>" + "many words ".repeat(60)
                + "</td></tr></table>";
        try (PDDocument document = Loader.loadPDF(Pdf.of(page(table), List.of()))) {
            String text = new PDFTextStripper().getText(document);
            assertTrue(text.contains("hatch"), text);
            assertEquals(200, text.chars().filter(c -> c == 'x').count(), text);
            var image = new PDFRenderer(document).renderImageWithDPI(0, 72);
            for (int y = 0; y < image.getHeight(); y++) {
                for (int x = (int) PDRectangle.A4.getWidth() - 30; x < image.getWidth(); x++) {
                    assertEquals(Color.WHITE.getRGB(), image.getRGB(x, y), "ink in the margin at " + x + ", " + y);
                }
            }
        }
    }

    @Test
    void theSamePageGivesTheSameBytes() {
        assertArrayEquals(Pdf.of(page(figure()), List.of(BLACK)), Pdf.of(page(figure()), List.of(BLACK)));
    }
}
