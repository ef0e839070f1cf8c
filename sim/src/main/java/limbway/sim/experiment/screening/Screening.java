package limbway.sim.experiment.screening;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;

import limbway.sim.experiment.Progress;
import limbway.sim.experiment.Workers;

/**
 * Walks through the ranges of all factors, one factor at a time, and tells what that does to the answers.
 *
 * <p>Each walk is keyed by its number and stored under it: the result is the same for any number of threads.
 *
 * @source Morris 1991, Technometrics 33:161-174, doi 10.1080/00401706.1991.10484804
 */
public final class Screening {

    private static final int MOST_DRAWS = 1000;

    private final List<Factor> factors;
    private final int seed;
    private final Supplier<ScreenedModel> models;
    private final AtomicInteger evaluated = new AtomicInteger();

    private Screening(List<Factor> factors, int seed, Supplier<ScreenedModel> models) {
        this.factors = List.copyOf(factors);
        this.seed = seed;
        this.models = models;
    }

    /**
     * Screens.
     *
     * <p>If the calling thread is interrupted, or {@link Progress#wantsStop} says so, the walks under way are dropped and
     * those that came to their end are returned; the interrupt is then spent, because the result tells of it.
     *
     * @param factors what to vary, at least one, names used once
     * @param trajectories number of walks, 1 or more
     * @param seed seed of starts and turns, 1 to 2147483647
     * @param threads threads to use, 1 or more; the result does not depend on it
     * @param models a model for each walk
     * @param progress told of finished evaluations
     * @return what came out
     * @throws IllegalArgumentException if there is nothing to vary, or the model refuses nearly every combination
     */
    public static Screened run(
            List<Factor> factors,
            int trajectories,
            int seed,
            int threads,
            Supplier<ScreenedModel> models,
            Progress progress) {
        if (factors.isEmpty() || trajectories < 1) {
            throw new IllegalArgumentException("screening: factors = " + factors.size() + ", trajectories = "
                    + trajectories + ", allowed 1 or more of each");
        }
        return new Screening(factors, seed, models).run(trajectories, threads, progress);
    }

    private Screened run(int trajectories, int threads, Progress progress) {
        Told told = new Told(trajectories * (factors.size() + 1), progress);
        List<Optional<Walk>> walks = Workers.each(trajectories, threads, told, this::walk);
        told.tell();
        return new Screened(factors, walks.stream().flatMap(Optional::stream).toList(), trajectories);
    }

    /** Tells of evaluations, of which a walk has many. */
    private final class Told implements Progress {

        private final int total;
        private final Progress progress;
        private int told;

        Told(int total, Progress progress) {
            this.total = total;
            this.progress = progress;
        }

        void tell() {
            int now = evaluated.get();
            if (now > told) {
                progress.finished(now, total);
            }
            told = now;
        }

        @Override
        public void finished(int walks, int ofWalks) {
            tell();
        }

        @Override
        public boolean wantsStop() {
            tell();
            return progress.wantsStop();
        }
    }

    private Optional<Walk> walk(int number, BooleanSupplier stop) {
        ScreenedModel model = models.get();
        for (int draw = 0; draw < MOST_DRAWS; draw++) {
            Trajectory trajectory = Trajectory.draw(factors, seed, number, draw);
            Optional<List<Map<String, Double>>> used = used(model, trajectory);
            if (used.isPresent()) {
                int redrawn = draw;
                return answers(model, used.get(), stop).map(all -> new Walk(trajectory, used.get(), all, redrawn));
            }
        }
        throw new IllegalArgumentException("screening: the model refuses values of each of " + MOST_DRAWS
                + " walks, allowed ranges that can be combined");
    }

    /** The values used along a walk, or empty if some are refused together. */
    private Optional<List<Map<String, Double>>> used(ScreenedModel model, Trajectory trajectory) {
        try {
            return Optional.of(
                    trajectory.points(factors).stream().map(model::used).toList());
        } catch (IllegalArgumentException refused) {
            return Optional.empty();
        }
    }

    private Optional<List<List<Double>>> answers(
            ScreenedModel model, List<Map<String, Double>> points, BooleanSupplier stop) {
        List<List<Double>> all = new ArrayList<>();
        for (Map<String, Double> point : points) {
            Optional<double[]> answers = stop.getAsBoolean() ? Optional.empty() : model.answers(point, stop);
            if (answers.isEmpty()) {
                return Optional.empty();
            }
            all.add(Arrays.stream(answers.get()).boxed().toList());
            evaluated.incrementAndGet();
        }
        return Optional.of(all);
    }
}
