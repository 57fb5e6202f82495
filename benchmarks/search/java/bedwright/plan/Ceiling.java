package bedwright.plan;

import java.util.function.LongFunction;
import org.jspecify.annotations.Nullable;

/** What no plan of a problem goes beyond that breaks no hard rule, and how far below it a plan lies. */
final class Ceiling {
    private final AtMost atMost;
    private final long nothing;

    /** What is possible at most. */
    interface AtMost {
        /**
         * The bound of plans that miss no more than so many weighted hundredths of stems that must be ours, grains; null if
         * none is known.
         */
        @Nullable
        Double of(long missing);
    }

    Ceiling(PlanFacts facts, AtMost atMost) {
        this.atMost = atMost;
        this.nothing = BestPossible.nothingPlanted(facts);
    }

    /**
     * By prices.
     *
     * @param prices for plans that miss so much
     */
    static Ceiling of(PlanFacts facts, Relaxation relaxed, LongFunction<Prices> prices) {
        return new Ceiling(facts, missing -> Bound.of(relaxed, prices.apply(missing), missing));
    }

    /** The bound of plans that miss no more than this one, grains; null if none is known. */
    @Nullable
    Double of(Search.Found plan) {
        return atMost.of(-plan.medium());
    }

    /**
     * (bound − plan) / (bound − nothing planted), per cent; null where no bound is known, planting brings nothing, or the
     * plan breaks a hard rule.
     */
    @Nullable
    Double gap(Search.Found plan) {
        Double bound = of(plan);
        return bound == null || bound <= nothing || plan.hard() != 0
                ? null
                : 100 * (bound - plan.soft()) / (bound - nothing);
    }
}
