package limbway.reports.replay;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.LinkedHashMap;
import java.util.Map;

import limbway.reports.data.Json;

/**
 * The scripts of the replay, to be carried by the page itself: an import map that leads every name to a {@code data:} URL.
 *
 * <p>Drawing in space is done by three.js, taken as published, but for the name by which its two files find each other: a
 * {@code data:} URL has no neighbours.
 */
public final class Bundle {

    /** Names our modules, one a line, which lie beside it; each is imported as {@code limbway/name}. */
    private static final String MODULES = "modules.txt";

    private static final String SHEET = "replay.css";

    private static final String THREE = "/META-INF/resources/webjars/three/0.181.1/";
    private static final String CORE_BESIDE = "\"./three.core.min.js\"";
    private static final String CORE = "three/core";

    private static final String START = """
            <script type="module">
            import {mount} from 'limbway/replay';
            window.limbwayReplays = [...document.querySelectorAll('.replay')].map(root => mount(root,
              JSON.parse(document.querySelector('script.replay-data').textContent), JSON.parse(root.dataset.options || '{}')));
            </script>
            """;

    private Bundle() {}

    /**
     * The markup that shows the replays of a page: put it after the data and the elements of class {@code replay}.
     *
     * @return an import map, a style sheet and a script, the same at every call
     */
    public static String markup() {
        return modules() + START;
    }

    /**
     * The modules alone, for a page that mounts the player itself.
     *
     * @return an import map and a style sheet, the same at every call
     */
    public static String modules() {
        Map<String, String> imports = new LinkedHashMap<>();
        String three = text(THREE + "build/three.module.min.js");
        if (!three.contains(CORE_BESIDE)) {
            throw new IllegalStateException("three.js: its module does not import " + CORE_BESIDE);
        }
        String licence = "/*\n" + text(THREE + "LICENSE") + "*/\n";
        imports.put("three", url(licence + three.replace(CORE_BESIDE, '"' + CORE + '"')));
        imports.put(CORE, url(text(THREE + "build/three.core.min.js")));
        imports.put(
                "three/addons/controls/OrbitControls.js", url(text(THREE + "examples/jsm/controls/OrbitControls.js")));
        for (String module : text(MODULES).lines().toList()) {
            imports.put("limbway/" + module, url(text(module + ".js")));
        }
        return "<script type=\"importmap\">" + Json.embedded(Map.of("imports", imports)) + "</script>\n<style>\n"
                + text(SHEET) + "</style>\n";
    }

    private static String url(String script) {
        return "data:text/javascript;base64,"
                + Base64.getEncoder().encodeToString(script.getBytes(StandardCharsets.UTF_8));
    }

    private static String text(String resource) {
        try (InputStream stream = Bundle.class.getResourceAsStream(resource)) {
            if (stream == null) {
                throw new IllegalStateException("this program was packed without " + resource);
            }
            return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException("this program cannot read " + resource, e);
        }
    }
}
