package limbway.sim.experiment.link;

import java.util.concurrent.CompletionService;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorCompletionService;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.IntConsumer;
import java.util.stream.IntStream;

/** Does numbered pieces of work on several threads; each stores its result under its number. */
final class Workers {

    private static final int LOOK_UP_MS = 200;

    private Workers() {}

    /** False if it was stopped before all were done. */
    static boolean run(int count, int threads, String stage, SearchProgress progress, IntConsumer work) {
        return run(IntStream.range(0, count).toArray(), count, threads, stage, progress, work);
    }

    /** Does only some of the pieces; the others are told as done from the beginning. */
    static boolean run(int[] open, int total, int threads, String stage, SearchProgress progress, IntConsumer work) {
        int count = open.length;
        int known = total - count;
        if (count == 0) {
            return !progress.wantsStop();
        }
        progress.at(stage, known, total);
        ExecutorService workers = Executors.newFixedThreadPool(Math.min(threads, count));
        AtomicBoolean stop = new AtomicBoolean();
        try {
            CompletionService<Integer> finished = new ExecutorCompletionService<>(workers);
            for (int i = 0; i < count; i++) {
                int number = open[i];
                finished.submit(
                        () -> {
                            if (!stop.get()) {
                                work.accept(number);
                            }
                        },
                        number);
            }
            int done = 0;
            while (done < count && !progress.wantsStop()) {
                Future<Integer> next = finished.poll(LOOK_UP_MS, TimeUnit.MILLISECONDS);
                if (next != null) {
                    next.get();
                    progress.at(stage, known + ++done, total);
                }
            }
            return done == count;
        } catch (InterruptedException e) {
            return false;
        } catch (ExecutionException e) {
            if (e.getCause() instanceof RuntimeException cause) {
                throw cause;
            }
            throw new IllegalStateException("work failed", e.getCause());
        } finally {
            stop.set(true);
            workers.shutdown();
            awaitEnd(workers);
        }
    }

    private static void awaitEnd(ExecutorService workers) {
        boolean ended = false;
        while (!ended) {
            try {
                ended = workers.awaitTermination(1, TimeUnit.HOURS);
            } catch (InterruptedException e) {
                // the workers end within one piece of work; there is nothing better to do than to wait
                ended = false;
            }
        }
    }
}
