package bedwright.plan;

import java.util.concurrent.atomic.AtomicLong;
import org.jspecify.annotations.Nullable;

/** What one search lets others see of itself while it runs: how much it has asked, and the score its moves look at. */
public final class Probe {
    private final AtomicLong asked = new AtomicLong();
    private @Nullable SeasonScore live;
    private Runnable onLook = () -> {};

    /** Has this run by the search's own thread whenever its working plan is set, at its start above all. */
    void whenLooking(Runnable run) {
        onLook = run;
    }

    /** Counts one question; called by the search's own thread only. */
    void count() {
        asked.lazySet(asked.get() + 1);
    }

    /** Questions asked so far; from any thread. */
    long asked() {
        return asked.get();
    }

    /** Notes the score of the working plan; called by the search's own thread only. */
    void look(SeasonScore score) {
        live = score;
        onLook.run();
    }

    /** The score of the working plan, for moves that look where stems are short; for the search's own thread only. */
    @Nullable
    SeasonScore live() {
        return live;
    }
}
