package limbway.scenarios.format;

import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Optional;

import limbway.scenarios.problem.Place;
import limbway.scenarios.problem.Problem;
import limbway.scenarios.problem.Problems;

/** Turns the bytes of a file into text, or says why they are none. */
public final class SourceText {

    /** Largest scenario or table that is read [bytes]: 4 MiB, some 40,000 supports. */
    public static final int MAX_BYTES = 4 * 1024 * 1024;

    /** Largest weather file that is read [bytes]: 32 MiB, far more than a year of hours needs. */
    public static final int MAX_WEATHER_BYTES = 32 * 1024 * 1024;

    /** Longest line that is read [characters]; the YAML library takes long for longer ones. */
    private static final int LONGEST_LINE = 20_000;

    private static final char BYTE_ORDER_MARK = '\uFEFF';

    private SourceText() {}

    /**
     * Decodes UTF-8 strictly and refuses characters that no text holds.
     *
     * @param file name for messages
     * @param bytes content of the file
     * @param mostBytes the most that is read
     * @param problems where mistakes go
     * @return the text without a byte order mark, or empty if it is none
     */
    public static Optional<String> decode(String file, byte[] bytes, int mostBytes, Problems problems) {
        if (bytes.length > mostBytes) {
            problems.add(tooLarge(file, bytes.length, mostBytes));
            return Optional.empty();
        }
        CharsetDecoder decoder = StandardCharsets.UTF_8
                .newDecoder()
                .onMalformedInput(CodingErrorAction.REPORT)
                .onUnmappableCharacter(CodingErrorAction.REPORT);
        CharBuffer chars = CharBuffer.allocate(bytes.length + 1);
        ByteBuffer source = ByteBuffer.wrap(bytes);
        CoderResult result = decoder.decode(source, chars, true);
        String text = chars.flip().toString();
        if (result.isError()) {
            problems.add(Problem.at(placeOf(file, text, text.length()), "this file is not text in UTF-8")
                    .found(String.format(Locale.ROOT, "byte 0x%02X", bytes[source.position()]))
                    .mend("save it again as plain text with the encoding UTF-8"));
            return Optional.empty();
        }
        return printable(file, text, problems);
    }

    /**
     * The problem of a file that is too large.
     *
     * @param file its name
     * @param bytes its size
     * @param mostBytes the most that is read
     * @return the problem
     */
    public static Problem tooLarge(String file, long bytes, int mostBytes) {
        return Problem.at(Place.startOf(file), "this file is too large")
                .found(bytes + " bytes")
                .allowed("at most " + mostBytes + " bytes (" + mostBytes / (1024 * 1024) + " MiB)")
                .mend("check that this is the file you meant, and take out what is not needed");
    }

    private static Optional<String> printable(String file, String text, Problems problems) {
        int start = !text.isEmpty() && text.charAt(0) == BYTE_ORDER_MARK ? 1 : 0;
        int lineStart = start;
        for (int i = start; i < text.length(); i += Character.charCount(text.codePointAt(i))) {
            if (!isPrintable(text.codePointAt(i))) {
                problems.add(Problem.at(
                                placeOf(file, text.substring(start), i - start),
                                "this character does not belong in text")
                        .found(String.format(Locale.ROOT, "U+%04X", text.codePointAt(i)))
                        .mend("take it out, or check that this is the file you meant"));
                return Optional.empty();
            }
            lineStart = text.charAt(i) == '\n' ? i + 1 : lineStart;
            if (i - lineStart > LONGEST_LINE) {
                problems.add(
                        Problem.at(placeOf(file, text.substring(start), lineStart - start), "this line is too long")
                                .allowed("at most " + LONGEST_LINE + " characters")
                                .mend("break it into several lines"));
                return Optional.empty();
            }
        }
        return Optional.of(text.substring(start));
    }

    /** The printable characters of YAML 1.1, section 5.1. */
    private static boolean isPrintable(int c) {
        return (c >= 0x20 && c <= 0x7E)
                || c == '\n'
                || c == '\r'
                || c == '\t'
                || c == 0x85
                || (c >= 0xA0 && c <= 0xD7FF)
                || (c >= 0xE000 && c <= 0xFFFD && c != BYTE_ORDER_MARK)
                || c >= 0x10000;
    }

    private static Place placeOf(String file, String text, int index) {
        int line = 1;
        int lineStart = 0;
        for (int i = 0; i < index; i++) {
            if (text.charAt(i) == '\n') {
                line++;
                lineStart = i + 1;
            }
        }
        return new Place(file, line, text.codePointCount(lineStart, index) + 1);
    }
}
