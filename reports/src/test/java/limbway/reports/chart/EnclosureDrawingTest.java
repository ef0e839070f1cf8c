package limbway.reports.chart;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

import javax.imageio.ImageIO;

import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

import limbway.model.body.LocomotorMode;
import limbway.model.enclosure.Bounds;
import limbway.model.enclosure.Enclosure;
import limbway.reports.FullYard;
import limbway.reports.Yard;
import limbway.reports.words.PartText;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

/** What bounds an enclosure and what is climbed in it is drawn where it stands, and named in the key. */
class EnclosureDrawingTest {

    private static final Enclosure FULL = FullYard.enclosure();
    private static final Bounds BOUNDS = FULL.bounds();

    private static BufferedImage full;

    @BeforeAll
    static void drawFull() throws IOException {
        full = image(FULL);
    }

    @Test
    void theKeyNamesWhatOccursAndNothingElse() {
        assertEquals(
                List.of(
                        "branch",
                        "ladder",
                        "hammock",
                        "mesh",
                        "net",
                        "wall",
                        "glass",
                        "water",
                        "door",
                        "live wire",
                        "guarded planting",
                        "height by 0.25 m"),
                KeySign.of(FULL).stream().map(KeySign::words).toList());
        assertEquals(List.of(), KeySign.of(Yard.study().base().enclosure()));
        assertEquals(
                List.of("branch", "ladder", "hammock", "mesh", "net", "height by 0.25 m"),
                KeySign.of(FULL.withBounds(Bounds.NONE)).stream()
                        .map(KeySign::words)
                        .toList());
    }

    @Test
    void whatStandsForItsShadeAloneIsDrawnAndNamed() throws IOException {
        Enclosure shaded = FullYard.shaded();
        List<String> words = KeySign.of(shaded).stream().map(KeySign::words).toList();
        assertEquals(
                List.of("roof", "sail", "building", "tree beside"), words.subList(words.size() - 5, words.size() - 1));
        String svg = PictureFormat.svgFile(draw(shaded));
        assertTrue(svg.contains(">deck-roof</text>") && svg.contains(">sling-sail</text>"));
        Frame frame = Frame.of(shaded);
        // 24 m wide: of what stands beside it 0.2 of that is shown, and a tree 36 m away not at all
        assertEquals(-0.5 - 0.2 * 25, frame.westM(), 1e-9);
        assertEquals(29.5, frame.eastM(), 1e-9);
        BufferedImage picture = image(shaded);
        double inBuilding = frame.xPx(-3);
        assertTrue(picture.getRGB((int) (2 * inBuilding), (int) (2 * frame.planYPx(8))) != picture.getRGB(2, 2));
        // greys of supports are those of the yard alone, whatever towers beside it
        assertEquals(Frame.of(FULL).structureTopM(), frame.structureTopM(), 1e-9);
        assertTrue(frame.topM() > frame.structureTopM());
    }

    @Test
    void thePictureIsTheSameTwiceAndSaysWhatItsKeyDoes() {
        Picture picture = draw(FULL);
        String svg = PictureFormat.svgFile(picture);
        assertEquals(svg, PictureFormat.svgFile(draw(FullYard.enclosure())));
        assertArrayEquals(PictureFormat.png(picture), PictureFormat.png(draw(FULL)));
        assertFalse(svg.contains("NaN"));
        for (KeySign sign : KeySign.of(FULL)) {
            assertTrue(svg.contains(">" + sign.words() + "</text>"), sign.words());
            assertTrue(picture.description().contains(sign.words()), sign.words());
        }
    }

    @Test
    void eachBarrierIsDrawnWhereItStands() throws IOException {
        for (int i = 0; i < BOUNDS.barriers().size(); i++) {
            var left = new ArrayList<>(BOUNDS.barriers());
            var box = left.remove(i).footprint().toPolygon().getEnvelopeInternal();
            Bounds less = new Bounds(left, BOUNDS.hotWires(), BOUNDS.doors());
            // a line is up to 5 pixels broad, a fifth of a metre here, and a door's gap as broad as its barrier
            assertChangedOnlyIn(less, box.getMinX(), box.getMinY(), box.getMaxX(), box.getMaxY(), 0.3);
        }
    }

    @Test
    void eachWireAndEachDoorIsDrawnWhereItStands() throws IOException {
        // strand, bent strand, planting: their boxes in plan, widened by what they keep clear
        double[][] boxes = {{4.7, 15, 24.3, 15.6}, {17.6, 1.6, 20.4, 5.4}, {17, 5.5, 20, 8.5}};
        for (int i = 0; i < boxes.length; i++) {
            var left = new ArrayList<>(BOUNDS.hotWires());
            left.remove(i);
            Bounds less = new Bounds(BOUNDS.barriers(), left, BOUNDS.doors());
            assertChangedOnlyIn(less, boxes[i][0], boxes[i][1], boxes[i][2], boxes[i][3], 0.1);
        }
        // each with the way that its leaf turns, as long as it is broad
        double[][] doors = {{2, 5.4, 3, 6.4}, {11, 15.6, 12.2, 16.8}};
        for (int i = 0; i < doors.length; i++) {
            Bounds less = new Bounds(
                    BOUNDS.barriers(), BOUNDS.hotWires(), List.of(BOUNDS.doors().get(1 - i)));
            assertChangedOnlyIn(less, doors[i][0], doors[i][1], doors[i][2], doors[i][3], 0.3);
        }
    }

    @Test
    void partsThatFollowEachOtherDifferInAGreyPrint() {
        List<LocomotorMode> modes = PartText.asTold();
        assertEquals(LocomotorMode.values().length, modes.size());
        for (int i = 0; i + 1 < modes.size(); i++) {
            assertTrue(apart(modes, i, i + 1) >= 255 / 5.0, modes.get(i) + ": " + apart(modes, i, i + 1));
            if (i + 2 < modes.size()) {
                assertTrue(apart(modes, i, i + 2) >= 255 / 10.0, modes.get(i) + ": " + apart(modes, i, i + 2));
            }
        }
    }

    private static double apart(List<LocomotorMode> modes, int a, int b) {
        return Math.abs(Style.lightness(Style.of(modes.get(a))) - Style.lightness(Style.of(modes.get(b))));
    }

    private static Picture draw(Enclosure enclosure) {
        return EnclosureDrawing.of("full", "Full yard", enclosure, List.of());
    }

    /** The plan with other bounds differs from the full one within a box, by much, and nowhere else. */
    private static void assertChangedOnlyIn(
            Bounds less, double westM, double southM, double eastM, double northM, double lineM) throws IOException {
        Frame frame = Frame.of(FULL);
        BufferedImage other = image(FULL.withBounds(less));
        int within = 0;
        for (int x = 0; x < full.getWidth(); x++) {
            for (int y = 0; y < 2 * frame.planYPx(frame.southM()); y++) {
                if (full.getRGB(x, y) != other.getRGB(x, y)) {
                    // two dots for each pixel
                    double eastOf = frame.xM(x / 2.0);
                    double northOf = frame.northM() - (y / 2.0 - Frame.PLAN_TOP_PX) / frame.pxPerM();
                    assertTrue(
                            eastOf >= westM - lineM
                                    && eastOf <= eastM + lineM
                                    && northOf >= southM - lineM
                                    && northOf <= northM + lineM,
                            "changed at " + eastOf + ", " + northOf);
                    within++;
                }
            }
        }
        assertTrue(within > 300, "changed dots = " + within);
    }

    private static BufferedImage image(Enclosure enclosure) throws IOException {
        return ImageIO.read(new ByteArrayInputStream(PictureFormat.png(draw(enclosure))));
    }
}
