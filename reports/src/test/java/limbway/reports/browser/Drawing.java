package limbway.reports.browser;

import java.util.List;

/** What a browser draws pictures in space with. */
enum Drawing {
    /** In software, the same on every machine. */
    IN_SOFTWARE,
    /** Not at all: a browser without WebGL. */
    NOT_IN_SPACE;

    List<String> switches() {
        return switch (this) {
            case IN_SOFTWARE -> List.of("--use-angle=swiftshader", "--enable-unsafe-swiftshader");
            case NOT_IN_SPACE -> List.of("--disable-webgl", "--disable-3d-apis");
        };
    }
}
