package limbway.sim.experiment.link;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

import limbway.sim.experiment.statistics.Interval;
import limbway.sim.experiment.trial.Notebook;
import limbway.sim.experiment.trial.Trial;
import limbway.sim.experiment.trial.Trials;
import limbway.sim.habitat.Habitat;

/** Lives in the layout as it stands and in changed ones under the same chance. */
final class Lives {

    private final LinkQuestion question;
    private final Trials trials;
    private final Supplier<Habitat> asItStands;
    private final SearchProgress progress;

    Lives(LinkQuestion question, Supplier<Habitat> asItStands, Notebook notebook, SearchProgress progress) {
        this.question = question;
        this.asItStands = asItStands;
        this.progress = progress;
        this.trials = new Trials(List.of(question.offGround(), question.groundTrips()), question.settings(), notebook);
    }

    /** The difference that a change makes, without a share where nobody travels; empty if it was stopped. */
    Optional<LivedDifference> difference(String key, Supplier<Habitat> changed, int first, String stage) {
        Stage told = new Stage(stage, progress);
        int count = question.settings().replications();
        Optional<double[][]> before =
                trials.of(new Trial("as it stands", asItStands, question.day()), first, count, told);
        if (before.isEmpty()) {
            return Optional.empty();
        }
        Optional<double[][]> after = trials.of(new Trial(key, changed, question.day()), first, count, told);
        if (after.isEmpty()) {
            return Optional.empty();
        }
        List<Double> share = new ArrayList<>();
        List<Double> trips = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            add(after.get()[i][0] - before.get()[i][0], share);
            add(before.get()[i][1] - after.get()[i][1], trips);
        }
        // trips are counted in every repetition, also where there are none
        return Optional.of(
                new LivedDifference(Interval.of(share), Interval.of(trips).orElseThrow(), first));
    }

    private static void add(double difference, List<Double> to) {
        if (!Double.isNaN(difference)) {
            to.add(difference);
        }
    }
}
