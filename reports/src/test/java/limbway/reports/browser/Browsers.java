package limbway.reports.browser;

import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Playwright;

/** The Chromium of this machine, started once for each way of drawing when it is first asked for. */
final class Browsers implements AutoCloseable {

    /** Said where there is no browser. */
    static final String MISSING = "no browser: pages are not looked at. Install chromium, or say where one is with "
            + "-Dlimbway.browser=/path/to/chromium";

    private static final List<String> NAMES = List.of("chromium", "chromium-browser", "google-chrome");

    private final Path executable;
    private final Playwright playwright;
    private final Map<Drawing, Browser> started = new EnumMap<>(Drawing.class);

    private Browsers(Path executable) {
        this.executable = executable;
        this.playwright = Playwright.create(
                new Playwright.CreateOptions().setEnv(Map.of("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1")));
    }

    /** The browser named by {@code limbway.browser}, or the first one on the path. */
    static Optional<Path> installed() {
        String named = System.getProperty("limbway.browser", "");
        if (!named.isEmpty()) {
            return Optional.of(Path.of(named)).filter(Files::isExecutable);
        }
        String[] folders = System.getenv().getOrDefault("PATH", "").split(File.pathSeparator, -1);
        return NAMES.stream()
                .flatMap(name -> Stream.of(folders).map(folder -> Path.of(folder, name)))
                .filter(Files::isExecutable)
                .findFirst();
    }

    /**
     * Starts what drives the browser.
     *
     * @throws IllegalStateException where no browser is installed
     */
    static Browsers start() {
        return new Browsers(installed().orElseThrow(() -> new IllegalStateException(MISSING)));
    }

    /** Opens a file in a window of its own. */
    OpenPage open(Path file) {
        return open(file, Drawing.IN_SOFTWARE);
    }

    OpenPage open(Path file, Drawing drawing) {
        BrowserContext context = browser(drawing)
                .newContext(new Browser.NewContextOptions()
                        .setOffline(true)
                        .setAcceptDownloads(false)
                        .setDeviceScaleFactor(1));
        context.setDefaultTimeout(30_000);
        return new OpenPage(context, file.toAbsolutePath().normalize().toUri().toString());
    }

    /** Opens the text of a page as a file would be opened. */
    OpenPage openText(String html, Drawing drawing) {
        try {
            Path file = Files.writeString(Files.createTempFile("page", ".html"), html);
            try {
                return open(file, drawing);
            } finally {
                Files.delete(file);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private Browser browser(Drawing drawing) {
        return started.computeIfAbsent(drawing, this::launch);
    }

    private Browser launch(Drawing drawing) {
        List<String> switches = new ArrayList<>(drawing.switches());
        // no name of any host is ever looked up
        switches.addAll(List.of("--no-sandbox", "--host-resolver-rules=MAP * ~NOTFOUND", "--disable-dev-shm-usage"));
        return playwright
                .chromium()
                .launch(new BrowserType.LaunchOptions()
                        .setExecutablePath(executable)
                        .setArgs(switches));
    }

    @Override
    public void close() {
        started.values().forEach(Browser::close);
        playwright.close();
    }
}
