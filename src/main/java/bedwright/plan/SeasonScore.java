package bedwright.plan;

import java.util.Arrays;

/**
 * The score of a plan, asked as "what if". It holds the places of all plantings it measures from, its base, and answers
 * what the plan would score with some plantings put elsewhere; nothing is written for a trial, so nothing is undone.
 * Whatever plan it measures from, the same plan has the same score.
 *
 * <p>Not for use by several threads at once.
 */
final class SeasonScore {
    /** A planting that is left out. */
    static final int NOWHERE = -1;

    private static final Rule[] RULES = Rule.values();

    private final PlanFacts facts;
    private final int[] place;
    private final RoomLedger room;
    private final StemLedger stems;
    private final HoursLedger hours;
    private final FamilyLedger families;
    private final Answer answer;
    private final long[] money;
    private final long[] trialMoney;
    private final long[] worst;
    private long hard;
    private long medium;
    private long everySeason;
    private long material;
    private long changes;
    private long version;
    private final long[] costs = new long[Rule.values().length];

    /** Measures from the empty plan. */
    SeasonScore(PlanFacts facts) {
        this.facts = facts;
        this.place = new int[facts.plantings()];
        Arrays.fill(place, NOWHERE);
        this.room = new RoomLedger(facts);
        this.hours = new HoursLedger(facts);
        this.stems = new StemLedger(facts, hours);
        this.families = new FamilyLedger(facts);
        this.answer = new Answer(facts.seasonCount);
        this.money = new long[facts.seasonCount];
        this.trialMoney = new long[facts.seasonCount];
        this.worst = new long[facts.worstSeasons()];
        for (int p = 0; p < place.length; p++) {
            changes += facts.changes.cost(p, NOWHERE);
        }
        hours.touchAll();
        stems.touchAll();
        ask();
        take();
    }

    /** Where a planting is in the plan measured from. */
    int place(int planting) {
        return place[planting];
    }

    /** Posts a planting as put elsewhere (or {@link #NOWHERE}); each at most once before {@link #ask} or {@link #take}. */
    void put(int planting, int to) {
        int from = place[planting];
        changes += facts.changes.cost(planting, to) - facts.changes.cost(planting, from);
        if (from >= 0) {
            post(from, -1);
        }
        if (to >= 0) {
            post(to, 1);
        }
    }

    private void post(int at, int sign) {
        room.post(at, sign);
        stems.post(at, sign);
        hours.post(at, sign);
        families.post(at, sign);
        material += sign * facts.figures.material(at);
    }

    /** Answers what the posted changes would cost more, or less, by rule. */
    Answer ask() {
        answer.clear();
        room.ask(answer);
        families.ask(answer);
        answer.add(Rule.MATERIAL, material);
        answer.add(Rule.CHANGES, changes);
        stems.ask(answer);
        hours.ask(answer);
        return answer;
    }

    /** Forgets the posted changes. */
    void forget() {
        room.forget();
        stems.forget();
        hours.forget();
        families.forget();
        material = 0;
        changes = 0;
        answer.clear();
    }

    /** Makes the changes last asked about part of the plan measured from; {@link #moved} has to be told of each. */
    void take() {
        version++;
        hard += answer.hard();
        medium += answer.medium();
        everySeason += answer.everySeason();
        for (Rule rule : RULES) {
            costs[rule.ordinal()] += answer.cost(rule);
        }
        for (int k = 0; k < money.length; k++) {
            money[k] += (long) answer.money[k];
        }
        room.commit();
        stems.commit();
        hours.commit();
        families.commit();
        material = 0;
        changes = 0;
        answer.clear();
    }

    /** Another number whenever the plan measured from may have changed. */
    long version() {
        return version;
    }

    /** Notes where a planting now is, after {@link #take}. */
    void moved(int planting, int to) {
        place[planting] = to;
    }

    /** Puts all plantings where they are for good, in one go: much quicker than one by one. */
    void settleAll(int[] to) {
        for (int p = 0; p < to.length; p++) {
            if (place[p] != to[p]) {
                put(p, to[p]);
            }
        }
        ask();
        take();
        for (int p = 0; p < to.length; p++) {
            moved(p, to[p]);
        }
    }

    /** Puts a planting elsewhere for good. */
    void settle(int planting, int to) {
        if (place[planting] == to) {
            return;
        }
        put(planting, to);
        ask();
        take();
        moved(planting, to);
    }

    /** Hard score with the changes last asked about; 0 or less. */
    long hardAfter() {
        return -(hard + answer.hard());
    }

    long mediumAfter() {
        return -(medium + answer.medium());
    }

    /** Soft score with the changes last asked about, grains, caution included. */
    long softAfter() {
        long constant = everySeason + answer.everySeason();
        for (int k = 0; k < money.length; k++) {
            trialMoney[k] = money[k] + (long) answer.money[k] - constant;
        }
        return withCaution(trialMoney);
    }

    long hard() {
        return -hard;
    }

    long medium() {
        return -medium;
    }

    long soft() {
        for (int k = 0; k < money.length; k++) {
            trialMoney[k] = money[k] - everySeason;
        }
        return withCaution(trialMoney);
    }

    /** Cost of a rule in the plan measured from: see {@link Answer} for the units. Takings and the like are not kept. */
    long cost(Rule rule) {
        return costs[rule.ordinal()];
    }

    /** Money of each possible season in the plan measured from, grains. */
    long[] seasonMoney() {
        long[] each = money.clone();
        for (int k = 0; k < each.length; k++) {
            each[k] -= everySeason;
        }
        return each;
    }

    /**
     * floor(((100 − c)·m·S + c·K·T) / (100·m)): the sum over the seasons, with the weight c per cent on the m = ⌈K/5⌉
     * worst. Taken apart so that no product overflows.
     */
    private long withCaution(long[] each) {
        long sum = 0;
        for (long one : each) {
            sum += one;
        }
        int c = facts.season.caution().percent();
        if (c == 0) {
            return sum;
        }
        long m = worst.length;
        long bad = sumOfWorst(each);
        long rest = 100L - c;
        long weight = c * (long) each.length;
        long sumWhole = Math.floorDiv(sum, 100);
        long badWhole = Math.floorDiv(bad, 100 * m);
        long left = rest * m * Math.floorMod(sum, 100L) + weight * Math.floorMod(bad, 100 * m);
        return rest * sumWhole + weight * badWhole + Math.floorDiv(left, 100 * m);
    }

    private long sumOfWorst(long[] each) {
        int m = worst.length;
        int filled = 0;
        for (long one : each) {
            if (filled == m && one >= worst[m - 1]) {
                continue;
            }
            int at = filled < m ? filled++ : m - 1;
            while (at > 0 && worst[at - 1] > one) {
                worst[at] = worst[at - 1];
                at--;
            }
            worst[at] = one;
        }
        long sum = 0;
        for (long one : worst) {
            sum += one;
        }
        return sum;
    }

    /** What each season's money counts: more in the worst ones, for caution's sake. The weights sum up to K. */
    double[] weights() {
        int m = worst.length;
        double caution = facts.season.caution().percent() / 100.0;
        sumOfWorst(money);
        long least = worst[m - 1];
        double[] weights = new double[money.length];
        int counted = 0;
        for (int k = 0; k < money.length; k++) {
            boolean isBad = money[k] <= least && counted < m;
            counted += isBad ? 1 : 0;
            weights[k] = 1 - caution + (isBad ? caution * money.length / m : 0);
        }
        return weights;
    }

    RoomLedger room() {
        return room;
    }

    StemLedger stems() {
        return stems;
    }

    HoursLedger hours() {
        return hours;
    }
}
