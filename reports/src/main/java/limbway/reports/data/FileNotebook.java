package limbway.reports.data;

import java.io.BufferedWriter;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
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
    private final BufferedWriter writer;
    private final int found;

    private FileNotebook(BufferedWriter writer, Map<String, double[]> known) {
        this.writer = writer;
        this.known.putAll(known);
        this.found = known.size();
    }

    /**
     * Opens a notebook; one that belongs to another question is begun anew.
     *
     * @param file where it is kept
     * @param question all that decides what comes out: scenario, seed, settings, version; one line
     * @return the notebook
     * @throws IOException if it cannot be read or written
     */
    public static FileNotebook open(Path file, String question) throws IOException {
        Map<String, double[]> known = Files.isRegularFile(file) ? read(file, question) : Map.of();
        StringBuilder kept = new StringBuilder(question).append('\n');
        known.forEach((key, values) -> kept.append(line(key, values)));
        WholeFile.write(file, kept.toString());
        BufferedWriter writer = Files.newBufferedWriter(file, StandardCharsets.UTF_8, StandardOpenOption.APPEND);
        return new FileNotebook(writer, known);
    }

    private static Map<String, double[]> read(Path file, String question) throws IOException {
        Map<String, double[]> known = new LinkedHashMap<>();
        String text = Files.readString(file, StandardCharsets.UTF_8);
        String[] lines = text.substring(0, text.lastIndexOf('\n') + 1).split("\n", -1);
        if (!lines[0].equals(question)) {
            return Map.of();
        }
        for (int i = 1; i < lines.length - 1; i++) {
            String[] parts = lines[i].split(DIVIDER, -1);
            double[] values = new double[parts.length - 1];
            for (int v = 0; v < values.length; v++) {
                values[v] = Double.parseDouble(parts[v + 1]);
            }
            known.put(parts[0], values);
        }
        return known;
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
     * Notes something in the file.
     *
     * @throws UncheckedIOException if the file cannot be written
     */
    @Override
    public synchronized void note(String key, double[] values) {
        known.put(clean(key), values.clone());
        try {
            writer.write(line(clean(key), values));
            writer.flush();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Override
    public void close() throws IOException {
        writer.close();
    }
}
