package limbway.reports.words;

import java.util.List;

/**
 * The standing texts of a lesson; answers that are the same in every lesson are in {@link LessonAnswers}, sentences with data in
 * them in {@link LessonSentence}.
 */
public final class LessonText {

    /** Heading of a step. */
    public static final String MEET = "Meet the enclosure";

    /** Heading of a step. */
    public static final String PREDICT = "Which way will it go?";

    /** Heading of a step. */
    public static final String SEE = "Both ways";

    /** Heading of a step. */
    public static final String WHY = "Why?";

    /** Heading of a step. */
    public static final String CHANGE = "Change one thing";

    /** Heading of a step. */
    public static final String DAY = "The whole day";

    /** Heading of a step. */
    public static final String TRAP = "A trap";

    /** Heading of a step. */
    public static final String SHADE = "Shade to rest in";

    /** Heading of a step. */
    public static final String LIMITS = "What the model cannot tell";

    /** Heading of a step. */
    public static final String OWN_WORDS = "In your own words";

    /** Before the title of the scenario. */
    public static final String TITLE = "Why an ape takes the ground: ";

    /** Before the number of a step. */
    public static final String STEP = "Step ";

    /** A button. */
    public static final String BACK = "Back";

    /** A button. */
    public static final String NEXT = "Next";

    /** A button. */
    public static final String CHECK = "Check";

    /** A button. */
    public static final String COMPARE = "Compare";

    /** A button. */
    public static final String PRINT = "Print as a handout";

    /** What is said to whoever checks without having chosen. */
    public static final String CHOOSE = "Choose one of the answers first.";

    /** Over the answers of a question, to unfold. */
    public static final String ANSWERS_HERE = "What is said to each answer";

    /** Heading of the last page of the handout. */
    public static final String ANSWERS = "Answers";

    /** Before how the lesson was made. */
    public static final String MADE = "Made from ";

    /** After how the lesson was made. */
    public static final String RECORD =
            "Questions, answers and numbers are in data/lesson.csv, every number used in lesson.json.";

    /** Under the title of the page. */
    public static final String INTRODUCTION =
            "A lesson about this enclosure: which way an ape takes through it, and why. Say what you expect before you look; "
                    + "being wrong is what one remembers. Nothing that you choose or write is kept or sent anywhere.";

    /** Before what is left out. */
    public static final String LEFT_OUT = "Not in this lesson, because this enclosure has nothing to show for it:";

    /** Why the steps about a trip are missing. */
    public static final String NO_TRIP = "no way joins any two of the places that the animals use";

    /** In place of the trip. */
    public static final String NO_TRIP_AT_ALL =
            "No way joins any two of the places that the animals use, so there is no trip to follow. The command check says "
                    + "what is missing.";

    /** Where no trip of the run used the ground. */
    public static final String NOBODY_ON_GROUND =
            "In the days lived for this lesson no trip touched the ground. So the lesson asks the reverse: why does it stay up, "
                    + "and what would bring it down?";

    /** Where the chosen trip does not use the ground. */
    public static final String THIS_TRIP_STAYS_UP =
            "For this trip the ground is not the cheapest way. So the lesson asks the reverse: why does it stay up, and what would "
                    + "bring it down?";

    /** Where trips use the ground, but by none of the ways that cost least. */
    public static final String NO_TRIP_TO_TURN =
            "Animals touch the ground now and then, but no trip was found for which the ground is the cheapest way. So the lesson "
                    + "asks the reverse: why does it stay up, and what would bring it down?";

    /** Why this trip, before the prediction. */
    public static final String CHOSEN_FOR_CHANGE =
            "Among the trips that were made, this one was chosen because one change can turn it from one way to the other.";

    /** Why this trip, before the prediction. */
    public static final String CHOSEN_FOR_LAYOUT =
            "Among the trips that were made, this one was chosen because another layout turns it from one way to the other.";

    /** Why this trip, after the prediction. */
    public static final String MOST_ON_GROUND_BY_CHANGE =
            "Why this trip: of those looked at that one change can turn off the ground, it has the most metres on the ground.";

    /** Why this trip, after the prediction. */
    public static final String MOST_ON_GROUND_BY_LAYOUT =
            "Why this trip: of those looked at that another layout turns off the ground, it has the most metres on the ground.";

    /** Why this trip, after the prediction. */
    public static final String MOST_ON_GROUND =
            "Why this trip: of those for which the ground is the cheapest way, it has the most metres on the ground.";

    /** Title of the drawing. */
    public static final String DRAWING = "The enclosure, from above and from the south";

    /** Columns of the table behind it. */
    public static final List<String> PLACE_HEADERS = List.of("name", "kind", "east", "north", "height", "on");

    /** Before the prediction. */
    public static final String BEFORE_PREDICTING =
            "Look at the drawing again if you like. An ape saves energy where it can. Climbing costs more than walking, going round "
                    + "costs more than going straight, and what it cannot hold it cannot use.";

    /** Where the ways may be played. */
    public static final String PLAYED = "Play both ways";

    /** Where the only way may be played. */
    public static final String PLAYED_ONE = "Play the way";

    /** Before the bars. */
    public static final String BARS =
            "The energy of each way on one scale, divided by what the animal does: the length of a piece is the energy it takes.";

    /** A way. */
    public static final String OVER = "over the ground";

    /** A way. */
    public static final String OFF = "off the ground";

    /** Columns of the table of ways. */
    public static final List<String> WAY_HEADERS = List.of("way", "energy", "length", "time");

    /** Before the questions about the reason. */
    public static final String BEFORE_WHY = "Use the bars of the step before; you can go back.";

    /** A question. */
    public static final String WHAT_IS_MISSING = "Why is there no way off the ground?";

    /** Why the step of changes is missing. */
    public static final String NO_CHANGES = "no change could be tried";

    /** Before the changes. */
    public static final String BEFORE_CHANGING =
            "Below are single changes. Each was made, and the changed layout compiled anew for this lesson. Choose one and check; then "
                    + "the costs of all are shown.";

    /** Before changes of which some are whole layouts. */
    public static final String BEFORE_CHANGING_LAYOUTS =
            "Below are changes. Some are other layouts of the scenario, which may differ in several things at once; the rest are single "
                    + "changes. Each was made, and what comes of it compiled anew for this lesson. Choose one and check; then the costs of all "
                    + "are shown.";

    /** After the changes. */
    public static final String AFTER_CHANGING =
            "What both ways would cost with each change. A change that looks fine and does not turn the trip is the dearest kind.";

    /** Title of the bars of changes. */
    public static final String CHANGES_CHART = "The trip with each change";

    /** Columns of the table of changes. */
    public static final List<String> CHANGE_HEADERS =
            List.of("change", "over the ground", "off the ground", "such trips off the ground");

    /** The last choice. */
    public static final String NONE_OF_THESE = "none of these";

    /** Why the step about the day is missing. */
    public static final String ONE_LAYOUT =
            "the scenario has one layout only, or one was named; write others under variants";

    /** Why the step about the day is missing. */
    public static final String NO_TRAVEL = "nobody travelled in the days that were lived";

    /** A question. */
    public static final String WHICH_LAYOUT =
            "Which layout has the greatest share of its travel off the ground, by distance?";

    /** A choice. */
    public static final String CANNOT_TELL = "so short a run cannot tell the best two apart";

    /** Title of a table. */
    public static final String DAY_TABLE = "Travel off the ground, by distance";

    /** In the place of a difference of a layout to itself. */
    public static final String THE_SAME = "taught here";

    /** Where there is no value. */
    public static final String NOT_KNOWN = "not known";

    /** How to read the intervals. */
    public static final String INTERVALS =
            "In brackets: 95 % intervals over the repetitions, differences under the same chance. They say how much chance moves the "
                    + "result, not how well the model is right. This run is short; for a decision use the command compare.";

    /** Why the step about a trap is missing. */
    public static final String NO_TRAP = "the audit found nothing here that looks climbable to an animal and is not";

    /** Before the trap. */
    public static final String BEFORE_TRAP =
            "A climbing structure looks climbable to us. Whether it is depends on hands and weight: what is too thick cannot be "
                    + "gripped, what is too weak gives way, what lies behind live wire is lost, and a gap is crossed only by those who reach over it.";

    /** A choice. */
    public static final String EVERYBODY = "every animal of the group";

    /** A choice. */
    public static final String NOBODY = "no animal of the group";

    /** Why the step about shade is missing. */
    public static final String TOO_FEW_PLATFORMS = "fewer than two rest platforms stand here";

    /** Why the step about shade is missing. */
    public static final String NO_SUN = "the sun never stands high enough here";

    /** Before the question about limits. */
    public static final String BEFORE_LIMITS = "A model answers what it was made for and is silent on the rest.";

    /** A question. */
    public static final String WHICH_CLAIM = "Which of these may you say after this lesson?";

    /** Its answer. */
    public static final String CLAIM_ANSWER =
            "Only which way costs less energy in the model. Strength, escape and what an animal feels are decided by people who are "
                    + "licensed, or who know the animals.";

    /** Before what the answer hangs on. */
    public static final String HOW_FIRM =
            "How firm the answer about the trip is, when assumed costs are changed one at a time:";

    /** Before where not to lean on it. */
    public static final String DOUBTFUL = "Where not to lean on it:";

    /** Before the writing. */
    public static final String BEFORE_WRITING =
            "Write it down before you go on, here or on paper. What you write is not kept. A good answer has:";

    /** What belongs into an explanation. */
    public static final List<String> HINTS = List.of(
            "where the trip starts and ends, and how high",
            "what each way is made of, and which part costs most",
            "what is missing or dear on the other way",
            "one change that would turn it, and one that would not");

    /** Where there is no trip to explain. */
    public static final String EXPLAIN_ENCLOSURE =
            "Explain to a colleague what an ape needs to stay off the ground here.";

    /** Before the summary. */
    public static final String SUMMARY = "To take away:";

    /** What holds everywhere. */
    public static final List<String> TAKE_AWAY = List.of(
            "Ask where food, water and nests are before asking how fine the frame is: an ape goes where they are by the cheapest way.",
            "A link counts only if it starts and ends where trips do, and if every body of the group can hold it.",
            "Try a change in the model before it is built, and let licensed people judge strength and escape.");

    private LessonText() {}
}
