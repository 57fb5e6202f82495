package bedwright.plan;

import bedwright.climate.PossibleSeason;
import bedwright.climate.PossibleSeasons;
import bedwright.growth.ProspectTable;
import bedwright.recheck.Recheck;
import bedwright.season.Caution;
import bedwright.season.Sampling;
import bedwright.season.Season;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import java.util.Random;

/**
 * Counts random plans of the demo farm by the planner and again by the recheck, over 1, 16 and 64 possible seasons and
 * with caution 0 and 33: the two share no formula and have to agree to the last unit. Ends in an error where they
 * differ.
 */
public final class RecheckManyPlans {
    private static final long SEED = 20;
    private static final int[] CAUTIONS = {0, 33};

    private RecheckManyPlans() {}

    /** Arguments: plans over 1, over 16 and over 64 seasons, for each caution (default 1,000 each); commit. */
    public static void main(String[] args) {
        int[] seasons = {1, 16, 64};
        System.out.printf(
                Locale.ROOT,
                "%s, commit %s%n",
                LocalDate.now(ZoneId.systemDefault()),
                args.length > 3 ? args[3] : "not named");
        System.out.println(DemoFarm.machine());
        System.out.println("seasons caution  plans  placed at most  differ");
        int differing = 0;
        for (int i = 0; i < seasons.length; i++) {
            int plans = args.length > i ? Integer.parseInt(args[i]) : 1000;
            differing += plans > 0 ? checkOver(seasons[i], plans) : 0;
        }
        if (differing > 0) {
            throw new IllegalStateException(differing + " plans are counted differently");
        }
    }

    private static int checkOver(int count, int plans) {
        Season farm = DemoFarm.season();
        Sampling possible = farm.possible();
        Season season = farm.with(new Sampling(count, possible.seed(), possible.doubt(), List.of()));
        List<PossibleSeason> seasons = PossibleSeasons.of(season);
        ProspectTable table = ProspectTable.of(season, seasons);
        int differing = 0;
        for (int caution : CAUTIONS) {
            PlanFacts facts = PlanFacts.of(season.with(new Caution(caution)), seasons, table);
            differing += check(facts, plans);
        }
        return differing;
    }

    private static int check(PlanFacts facts, int plans) {
        Random random = new Random(SEED + facts.season.caution().percent());
        int differing = 0;
        int most = 0;
        for (int i = 0; i < plans; i++) {
            int[] places = DemoFarm.randomPlan(facts, random, random.nextDouble());
            Outcome outcome = Outcomes.of(facts, places);
            var score = outcome.score();
            var tally = Recheck.of(facts.season, facts.seasons, outcome.plantings());
            boolean equal = tally.hard() == score.hard()
                    && tally.medium() == score.medium()
                    && tally.soft() == score.soft()
                    && tally.faults().isEmpty();
            if (!equal) {
                differing++;
                System.out.printf(Locale.ROOT, "plan %d: planner %s, recheck %s%n", i, score, tally);
            }
            int placed = 0;
            for (int place : places) {
                placed += place >= 0 ? 1 : 0;
            }
            most = Math.max(most, placed);
        }
        System.out.printf(
                Locale.ROOT,
                "%7d%8d%7d%16d%8d%n",
                facts.seasonCount,
                facts.season.caution().percent(),
                plans,
                most,
                differing);
        return differing;
    }
}
