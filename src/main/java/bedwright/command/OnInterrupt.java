package bedwright.command;

import java.io.PrintWriter;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import org.jspecify.annotations.Nullable;

/**
 * On Ctrl-C ends long work, and lets the process wait until what there is of it is written: until this is closed, so what
 * must be over by then is opened after it.
 */
final class OnInterrupt implements AutoCloseable {
    /** How long the process waits for that, s. */
    private static final int WAIT_AT_THE_END = 60;

    private final PrintWriter err;
    private final CountDownLatch ended = new CountDownLatch(1);
    private @Nullable Thread hook;

    OnInterrupt(PrintWriter err) {
        this.err = err;
    }

    /** From now on an interrupt ends the work. */
    void stops(Runnable work) {
        Thread wait = new Thread(() -> {
            work.run();
            try {
                if (!ended.await(WAIT_AT_THE_END, TimeUnit.SECONDS)) {
                    err.println("What was found could not be written in time.");
                }
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
            }
        });
        Runtime.getRuntime().addShutdownHook(wait);
        hook = wait;
    }

    /** What was found is written. */
    @Override
    public void close() {
        ended.countDown();
        if (hook != null) {
            try {
                Runtime.getRuntime().removeShutdownHook(hook);
            } catch (IllegalStateException e) {
                // Interrupted: the process is going to end, and need wait no more.
            }
        }
    }
}
