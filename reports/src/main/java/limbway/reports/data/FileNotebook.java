package limbway.reports.data;

import java.io.BufferedWriter;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;

import limbway.sim.experiment.trial.Notebook;

/**
 * A notebook in a file: a first line that says what question it belongs to, then a line for each thing found.
 *
 * <p>A line is a key and values in hexadecimal floating point, divided by tabulators; every line is written at once, and a
 * last line that was cut off by the end of the process is not read.
 */
public final class FileNotebook implements Notebook, AutoCloseable {

    private static final String DIVIDER = "\t";

    private final Map<String, double[]> known = new ConcurrentHashMap<>();
    private final Path file;
    private final String question;
    private final BufferedWriter writer;
    private final int found;

    private FileNotebook(Path file, String question, BufferedWriter writer, Map<String, double[]> known) {
        this.file = file;
        this.question = question;
        this.writer = writer;
        this.known.putAll(known);
        this.found = known.size();
    }

    /**
     * Opens a notebook. One that belongs to another question is set aside as {@code …-earlier} in place of what was set
     * aside before; lines that cannot be read are passed over.
     *
     * @param file where it is kept
     * @param question all that decides what comes out: scenario, seed, settings, version; one line
     * @return the notebook
     * @throws IOException if it cannot be read or written
     */
    public static FileNotebook open(Path file, String question) throws IOException {
        Map<String, double[]> known = Map.of();
        if (Files.isRegularFile(file)) {
            // a byte that is no text spoils its line, not the notebook
            List<String> lines = List.of(new String(Files.readAllBytes(file), StandardCharsets.UTF_8).split("\n", -1));
            if (lines.size() > 1 && lines.get(0).equals(question)) {
                // what follows the last end of line was cut off
                known = read(lines.subList(1, lines.size() - 1));
            } else {
                Files.move(file, earlier(file), StandardCopyOption.REPLACE_EXISTING);
            }
        }
        write(file, question, known);
        BufferedWriter writer = Files.newBufferedWriter(file, StandardCharsets.UTF_8, StandardOpenOption.APPEND);
        return new FileNotebook(file, question, writer, known);
    }

    private static Path earlier(Path file) {
        return file.resolveSibling(file.getFileName().toString().replaceFirst("(\\.[^.]*)?$", "-earlier$1"));
    }

    private static Map<String, double[]> read(List<String> lines) {
        Map<String, double[]> known = new LinkedHashMap<>();
        for (String line : lines) {
            String[] parts = line.split(DIVIDER, -1);
            values(parts).ifPresent(values -> known.put(parts[0], values));
        }
        return known;
    }

    /** Empty if the line cannot be read: what it told is found again, and nothing else is lost. */
    private static Optional<double[]> values(String[] parts) {
        double[] values = new double[parts.length - 1];
        try {
            for (int v = 0; v < values.length; v++) {
                values[v] = Double.parseDouble(parts[v + 1]);
            }
        } catch (NumberFormatException e) {
            return Optional.empty();
        }
        return Optional.of(values);
    }

    private static String line(String key, double[] values) {
        StringBuilder line = new StringBuilder(key);
        for (double value : values) {
            line.append(DIVIDER).append(Double.toHexString(value));
        }
        return line.append('\n').toString();
    }

    private static String clean(String key) {
        return key.replaceAll("[\t\n\r]", " ");
    }

    /**
     * How much was there already.
     *
     * @return things found before this notebook was opened, 0 or more
     */
    public int found() {
        return found;
    }

    @Override
    public Optional<double[]> find(String key) {
        return Optional.ofNullable(known.get(clean(key)));
    }

    /**
     * Notes something in the file, unless it is known.
     *
     * @throws UncheckedIOException if the file cannot be written
     */
    @Override
    public synchronized void note(String key, double[] values) {
        if (known.putIfAbsent(clean(key), values.clone()) != null) {
            return;
        }
        try {
            writer.write(line(clean(key), values));
            writer.flush();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /**
     * Ends the notebook with its lines in the order of their keys, so that it does not tell in what order things were found.
     *
     * @throws IOException if the file cannot be written
     */
    @Override
    public void close() throws IOException {
        writer.close();
        write(file, question, new TreeMap<>(known));
    }

    private static void write(Path file, String question, Map<String, double[]> lines) throws IOException {
        StringBuilder text = new StringBuilder(question).append('\n');
        lines.forEach((key, values) -> text.append(line(key, values)));
        WholeFile.write(file, text.toString());
    }
}
