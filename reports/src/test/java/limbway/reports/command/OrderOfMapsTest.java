package limbway.reports.command;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;

import static org.junit.jupiter.api.Assertions.assertEquals;

/** {@code Map.of} hands its keys out in an order that differs from one start of Java to the next. */
class OrderOfMapsTest {

    @Test
    void noAnswerIsMadeOfMapsWithoutOrder() throws IOException {
        List<String> found = new ArrayList<>();
        try (Stream<Path> files = Files.walk(Path.of("src/main/java"))) {
            for (Path file :
                    files.filter(f -> f.toString().endsWith(".java")).sorted().toList()) {
                String text = Files.readString(file);
                for (String word : List.of(" Map.of(", "(Map.of(", " Map.ofEntries(", "(Map.ofEntries(")) {
                    for (int at = text.indexOf(word); at >= 0; at = text.indexOf(word, at + 1)) {
                        if (commas(text, at + word.length()) > 1) {
                            found.add(file.getFileName() + ": " + text.substring(at, Math.min(text.length(), at + 60)));
                        }
                    }
                }
            }
        }
        assertEquals(List.of(), found, "use a LinkedHashMap");
        assertEquals(3, commas("\"a\", 1, \"b\", f(2, 3))", 0), "two keys are found");
    }

    /** Commas of a call, without those of calls within it and of texts. */
    private static int commas(String text, int start) {
        int commas = 0;
        int depth = 0;
        boolean quoted = false;
        for (int i = start; depth >= 0; i++) {
            char c = text.charAt(i);
            quoted ^= c == '"' && text.charAt(i - (i > 0 ? 1 : 0)) != '\\';
            if (!quoted) {
                depth += c == '(' ? 1 : c == ')' ? -1 : 0;
                commas += c == ',' && depth == 0 ? 1 : 0;
            }
        }
        return commas;
    }
}
