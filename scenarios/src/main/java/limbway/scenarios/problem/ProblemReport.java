package limbway.scenarios.problem;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Prints mistakes: the first few of each kind, the rest counted. */
public final class ProblemReport {

    private static final int SHOWN_OF_A_KIND = 5;

    private ProblemReport() {}

    /**
     * The text for a terminal.
     *
     * @param problems mistakes in the order to print them
     * @return blocks of lines with an empty line between, and a last line that counts; ends with a line end
     */
    public static String text(List<Problem> problems) {
        StringBuilder text = new StringBuilder();
        Map<String, Integer> seen = new LinkedHashMap<>();
        for (Problem problem : problems) {
            if (seen.merge(problem.kind(), 1, Integer::sum) <= SHOWN_OF_A_KIND) {
                text.append(problem.text()).append("\n\n");
            }
        }
        seen.forEach((kind, count) -> {
            if (count > SHOWN_OF_A_KIND) {
                text.append("and ")
                        .append(count - SHOWN_OF_A_KIND)
                        .append(" more like: ")
                        .append(kind)
                        .append('\n');
            }
        });
        int count = problems.size();
        return text.append(count == 1 ? "1 problem" : count + " problems")
                .append('\n')
                .toString();
    }
}
