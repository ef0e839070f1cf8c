package limbway.reports.words;

import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;

import limbway.model.enclosure.Door;
import limbway.model.study.Variant;

/** What the cards of trips say beside their numbers. */
public final class CardText {

    /** Name of the way with a move on the ground. */
    public static final String OVER_GROUND = "over the ground";

    /** Name of the way without one. */
    public static final String OFF_GROUND = "off the ground";

    private final String scenario;
    private final String layout;
    private final List<Door> doors;

    /**
     * Words for the cards of one layout.
     *
     * @param scenario name of the scenario file
     * @param layout the layout
     */
    public CardText(String scenario, Variant layout) {
        this.scenario = scenario;
        this.layout = layout.name();
        this.doors = layout.enclosure().bounds().doors();
    }

    /**
     * The command that tells the same and more.
     *
     * @param body name of the body
     * @param from place where the trip starts
     * @param to place where it ends
     * @param atSecond seconds after midnight, or empty with all doors open that ever are
     * @return a command line
     */
    public String command(String body, String from, String to, OptionalInt atSecond) {
        List<String> words = new ArrayList<>(List.of("limbway", "explain", scenario));
        words.addAll(List.of("--variant", layout));
        words.addAll(List.of("--body", body, "--from", from, "--to", to));
        atSecond.ifPresent(second -> words.addAll(List.of("--at", clock(second))));
        return ShellWord.line(words);
    }

    /**
     * How the doors stand.
     *
     * @param atSecond seconds after midnight, or empty with all doors open that ever are
     * @return a sentence, or nothing where there is no door
     */
    public String doors(OptionalInt atSecond) {
        if (doors.isEmpty()) {
            return "";
        }
        if (atSecond.isEmpty()) {
            return "With all doors open.";
        }
        List<String> shut = doors.stream()
                .filter(door -> !door.isOpenAt(atSecond.getAsInt()))
                .map(Door::id)
                .toList();
        return "With doors as at " + clock(atSecond.getAsInt()) + ": shut " + (shut.size() == 1 ? "is " : "are ")
                + String.join(", ", shut) + ".";
    }

    /**
     * A time of day.
     *
     * @param second seconds after midnight
     * @return for example {@code 19:30}
     */
    public static String clock(int second) {
        return LocalTime.ofSecondOfDay(second).toString();
    }

    /**
     * What is said of a change that would turn the trips, where none is shown.
     *
     * @param usesGround whether some of the trips used the ground
     * @param asked whether a change was looked for
     * @param found whether one was found
     * @return a sentence, or nothing where there is nothing to say
     */
    public static String flipNote(boolean usesGround, boolean asked, boolean found) {
        if (found || !usesGround) {
            return "";
        }
        return asked
                ? "No single change was found in short time that turns this trip; the command looks longer."
                : "This command also looks for a single change that turns the trip off the ground.";
    }
}
