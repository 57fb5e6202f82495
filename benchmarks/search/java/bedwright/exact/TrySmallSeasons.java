package bedwright.exact;

import bedwright.climate.PossibleSeasons;
import bedwright.plan.BenchArgs;
import bedwright.plan.DemoFarm;
import bedwright.plan.Outcomes;
import bedwright.plan.PlanFacts;
import bedwright.plan.Rule;
import bedwright.plan.Search;
import bedwright.plan.SearchUntil;
import bedwright.season.Season;
import java.time.Duration;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * How often the planner reaches the proven best plans of the small seasons, and how soon; and in which of the seasons which
 * rule is felt.
 */
final class TrySmallSeasons {
    private TrySmallSeasons() {}

    /**
     * Arguments: {@code from}, {@code to} (of the seasons' seeds), {@code searches} with seeds of their own (10; 0 for none),
     * {@code seconds} each (10), {@code rules} (moves to find out where each rule is felt, which is then kept; 0, which leaves
     * it out), {@code commit}.
     */
    public static void main(String[] args) {
        BenchArgs given = new BenchArgs(args, "from", "to", "searches", "seconds", "rules", "commit");
        int from = given.number("from", 1);
        int to = given.number("to", Integer.MAX_VALUE);
        List<Proven> all = Proven.all().stream()
                .filter(proven -> from <= proven.seed() && proven.seed() <= to)
                .toList();
        System.out.println(DemoFarm.heading(given.text("commit", "not named")));
        int searches = given.number("searches", 10);
        if (searches > 0) {
            search(all, searches, Duration.ofSeconds(given.number("seconds", 10)));
        }
        int moves = given.number("rules", 0);
        if (moves > 0) {
            tellRules(all, moves);
        }
    }

    private static void search(List<Proven> all, int searches, Duration most) {
        System.out.println("season  weeks  beds  lots  possible  caution  reached  median s  worst gap %  health");
        int whole = 0;
        for (Proven proven : all) {
            Season season = SmallSeasons.season(SmallSeasons.tree(proven.seed()));
            PlanFacts facts = PlanFacts.of(season, PossibleSeasons.of(season));
            Search.Found best = new Search.Found(new int[0], 0, proven.medium(), proven.soft());
            Search.Found nothing = scored(facts);
            int reached = 0;
            boolean suspect = false;
            double worst = 0;
            double[] seconds = new double[searches];
            for (int seed = 1; seed <= searches; seed++) {
                long clock = System.nanoTime();
                Search.Found found =
                        SearchUntil.best(best, facts, new Search(facts, new Search.Limits(seed, most, null)));
                seconds[seed - 1] = (System.nanoTime() - clock) / 1e9;
                reached += best.isBetterThan(found) ? 0 : 1;
                suspect |= found.isBetterThan(best);
                worst = Math.max(worst, gap(best, found, nothing));
            }
            Arrays.sort(seconds);
            whole += reached == searches ? 1 : 0;
            System.out.printf(
                    Locale.ROOT,
                    "%6d%7d%6d%6d%10d%9d%5d/%d%10.1f%13.3f  %s%n",
                    proven.seed(),
                    season.weeks(),
                    season.allBeds().size(),
                    facts.plantings(),
                    season.possible().count(),
                    season.caution().percent(),
                    reached,
                    searches,
                    seconds[searches / 2],
                    worst,
                    suspect ? "suspect: better than proven best" : "sound");
        }
        System.out.printf(
                Locale.ROOT, "The best plan in all of %d searches: in %d of %d seasons%n", searches, whole, all.size());
    }

    private static Search.Found scored(PlanFacts facts) {
        int[] nothing = Search.nothingPlaced(facts);
        var score = Outcomes.of(facts, nothing).score();
        return new Search.Found(nothing, score.hard(), score.medium(), score.soft());
    }

    /** In per cent of what the best plan is worth beyond nothing planted; where more must be ours is missing, all of it. */
    private static double gap(Search.Found best, Search.Found found, Search.Found nothing) {
        if (found.hard() < best.hard() || found.medium() < best.medium()) {
            return 100;
        }
        return 100.0 * (best.soft() - found.soft()) / Math.max(1, best.soft() - nothing.soft());
    }

    private static void tellRules(List<Proven> all, int moves) {
        Map<Rule, List<Long>> felt = new EnumMap<>(Rule.class);
        for (Rule rule : Rule.values()) {
            felt.put(
                    rule,
                    all.stream()
                            .filter(proven -> Loosened.isFelt(rule, proven, moves))
                            .map(Proven::seed)
                            .toList());
            System.out.println(rule + ": " + felt.get(rule));
        }
        Felt.keep(felt);
    }
}
