package bedwright.plan;

import bedwright.climate.PossibleSeasons;
import bedwright.compare.RuleOfThumb;
import bedwright.exact.ProvenBest;
import bedwright.recheck.Recheck;
import bedwright.season.Season;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDate;
import java.time.ZoneId;
import org.jspecify.annotations.Nullable;

/** A problem ready to be searched, with what its plans are held against: a bound and the rule-of-thumb season. */
final class SearchedProblem {
    private final Season season;
    private final PlanFacts facts;
    private final Ceiling ceiling;
    /** The score at which a search may end, because there is no better one; or null. */
    private final Search.@Nullable Found best;

    private final HeapUse heap = new HeapUse();
    private final Search.Found thumb;

    private SearchedProblem(Season season, PlanFacts facts, Ceiling ceiling, Search.@Nullable Found best) {
        this.season = season;
        this.facts = facts;
        this.ceiling = ceiling;
        this.best = best;
        this.thumb = Search.Found.of(facts, RuleOfThumb.places(facts));
    }

    /**
     * A family's member or a season file, whose bound follows from prices; these are looked for at the first plan.
     *
     * @param priceSeconds to look for them where none are kept; with 0 they are not looked for, and no bound is known
     */
    static SearchedProblem named(String problem, KeptPrices kept, int priceSeconds) {
        Season season = ProblemFamily.named(problem);
        PlanFacts facts = PlanFacts.of(season, PossibleSeasons.of(season));
        if (priceSeconds <= 0 && !kept.areThere()) {
            return new SearchedProblem(season, facts, new Ceiling(facts, missing -> null), null);
        }
        Relaxation relaxed = new Relaxation(facts);
        Ceiling ceiling = Ceiling.of(facts, relaxed, missing -> kept.of(season, facts, relaxed, missing, priceSeconds));
        return new SearchedProblem(season, facts, ceiling, null);
    }

    /** The gap of the best plan known of a problem, per cent; null if none is kept, or no bound is known. */
    @Nullable
    Double gapOfBestKnown(Path folder, String problem) {
        return BestKnown.of(folder, problem, season, facts).map(ceiling::gap).orElse(null);
    }

    /** A small season whose best plan is proven; nothing is known of plans that miss more than that one. */
    static SearchedProblem small(long number) {
        ProvenBest proven = ProvenBest.at(number);
        Season season = proven.season();
        Search.Found best = proven.best();
        PlanFacts facts = PlanFacts.of(season, PossibleSeasons.of(season));
        Ceiling ceiling = new Ceiling(facts, missing -> missing == -best.medium() ? Double.valueOf(best.soft()) : null);
        return new SearchedProblem(season, facts, ceiling, best);
    }

    /** Searches from nothing and says what came of it. */
    SearchRow search(SearchTask task, String commit, SearchSetting setting) {
        heap.forget();
        long clock = System.nanoTime();
        Search search = new Search(facts, new Search.Limits(task.seed(), Duration.ofSeconds(task.seconds()), null));
        Search.Found end = best;
        Search.Found found =
                end == null ? search.run(Search.nothingPlaced(facts)) : SearchUntil.best(end, facts, search);
        double took = (System.nanoTime() - clock) / 1e9;
        SearchRow.Heap used = heap.now();
        Double bound = ceiling.of(found);
        return new SearchRow(
                task,
                money(found.soft()),
                -found.medium(),
                bound == null ? null : money(bound),
                ceiling.gap(found),
                new SearchRow.Thumb(money(thumb.soft()), -thumb.medium(), ceiling.gap(thumb)),
                search.moves() / took,
                took,
                used,
                health(found, bound),
                LocalDate.now(ZoneId.systemDefault()),
                commit,
                setting);
    }

    private double money(double grains) {
        return Grains.toMoney(season, grains / facts.seasonCount);
    }

    private String health(Search.Found found, @Nullable Double bound) {
        Outcome outcome = Outcomes.of(facts, found.places());
        var counted = Recheck.of(season, facts.seasons, outcome.plantings());
        boolean alike = counted.hard() == found.hard()
                && counted.medium() == found.medium()
                && counted.soft() == found.soft()
                && counted.faults().isEmpty();
        return SearchHealth.of(found, alike, bound, thumb);
    }
}
