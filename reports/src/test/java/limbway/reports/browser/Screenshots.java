package limbway.reports.browser;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.Media;

/**
 * Takes pictures of pages for people to look at: every section at two widths, in colour and in grey, and the page on paper.
 * No test. Called with a folder to write to and pages, or with a folder alone for the sample pages.
 */
public final class Screenshots {

    private static final List<Integer> WIDTHS_PX = List.of(1280, 360);

    /** A section begins with a heading and ends before the next. */
    private static final String SECTIONS = "[...document.querySelectorAll('h1, h2')].map((heading, i) => {"
            + " heading.dataset.section = i; return heading.id || heading.localName; })";

    private Screenshots() {}

    /**
     * Takes the pictures.
     *
     * @param args a folder to write to, then HTML files; without files the sample pages are taken
     * @throws IOException if a folder cannot be made
     */
    public static void main(String[] args) throws IOException {
        if (args.length == 0) {
            throw new IllegalArgumentException(
                    "give a folder to write to, then pages; without pages the samples are taken");
        }
        Path folder = Path.of(args[0]);
        try (Browsers browsers = Browsers.start();
                SamplePages samples = new SamplePages()) {
            for (int i = 1; i < args.length; i++) {
                Path page = Path.of(args[i]);
                String name = page.getFileName().toString().replace(".html", "");
                take(browsers, page, Files.createDirectories(folder.resolve(name)));
            }
            for (PageKind kind : args.length > 1 ? new PageKind[0] : PageKind.values()) {
                String name = kind.name().toLowerCase(Locale.ROOT);
                take(browsers, samples.of(kind), Files.createDirectories(folder.resolve(name)));
            }
        }
        System.out.println("pictures: " + folder);
    }

    private static void take(Browsers browsers, Path file, Path folder) {
        for (int widthPx : WIDTHS_PX) {
            for (boolean grey : new boolean[] {false, true}) {
                try (OpenPage page = browsers.open(file)) {
                    page.resize(widthPx, 900);
                    if (grey) {
                        page.value("document.documentElement.style.filter = 'grayscale(1)'");
                    }
                    sections(page, widthPx, folder, widthPx + (grey ? "-grey-" : "-colour-"));
                }
            }
        }
        try (OpenPage page = browsers.open(file)) {
            page.page().emulateMedia(new Page.EmulateMediaOptions().setMedia(Media.PRINT));
            page.page()
                    .pdf(new Page.PdfOptions()
                            .setPath(folder.resolve("paper.pdf"))
                            .setPreferCSSPageSize(true));
        }
    }

    private static void sections(OpenPage page, int widthPx, Path folder, String prefix) {
        List<String> names = page.texts(SECTIONS);
        for (int i = 0; i < names.size(); i++) {
            double top = top(page, i);
            double bottom = i + 1 < names.size()
                    ? top(page, i + 1)
                    : ((Number) page.value("document.documentElement.scrollHeight")).doubleValue();
            page.page()
                    .screenshot(new Page.ScreenshotOptions()
                            .setFullPage(true)
                            .setClip(0, top, widthPx, Math.max(1, bottom - top))
                            .setPath(folder.resolve(
                                    String.format(Locale.ROOT, "%s%02d-%s.png", prefix, i, names.get(i)))));
        }
    }

    private static double top(OpenPage page, int section) {
        return ((Number) page.value("document.querySelector('[data-section=\"" + section
                        + "\"]').getBoundingClientRect().top + scrollY"))
                .doubleValue();
    }
}
