package bedwright.plan;

import ai.timefold.solver.core.api.score.stream.uni.UniConstraintCollector;
import ai.timefold.solver.core.api.score.stream.uni.UniConstraintCollectorAccumulator;
import ai.timefold.solver.core.api.score.stream.uni.UniConstraintCollectorValueHandle;
import bedwright.plan.StreamFacts.Part;
import bedwright.plan.StreamFacts.Plot;
import bedwright.plan.StreamFacts.RoleStems;
import bedwright.plan.StreamFacts.Store;
import bedwright.plan.StreamFacts.Use;
import bedwright.plan.StreamFacts.Week;
import java.util.Arrays;
import java.util.Objects;
import java.util.function.Function;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** The collectors of {@link StreamRules}: arrays that a member adds itself to and takes itself from. */
final class StreamSums {
    private static final int MOST_WEEKS = 80;

    private StreamSums() {}

    /** What a week comes to: hard units, weighted stems missing, and money by season. */
    record WeekBalance(Week week, long hard, long missing, long[] money) {}

    /** What all weeks come to: hard units, weighted stems missing, and money with the bad seasons weighted. */
    record Total(long hard, long missing, long soft) {}

    /** A sum that takes a member with a sign. */
    private interface Sum<A> {
        void add(A member, int sign);
    }

    private static <A, S extends Sum<A>, R> UniConstraintCollector<A, S, R> collector(
            Supplier<S> supplier, Function<S, R> finisher) {
        UniConstraintCollectorAccumulator<S, A> accumulator = Member::new;
        return new Collector<>(supplier, accumulator, finisher);
    }

    private record Collector<A, S, R>(
            Supplier<S> supplier, UniConstraintCollectorAccumulator<S, A> accumulator, Function<S, R> finisher)
            implements UniConstraintCollector<A, S, R> {}

    private static final class Member<A, S extends Sum<A>> implements UniConstraintCollectorValueHandle<A> {
        private final S sum;
        private @Nullable A member;

        Member(S sum) {
            this.sum = sum;
        }

        @Override
        public void add(@Nullable A added) {
            member = Objects.requireNonNull(added);
            sum.add(member, 1);
        }

        @Override
        public void replaceWith(@Nullable A other) {
            if (other != member) {
                remove();
                add(other);
            }
        }

        @Override
        public void remove() {
            sum.add(Objects.requireNonNull(member), -1);
        }
    }

    /** What lies beyond a store: hard units, or grains in all seasons where more can be bought. */
    static UniConstraintCollector<Use, ?, Long> beyond() {
        return collector(UseSum::new, UseSum::over);
    }

    private static final class UseSum implements Sum<Use> {
        private final long[] used = new long[MOST_WEEKS];
        private @Nullable Store store;

        @Override
        public void add(Use use, int sign) {
            store = use.store();
            for (int w = use.from; w < use.to; w++) {
                used[w] += sign * use.amount;
            }
        }

        Long over() {
            Store of = Objects.requireNonNull(store);
            long sum = 0;
            long peak = 0;
            for (long inWeek : used) {
                long over = Math.max(0, inWeek - of.shelf.holds());
                sum += over;
                peak = Math.max(peak, over);
            }
            return of.canBeBought() ? peak * of.price() : sum * of.shelf.hard();
        }
    }

    static UniConstraintCollector<Part, ?, WeekBalance> balance() {
        return collector(WeekSum::new, WeekSum::balance);
    }

    private static final class WeekSum implements Sum<Part> {
        private long work;
        private StreamFilling.Filled[] roles = new StreamFilling.Filled[0];
        private @Nullable Week week;

        @Override
        public void add(Part part, int sign) {
            if (week == null) {
                week = part.week();
                int number = week.number;
                roles = Arrays.stream(week.roles)
                        .map(filling -> filling.new Filled(number))
                        .toArray(StreamFilling.Filled[]::new);
            }
            work += sign * part.work;
            for (RoleStems stems : part.stems) {
                roles[stems.role()].add(stems, sign);
            }
        }

        WeekBalance balance() {
            Week of = Objects.requireNonNull(week);
            PlanFacts facts = of.facts;
            int seasons = facts.seasonCount;
            long[] money = new long[seasons];
            long[] cutting = new long[seasons];
            long[] all = new long[seasons];
            Arrays.fill(all, work);
            long missing = 0;
            for (StreamFilling.Filled role : roles) {
                role.refresh();
                missing += role.missing;
                for (int k = 0; k < seasons; k++) {
                    money[k] += role.money[k];
                    cutting[k] += role.cutting[k];
                    all[k] += role.cutting[k] + role.clearing[k];
                }
            }
            long own = facts.hours.own()[of.number];
            long cap = facts.hours.cutting()[of.number];
            long sum = 0;
            long cut = 0;
            for (int k = 0; k < seasons; k++) {
                money[k] -= Math.min(all[k], own) * facts.ownRate + Math.max(0, all[k] - own) * facts.hiredRate;
                sum += all[k];
                cut += cutting[k];
            }
            long hard = 0;
            if (own < WorkWeeks.UNLIMITED) {
                hard += Math.max(0, sum - seasons * (own + facts.hours.hired()[of.number]));
            }
            if (cap < WorkWeeks.UNLIMITED) {
                hard += Math.max(0, cut - seasons * cap);
            }
            return new WeekBalance(of, hard, missing, money);
        }
    }

    static UniConstraintCollector<WeekBalance, ?, Total> total() {
        return collector(WeeksSum::new, WeeksSum::total);
    }

    private static final class WeeksSum implements Sum<WeekBalance> {
        private long hard;
        private long missing;
        private long[] money = new long[0];
        private int caution;

        @Override
        public void add(WeekBalance balance, int sign) {
            if (money.length == 0) {
                money = new long[balance.money().length];
                caution = balance.week().facts.season.caution().percent();
            }
            hard += sign * balance.hard();
            missing += sign * balance.missing();
            for (int k = 0; k < money.length; k++) {
                money[k] += sign * balance.money()[k];
            }
        }

        Total total() {
            return new Total(hard, missing, NaiveScore.withCaution(money, caution));
        }
    }

    /** Plantings of a family in a bed that start after another of them has ended. */
    static UniConstraintCollector<Plot, ?, Long> followers() {
        return collector(FamilySum::new, FamilySum::followers);
    }

    private static final class FamilySum implements Sum<Plot> {
        private final int[] starts = new int[MOST_WEEKS];
        private final int[] ends = new int[MOST_WEEKS + 1];

        @Override
        public void add(Plot plot, int sign) {
            starts[plot.from] += sign;
            ends[plot.to] += sign;
        }

        Long followers() {
            int first = 0;
            while (first < MOST_WEEKS && ends[first] == 0) {
                first++;
            }
            long count = 0;
            for (int w = first; w < MOST_WEEKS; w++) {
                count += starts[w];
            }
            return count;
        }
    }
}
