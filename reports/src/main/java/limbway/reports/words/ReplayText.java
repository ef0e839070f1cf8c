package limbway.reports.words;

import java.util.LinkedHashMap;
import java.util.Map;

/** Every word that the replay shows, by key: nothing is worded in the scripts. */
public final class ReplayText {

    /** Heading of the section. */
    public static final String HEADING = "Watch a day";

    /** Leads from the answer to the replay. */
    public static final String LINK = "Watch a day, move by move";

    /** Stands above the replay. */
    public static final String MEANING =
            "The first repetition, move by move, as it was simulated. Other repetitions differ by chance; the shares above and "
                    + "below rest on all of them.";

    /** Stands where the replay would be, until scripts run. */
    public static final String FALLBACK =
            "The replay needs a browser that runs scripts; everything it needs is in this file, and nothing is fetched. "
                    + "Without scripts, or on paper, drawings show the travel: of this repetition here, if it is not too much for a "
                    + "second drawing, and of all of them beside the answer.";

    private ReplayText() {}

    /**
     * The words.
     *
     * @return by key, in a fixed order
     */
    public static Map<String, String> byKey() {
        Map<String, String> words = new LinkedHashMap<>();
        words.put("play", "Play");
        words.put("pause", "Pause");
        words.put("speed", "Speed");
        words.put("clock", "Time of day");
        words.put("day", "Day");
        words.put("follow", "Follow");
        words.put("followNobody", "nobody");
        words.put("overview", "Overview");
        words.put("above", "From above");
        words.put("side", "From the south");
        words.put("viewpoints", "Where people stand");
        words.put("onGround", "on the ground");
        words.put("offGround", "off the ground");
        words.put("waiting", "waiting for a stall");
        words.put("use", "Use of every place");
        words.put("useUnit", "seconds of an animal in a day, sleep at night left out");
        words.put("cards", "Trips");
        words.put("cardsLeftOut", "Trips of other bodies and pairs have no card here; ask limbway explain.");
        words.put("sun", "Sun and shadows");
        words.put("noWebGl", "This browser cannot draw in space, so the plan and the side view are shown.");
        return words;
    }
}
