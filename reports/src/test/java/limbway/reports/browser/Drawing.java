package limbway.reports.browser;

import java.util.List;

/** What a browser draws pictures in space with. */
enum Drawing {
    /** In software, the same on every machine. */
    IN_SOFTWARE("--use-angle=swiftshader", "--enable-unsafe-swiftshader"),
    /** Not at all: a browser without WebGL. */
    NOT_IN_SPACE("--disable-webgl", "--disable-3d-apis");

    private final String[] switches;

    Drawing(String... switches) {
        this.switches = switches;
    }

    List<String> switches() {
        return List.of(switches);
    }
}
