package limbway.sim.experiment;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;

import org.junit.jupiter.api.Test;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

class WorkersTest {

    private static final int THREADS = 4;

    private final List<Integer> told = new ArrayList<>();

    @Test
    void resultsComeInTheOrderOfTheirNumbersAndEachIsTold() {
        Optional<List<Integer>> squares = Workers.all(
                50, THREADS, (done, total) -> told.add(done), (number, stop) -> Optional.of(number * number));
        assertEquals(
                IntStream.range(0, 50).map(number -> number * number).boxed().toList(), squares.orElseThrow());
        assertEquals(IntStream.rangeClosed(1, 50).boxed().toList(), told);
    }

    @Test
    void theFailureWithTheLowestNumberIsHandedOnThoughAnotherComesFirst() {
        CountDownLatch failed = new CountDownLatch(1);
        IllegalArgumentException thrown = assertThrows(
                IllegalArgumentException.class,
                () -> Workers.all(3, 2, (done, total) -> {}, (number, stop) -> {
                    if (number == 0) {
                        await(failed);
                    } else {
                        failed.countDown();
                    }
                    throw new IllegalArgumentException("number " + number);
                }));
        assertEquals("number 0", thrown.getMessage());
    }

    @Test
    void whatFollowsAFailureIsNotBegun() {
        AtomicInteger begun = new AtomicInteger();
        assertThrows(
                IllegalStateException.class,
                () -> Workers.each(9, 1, (done, total) -> {}, (number, stop) -> {
                    begun.incrementAndGet();
                    throw new IllegalStateException("no");
                }));
        assertEquals(1, begun.get());
    }

    @Test
    void stoppedItKeepsWhatIsDone() {
        List<Optional<Integer>> found = Workers.each(2, 2, new StopAfter(1), (number, stop) -> {
            while (number == 1 && !stop.getAsBoolean()) {
                Thread.onSpinWait();
            }
            return number == 0 ? Optional.of(0) : Optional.empty();
        });
        assertEquals(List.of(Optional.of(0), Optional.empty()), found);
    }

    @Test
    void anInterruptEndsItAndIsSpent() {
        Thread.currentThread().interrupt();
        Optional<List<Integer>> found = Workers.all(2, 2, (done, total) -> {}, (number, stop) -> {
            while (!stop.getAsBoolean()) {
                Thread.onSpinWait();
            }
            return Optional.empty();
        });
        assertTrue(found.isEmpty());
        assertFalse(Thread.currentThread().isInterrupted());
    }

    private static final class StopAfter implements Progress {

        private final int most;
        private int done;

        StopAfter(int most) {
            this.most = most;
        }

        @Override
        public void finished(int now, int total) {
            done = now;
        }

        @Override
        public boolean wantsStop() {
            return done >= most;
        }
    }

    private static void await(CountDownLatch latch) {
        try {
            latch.await();
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }
}
