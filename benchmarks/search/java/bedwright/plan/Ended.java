package bedwright.plan;

import bedwright.season.Season;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * A plan that a way came to, as it is told.
 *
 * @param money a season, caution included, in main units of the currency
 * @param missing weighted hundredths of stems that must be ours and are missing, over all possible seasons
 * @param gap per cent, or null if no bound is known or the plan breaks a hard rule
 * @param hard what it breaks of hard rules, as scored
 */
record Ended(double money, long missing, @Nullable Double gap, long hard) {
    static Ended of(Season season, PlanFacts facts, Ceiling ceiling, Search.Found plan) {
        return new Ended(
                Grains.toMoney(season, (double) plan.soft() / facts.seasonCount),
                -plan.medium(),
                ceiling.gap(plan),
                plan.hard());
    }

    /** What came of it, in words. */
    String outcome() {
        return hard == 0 ? "a plan" : "a plan that breaks a hard rule";
    }

    @Override
    public String toString() {
        return String.format(
                Locale.ROOT,
                "%.2f, gap %s, hard %d, missing %d",
                money,
                gap == null ? "not known" : String.format(Locale.ROOT, "%.2f %%", gap),
                hard,
                missing);
    }
}
