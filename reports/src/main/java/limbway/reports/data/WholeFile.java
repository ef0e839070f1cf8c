package limbway.reports.data;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/** Writes files that are there as a whole or not at all. */
public final class WholeFile {

    private WholeFile() {}

    /**
     * Writes a text in UTF-8.
     *
     * @param file where to; replaced if it exists
     * @param text all of it
     * @throws IOException if it cannot be written; nothing that was begun is left
     */
    public static void write(Path file, String text) throws IOException {
        write(file, text.getBytes(StandardCharsets.UTF_8));
    }

    /**
     * Writes bytes.
     *
     * @param file where to; replaced if it exists
     * @param bytes all of it
     * @throws IOException if it cannot be written; nothing that was begun is left
     */
    public static void write(Path file, byte[] bytes) throws IOException {
        try {
            Files.write(file, bytes);
        } catch (IOException e) {
            if (Files.isRegularFile(file) && Files.size(file) < bytes.length) {
                Files.deleteIfExists(file);
            }
            throw e;
        }
    }
}
