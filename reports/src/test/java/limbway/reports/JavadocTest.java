package limbway.reports;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

/**
 * Every public type and method of the main code says what it is for.
 *
 * <p>The strict check of Javadoc leaves missing comments out, because compact constructors of records trip it.
 */
class JavadocTest {

    private static final List<String> MODULES = List.of("model", "scenarios", "sim", "reports");

    /** The line that declares a public type, method or constructor; fields are not meant. */
    private static final Pattern DECLARATION = Pattern.compile(
            "^\\s*public (?!.*\\bfinal \\S+ \\w+ =)(.*\\b(class|record|interface|enum) \\w+|.*\\w+\\().*");

    @Test
    void everyPublicTypeAndMethodHasAComment() throws IOException {
        List<String> bare = new ArrayList<>();
        int files = 0;
        for (String module : MODULES) {
            for (Path source : sources(Path.of("..", module, "src", "main", "java"))) {
                files++;
                bare.addAll(bareDeclarations(source));
            }
        }
        assertEquals(List.of(), bare);
        // a walk that finds no files would hold too
        assertTrue(files > 150, "files seen = " + files);
    }

    private static List<Path> sources(Path folder) throws IOException {
        try (Stream<Path> tree = Files.walk(folder)) {
            return tree.filter(path -> path.toString().endsWith(".java"))
                    .filter(path -> !path.endsWith("package-info.java"))
                    .sorted()
                    .toList();
        }
    }

    private static List<String> bareDeclarations(Path source) throws IOException {
        List<String> lines = Files.readAllLines(source);
        List<String> bare = new ArrayList<>();
        boolean typeIsPublic = lines.stream().anyMatch(line -> line.startsWith("public "));
        for (int i = 0; i < lines.size(); i++) {
            if (typeIsPublic && DECLARATION.matcher(lines.get(i)).matches() && !isExplained(lines, i)) {
                bare.add(source + ":" + (i + 1) + ": " + lines.get(i).strip());
            }
        }
        return bare;
    }

    /** Explained by a comment right above its annotations, or by what it overrides. */
    private static boolean isExplained(List<String> lines, int declaration) {
        int depth = 0;
        for (int i = declaration - 1; i >= 0; i--) {
            String line = lines.get(i).strip();
            if (line.equals("@Override")) {
                return true;
            }
            if (line.endsWith("*/")) {
                return true;
            }
            depth += count(line, ')') - count(line, '(');
            boolean annotation = line.startsWith("@") || depth > 0 || line.endsWith(")") || line.startsWith("//");
            if (!annotation) {
                return false;
            }
        }
        return false;
    }

    private static int count(String line, char c) {
        return (int) line.chars().filter(each -> each == c).count();
    }

    @Test
    void aBareMethodIsNoticed() throws IOException {
        Path file = Files.createTempFile("Bare", ".java");
        Files.writeString(
                file, "/** Type. */\npublic class Bare {\n\n    public int bare() {\n        return 1;\n    }\n}\n");
        assertEquals(List.of(file + ":4: public int bare() {"), bareDeclarations(file));
        Files.delete(file);
    }
}
