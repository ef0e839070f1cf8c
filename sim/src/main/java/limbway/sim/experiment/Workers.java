package limbway.sim.experiment;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletionService;
import java.util.concurrent.ExecutorCompletionService;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicReferenceArray;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;

/**
 * Does numbered tasks on several threads and keeps what came of each under its number, so that the result does not depend
 * on the number of threads.
 *
 * @param <R> what comes of a task
 */
public final class Workers<R> {

    private static final long LOOK_UP_MS = 100;

    private final Task<R> task;
    private final AtomicReferenceArray<Optional<R>> results;
    private volatile boolean stopped;
    private Failure first = new Failure(Integer.MAX_VALUE, new IllegalStateException("nothing failed"));

    private Workers(int count, Task<R> task) {
        this.task = task;
        this.results = new AtomicReferenceArray<>(count);
    }

    /**
     * Something to be done.
     *
     * @param <R> what comes of it
     */
    @FunctionalInterface
    public interface Task<R> {

        /**
         * Does it; called on any thread.
         *
         * @param number which one, 0 or more
         * @param stop true once there is no use in going on
         * @return what came of it; empty if it was given up
         */
        Optional<R> done(int number, BooleanSupplier stop);
    }

    private record Failure(int number, Throwable why) {}

    /**
     * Does tasks until all are done, {@code progress} wants to stop, or the calling thread is interrupted; the interrupt is
     * then spent. Returns after the last thread has ended.
     *
     * @param <R> what comes of a task
     * @param count number of tasks, 0 or more; they are begun in the order of their numbers
     * @param threads threads to use, 1 or more
     * @param progress told of each finished task, and asked whether to stop, on the calling thread
     * @param task does one of them
     * @return what came of each, in the order of their numbers; empty where it was given up
     * @throws RuntimeException the failure with the lowest number, if any failed; those after it are given up
     */
    public static <R> List<Optional<R>> each(int count, int threads, Progress progress, Task<R> task) {
        return count == 0 ? List.of() : new Workers<>(count, task).run(threads, progress);
    }

    /**
     * Does tasks as {@link #each} does, of which none may be missing.
     *
     * @param <R> what comes of a task
     * @param count number of tasks, 0 or more; they are begun in the order of their numbers
     * @param threads threads to use, 1 or more
     * @param progress told of each finished task, and asked whether to stop, on the calling thread
     * @param task does one of them
     * @return what came of each, in the order of their numbers; empty if any was given up
     * @throws RuntimeException the failure with the lowest number, if any failed; those after it are given up
     */
    public static <R> Optional<List<R>> all(int count, int threads, Progress progress, Task<R> task) {
        List<Optional<R>> each = each(count, threads, progress, task);
        boolean missing = count == 0 ? progress.wantsStop() : each.stream().anyMatch(Optional::isEmpty);
        return missing
                ? Optional.empty()
                : Optional.of(each.stream().map(Optional::orElseThrow).toList());
    }

    private List<Optional<R>> run(int threads, Progress progress) {
        int count = results.length();
        ExecutorService pool = Executors.newFixedThreadPool(Math.min(threads, count));
        try {
            CompletionService<Boolean> finished = new ExecutorCompletionService<>(pool);
            IntStream.range(0, count).forEach(number -> finished.submit(() -> isDone(number)));
            watch(finished, count, progress);
        } finally {
            stopped = true;
            pool.shutdown();
            awaitEnd(pool);
        }
        if (firstFailed() < Integer.MAX_VALUE) {
            throw first.why instanceof RuntimeException cause
                    ? cause
                    : new IllegalStateException("task " + first.number + " failed", first.why);
        }
        return IntStream.range(0, count).mapToObj(results::get).toList();
    }

    /** Those below the first failure go on, so that it does not depend on the threads which failure is handed on. */
    private boolean isDone(int number) {
        BooleanSupplier stop = () -> stopped || firstFailed() < number;
        Optional<R> result = Optional.empty();
        try {
            result = stop.getAsBoolean() ? result : task.done(number, stop);
        } catch (RuntimeException | Error e) {
            failed(new Failure(number, e));
        }
        results.set(number, result);
        return result.isPresent();
    }

    private synchronized int firstFailed() {
        return first.number;
    }

    private synchronized void failed(Failure failure) {
        first = failure.number < first.number ? failure : first;
    }

    private static void watch(CompletionService<Boolean> finished, int count, Progress progress) {
        int ended = 0;
        int done = 0;
        try {
            while (ended < count && !progress.wantsStop()) {
                Future<Boolean> next = finished.poll(LOOK_UP_MS, TimeUnit.MILLISECONDS);
                if (next != null) {
                    ended++;
                    if (next.get()) {
                        progress.finished(++done, count);
                    }
                }
            }
        } catch (InterruptedException e) {
            // the missing results say that it was given up
            return;
        } catch (java.util.concurrent.ExecutionException e) {
            throw new IllegalStateException("tasks keep their failures", e);
        }
    }

    private static void awaitEnd(ExecutorService pool) {
        boolean ended = false;
        while (!ended) {
            try {
                ended = pool.awaitTermination(1, TimeUnit.HOURS);
            } catch (InterruptedException e) {
                // the threads end soon after they are asked to; there is nothing better to do than to wait
                ended = false;
            }
        }
    }
}
