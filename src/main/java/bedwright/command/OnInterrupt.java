package bedwright.command;

import bedwright.plan.Search;
import java.io.PrintWriter;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;

/** On Ctrl-C ends a search, and lets the process wait until what it found is written. */
final class OnInterrupt implements AutoCloseable {
    /** How long the process waits for that, s. */
    private static final int WAIT_AT_THE_END = 60;

    private final Search search;
    private final CountDownLatch ended = new CountDownLatch(1);
    private final Thread hook;

    OnInterrupt(Search search, PrintWriter err) {
        this.search = search;
        this.hook = new Thread(() -> {
            search.stop();
            try {
                if (!ended.await(WAIT_AT_THE_END, TimeUnit.SECONDS)) {
                    err.println("What was found could not be written in time.");
                }
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
            }
        });
        Runtime.getRuntime().addShutdownHook(hook);
    }

    /** What was found is written. */
    @Override
    public void close() {
        ended.countDown();
        if (!search.isStopped()) {
            Runtime.getRuntime().removeShutdownHook(hook);
        }
    }
}
