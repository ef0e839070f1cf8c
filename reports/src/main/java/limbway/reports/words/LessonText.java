package limbway.reports.words;

import java.util.List;

import limbway.model.explain.GroundReason;

/** The standing texts of a lesson; sentences with data in them are in {@link LessonSentence}. */
public final class LessonText {

    /** Share of trips from which on a way is said to be the one that is taken. Assumption. */
    private static final double SURE = 0.75;

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
            "Below are single changes. Each was made, and the changed layout compiled anew for this lesson. Choose one and check: you "
                    + "may try as many as you like.";

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

    /** The answers to a prediction. */
    public enum Way {
        /** Over the ground. */
        OVER("over the ground"),
        /** Off the ground. */
        OFF("off the ground"),
        /** Now one, now the other. */
        DEPENDS("it depends: now one way, now the other");

        private final String words;

        Way(String words) {
            this.words = words;
        }

        /**
         * The answer.
         *
         * @return a few words
         */
        public String words() {
            return words;
        }
    }

    /** The answers to what is missing off the ground. */
    public enum Missing {
        /** Nothing to hold at one of both places. */
        NOTHING_TO_HOLD("one of the two places has nothing to hold within reach"),
        /** A gap or a support that is too thick or weak. */
        GAP_OR_THICK("on the way a gap is too wide, or a support too thick or too weak for this body"),
        /** Too far apart. */
        TOO_FAR("the two places are too far apart: no gaps of a size worth closing would join them"),
        /** Nothing is missing. */
        TOO_DEAR("there is one, but it is too long and steep");

        private final String words;

        Missing(String words) {
            this.words = words;
        }

        /**
         * The answer.
         *
         * @return a clause
         */
        public String words() {
            return words;
        }
    }

    /** The answers to when shade is short. */
    public enum ShadeHours {
        /** Never. */
        NEVER("at no hour"),
        /** In the middle of the day. */
        NOON("only between 10 and 14 o’clock"),
        /** Early or late. */
        EDGES("only before 10 or from 14 o’clock on"),
        /** Both. */
        BOTH("between 10 and 14 o’clock, and before or after that too");

        private final String words;

        ShadeHours(String words) {
            this.words = words;
        }

        /**
         * The answer.
         *
         * @return a clause
         */
        public String words() {
            return words;
        }

        /**
         * The right answer.
         *
         * @param noon whether shade is short at some moment between 10 and 14 o'clock
         * @param edges whether it is at some moment before or after
         * @return what to choose
         */
        public static ShadeHours of(boolean noon, boolean edges) {
            return noon ? edges ? BOTH : NOON : edges ? EDGES : NEVER;
        }
    }

    /** What somebody may claim after a lesson, and may not. */
    public enum Claim {
        /** Energy. */
        ENERGY(
                "in the model, this way costs the animal less energy than that one",
                true,
                "Yes. That is what is computed, from published costs and stated assumptions."),
        /** Strength. */
        STRENGTH(
                "the new rope will bear the animals",
                false,
                "No. Strength is decided by licensed people; the model knows little of it."),
        /** Escape. */
        ESCAPE(
                "with the new rope no animal can get out",
                false,
                "No. What shortens a trip may shorten the way to a barrier; what is not listed is no pass."),
        /** Liking. */
        LIKING(
                "the animals will like it and use it from the first day",
                false,
                "No. Fear, habit, company and play are hardly in it, and no prediction has been compared with what keepers saw.");

        private final String words;
        private final boolean isRight;
        private final String feedback;

        Claim(String words, boolean isRight, String feedback) {
            this.words = words;
            this.isRight = isRight;
            this.feedback = feedback;
        }

        /**
         * The claim.
         *
         * @return a clause
         */
        public String words() {
            return words;
        }

        /**
         * Whether it may be made.
         *
         * @return true for one of them
         */
        public boolean isRight() {
            return isRight;
        }

        /**
         * What is said to whoever chose it.
         *
         * @return sentences
         */
        public String feedback() {
            return feedback;
        }
    }

    private LessonText() {}

    /**
     * The right prediction.
     *
     * @param offGroundShare how many of such trips are made off the ground, 0 to 1
     * @return a way if at least three of four take it
     */
    public static Way taken(double offGroundShare) {
        return offGroundShare >= SURE ? Way.OFF : offGroundShare <= 1 - SURE ? Way.OVER : Way.DEPENDS;
    }

    /**
     * The right answer to what is missing.
     *
     * @param reason why a trip leads over the ground
     * @return what to choose
     */
    public static Missing missing(GroundReason reason) {
        if (reason instanceof GroundReason.NothingToHold) {
            return Missing.NOTHING_TO_HOLD;
        }
        if (reason instanceof GroundReason.Missing) {
            return Missing.GAP_OR_THICK;
        }
        return reason instanceof GroundReason.TooFar ? Missing.TOO_FAR : Missing.TOO_DEAR;
    }
}
