package limbway.reports.lesson;

import java.util.List;

/** One step of a lesson. */
public sealed interface Step {

    /**
     * What it is known by.
     *
     * @return lower-case letters and hyphens, unique within a lesson
     */
    String id();

    /**
     * Its heading.
     *
     * @return a few words
     */
    String title();

    /**
     * What is shown at once.
     *
     * @return in order
     */
    List<Block> before();

    /**
     * A step in which something is shown.
     *
     * @param id what it is known by
     * @param title its heading
     * @param before what is shown
     */
    record Told(String id, String title, List<Block> before) implements Step {

        /** Keeps a copy of the list. */
        public Told {
            before = List.copyOf(before);
        }
    }

    /**
     * A step in which something is asked.
     *
     * @param id what it is known by
     * @param title its heading
     * @param before what is shown with the questions
     * @param questions one or more
     * @param after what is shown once all are answered
     */
    record Asked(String id, String title, List<Block> before, List<Question> questions, List<Block> after)
            implements Step {

        /** Keeps copies of the lists. */
        public Asked {
            before = List.copyOf(before);
            questions = List.copyOf(questions);
            after = List.copyOf(after);
        }
    }

    /**
     * A step in which the reader writes.
     *
     * @param id what it is known by
     * @param title its heading
     * @param before what is shown with it
     * @param prompt what to write about
     * @param lines room for so many lines on paper
     * @param after what is shown to compare with
     */
    record Written(String id, String title, List<Block> before, String prompt, int lines, List<Block> after)
            implements Step {

        /** Keeps copies of the lists. */
        public Written {
            before = List.copyOf(before);
            after = List.copyOf(after);
        }
    }
}
