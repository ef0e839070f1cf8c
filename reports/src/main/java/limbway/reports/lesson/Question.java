package limbway.reports.lesson;

import java.util.HashSet;
import java.util.List;

/**
 * A question with the answers that can be chosen.
 *
 * @param id unique within a lesson; lower-case letters and hyphens
 * @param asked the question
 * @param choices two or more, no two with the same words, at least one of them right and one wrong
 * @param answer what is right, with its numbers, for the sheet of answers
 */
public record Question(String id, String asked, List<AnswerChoice> choices, String answer) {

    /**
     * Keeps a copy of the choices and checks them.
     *
     * @throws IllegalArgumentException if there is nothing to choose between
     */
    public Question {
        choices = List.copyOf(choices);
        long right = choices.stream().filter(AnswerChoice::isRight).count();
        if (right == 0 || right == choices.size()) {
            throw new IllegalArgumentException("question " + id + ": right choices = " + right + " of " + choices.size()
                    + ", allowed at least one right and one wrong");
        }
        if (new HashSet<>(choices.stream().map(AnswerChoice::words).toList()).size() < choices.size()) {
            throw new IllegalArgumentException("question " + id + ": two choices say the same");
        }
    }
}
