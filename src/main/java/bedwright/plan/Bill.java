package bedwright.plan;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;

/**
 * What each rule costs, or costs more: hard rules in 1/100,000 of their unit, what must be ours in hundredths of stems ×
 * weight, money in grains summed over the possible seasons. Takings count below 0.
 *
 * @param costs of every rule
 * @param seasons number of possible seasons
 */
public record Bill(Map<Rule, Long> costs, int seasons) {
    public Bill {
        costs = Collections.unmodifiableMap(new EnumMap<>(costs));
    }

    /** What the rules cost in a plan that a score measures from, and whose outcome this is. */
    static Bill of(SeasonScore score, Outcome outcome) {
        int seasons = outcome.seasons();
        Map<Rule, Long> costs = new EnumMap<>(Rule.class);
        for (Rule rule : Rule.values()) {
            long cost = score.cost(rule);
            costs.put(rule, Answer.isEverySeason(rule) ? seasons * cost : cost);
        }
        costs.put(Rule.TAKINGS, -sum(outcome.money().takings()));
        costs.put(Rule.SHORTAGE, sum(outcome.money().shortage()));
        costs.put(Rule.BUY_IN, sum(outcome.money().buyIn()));
        return new Bill(costs, seasons);
    }

    /** What changes cost more that a score was asked about, and whose outcomes these are. */
    static Bill of(Answer answer, Outcome before, Outcome after) {
        int seasons = before.seasons();
        Map<Rule, Long> costs = new EnumMap<>(Rule.class);
        for (Rule rule : Rule.values()) {
            long cost = answer.cost(rule);
            costs.put(rule, Answer.isEverySeason(rule) ? seasons * cost : cost);
        }
        costs.put(
                Rule.TAKINGS, sum(before.money().takings()) - sum(after.money().takings()));
        costs.put(
                Rule.SHORTAGE,
                sum(after.money().shortage()) - sum(before.money().shortage()));
        costs.put(Rule.BUY_IN, sum(after.money().buyIn()) - sum(before.money().buyIn()));
        return new Bill(costs, seasons);
    }

    private static long sum(long[] values) {
        long sum = 0;
        for (long one : values) {
            sum += one;
        }
        return sum;
    }

    public long cost(Rule rule) {
        Long cost = costs.get(rule);
        return cost == null ? 0 : cost;
    }

    /** Cost of all rules of a level together. */
    public long cost(Rule.Level level) {
        long sum = 0;
        for (Rule rule : Rule.values()) {
            sum += rule.level() == level ? cost(rule) : 0;
        }
        return sum;
    }
}
