package bedwright.plan;

import bedwright.file.SeasonFile;
import bedwright.season.Season;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Locale;
import java.util.Random;

/** The season that the benchmarks plan, and plans for it at random. */
public final class DemoFarm {
    private DemoFarm() {}

    static Season season() {
        return SeasonFile.read(Path.of("problems", "demo-farm.json"));
    }

    /** A plan in which about so large a share of the plantings is anywhere that the season offers, the others nowhere. */
    static int[] randomPlan(PlanFacts facts, Random random, double share) {
        int[] places = Search.nothingPlaced(facts);
        for (int p = 0; p < places.length; p++) {
            int first = facts.table.firstPlace(facts.stock(p));
            int count = facts.table.firstPlace(facts.stock(p) + 1) - first;
            if (!facts.isFixed(p) && count > 0 && random.nextDouble() < share) {
                places[p] = first + random.nextInt(count);
            }
        }
        return places;
    }

    /** When, of what, where and on what a benchmark was run. */
    public static String heading(String commit) {
        return LocalDate.now(ZoneId.systemDefault()) + ", commit " + commit + System.lineSeparator() + machine();
    }

    /** Where and on what a benchmark was run. */
    static String machine() {
        return String.format(
                Locale.ROOT,
                "%s, %s %s, %d processors, JDK %s (%s)",
                System.getProperty("bench.machine", "machine not named"),
                System.getProperty("os.name"),
                System.getProperty("os.arch"),
                Runtime.getRuntime().availableProcessors(),
                System.getProperty("java.version"),
                System.getProperty("java.vendor.version", "vendor unknown"));
    }
}
