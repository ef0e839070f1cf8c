package limbway.reports.command;

import java.io.PrintWriter;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;

/**
 * Lets a run that is interrupted from the keyboard save what is finished.
 *
 * <p>The system ends the process as soon as all shutdown hooks return; the hook therefore waits until the report is
 * written, and then ends the process with the code that says so.
 */
final class Interruption implements AutoCloseable {

    private static final long LONGEST_WAIT_S = 600;

    /** Time for the last words of the command, which come after it has let go of this [ms]. */
    private static final long LAST_WORDS_MS = 300;

    private final AtomicBoolean wanted = new AtomicBoolean();
    private final CountDownLatch saved = new CountDownLatch(1);
    private final Thread hook;
    private final Thread command = Thread.currentThread();
    private final PrintWriter err;

    private Interruption(PrintWriter err) {
        this.err = err;
        this.hook = new Thread(this::stopAndWait, "interrupted");
    }

    static Interruption watch(PrintWriter err) {
        Interruption interruption = new Interruption(err);
        Runtime.getRuntime().addShutdownHook(interruption.hook);
        return interruption;
    }

    boolean isWanted() {
        return wanted.get();
    }

    @Override
    public void close() {
        saved.countDown();
        try {
            Runtime.getRuntime().removeShutdownHook(hook);
        } catch (IllegalStateException e) {
            // the process is ending already, and the hook has been waiting for this
            wanted.set(true);
        }
    }

    private void stopAndWait() {
        wanted.set(true);
        if (saved.getCount() > 0) {
            err.println("limbway: stopping; what is finished is being saved");
            err.flush();
        }
        try {
            if (saved.await(LONGEST_WAIT_S, TimeUnit.SECONDS)) {
                command.join(LAST_WORDS_MS);
                Runtime.getRuntime().halt(ExitCode.NOT_DONE);
            }
            err.println("limbway: saving took longer than " + LONGEST_WAIT_S + " s and was given up");
            err.flush();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
