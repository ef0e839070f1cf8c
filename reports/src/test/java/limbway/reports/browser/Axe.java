package limbway.reports.browser;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** Looks for what keeps people from using a page, by the rules of axe-core for WCAG 2 A and AA and for good practice. */
final class Axe {

    private static final String RUN = """
            async () => {
              const tags = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];
              const found = await axe.run(document, {runOnly: {type: 'tag', values: tags}, preload: false,
                resultTypes: ['violations']});
              return found.violations.flatMap(rule => rule.nodes.map(node =>
                rule.id + ': ' + rule.help + ': ' + node.html.slice(0, 200) + ' ' + JSON.stringify(
                  node.any.concat(node.all, node.none).map(check => check.message)).slice(0, 300)));
            }
            """;

    private Axe() {}

    /** What breaks a rule, with the element that does. */
    static List<String> violations(OpenPage page) {
        try (InputStream script = Axe.class.getResourceAsStream("/axe.min.js")) {
            page.load(new String(script.readAllBytes(), StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return page.texts(RUN);
    }
}
