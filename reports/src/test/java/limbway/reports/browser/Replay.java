package limbway.reports.browser;

import java.util.List;

import com.microsoft.playwright.Page;

/** The replay of an open page: what it tells of itself, and keys pressed while its picture has the focus. */
record Replay(OpenPage page) {

    private static final String HANDLE = "window.limbwayReplays[0]";

    /** Has the pictures of the replay made, and gives the first one the focus. */
    static Replay on(OpenPage page) {
        page.value("document.querySelector('.rp').scrollIntoView()");
        page.value(HANDLE + ".stats().mode");
        Replay replay = new Replay(page);
        replay.focus();
        return replay;
    }

    void focus() {
        page.value("document.querySelector('.rp-picture').focus()");
    }

    /** Milliseconds since midnight before day 1. */
    double clockMs() {
        return number("clock()");
    }

    void setClock(double ms) {
        page.value(HANDLE + ".setClock(" + ms + ")");
    }

    /** One of the figures of {@code stats()}, a number. */
    double figure(String name) {
        return number("stats()." + name);
    }

    String mode() {
        return String.valueOf(page.value(HANDLE + ".stats().mode"));
    }

    private double number(String member) {
        return ((Number) page.value(HANDLE + "." + member)).doubleValue();
    }

    /** Waits until the clock stands later than a time. */
    void waitUntilAfter(double ms) {
        page.page()
                .waitForFunction(
                        "ms => " + HANDLE + ".clock() > ms", ms, new Page.WaitForFunctionOptions().setTimeout(20_000));
    }

    /** Whether it plays, by the word on its button. */
    boolean plays() {
        return text(".rp-play").equals("Pause");
    }

    /** What is chosen in the list with a label. */
    String chosen(String label) {
        return String.valueOf(page.value("[...document.querySelectorAll('.rp-controls .rp-field')].find(f =>"
                + " f.firstChild.textContent === '" + label + "').querySelector('select').value"));
    }

    /** Whether the button with these words is pressed. */
    boolean pressed(String words) {
        return "true"
                .equals(page.value("[...document.querySelectorAll('.rp-controls button')].find(b => b.textContent === '"
                        + words + "').getAttribute('aria-pressed')"));
    }

    /** The text of the first element that a selector finds. */
    String text(String selector) {
        return String.valueOf(page.value("document.querySelector('" + selector + "').textContent"));
    }

    boolean isSeen(String selector) {
        return (boolean) page.value("document.querySelector('" + selector + "').checkVisibility()");
    }

    /** What is said of each animal. */
    List<String> sentences() {
        return page.texts("[...document.querySelectorAll('.rp-words li')].map(li => li.textContent)");
    }
}
