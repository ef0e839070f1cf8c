package limbway.reports.chart;

import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;

import javax.imageio.ImageIO;
import javax.xml.parsers.DocumentBuilderFactory;

import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;

import limbway.model.body.LocomotorMode;
import limbway.reports.Pole;
import limbway.reports.Yard;
import limbway.reports.measure.Measures;
import limbway.reports.page.Report;
import limbway.reports.page.ReportPage;
import limbway.reports.words.PartText;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

class PictureTest {

    private static Report report;

    @BeforeAll
    static void live() {
        report = Yard.report(Yard.study());
    }

    @Test
    void everyPictureOfTheReportIsDrawnTwiceTheSame() {
        List<Picture> first = ReportPage.pictures(report);
        List<Picture> second = ReportPage.pictures(report);
        assertEquals(9, first.size());
        for (int i = 0; i < first.size(); i++) {
            assertEquals(PictureFormat.svgFile(first.get(i)), PictureFormat.svgFile(second.get(i)));
            assertArrayEquals(PictureFormat.png(first.get(i)), PictureFormat.png(second.get(i)));
        }
    }

    @Test
    void everySvgIsWellFormedAndSaysWhatItShows() throws Exception {
        for (Picture picture : ReportPage.pictures(report)) {
            String svg = PictureFormat.svgFile(picture);
            Document document = DocumentBuilderFactory.newInstance()
                    .newDocumentBuilder()
                    .parse(new ByteArrayInputStream(svg.getBytes(StandardCharsets.UTF_8)));
            assertEquals(
                    picture.title(),
                    document.getElementsByTagName("title").item(0).getTextContent());
            assertEquals(
                    picture.description(),
                    document.getElementsByTagName("desc").item(0).getTextContent());
            assertFalse(picture.table().rows().isEmpty(), picture.id());
            assertFalse(svg.contains("NaN"), picture.id());
        }
    }

    @Test
    void everyPngHasTwoDotsForEachPixelAndIsNotBlank() throws Exception {
        for (Picture picture : ReportPage.pictures(report)) {
            BufferedImage image = ImageIO.read(new ByteArrayInputStream(PictureFormat.png(picture)));
            assertEquals(2 * picture.widthPx(), image.getWidth());
            assertEquals(2 * picture.heightPx(), image.getHeight());
            long dark = 0;
            for (int x = 0; x < image.getWidth(); x += 3) {
                for (int y = 0; y < image.getHeight(); y += 3) {
                    dark += (image.getRGB(x, y) & 0xFF) < 128 ? 1 : 0;
                }
            }
            assertTrue(dark > 100, picture.id() + ": dark dots = " + dark);
        }
    }

    @Test
    void oneReplicationIsDrawnWithoutIntervals() {
        Measures one =
                Measures.of(Pole.outcome(Pole.habitat(), 1, Pole.journal(1, Pole.trip(0, 8, 10, 4, 100, 40))), 1);
        Picture chart = ShareChart.byAnimal(one);
        assertEquals(
                "40 % (one repetition: no interval)",
                chart.table().rows().get(0).get(1));
        assertEquals("no travel", chart.table().rows().get(2).get(1));
        assertFalse(PictureFormat.svg(chart).contains("NaN"));
        assertTrue(PictureFormat.svg(HourChart.of(one)).contains("</svg>"));
        assertTrue(PictureFormat.svg(ActivityChart.of(one)).contains("</svg>"));
    }

    @Test
    void theKeyOfPartsNamesOnlyWhatTakesEnergy() {
        Measures measures = report.measures();
        Picture chart = TwoWaysChart.of(measures);
        String svg = PictureFormat.svg(chart);
        for (LocomotorMode mode : LocomotorMode.values()) {
            boolean occurs =
                    chart.table().rows().stream().anyMatch(row -> row.get(2).contains(" " + PartText.inSum(mode)));
            assertEquals(occurs, svg.contains(">" + PartText.doing(mode) + "</text>"), mode.word());
            assertEquals(occurs, chart.description().contains(PartText.doing(mode)), mode.word());
        }
        assertTrue(svg.contains(">level walking</text>"));
        assertFalse(svg.contains(">leaping</text>"));
    }

    @Test
    void aNameFindsAPlaceThatIsFree() {
        BufferedImage image = new BufferedImage(200, 100, BufferedImage.TYPE_INT_RGB);
        Labels labels = new Labels(image.createGraphics(), new Rectangle2D.Double(0, 0, 200, 100));
        int written = 0;
        for (int i = 0; i < 40; i++) {
            written += labels.write("name", 100, 50, 5, Style.type(12), 70) ? 1 : 0;
        }
        // so many names cannot all have a place of their own within 200 by 100 pixels
        assertTrue(written >= 8 && written < 40, "written = " + written);
    }
}
