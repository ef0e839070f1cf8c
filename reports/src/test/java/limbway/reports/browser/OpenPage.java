package limbway.reports.browser;

import java.util.ArrayList;
import java.util.List;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Route;

/** A page in a window, and all that it did which a page should not do by itself. */
final class OpenPage implements AutoCloseable {

    private final BrowserContext context;
    private final String address;
    private final Page page;
    private final List<String> complaints = new ArrayList<>();

    OpenPage(BrowserContext context, String address) {
        this.context = context;
        this.address = address;
        context.route("**/*", this::answer);
        page = context.newPage();
        page.onConsoleMessage(message -> {
            if (List.of("error", "warning").contains(message.type())) {
                complaints.add("console " + message.type() + ": " + message.text());
            }
        });
        page.onPageError(error -> complaints.add("error: " + error));
        page.onDialog(dialog -> {
            complaints.add("dialog: " + dialog.message());
            dialog.dismiss();
        });
        page.onPopup(popup -> complaints.add("window: " + popup.url()));
        page.onDownload(download -> complaints.add("download: " + download.url()));
        page.onFrameNavigated(frame -> {
            if (!withoutPlace(frame.url()).equals(address)) {
                complaints.add("went to " + frame.url());
            }
        });
        resize(1280, 900);
        page.navigate(address);
    }

    /** Only the file itself is given; what else is asked for is written down and refused. */
    private void answer(Route route) {
        if (withoutPlace(route.request().url()).equals(address)) {
            route.resume();
        } else {
            complaints.add("request: " + route.request().url());
            route.abort();
        }
    }

    private static String withoutPlace(String url) {
        return url.split("#", 2)[0];
    }

    void resize(int widthPx, int heightPx) {
        page.setViewportSize(widthPx, heightPx);
    }

    /** Presses keys one after the other, for example {@code "Tab", "Enter"}. */
    void press(String... keys) {
        for (String key : keys) {
            page.keyboard().press(key);
        }
    }

    /** The value of an expression of JavaScript; in it, {@code arg} is not known. */
    Object value(String expression) {
        return page.evaluate(expression);
    }

    List<String> texts(String expression) {
        List<String> texts = new ArrayList<>();
        ((List<?>) value(expression)).forEach(one -> texts.add(String.valueOf(one)));
        return texts;
    }

    /** What the player of a page tells of itself; null where there is none. */
    Object replays() {
        return value("window.limbwayReplays ?? null");
    }

    /** Runs a script that stands in no page, such as one that looks for mistakes. */
    void load(String script) {
        value(script);
    }

    /** Requests, dialogs, errors and warnings, in order; empty for a page that behaves. */
    List<String> complaints() {
        return List.copyOf(complaints);
    }

    Page page() {
        return page;
    }

    @Override
    public void close() {
        context.close();
    }
}
