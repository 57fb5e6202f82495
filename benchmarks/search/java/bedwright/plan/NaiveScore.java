package bedwright.plan;

import ai.timefold.solver.core.api.score.HardMediumSoftScore;
import ai.timefold.solver.core.api.score.calculator.IncrementalScoreCalculator;
import java.math.BigInteger;
import java.util.Arrays;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * The same score as {@link SolverScore}, computed incrementally in the plain way, as a measure of what its ledgers are
 * worth: each change of a variable takes away what the planting gave and adds what it gives now, and a score is asked
 * by filling and adding up again whatever was touched, season by season.
 */
public final class NaiveScore implements IncrementalScoreCalculator<SeasonPlan, HardMediumSoftScore> {
    private @Nullable State state;

    /** What is kept of the working plan. */
    private record State(PlanFacts facts, NaiveGround ground, NaiveStems stems, NaiveHours hours) {
        State(PlanFacts facts) {
            this(facts, new NaiveGround(facts), new NaiveStems(facts), new NaiveHours(facts));
        }

        void post(int place, int sign) {
            if (place >= 0) {
                ground.post(place, sign);
                stems.post(place, sign);
                hours.post(place, sign);
            }
        }

        HardMediumSoftScore score() {
            ground.recount();
            stems.refill(hours);
            hours.recount();
            long[] money = new long[facts.seasonCount];
            for (int k = 0; k < money.length; k++) {
                money[k] = stems.money[k] - hours.cost[k] - ground.cost;
            }
            int caution = facts.season.caution().percent();
            return HardMediumSoftScore.of(-ground.hard - hours.allOver, -stems.missing, withCaution(money, caution));
        }
    }

    @Override
    public void resetWorkingSolution(SeasonPlan plan) {
        State fresh = new State(plan.knownFacts());
        plan.getPlantings().forEach(planting -> fresh.post(planting.place(), 1));
        state = fresh;
    }

    @Override
    public void beforeVariableChanged(Object entity, String variableName) {
        Objects.requireNonNull(state).post(((Planting) entity).place(), -1);
    }

    @Override
    public void afterVariableChanged(Object entity, String variableName) {
        Objects.requireNonNull(state).post(((Planting) entity).place(), 1);
    }

    @Override
    public HardMediumSoftScore calculateScore() {
        return Objects.requireNonNull(state).score();
    }

    /** The caution formula (season model, section 8); of large farms its products leave the whole numbers of a long. */
    static long withCaution(long[] money, int caution) {
        long sum = Arrays.stream(money).sum();
        if (caution == 0) {
            return sum;
        }
        long[] sorted = money.clone();
        Arrays.sort(sorted);
        int m = (sorted.length + 4) / 5;
        long worst = Arrays.stream(sorted).limit(m).sum();
        BigInteger all = BigInteger.valueOf((100L - caution) * m).multiply(BigInteger.valueOf(sum));
        BigInteger bad = BigInteger.valueOf((long) caution * sorted.length).multiply(BigInteger.valueOf(worst));
        BigInteger[] parts = all.add(bad).divideAndRemainder(BigInteger.valueOf(100L * m));
        return parts[0].longValueExact() - (parts[1].signum() < 0 ? 1 : 0);
    }
}
