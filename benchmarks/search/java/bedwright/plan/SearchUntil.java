package bedwright.plan;

import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;

/** A search that ends when it has a plan as good as one that is known to be the best. */
public final class SearchUntil {
    private static final int LOOK_EACH_MILLIS = 10;

    private SearchUntil() {}

    /**
     * Searches from nothing until a plan is as good as the best, or the search's limit.
     *
     * @throws IllegalStateException if the search fails
     */
    public static Search.Found best(Search.Found best, PlanFacts facts, Search search) {
        CompletableFuture<Search.Found> running =
                CompletableFuture.supplyAsync(() -> search.run(Search.nothingPlaced(facts)));
        while (true) {
            try {
                return running.get(LOOK_EACH_MILLIS, TimeUnit.MILLISECONDS);
            } catch (TimeoutException e) {
                Search.Found known = search.best();
                if (known != null && !best.isBetterThan(known)) {
                    search.stop();
                }
            } catch (ExecutionException e) {
                throw new IllegalStateException("The search failed: " + e.getCause(), e.getCause());
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
                throw new IllegalStateException("The search was interrupted", e);
            }
        }
    }
}
