package limbway.reports.browser;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

import limbway.reports.browser.Words.Field;
import limbway.reports.command.Limbway;
import limbway.scenarios.entry.Form;

/** Pages as the command line writes them, each written once when it is first asked for. */
final class SamplePages implements AutoCloseable {

    private final Path folder;
    private final Map<String, Path> written = new HashMap<>();

    SamplePages() {
        try {
            folder = Files.createTempDirectory("pages");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The page of the small yard. */
    Path of(PageKind kind) {
        return of(kind, "small.yaml", Words.of("small.yaml"));
    }

    /** The page of a scenario that stays the same for its name. */
    Path of(PageKind kind, String name, Words scenario) {
        return written.computeIfAbsent(kind + " " + name, key -> write(kind, name, scenario));
    }

    private Path write(PageKind kind, String name, Words scenario) {
        try {
            Path out = folder.resolve(kind.name());
            out = Files.createTempDirectory(Files.createDirectories(out), "out").resolve("page");
            Path file = Files.writeString(folder.resolve(name), scenario.yaml());
            List<String> words = new ArrayList<>(kind.words(scenario.text(new Field(Form.WATER, "water"), 0)));
            words.add(1, file.toString());
            words.addAll(List.of("--out", out.toString()));
            StringWriter said = new StringWriter();
            PrintWriter writer = new PrintWriter(said);
            int code = Limbway.run(writer, writer, words.toArray(String[]::new));
            if (code > 1) {
                throw new IllegalStateException(String.join(" ", words) + " ended with " + code + "\n" + said);
            }
            return out.resolve(kind.file());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Override
    public void close() {
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(file);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
