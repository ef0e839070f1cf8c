package limbway.sim.experiment.screening;

import java.util.List;
import java.util.Map;

/**
 * A trajectory that was walked to its end.
 *
 * @param trajectory the order of the turns
 * @param used values used at the start and after each turn
 * @param answers the answers there
 * @param redrawn how often it had to be drawn anew because the model refuses values together
 */
record Walk(Trajectory trajectory, List<Map<String, Double>> used, List<List<Double>> answers, int redrawn) {

    /**
     * The effect of a factor on an answer, scaled to its whole range; not a number where an answer is missing.
     *
     * <p>Scaled by the change of the value that was used: a number that is rounded may move by more or less than the step.
     */
    double effect(int turn, Factor factor, int answer) {
        String name = factor.parameter().name();
        double moved = factor.shareOf(used.get(turn + 1).get(name))
                - factor.shareOf(used.get(turn).get(name));
        double change = answers.get(turn + 1).get(answer) - answers.get(turn).get(answer);
        return moved == 0 ? 0 * change : change / moved;
    }
}
