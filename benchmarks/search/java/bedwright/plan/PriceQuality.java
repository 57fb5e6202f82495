package bedwright.plan;

import com.sun.management.OperatingSystemMXBean;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * How much the prices that the product finds lose against the best there are ({@link LeastBound}): by the clock, and by
 * processor time, which is what counts on a machine that does other work too. Two processors make of s seconds 2 s of the
 * second kind at the most.
 */
public final class PriceQuality {
    private PriceQuality() {}

    /**
     * Arguments: {@code problem} (demo), {@code seasons} (16), {@code caution} (33), {@code missing} (as {@link LeastBound} has it), {@code at} seconds by the clock
     * (10,30), {@code cpu} seconds of processor time (20,60), {@code commit}, {@code every} steps a line (0: none).
     */
    public static void main(String[] args) throws IOException {
        BenchArgs given =
                new BenchArgs(args, "problem", "seasons", "caution", "missing", "at", "cpu", "every", "commit");
        String problem = given.text("problem", "demo");
        int seasons = given.number("seasons", 16);
        int caution = given.number("caution", 33);
        int missing = given.number("missing", 0);
        System.out.println(DemoFarm.heading(given.text("commit", "not named")));
        PlanFacts facts = LeastBound.facts(problem, seasons, caution);
        Path file = LeastBound.file(problem, seasons, caution, missing);
        double least = Files.exists(file) ? Bound.of(facts, LeastBound.read(file, facts), missing) : Double.NaN;
        System.out.printf(
                Locale.ROOT,
                "%s, %d seasons, caution %d: %d places; least bound %.2f%n",
                problem,
                seasons,
                caution,
                facts.table.places(),
                money(facts, least));
        OperatingSystemMXBean machine = ManagementFactory.getPlatformMXBean(OperatingSystemMXBean.class);
        long cpuBefore = machine.getProcessCpuTime();
        long began = System.nanoTime();
        List<Double> at = numbers(given, "at", "10,30");
        List<Double> cpu = numbers(given, "cpu", "20,60");
        long every = given.number("every", 0);
        PriceSearch search = new PriceSearch(facts, missing);
        long[] told = {0};
        search.run(Long.MAX_VALUE, () -> {
            double clock = (System.nanoTime() - began) / 1e9;
            double used = (machine.getProcessCpuTime() - cpuBefore) / 1e9;
            boolean tells = every > 0 && search.steps() >= told[0] + every;
            told[0] = tells ? search.steps() : told[0];
            if (!at.isEmpty() && clock >= at.getFirst()) {
                tell(
                        facts,
                        String.format(Locale.ROOT, "%.0f s by the clock", at.removeFirst()),
                        search,
                        clock,
                        used,
                        least);
            } else if (!cpu.isEmpty() && used >= cpu.getFirst()) {
                tell(
                        facts,
                        String.format(Locale.ROOT, "%.0f s of processors", cpu.removeFirst()),
                        search,
                        clock,
                        used,
                        least);
            } else if (tells) {
                tell(facts, "", search, clock, used, least);
            }
            return at.isEmpty() && cpu.isEmpty();
        });
    }

    private static List<Double> numbers(BenchArgs given, String name, String usual) {
        return new ArrayList<>(
                given.list(name, usual).stream().map(Double::valueOf).toList());
    }

    private static void tell(
            PlanFacts facts, String what, PriceSearch search, double clock, double used, double least) {
        System.out.printf(
                Locale.ROOT,
                "%-22s %6d steps %6.1f s %6.1f s of processors: %12.2f, %.3f %% above%n",
                what,
                search.steps(),
                clock,
                used,
                money(facts, search.best()),
                100 * (search.best() - least) / Math.abs(least));
    }

    private static double money(PlanFacts facts, double grains) {
        return Grains.toMoney(facts.season, grains / facts.seasonCount);
    }
}
