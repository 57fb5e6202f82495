package bedwright.plan;

import bedwright.climate.PossibleSeasons;
import bedwright.file.PlanFile;
import bedwright.log.SeasonLog;
import bedwright.season.Plan;
import bedwright.season.Season;
import bedwright.underway.PlantingState;
import bedwright.underway.Remaining;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.Set;

/**
 * The demo farm after a storm in July that laid flat a third of what stood in the open: the plan made anew from the plan in
 * force in some seconds, as {@code replan} does it, against one made from nothing in minutes: by what they gain over the
 * plan in force and by how much they change of it. The one from nothing knows nothing of the plan in force, or it knows the
 * price of every change.
 */
public final class AfterAStorm {
    private AfterAStorm() {}

    /** Plantings standing in the open on a day, from which a third of the plants is lost, whole plantings at random. */
    static SeasonLog storm(Plan plan, LocalDate on, Random random) {
        Set<String> tunnels = new HashSet<>();
        plan.season().allBeds().stream()
                .filter(bed -> bed.block().tunnel() != null)
                .forEach(bed -> tunnels.add(bed.name()));
        List<PlantingState> open = new ArrayList<>(Remaining.of(plan, SeasonLog.EMPTY, on).states().stream()
                .filter(state ->
                        state.stage() == PlantingState.Stage.GROWING || state.stage() == PlantingState.Stage.CUTTING)
                .filter(state -> !tunnels.contains(state.planned().bed()))
                .toList());
        Collections.shuffle(open, random);
        int plants = open.stream().mapToInt(PlantingState::plants).sum();
        int flat = 0;
        SeasonLog log = SeasonLog.EMPTY;
        for (PlantingState state : open) {
            if (3 * flat < plants) {
                flat += state.plants();
                log = log.plus(plan, on.minusDays(1) + " " + state.number() + " lost all wind\n");
            }
        }
        return log;
    }

    /**
     * What a plan brings more than the plan in force.
     *
     * @param medium of what must be ours
     * @param score money as the score counts it, with the price of changes, a season
     * @param money the same without that price
     * @param lots changed, equal lots taken as they suit best
     */
    record Gain(long medium, double score, double money, int lots) {
        static Gain of(PlanFacts facts, PlanFacts free, int[] places) {
            int[] alike = FewestChanges.alike(facts, places);
            Search.Found before = Search.Found.of(facts, InForce.places(facts));
            Search.Found after = Search.Found.of(facts, alike);
            if (after.hard() < before.hard()) {
                throw new IllegalStateException("A hard rule is broken further");
            }
            return new Gain(
                    after.medium() - before.medium(),
                    AfterAStorm.money(facts, after.soft() - before.soft()),
                    AfterAStorm.money(
                            free,
                            Search.Found.of(free, alike).soft()
                                    - Search.Found.of(free, InForce.places(facts))
                                            .soft()),
                    LotsMoved.of(facts, alike).stream()
                            .mapToInt(unit -> unit.lots().size())
                            .sum());
        }

        String columns() {
            return String.format(Locale.ROOT, "%d,%.1f,%.1f,%d", medium, score, money, lots);
        }
    }

    public static void main(String[] args) {
        BenchArgs said = new BenchArgs(
                args,
                "plan",
                "storms",
                "first",
                "seconds",
                "moves",
                "scratch",
                "scratch-moves",
                "priced",
                "dear",
                "commit");
        Plan plan = PlanFile.read(Path.of(said.text("plan", "plans/demo-farm/plan.json")));
        int first = said.number("first", 1);
        System.err.println(DemoFarm.heading(said.text("commit", "not named")));
        System.out.println("storm,on,may move,anew: must,score,money,lots,took s,moves,"
                + "from nothing: must,score,money,lots,took s,moves");
        for (int s = first; s < first + said.number("storms", 10); s++) {
            Random random = new Random(s);
            LocalDate on =
                    LocalDate.of(plan.season().dateOf(plan.season().days() - 1).getYear(), 7, 1 + random.nextInt(31));
            Season left = Remaining.of(plan, storm(plan, on, random), on).season();
            Season season = left.with(left.changes().dearer(Double.parseDouble(said.text("dear", "1"))));
            PlanFacts facts = InForce.facts(season, PossibleSeasons.of(season), true);
            PlanFacts free = PlanFacts.of(
                    facts.season().with(facts.season().changes().dearer(0)), facts.seasons(), facts.table());
            long start = System.nanoTime();
            Replan replan = new Replan(facts, limits(s, said.text("seconds", "5"), said.text("moves", "")));
            int[] anew = replan.run();
            String row = s + "," + on + "," + facts.free.length + ","
                    + Gain.of(facts, free, anew).columns() + "," + since(start) + ","
                    + replan.search().moves();
            if (said.text("scratch", "120").equals("0")) {
                System.out.println(row);
                continue;
            }
            start = System.nanoTime();
            PlanFacts seen = said.text("priced", "no").equals("yes") ? facts : free;
            Search search = new Search(seen, limits(s, said.text("scratch", "120"), said.text("scratch-moves", "")));
            int[] nothing = search.run(Search.nothingPlaced(seen)).places();
            System.out.println(
                    row + "," + Gain.of(facts, free, nothing).columns() + "," + since(start) + "," + search.moves());
        }
    }

    /** So many moves each of both searches, if any are said, else so many seconds. */
    private static Search.Limits limits(long seed, String seconds, String moves) {
        return moves.isEmpty()
                ? new Search.Limits(seed, Duration.ofMillis(Math.round(Double.parseDouble(seconds) * 1000)), null)
                : new Search.Limits(seed, null, Long.valueOf(moves));
    }

    private static String since(long start) {
        return String.format(Locale.ROOT, "%.1f", (System.nanoTime() - start) / 1e9);
    }

    private static double money(PlanFacts facts, long soft) {
        return Grains.toMoney(facts.season(), (double) soft / facts.seasonCount);
    }
}
