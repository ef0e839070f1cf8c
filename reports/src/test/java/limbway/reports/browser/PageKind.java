package limbway.reports.browser;

import java.util.List;

/** Every kind of page that the program writes, with the command that writes it in little time. */
enum PageKind {
    RUN("report.html", "run", "--replications", "2", "--days", "1", "--warm-up", "0"),
    COMPARE("compare.html", "compare", "--replications", "10", "--days", "1", "--warm-up", "0"),
    PLACE(
            "place.html",
            "place",
            "--move",
            "the drinker",
            "--replications",
            "2",
            "--simulate",
            "2",
            "--fresh",
            "2",
            "--days",
            "1",
            "--warm-up",
            "0"),
    LINK("link.html", "link", "--replications", "2", "--check", "2", "--falls", "1", "--days", "1", "--warm-up", "0"),
    SHADE("shade.html", "shade", "--step", "60"),
    SCREEN("screen.html", "screen", "--replications", "2", "--trajectories", "2", "--days", "1", "--warm-up", "0");

    private static final String DRINKER = "the drinker";

    private final String file;
    private final List<String> words;

    PageKind(String file, String... words) {
        this.file = file;
        this.words = List.of(words);
    }

    String file() {
        return file;
    }

    /** The command and its options, with the name of the scenario's drinker, without the scenario itself. */
    List<String> words(String drinker) {
        return words.stream().map(word -> word.equals(DRINKER) ? drinker : word).toList();
    }
}
