package limbway.reports.browser;

import java.util.ArrayList;
import java.util.List;

import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

/** What every page must be in a browser: quiet, whole at any width, and of use without a mouse and without eyes. */
@ExtendWith(InBrowser.class)
class PagesTest {

    /** What the key Tab must come to. */
    private static final String STOPS = "[...document.querySelectorAll('a[href], summary, button, input, select,"
            + " [tabindex=\"0\"]')].filter(e => e.checkVisibility())";

    /** Which stop has the focus, whether that can be seen, and what it is. */
    private static final String FOCUS = "(() => { const e = document.activeElement, s = getComputedStyle(e);"
            + " return [e.dataset.stop, s.outlineStyle !== 'none' && parseFloat(s.outlineWidth) >= 2,"
            + " e.outerHTML.slice(0, 200)] })()";

    @ParameterizedTest
    @EnumSource
    void aPageAsksForNothingAndComplainsOfNothing(PageKind kind, Browsers browsers, SamplePages pages) {
        try (OpenPage page = browsers.open(pages.of(kind))) {
            page.value("document.querySelectorAll('details').forEach(d => d.open = true)");
            assertEquals(List.of(), page.complaints());
        }
    }

    @ParameterizedTest
    @EnumSource
    void nothingStandsOutsideAtAnyWidth(PageKind kind, Browsers browsers, SamplePages pages) {
        try (OpenPage page = browsers.open(pages.of(kind))) {
            for (String open : List.of("false", "true")) {
                page.value("document.querySelectorAll('details').forEach(d => d.open = " + open + ")");
                for (int widthPx : new int[] {360, 1280}) {
                    page.resize(widthPx, 800);
                    assertEquals(widthPx, page.value("document.documentElement.scrollWidth"), "details open: " + open);
                }
            }
        }
    }

    @ParameterizedTest
    @EnumSource
    void noRuleOfAccessIsBroken(PageKind kind, Browsers browsers, SamplePages pages) {
        try (OpenPage page = browsers.open(pages.of(kind))) {
            page.value("document.querySelectorAll('details').forEach(d => d.open = true)");
            // narrow, where most has to be scrolled
            page.resize(360, 800);
            assertEquals("", String.join("\n", Axe.violations(page)));
        }
    }

    @ParameterizedTest
    @EnumSource
    void headingsAreInOrderAndEveryFigureHasItsNumbers(PageKind kind, Browsers browsers, SamplePages pages) {
        try (OpenPage page = browsers.open(pages.of(kind))) {
            int last = 0;
            List<String> headings =
                    page.texts("[...document.querySelectorAll('h1, h2, h3, h4, h5, h6')].map(h => h.localName)");
            for (String heading : headings) {
                int level = heading.charAt(1) - '0';
                assertTrue(level <= last + 1 && (level > 1) == (last > 0), headings.toString());
                last = level;
            }
            assertTrue(headings.size() > 3, headings.toString());
            assertEquals(
                    List.of(),
                    page.texts(
                            "[...document.querySelectorAll('figure:not(.rp-stage)')].filter(f => f.querySelectorAll('tbody tr').length < 1)"
                                    + ".map(f => f.textContent.slice(0, 60))"));
            assertEquals(
                    List.of(),
                    page.texts("[...document.querySelectorAll('.rp')].filter(r => !r.querySelector('.rp-words li'))"
                            + ".map(r => r.id)"),
                    "replays that do not say in words what they show");
            assertEquals(
                    List.of(),
                    page.texts("[...document.querySelectorAll('svg[role=img]')].filter(s => !s.closest('figure'))"
                            + ".map(s => s.id)"),
                    "pictures outside figures");
        }
    }

    @ParameterizedTest
    @EnumSource
    void theTabKeyComesToEverythingAndIsSeen(PageKind kind, Browsers browsers, SamplePages pages) {
        try (OpenPage page = browsers.open(pages.of(kind))) {
            page.value("document.querySelectorAll('details').forEach(d => d.open = true)");
            int stops = ((Number) page.value(STOPS + ".map((e, i) => e.dataset.stop = i).length")).intValue();
            assertTrue(stops > 3, "stops = " + stops);
            List<String> reached = new ArrayList<>();
            List<String> unseen = new ArrayList<>();
            for (int i = 0; i < stops; i++) {
                page.press("Tab");
                List<String> stop = page.texts(FOCUS);
                reached.add(stop.get(0));
                if (!stop.get(1).equals("true")) {
                    unseen.add(stop.get(2));
                }
            }
            assertEquals(List.of(), unseen, "without an outline that shows the focus");
            List<String> all = page.texts(STOPS + ".map(e => e.dataset.stop)");
            assertEquals(all, reached);
        }
    }
}
