package limbway.reports.browser;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

import javax.xml.parsers.DocumentBuilderFactory;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

import limbway.reports.browser.Words.Field;
import limbway.reports.words.Xml;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

/** Hostile texts in a scenario: a browser shows them as text, and obeys none of them. */
@ExtendWith(InBrowser.class)
class HostileTextTest {

    /** The file of the scenario, whose name stands on the pages. */
    private static final String FILE = "=2+2 <img src=x onerror=alert(0)>.yaml";

    /** Every kind of element with the names of its attributes; those of drawings are few and of a kind. */
    private static final String STRUCTURE = "[...new Set([...document.querySelectorAll('*')].flatMap(e => [e.localName,"
            + " ...e.getAttributeNames().map(name => e.localName + ' ' + name)]))].sort()";

    @Test
    void thereAreFiftyOfThemAndNoneHoldsAnother() {
        List<String> texts = Hostile.texts();
        assertEquals(50, new LinkedHashSet<>(texts).size());
        for (String one : texts) {
            for (String other : texts) {
                assertTrue(one.equals(other) || !one.contains(other), one + " holds " + other);
            }
        }
    }

    /** All are taken, also control characters that are written as escapes, but for formulas in names of layouts. */
    @Test
    void theReaderRefusesFormulasInNamesOfLayoutsAndTakesTheOthers() {
        Words small = Words.of("small.yaml");
        for (Field field : HostileYard.FREE) {
            for (String text : Hostile.texts()) {
                boolean formula = field.toString().equals("variant.name") && "=+-@".indexOf(text.charAt(0)) >= 0;
                assertEquals(!formula, small.with(field, 0, text).isRead(), field + ": " + text);
            }
        }
    }

    @ParameterizedTest
    @EnumSource
    void aPageShowsThemAndObeysNone(PageKind kind, Browsers browsers, SamplePages pages) {
        Set<String> known;
        try (OpenPage harmless = browsers.open(pages.of(kind))) {
            known = new LinkedHashSet<>(harmless.texts(STRUCTURE));
            known.add("bdi");
        }
        try (OpenPage page = browsers.open(pages.of(kind, FILE, HostileYard.words()))) {
            List<String> strange = page.texts(STRUCTURE);
            strange.removeAll(known);
            assertEquals(List.of(), strange, "elements and attributes that the harmless page has not");
            page.press("Tab", "Enter", "Tab", "Space", "Escape");
            page.value("document.querySelectorAll('details').forEach(d => d.open = true)");
            page.value(
                    "document.querySelectorAll('*').forEach(e => ['mouseover', 'focus', 'click', 'toggle', 'load', 'error']"
                            + ".forEach(name => e.dispatchEvent(new Event(name))))");
            page.page().waitForTimeout(100);
            assertEquals(List.of(), page.complaints());
            assertNull(page.value("window.hacked ?? null"));
            String heading = flat(String.valueOf(page.value("document.querySelector('h1').textContent")));
            String all = flat(String.valueOf(page.value("document.body.textContent")));
            for (String text : HostileYard.taken()) {
                assertTrue(heading.contains(flat(text)), text + " is missing in: " + heading);
                assertTrue(all.contains(flat(text)), text);
            }
            page.resize(360, 800);
            assertEquals(360, page.value("document.documentElement.scrollWidth"));
        }
    }

    @ParameterizedTest
    @EnumSource(mode = EnumSource.Mode.EXCLUDE, names = "LESSON")
    void chartsAreWholeXmlWithThem(PageKind kind, SamplePages pages) throws Exception {
        Path charts = pages.of(kind, FILE, HostileYard.words()).resolveSibling("charts");
        try (Stream<Path> files = Files.list(charts)) {
            for (Path svg :
                    files.filter(file -> file.toString().endsWith(".svg")).toList()) {
                DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(svg.toFile());
            }
        }
    }

    /**
     * Characters that turn the direction of what follows stand on no page. What a script writes is kept apart by its element, by
     * the style of the replay.
     */
    @ParameterizedTest
    @EnumSource
    void namesFromRightToLeftTurnNothingElse(PageKind kind, Browsers browsers, SamplePages pages) {
        try (OpenPage page = browsers.open(pages.of(kind, FILE, HostileYard.words()))) {
            String all = String.valueOf(page.value("document.documentElement.textContent"));
            assertFalse(all.codePoints().anyMatch(c -> (c >= 0x202A && c <= 0x202E) || (c >= 0x2066 && c <= 0x2069)));
            assertEquals(
                    List.of(),
                    page.texts(
                            "[...document.querySelectorAll('body *:not(bdi):not(svg *):not(style):not(script):not(.rp *)')]"
                                    + ".flatMap(e => [...e.childNodes]).filter(n => n.nodeType === 3 && n.parentNode.localName !== 'bdi'"
                                    + " && /[\\u0590-\\u08ff]/.test(n.data)).map(n => n.data)"));
        }
    }

    /** As it is shown, with spaces of any kind as one. */
    private static String flat(String text) {
        return Xml.shown(text).replaceAll("[\\s\\u00a0\\u2028]+", " ");
    }
}
