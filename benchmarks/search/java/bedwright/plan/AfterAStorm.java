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
 * force in some seconds, against one made from nothing in minutes, by what they gain over the plan in force and by how much
 * they change of it.
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

    record Gain(long hard, long medium, long soft, int changes) {}

    static Gain gain(PlanFacts facts, int[] places) {
        Search.Found before = Search.Found.of(facts, InForce.places(facts));
        Search.Found after = Search.Found.of(facts, places);
        if (after.hard() < before.hard()) {
            throw new IllegalStateException("A hard rule is broken further");
        }
        return new Gain(
                after.hard(),
                after.medium() - before.medium(),
                after.soft() - before.soft(),
                LotsMoved.of(facts, FewestChanges.alike(facts, places)).stream()
                        .mapToInt(unit -> unit.lots().size())
                        .sum());
    }

    public static void main(String[] args) {
        BenchArgs said = new BenchArgs(args, "plan", "storms", "first", "seconds", "scratch", "steps", "commit");
        Plan plan = PlanFile.read(Path.of(said.text("plan", "plans/demo-farm/plan.json")));
        int storms = said.number("storms", 3);
        double seconds = Double.parseDouble(said.text("seconds", "5"));
        int scratch = said.number("scratch", 120);
        System.out.println(DemoFarm.heading(said.text("commit", "not named")));
        for (int s = said.number("first", 1); s < said.number("first", 1) + storms; s++) {
            Random random = new Random(s);
            LocalDate on =
                    LocalDate.of(plan.season().dateOf(plan.season().days() - 1).getYear(), 7, 1 + random.nextInt(31));
            Season season = Remaining.of(plan, storm(plan, on, random), on).season();
            long began = System.nanoTime();
            PlanFacts facts = InForce.facts(season, PossibleSeasons.of(season), true);
            double factsTook = (System.nanoTime() - began) / 1e9;
            System.out.printf(
                    Locale.ROOT,
                    "storm %d on %s: %d plantings may move, %d places; facts %.1f s, from nothing to in force %.0f%n",
                    s,
                    on,
                    facts.free.length,
                    facts.table.places(),
                    factsTook,
                    money(facts, gain(facts, Search.nothingPlaced(facts)).soft()));
            long start = System.nanoTime();
            Replan replan =
                    new Replan(facts, new Search.Limits(s, Duration.ofMillis(Math.round(seconds * 1000)), null));
            int[] fewest = replan.run();
            tell(
                    String.format(
                            Locale.ROOT,
                            "from the plan in force, %d moves, %.1f s",
                            replan.search().moves(),
                            (System.nanoTime() - start) / 1e9),
                    facts,
                    gain(facts, fewest));
            if (said.number("steps", 0) > 0) {
                steps(facts, fewest);
            }
            if (scratch > 0) {
                Search from = new Search(facts, new Search.Limits(s, Duration.ofSeconds(scratch), null));
                int[] places = from.run(Search.nothingPlaced(facts)).places();
                tell("from nothing", facts, gain(facts, places));
                tell("from nothing, taken back", facts, gain(facts, FewestChanges.of(facts, places)));
            }
        }
    }

    /** What is gained by so many changes, from the largest gain. */
    private static void steps(PlanFacts facts, int[] places) {
        int lots = 0;
        long medium = 0;
        long soft = 0;
        for (Replan.Bought bought : Replan.bought(facts, places)) {
            lots += bought.parts().stream().mapToInt(Replan.Changed::lots).sum();
            medium += bought.made().gain().medium();
            soft += bought.made().gain().soft();
            System.out.printf(Locale.ROOT, "    %d lots %.1f must %d%n", lots, money(facts, soft), medium);
        }
    }

    private static double money(PlanFacts facts, long soft) {
        return Grains.toMoney(facts.season(), (double) soft / facts.seasonCount);
    }

    private static void tell(String what, PlanFacts facts, Gain gain) {
        System.out.printf(
                Locale.ROOT,
                "  %-60s %8.1f a season, must %d, hard %d, %d lots changed%n",
                what,
                money(facts, gain.soft()),
                gain.medium(),
                gain.hard(),
                gain.changes());
    }
}
