package bedwright.underway;

import bedwright.climate.PossibleSeasons;
import bedwright.file.SeasonFile;
import bedwright.log.FaultyNotes;
import bedwright.log.SeasonLog;
import bedwright.plan.Outcomes;
import bedwright.plan.PlanFacts;
import bedwright.plan.Search;
import bedwright.season.KeptPlanting;
import bedwright.season.Plan;
import bedwright.season.Sampling;
import bedwright.season.Season;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;

/** Plans of small farms, and logs drawn at random of what may happen to them. */
final class RandomStates {
    private static final Map<String, Plan> PLANS = new HashMap<>();

    private RandomStates() {}

    /** A plan made with few moves. */
    static synchronized Plan plan(String file) {
        return PLANS.computeIfAbsent(file, name -> plan(SeasonFile.read(Path.of("problems", name))));
    }

    /** The same over few possible seasons, which is quick. */
    static synchronized Plan quickPlan(String file) {
        return PLANS.computeIfAbsent("quick " + file, name -> {
            Season season = SeasonFile.read(Path.of("problems", file));
            Sampling possible = season.possible();
            return plan(season.with(new Sampling(3, possible.seed(), possible.doubt(), List.of())));
        });
    }

    private static Plan plan(Season season) {
        PlanFacts facts = PlanFacts.of(season, PossibleSeasons.of(season));
        Search.Found found = new Search(facts, new Search.Limits(1, null, 3000L)).run(Search.nothingPlaced(facts));
        return new Plan(
                1,
                season,
                new Plan.Making(1, null, 3000L, false, false),
                new Plan.Score(found.hard(), found.medium(), found.soft()),
                Outcomes.of(facts, found.places()).plantings());
    }

    /** A day of the season on which something may still be done. */
    static LocalDate day(Plan plan, Random random) {
        Season season = plan.season();
        return season.starts().plusDays(random.nextInt(season.days() - 14));
    }

    /** So many notes up to a day that can be true; those that can't are left out. */
    static SeasonLog log(Plan plan, LocalDate on, int notes, Random random) {
        return more(plan, SeasonLog.EMPTY, on, notes, random);
    }

    /** The same after notes that are there already. */
    static SeasonLog more(Plan plan, SeasonLog before, LocalDate on, int notes, Random random) {
        SeasonLog log = before;
        List<LocalDate> days = new ArrayList<>();
        long length = on.toEpochDay() - plan.season().starts().toEpochDay() + 1;
        for (int i = 0; i < notes; i++) {
            days.add(plan.season().starts().plusDays(random.nextLong(length)));
        }
        days.sort(null);
        for (LocalDate day : days) {
            KeptPlanting planting =
                    plan.plantings().get(random.nextInt(plan.plantings().size()));
            try {
                log = log.plus(plan, day + " " + note(planting, random) + "\n");
            } catch (FaultyNotes e) {
                // It can't be true after what was noted before.
            }
        }
        return log;
    }

    private static String note(KeptPlanting planting, Random random) {
        int number = planting.number();
        return switch (random.nextInt(17)) {
            case 0 -> number + " up";
            case 1 -> number + " pinch-stage";
            case 2 -> number + " colour";
            case 3 -> number + " first-stem";
            case 4 -> number + " stands " + (20 + random.nextInt(80)) + "%";
            case 5 ->
                number + " lost " + random.nextInt(100) + "% "
                        + List.of("wind", "frost", "pest", "other").get(random.nextInt(4));
            case 6 ->
                number + " cut " + random.nextInt(40)
                        + List.of("", " all", " left 9").get(random.nextInt(3));
            case 7, 8 -> number + " moved " + planting.sown().plusDays(random.nextInt(-3, 12));
            case 9 -> number + (random.nextBoolean() ? " not-done" : " pulled");
            case 10 -> number + " plants " + (1 + random.nextInt(2 * planting.plants()));
            case 11 -> number + " up " + random.nextInt(101) + "%";
            case 12 -> "weather min " + random.nextInt(-5, 12) + " max " + random.nextInt(12, 35);
            case 13 -> "weather gust " + random.nextInt(5, 40) + " west";
            case 14 -> number + " in-bed " + planting.bed();
            case 15 -> "order-new Inn" + random.nextInt(9) + " for 12 Jul to 2 Aug: 9 focal at 0.70, 5 filler at 0.40";
            default -> "say nothing";
        };
    }
}
