package limbway.reports.browser;

import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

/** A lesson from its first step to its last, with keys alone. */
@ExtendWith(InBrowser.class)
class LessonKeysTest {

    /** More than one step has things to come to. */
    private static final int MOST_STOPS = 80;

    private static final String NOW = "document.querySelector('.step.now')";

    @Test
    void aLessonIsDoneWithoutAMouse(Browsers browsers, SamplePages pages) {
        try (OpenPage page = browsers.open(pages.of(PageKind.LESSON))) {
            int steps = number(page, "document.querySelectorAll('.step').length");
            assertTrue(steps > 3, "steps = " + steps);
            int asked = 0;
            for (int step = 0; step < steps; step++) {
                assertEquals(step, at(page));
                assertEquals(
                        1,
                        number(
                                page,
                                "[...document.querySelectorAll('.step')].filter(s => s.checkVisibility()).length"));
                int questions = number(page, NOW + ".querySelectorAll('.question').length");
                for (int question = 0; question < questions; question++) {
                    assertFalse(seen(page, ".next"), "step " + step + " can be passed over");
                    answer(page, NOW + ".querySelectorAll('.question')[" + question + "]");
                    asked++;
                }
                if (step + 1 < steps) {
                    tabTo(page, NOW + ".querySelector('.next')");
                    page.press("Enter");
                    assertEquals(step + 1, at(page));
                    assertEquals(true, page.value("document.activeElement === " + NOW + ".querySelector('h2')"));
                }
            }
            assertFalse(seen(page, ".next"));
            assertTrue(asked > 1, "questions = " + asked);
            assertEquals(List.of(), page.complaints());
        }
    }

    private static void answer(OpenPage page, String question) {
        if ((boolean) page.value(question + ".querySelector('input') === null")) {
            tabTo(page, question + ".querySelector('textarea')");
            page.page().keyboard().type("a rope");
            tabTo(page, question + ".querySelector('.compare')");
            page.press("Enter");
            return;
        }
        String verdict = question + ".querySelector('.verdict')";
        assertEquals("polite", page.value(verdict + ".getAttribute('aria-live')"));
        assertEquals("", page.value(verdict + ".textContent"));
        tabTo(page, question + ".querySelector('.check')");
        page.press("Enter");
        assertEquals(
                page.value("document.querySelector('main').dataset.choose"),
                page.value(verdict + ".textContent"),
                "without an answer");
        // back to the first answer
        page.press("Shift+Tab", "Space");
        page.press("ArrowDown");
        int chosen = number(page, "[..." + question + ".querySelectorAll('input')].findIndex(i => i.checked)");
        assertTrue(chosen >= 0, "nothing is chosen");
        tabTo(page, question + ".querySelector('.check')");
        page.press("Enter");
        String feedback = String.valueOf(
                page.value(question + ".querySelectorAll('.answer .feedback')[" + chosen + "].textContent"));
        assertFalse(feedback.isBlank());
        assertEquals(feedback, page.value(verdict + ".textContent"));
        assertTrue((boolean) page.value(verdict + ".checkVisibility()"));
    }

    private static int at(OpenPage page) {
        return number(page, "[...document.querySelectorAll('.step')].findIndex(s => s.classList.contains('now'))");
    }

    private static boolean seen(OpenPage page, String selector) {
        return (boolean) page.value(NOW + ".querySelector('" + selector + "')?.checkVisibility() ?? false");
    }

    private static int number(OpenPage page, String expression) {
        return ((Number) page.value(expression)).intValue();
    }

    /** Presses the key Tab until an element has the focus. */
    private static void tabTo(OpenPage page, String element) {
        for (int i = 0; i < MOST_STOPS; i++) {
            page.press("Tab");
            if ((boolean) page.value("document.activeElement === " + element)) {
                return;
            }
        }
        fail("the key Tab does not come to " + element);
    }
}
