package bedwright.plan;

import bedwright.climate.PossibleSeason;
import bedwright.climate.PossibleSeasons;
import bedwright.growth.Prospect;
import bedwright.growth.Prospects;
import bedwright.season.Season;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * What the parts of a move take on the demo farm, over its 16 possible seasons: moves that fit, drawn as the search draws
 * them, asked one after the other beside the plan that the search begins with.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(value = 2, jvmArgsAppend = "-XX:+UseSerialGC")
public class SmallParts {
    private static final int MOVES = 2000;

    private PlanFacts facts;
    private SeasonScore score;
    private Layout layout;
    private Glance glance;
    private ArrayKernel kernel;
    private Prospects prospects;
    private final List<Trial> trials = new ArrayList<>();
    private int next;

    /** A move: plantings, where they stand and where they are put, and the weeks that it touches. */
    private record Trial(int[] plantings, int[] from, int[] to, List<ArrayKernel.Run> runs) {}

    @Setup
    public void drawMoves() {
        Season season = ProblemFamily.named("demo");
        List<PossibleSeason> possible = PossibleSeasons.of(season);
        facts = PlanFacts.of(season, possible);
        prospects = Prospects.of(season, possible);
        Probe probe = new Probe();
        SeasonPlan plan = new SeasonPlan(facts, Opening.fill(facts, Search.nothingPlaced(facts), () -> false), probe);
        score = new SeasonScore(facts);
        score.settleAll(plan.places());
        layout = new Layout(facts);
        layout.follow(plan.getPlantings());
        glance = new Glance(layout);
        kernel = new ArrayKernel(facts, plan.places());
        DrawnMoves moves = new DrawnMoves(layout, null, null, new SplittableRandom(1));
        while (trials.size() < MOVES) {
            moves.next();
            int count = layout.moved();
            int[][] of = new int[3][count];
            for (int i = 0; i < count; i++) {
                of[0][i] = layout.movedPlanting(i);
                of[1][i] = layout.movedFrom(i);
                of[2][i] = layout.movedTo(i);
            }
            List<ArrayKernel.Run> runs = kernel.touched(of[1], of[2]);
            if (!runs.isEmpty()) {
                trials.add(new Trial(of[0], of[1], of[2], runs));
            }
        }
    }

    private Trial trial() {
        next = next + 1 == MOVES ? 0 : next + 1;
        return trials.get(next);
    }

    /** All of a move's score, by the ledgers. */
    @Benchmark
    public long move() {
        Trial one = trial();
        for (int i = 0; i < one.plantings.length; i++) {
            if (one.from[i] != one.to[i]) {
                score.put(one.plantings[i], one.to[i]);
            }
        }
        score.ask();
        long soft = score.softAfter();
        score.forget();
        return soft;
    }

    /** What it brings at most, at the prices beside the plan. */
    @Benchmark
    public double glance() {
        Trial one = trial();
        layout.begin();
        for (int i = 0; i < one.plantings.length; i++) {
            layout.move(one.plantings[i], one.to[i]);
        }
        glance.canJudge(score);
        return glance.atMost();
    }

    /** Only the arithmetic of the weeks that it touches. */
    @Benchmark
    public double kernel() {
        return kernel.ask(trial().runs);
    }

    /** The same one figure at a time: what the machine's wide instructions are worth. */
    @Benchmark
    @Fork(
            value = 2,
            jvmArgsAppend = {"-XX:+UseSerialGC", "-XX:-UseSuperWord"})
    public double kernelWithoutWideInstructions() {
        return kernel.ask(trial().runs);
    }

    /** What a planting would give and take: the first crop's, in the first bed, ten weeks before the season's middle. */
    @Benchmark
    public Prospect prospect() {
        return prospects.expect(0, 0, 40, 0, facts.weeks / 2);
    }
}
