package limbway.reports.browser;

import java.util.List;
import java.util.stream.Stream;

/** Every kind of page that the program writes, with the command that writes it in little time. */
enum PageKind {
    RUN("report.html", "run --replications 2 --days 1 --warm-up 0"),
    COMPARE("compare.html", "compare --replications 10 --days 1 --warm-up 0"),
    PLACE("place.html", "place --move DRINKER --replications 2 --simulate 2 --fresh 2 --days 1 --warm-up 0"),
    LINK("link.html", "link --replications 2 --check 2 --falls 1 --days 1 --warm-up 0"),
    SHADE("shade.html", "shade --step 60"),
    SCREEN("screen.html", "screen --replications 2 --trajectories 2 --days 1 --warm-up 0"),
    LESSON("lesson.html", "lesson --replications 2 --days 1");

    private static final String DRINKER = "DRINKER";

    private final String file;
    private final String words;

    PageKind(String file, String words) {
        this.file = file;
        this.words = words;
    }

    String file() {
        return file;
    }

    /** The command and its options, with the name of the scenario's drinker, without the scenario itself. */
    List<String> words(String drinker) {
        return Stream.of(words.split(" ", -1))
                .map(word -> word.equals(DRINKER) ? drinker : word)
                .toList();
    }
}
