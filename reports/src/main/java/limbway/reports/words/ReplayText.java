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
     * The words. In a text {n} and the like are gaps that the scripts fill.
     *
     * @return by key, in a fixed order
     */
    public static Map<String, String> byKey() {
        Map<String, String> words = new LinkedHashMap<>();
        controls(words);
        legends(words);
        trips(words);
        cards(words);
        told(words);
        sun(words);
        keys(words);
        return words;
    }

    /** Buttons and choices. */
    private static void controls(Map<String, String> words) {
        words.put("play", "Play");
        words.put("pause", "Pause");
        words.put("speed", "Speed");
        words.put("times", "{n}×");
        words.put("speedOf", "{n} times as fast as life");
        words.put("clock", "Time of day");
        words.put("clockOf", "day {n}, {time}");
        words.put("day", "Day");
        words.put("dayOf", "day {n}");
        words.put("stepBack", "One step back");
        words.put("stepForth", "One step on");
        words.put("controls", "Replay");
        words.put("steps", "In steps");
        words.put("follow", "Follow");
        words.put("followNobody", "nobody");
        words.put("view", "View");
        words.put("overview", "Overview");
        words.put("above", "From above");
        words.put("side", "From the south");
        words.put("viewpoint.keeper", "Keeper at {name}");
        words.put("viewpoint.visitor", "Visitor at {name}");
        words.put("closer", "Closer");
        words.put("farther", "Farther");
        words.put("trails", "Trails");
        words.put("trailsOf", "last {n} min");
        words.put("trailsNone", "none");
        words.put("names", "Names");
        words.put("use", "Use of places");
        words.put("layout", "Layout");
        words.put("picture", "The enclosure {layout} in space; what the animals do is told in words below");
        words.put("words", "What each animal does now");
        words.put("nothing", "There is no layout to show.");
        words.put("noAnimals", "No animals live in this layout.");
        words.put("noCards", "No trip of this run has a card with both ways.");
        words.put("noWebGl", "This browser cannot draw in space, so the plan and the side view are shown.");
        words.put("cardsLeftOut", "Trips of more bodies and pairs have no card here; ask limbway explain.");
        words.put("print", "The replay moves on a screen only.");
        words.put("none", "–");
        words.put("seconds", "{n}\u00a0s");
        words.put("minutes", "{n}\u00a0min");
        words.put("hours", "{n}\u00a0h");
        words.put("joules", "{n}\u00a0J");
        words.put("kilojoules", "{n}\u00a0kJ");
    }

    /** What lines and colours mean. */
    private static void legends(Map<String, String> words) {
        words.put("legend.trails", "Lines");
        words.put("legend.ground", "orange edge: on the ground; without: off the ground");
        words.put("legend.plumb", "plumb line from an animal to the ground");
        words.put(
                "legend.strip",
                "In the strip of the day each animal has a line: travel off the ground stands on it in blue, travel on the ground hangs below it in orange.");
        words.put("use.title", "Use of places");
        words.put("use.unit", "Time of one animal in one day, mean of all repetitions; sleep at night left out.");
        words.put("use.step", "{from} to {to}");
        words.put("use.most", "{from} or more");
        words.put("use.one", "{id} {time}");
        words.put("use.none", "no support is used");
        words.put("use.ranking", "Most used in {layout}: {list}");
    }

    /** The list of trips. */
    private static void trips(Map<String, String> words) {
        words.put("trips.title", "Trips of this day");
        words.put("trips.animal", "Animal");
        words.put("trips.all", "all");
        words.put("trips.more", "Show more");
        words.put("trips.none", "No trips on this day.");
        words.put("trips.never", "No animal makes a trip in this repetition.");
        words.put("trips.count", "{all} trips, {ground} of them over the ground, which stand first.");
        words.put("trips.way", "{from} → {to}");
        words.put("trips.over", "over the ground");
        words.put("trips.off", "off the ground");
        words.put("trips.hasCard", "route card");
        words.put("trips.somewhere", "elsewhere");
    }

    /** The card of a trip. */
    private static void cards(Map<String, String> words) {
        words.put("card.title", "{from} → {to}, {body}");
        words.put("card.layout", "Layout {layout}");
        words.put("card.back", "‹ All trips");
        words.put("card.next", "Next card");
        words.put("card.run", "Go both ways at once");
        words.put("card.runOne", "Go this way");
        words.put("card.running", "{at} of {of} s");
        words.put("card.taken", "Trips like this in all repetitions: {ground} over the ground, {above} off it.");
        words.put("card.times", "taken {n}×");
        words.put("card.mend", "To mend:");
        words.put("card.oneWay", "There is only this way.");
        words.put("card.length", "{way}: {metres} m, {time}");
        words.put("card.part", "Part");
        words.put("card.total", "Sum");
        words.put("card.energy", "Energy of one trip");
        words.put("card.flip", "What would turn it:");
        words.put("card.command", "Ask again on the command line");
    }

    /** What each animal does, in sentences; {gaps} are filled in. */
    private static void told(Map<String, String> words) {
        words.put("does.quadrupedal walk", "walks along {on}");
        words.put("does.vertical climb", "climbs {on}");
        words.put("does.vertical descent", "climbs down {on}");
        words.put("does.clamber", "clambers along {on}");
        words.put("does.bridge", "reaches over a gap at {on}");
        words.put("does.bipedal walk", "walks on two feet along {on}");
        words.put("does.brachiate", "swings by the arms below {on}");
        words.put("does.sway", "sways {on} to reach over");
        words.put("does.leap", "leaps from {on}");
        words.put("does.drop", "drops from {on}");
        words.put("over.quadrupedal walk", "walks over the ground");
        words.put("over.bipedal walk", "walks over the ground on two feet");
        words.put("tell.overTo", "{name} {does} to {to}");
        words.put("tell.over", "{name} {does}");
        words.put("tell.onGround", "on the ground");
        words.put("tell.offGround", "off the ground");
        words.put("tell.theGround", "the ground");
        words.put("tell.something", "a support");
        words.put("tell.movesTo", "{name} {does} on the way to {to}, {where}");
        words.put("tell.moves", "{name} {does}, {where}");
        words.put("tell.because", "{text}, {why}");
        words.put("tell.absent", "{name} is not seen in this repetition");
        words.put("tell.waits", "{name} waits for a stall at {at}, {where}");
        words.put("tell.stays", "{name} is at {at}, {where}");
        words.put("stays.hunger", "{name} eats at {at}, {where}");
        words.put("stays.thirst", "{name} drinks at {at}, {where}");
        words.put("stays.fatigue", "{name} rests at {at}, {where}");
        words.put("stays.heat", "{name} rests out of the heat at {at}, {where}");
        words.put("stays.comfort", "{name} is at {at}, a place it likes, {where}");
        words.put("stays.company", "{name} keeps company at {at}, {where}");
        words.put("stays.night", "{name} sleeps at {at}, {where}");
        words.put("because.hunger", "to eat");
        words.put("because.thirst", "to drink");
        words.put("because.fatigue", "to rest");
        words.put("because.heat", "to get out of the heat");
        words.put("because.comfort", "to be at a place it likes");
        words.put("because.company", "to keep close to another");
        words.put("because.night", "to sleep");
    }

    /** Where the sun stands. */
    private static void sun(Map<String, String> words) {
        words.put("sun.none", "No site, so no sun is drawn");
        words.put("sun.night", "Night");
        words.put("sun.dusk", "Dusk, sun below the horizon");
        words.put("sun.up", "Sun {height}° up in the {direction}");
        words.put("sun.n", "north");
        words.put("sun.ne", "north-east");
        words.put("sun.e", "east");
        words.put("sun.se", "south-east");
        words.put("sun.s", "south");
        words.put("sun.sw", "south-west");
        words.put("sun.w", "west");
        words.put("sun.nw", "north-west");
    }

    /** What the keys do. */
    private static void keys(Map<String, String> words) {
        words.put("keys.title", "Keys");
        words.put("keys.where", "They act while the replay has the focus: press Tab or click the picture.");
        words.put("key.space", "Space");
        words.put("keys.space", "play or pause");
        words.put("key.arrows", "← →");
        words.put("keys.arrows", "one step back or on");
        words.put("key.upDown", "↑ ↓");
        words.put("keys.upDown", "ten steps on or back, in the picture");
        words.put("key.speed", "[ ]");
        words.put("keys.speed", "slower, faster");
        words.put("key.follow", "F");
        words.put("keys.follow", "follow the next animal");
        words.put("key.view", "V");
        words.put("keys.view", "next view");
        words.put("key.heat", "H");
        words.put("keys.heat", "use of places");
        words.put("key.names", "N");
        words.put("keys.names", "names of places");
        words.put("key.card", "C");
        words.put("keys.card", "next card");
        words.put("key.turn", "Shift ← → ↑ ↓");
        words.put("keys.turn", "turn the picture");
        words.put("key.zoom", "+ −");
        words.put("keys.zoom", "closer, farther");
    }
}
