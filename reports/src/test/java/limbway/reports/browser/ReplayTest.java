package limbway.reports.browser;

import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ReducedMotion;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestReporter;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import limbway.scenarios.entry.Form;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

/** The replay in a browser: by keys, flat where there is no space, quiet, quick, and still until it is asked. */
@ExtendWith(InBrowser.class)
class ReplayTest {

    static final String YARD = "two-ways.yaml";

    private static final double MINUTE_MS = 60_000;

    /** Draw calls of a picture grow with paints, not with things that stand there; so many are many for any yard. */
    private static final int MOST_DRAW_CALLS = 60;

    /**
     * Of the script alone, by the clock on the wall, the middle of many pictures. Measured were 7 to 26 ms, and 255 ms once with many
     * other jobs on two cores; the bound is twice that and so finds only a script that has become slower by far.
     */
    private static final double LONGEST_SCRIPT_MS = 500;

    static Path yard(SamplePages pages) {
        return pages.of(PageKind.RUN, YARD, Words.of(YARD));
    }

    @Test
    void spacePlaysAndPauses(Browsers browsers, SamplePages pages) {
        try (OpenPage page = browsers.open(yard(pages))) {
            Replay replay = Replay.on(page);
            double before = replay.clockMs();
            page.press("Space");
            assertTrue(replay.plays());
            replay.waitUntilAfter(before);
            page.press("Space");
            assertFalse(replay.plays());
            double paused = replay.clockMs();
            page.page().waitForTimeout(400);
            assertEquals(paused, replay.clockMs());
        }
    }

    @Test
    void arrowsStepByOneAndByTen(Browsers browsers, SamplePages pages) {
        try (OpenPage page = browsers.open(yard(pages))) {
            Replay replay = Replay.on(page);
            replay.setClock(10 * 60 * MINUTE_MS);
            // at 60 times as fast as life a step is a minute
            for (String key : List.of("ArrowRight 1", "ArrowLeft 0", "ArrowUp 10", "ArrowDown 0")) {
                String[] pressed = key.split(" ", -1);
                page.press(pressed[0]);
                assertEquals((600 + Integer.parseInt(pressed[1])) * MINUTE_MS, replay.clockMs(), key);
            }
            page.press("]", "ArrowRight");
            assertEquals(605 * MINUTE_MS, replay.clockMs(), "five minutes at 300 times as fast as life");
            assertEquals("10:05:00", replay.text(".rp-clock"));
        }
    }

    @Test
    void lettersFollowLookAndShowTheUseOfPlaces(Browsers browsers, SamplePages pages) {
        try (OpenPage page = browsers.open(yard(pages))) {
            Replay replay = Replay.on(page);
            for (String name : List.of("Adik", "Anak", "")) {
                page.press("f");
                assertEquals(name, replay.chosen("Follow"));
            }
            for (String view : List.of("above", "side", "gallery", "overview")) {
                page.press("v");
                assertEquals(view, replay.chosen("View"));
            }
            for (boolean on : new boolean[] {true, false}) {
                page.press("h");
                assertEquals(on, replay.pressed("Use of places"));
                assertEquals(on, replay.isSeen(".rp-legends > :first-child"));
            }
        }
    }

    @Test
    void aLetterOpensOneCardAfterTheOther(Browsers browsers, SamplePages pages) {
        try (OpenPage page = browsers.open(yard(pages))) {
            Replay replay = Replay.on(page);
            assertFalse(replay.isSeen(".rp-card"));
            page.press("c");
            assertTrue(replay.isSeen(".rp-card"));
            assertEquals(cardTitle(page, 0), replay.text(".rp-card-title"));
            page.press("c");
            assertEquals(cardTitle(page, 1), replay.text(".rp-card-title"));
        }
    }

    private static String cardTitle(OpenPage page, int card) {
        return String.valueOf(page.value("(({from, to, body}) => `${from} → ${to}, ${body}`)(JSON.parse("
                + "document.querySelector('script.replay-data').textContent).layouts[0].cards[" + card + "])"));
    }

    @ParameterizedTest
    @ValueSource(booleans = {true, false})
    void withoutSpaceItPlaysInThePlane(boolean asked, Browsers browsers, SamplePages pages) {
        Drawing drawing = asked ? Drawing.IN_SOFTWARE : Drawing.NOT_IN_SPACE;
        try (OpenPage page = browsers.open(yard(pages), drawing)) {
            if (asked) {
                page.value("location.hash = 'flat'");
                page.page().reload();
            }
            Replay replay = Replay.on(page);
            assertEquals("2d", replay.mode());
            // who asked for it is not told why
            assertEquals(!asked, replay.isSeen(".rp-note"));
            double before = replay.clockMs();
            page.press("Space");
            replay.waitUntilAfter(before + MINUTE_MS);
            page.press("Space", "c");
            assertTrue(replay.isSeen(".rp-card"));
            for (String name : List.of("Adik", "Anak")) {
                assertEquals(
                        1,
                        replay.sentences().stream()
                                .filter(said -> said.contains(name))
                                .count(),
                        replay.sentences().toString());
            }
            // ground, poles and a background at least
            assertTrue(((Number) page.value("(() => { const c = document.querySelector('canvas.rp-scene');"
                                    + " const d = new Uint32Array(c.getContext('2d').getImageData(0, 0, c.width, c.height).data.buffer);"
                                    + " return new Set(d).size; })()"))
                            .intValue()
                    > 3);
            assertEquals(List.of(), page.complaints());
        }
    }

    @Test
    void aPictureIsDrawnInFewCallsAndInLittleTime(Browsers browsers, SamplePages pages, TestReporter reporter) {
        try (OpenPage page = browsers.open(yard(pages))) {
            Replay replay = Replay.on(page);
            assertEquals("3d", replay.mode());
            double before = replay.clockMs();
            page.press("h", "f", "c", "Space");
            replay.waitUntilAfter(before + 4 * MINUTE_MS);
            double calls = replay.figure("drawCalls");
            double scriptMs = replay.figure("scriptMs");
            reporter.publishEntry("draw calls", String.valueOf(calls));
            reporter.publishEntry("triangles", String.valueOf(replay.figure("triangles")));
            reporter.publishEntry("script ms of a picture", String.valueOf(scriptMs));
            assertTrue(calls > 0 && calls < MOST_DRAW_CALLS, "draw calls " + calls);
            assertTrue(replay.figure("triangles") > 0);
            assertTrue(scriptMs > 0 && scriptMs < LONGEST_SCRIPT_MS, "script ms " + scriptMs);
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {1280, 360})
    void playingAsksForNothingAndFits(int widthPx, Browsers browsers, SamplePages pages) {
        try (OpenPage page = browsers.open(yard(pages))) {
            page.resize(widthPx, 800);
            Replay replay = Replay.on(page);
            double before = replay.clockMs();
            page.press("c", "h", "n", "Space");
            replay.waitUntilAfter(before + MINUTE_MS);
            assertEquals(widthPx, page.value("document.documentElement.scrollWidth"));
            assertEquals(List.of(), page.complaints());
        }
    }

    @Test
    void oneClockMovesEveryLayoutOfAComparison(Browsers browsers, SamplePages pages) {
        try (OpenPage page = browsers.open(pages.of(PageKind.COMPARE))) {
            int layouts = 1 + Words.of("small.yaml").count(Form.VARIANT);
            Replay replay = Replay.on(page);
            for (String selector : List.of(".rp-stage canvas.rp-scene", ".rp-strip", ".rp-words")) {
                assertEquals(layouts, page.value("document.querySelectorAll('" + selector + "').length"), selector);
            }
            assertEquals(1, page.value("document.querySelectorAll('.rp-clock').length"));
            replay.setClock(8 * 60 * MINUTE_MS);
            List<String> before = shown(page);
            // five times as fast, so that twenty minutes are four seconds
            page.press("]", "Space");
            replay.waitUntilAfter((8 * 60 + 20) * MINUTE_MS);
            page.press("Space");
            List<String> after = shown(page);
            assertEquals(2 * layouts, before.size());
            for (int i = 0; i < before.size(); i++) {
                assertNotEquals(before.get(i), after.get(i), "layout " + i % layouts);
            }
            List<String> suns = after.subList(layouts, 2 * layouts);
            assertEquals(1, new HashSet<>(suns).size(), suns.toString());
        }
    }

    /** Of each layout the strip of its day as a picture, then of each where the sun stands. */
    private static List<String> shown(OpenPage page) {
        page.value("new Promise(done => requestAnimationFrame(() => requestAnimationFrame(() => done(true))))");
        return page.texts("[...[...document.querySelectorAll('.rp-strip')].map(c => c.toDataURL()),"
                + " ...[...document.querySelectorAll('.rp-sun')].map(s => s.textContent)]");
    }

    @Test
    void whoWantsLittleMotionSeesNoneUnaskedAndStepsWhenAsked(Browsers browsers, SamplePages pages) {
        try (OpenPage page = browsers.open(yard(pages))) {
            page.page().emulateMedia(new Page.EmulateMediaOptions().setReducedMotion(ReducedMotion.REDUCE));
            page.page().reload();
            Replay replay = Replay.on(page);
            double before = replay.clockMs();
            page.page().waitForTimeout(1200);
            assertEquals(before, replay.clockMs());
            assertFalse(replay.plays());
            assertEquals(0, page.value("document.getAnimations().length"));
            assertTrue(replay.pressed("In steps"));
            page.press("Space");
            replay.waitUntilAfter(before);
            page.press("Space");
            assertEquals(0, (replay.clockMs() - before) % MINUTE_MS, "whole steps of a minute");
        }
    }
}
