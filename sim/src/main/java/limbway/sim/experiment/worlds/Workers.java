package limbway.sim.experiment.worlds;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletionService;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorCompletionService;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;

/** Does many things of a kind on several threads and keeps what came of each under its number. */
final class Workers {

    private static final long LOOK_UP_MS = 100;

    private final int threads;
    private final WorldProgress progress;
    private final AtomicBoolean stop = new AtomicBoolean();

    Workers(int threads, WorldProgress progress) {
        this.threads = threads;
        this.progress = progress;
    }

    /** Something to be done; asked to give up, it returns nothing. */
    interface Work<R> {
        Optional<R> done(int number, BooleanSupplier stop);
    }

    /** All results in the order of their numbers, or nothing if it was given up. */
    <R> Optional<List<R>> all(WorldProgress.Stage stage, int count, Work<R> work) {
        if (count == 0) {
            return Optional.of(List.of());
        }
        ExecutorService pool = Executors.newFixedThreadPool(Math.min(threads, count));
        try {
            CompletionService<Boolean> finished = new ExecutorCompletionService<>(pool);
            List<Optional<R>> results = new ArrayList<>(
                    IntStream.range(0, count).mapToObj(i -> Optional.<R>empty()).toList());
            for (int i = 0; i < count; i++) {
                int number = i;
                finished.submit(() -> {
                    Optional<R> result = stop.get() ? Optional.empty() : work.done(number, stop::get);
                    synchronized (results) {
                        results.set(number, result);
                    }
                    return result.isPresent();
                });
            }
            collect(finished, stage, count);
            synchronized (results) {
                return results.stream().allMatch(Optional::isPresent)
                        ? Optional.of(
                                results.stream().map(Optional::orElseThrow).toList())
                        : Optional.empty();
            }
        } finally {
            stop.set(true);
            pool.shutdown();
            awaitEnd(pool);
            stop.set(false);
        }
    }

    private void collect(CompletionService<Boolean> finished, WorldProgress.Stage stage, int count) {
        int done = 0;
        try {
            while (done < count && !progress.wantsStop()) {
                Future<Boolean> next = finished.poll(LOOK_UP_MS, TimeUnit.MILLISECONDS);
                if (next != null && next.get()) {
                    progress.finished(stage, ++done, count);
                }
            }
        } catch (InterruptedException e) {
            // the missing results say that it was given up
            stop.set(true);
        } catch (ExecutionException e) {
            if (e.getCause() instanceof RuntimeException cause) {
                throw cause;
            }
            throw new IllegalStateException("a world failed", e.getCause());
        }
    }

    private static void awaitEnd(ExecutorService pool) {
        boolean ended = false;
        while (!ended) {
            try {
                ended = pool.awaitTermination(1, TimeUnit.HOURS);
            } catch (InterruptedException e) {
                // the workers end within one event of being asked; there is nothing better to do than to wait
                ended = false;
            }
        }
    }
}
