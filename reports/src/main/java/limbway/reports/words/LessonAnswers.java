package limbway.reports.words;

import limbway.model.explain.GroundReason;

/** Answers of a lesson that can be chosen in every enclosure, and which of them is right. */
public final class LessonAnswers {

    /** Share of trips from which on a way is said to be the one that is taken. Assumption. */
    private static final double SURE = 0.75;

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
            return isRight ? feedback : feedback + " What you may say: " + ENERGY.words + ".";
        }
    }

    private LessonAnswers() {}
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
