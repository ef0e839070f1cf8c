package limbway.reports.page;

import java.util.List;

import limbway.reports.data.ScreenInfo;
import limbway.reports.measure.Movers;
import limbway.reports.measure.ScreenedAnswer;

/**
 * Everything that is told of a screening.
 *
 * @param info how it was made
 * @param answers what was screened for, in the order of {@link ScreenedAnswer}
 * @param factors number of assumptions that were varied
 * @param trajectories walks that the result rests on
 * @param evaluations points on these walks, at each of which the layout, or both, was run
 * @param redrawn walks that were drawn anew because the model refuses values together
 */
public record ScreenReport(
        ScreenInfo info, List<Movers> answers, int factors, int trajectories, int evaluations, int redrawn) {

    /** Keeps a copy of the list. */
    public ScreenReport {
        answers = List.copyOf(answers);
    }

    /**
     * One of the answers.
     *
     * @param answer which
     * @return its effects
     */
    public Movers of(ScreenedAnswer answer) {
        return answers.get(answer.ordinal());
    }
}
