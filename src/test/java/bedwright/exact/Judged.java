package bedwright.exact;

import bedwright.climate.PossibleSeasons;
import bedwright.plan.PlanFacts;
import bedwright.season.Caution;
import bedwright.season.Sampling;
import bedwright.season.Season;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;

/**
 * A small season and how its plans are judged.
 *
 * @param seasons possible seasons; 1 is the normal season alone
 */
record Judged(SmallSeason small, int seasons, Caution caution) {
    private static final Map<Judged, PlanFacts> FACTS = new ConcurrentHashMap<>();
    private static final Map<Judged, ExactModel.Best> BEST = new ConcurrentHashMap<>();

    /** Every small season over one and four possible seasons, with and without caution; one over six, of which two are bad. */
    static List<Judged> all() {
        return Stream.concat(
                        Stream.of(SmallSeason.values())
                                .flatMap(small -> Stream.of(
                                        new Judged(small, 1, Caution.BOLD),
                                        new Judged(small, 4, Caution.BOLD),
                                        new Judged(small, 4, Caution.STEADY))),
                        Stream.of(
                                new Judged(SmallSeason.AS_IT_IS, 1, Caution.STEADY),
                                new Judged(SmallSeason.AS_IT_IS, 6, Caution.CAREFUL)))
                .toList();
    }

    /**
     * The season.
     *
     * @param edits of the season file's text, by twos
     */
    Season season(String... edits) {
        Season season = small.season(edits);
        Sampling possible = season.possible();
        return season.with(caution).with(new Sampling(seasons, possible.seed(), possible.doubt(), possible.given()));
    }

    PlanFacts facts() {
        return FACTS.computeIfAbsent(this, one -> PlanFacts.of(one.season(), PossibleSeasons.of(one.season())));
    }

    /** The best plan, computed when first asked for. */
    ExactModel.Best best() {
        return BEST.computeIfAbsent(
                this, one -> ExactModel.solve(one.season(), one.facts().table()));
    }

    /** The best of the season with other limits or prices, by which places give and take what they do without. */
    ExactModel.Best bestWith(String... edits) {
        return ExactModel.solve(season(edits), facts().table());
    }

    /** What the planner needs of the season with other limits, by which places give and take what they do without. */
    PlanFacts factsWith(String... edits) {
        return PlanFacts.of(season(edits), facts().seasons(), facts().table());
    }

    /** What the planner needs of the season with other prices, of which places know. */
    PlanFacts factsAt(String... edits) {
        return PlanFacts.of(season(edits), facts().seasons());
    }

    @Override
    public String toString() {
        return String.format(Locale.ROOT, "%s over %d, caution %d", small, seasons, caution.percent());
    }
}
