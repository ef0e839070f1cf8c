package limbway.reports.lesson;

import java.util.Optional;

/**
 * One of the answers that a question offers.
 *
 * @param words the answer
 * @param isRight whether it is one of the right ones
 * @param feedback what is said to whoever chose it
 * @param costs what the trip costs then, where the answer is a change of the layout
 * @param line the change as a line of a scenario; empty where the answer is none
 */
public record AnswerChoice(String words, boolean isRight, String feedback, Optional<Costs> costs, String line) {

    /** An answer that is no change of the layout. */
    static AnswerChoice of(String words, boolean isRight, String feedback) {
        return new AnswerChoice(words, isRight, feedback, Optional.empty(), "");
    }
}
