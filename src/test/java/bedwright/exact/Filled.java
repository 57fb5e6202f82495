package bedwright.exact;

import bedwright.season.KindTree;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearExpr;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToLongFunction;

/**
 * What everybody gets in one week of one season (season model, section 7): each in turn as much as he asks for, as far
 * as every kind around his has stems and room left. All stems in hundredths. A loose filling may also give less: fewer
 * equations, and mostly the same, since stems are worth their cutting; {@link #isFull} tells whether it did not.
 */
final class Filled {
    private final CpModel model;
    private final KindTree kinds;
    private final List<Wanted> wanted;
    private final int week;
    private final boolean loose;
    /** Stems of a kind itself. */
    private final Linear[] own;
    /** Stems that can be sold from a kind and all within it. */
    private final Linear[] sellable;
    /** Stems that come of a role. */
    final Linear[] came;
    /** Stems that go somewhere, by role. */
    final Linear[] cut;
    /** Stems each gets. */
    final List<Linear> served = new ArrayList<>();

    Filled(
            CpModel model,
            KindTree kinds,
            int roles,
            List<Wanted> wanted,
            Ground ground,
            int week,
            int k,
            boolean loose) {
        this.model = model;
        this.kinds = kinds;
        this.wanted = wanted;
        this.week = week;
        this.loose = loose;
        this.own = new Linear[kinds.size()];
        this.sellable = new Linear[kinds.size()];
        this.came = new Linear[roles];
        this.cut = new Linear[roles];
        for (int r = 0; r < roles; r++) {
            came[r] = new Linear();
            cut[r] = new Linear();
        }
        // Children stand behind their parents, so from the last to the first.
        for (int node = kinds.size() - 1; node >= 0; node--) {
            own[node] = ground.stems(node, week, k);
            came[kinds.role(node)].add(own[node], 1);
            Linear all = new Linear().add(own[node], 1);
            for (int child = node + 1; child < kinds.size(); child++) {
                all = kinds.parent(child) == node ? all.add(sellable[child], 1) : all;
            }
            sellable[node] = atMost(all, kinds.mostAWeek(node));
        }
        for (int i = 0; i < wanted.size(); i++) {
            Linear gets = serve(i);
            served.add(gets);
            cut[kinds.role(wanted.get(i).node())].add(gets, 1);
        }
    }

    private Linear atMost(Linear stems, long limit) {
        return stems.most() <= limit ? stems : least(List.of(stems), limit);
    }

    private Linear serve(int i) {
        Wanted one = wanted.get(i);
        long asked = one.asked()[week];
        List<Linear> left = new ArrayList<>();
        for (int node = one.node(); node >= 0; node = kinds.parent(node)) {
            Linear of = new Linear().add(sellable[node], 1);
            for (int earlier = 0; earlier < i; earlier++) {
                if (isWithin(wanted.get(earlier).node(), node)) {
                    of.add(served.get(earlier), -1);
                }
            }
            left.add(of);
            if (asked == 0 || sellable[node].most() == 0) {
                return new Linear();
            }
        }
        return least(left, asked);
    }

    private boolean isWithin(int node, int outer) {
        int at = node;
        while (at >= 0 && at != outer) {
            at = kinds.parent(at);
        }
        return at == outer;
    }

    private Linear least(List<Linear> sums, long limit) {
        long most = limit;
        List<LinearExpr> all = new ArrayList<>();
        for (Linear sum : sums) {
            most = Math.min(most, sum.most());
            all.add(sum.expression());
        }
        all.add(LinearExpr.constant(limit));
        IntVar least = model.newIntVar(0, most, "least");
        if (loose) {
            all.subList(0, sums.size()).forEach(sum -> model.addGreaterOrEqual(sum, least));
        } else {
            model.addMinEquality(least, all);
        }
        return new Linear().add(least, 1);
    }

    /**
     * Whether a solution serves as many stems of each role, and for as much, as filling in order does. Which of two at
     * the same worth is served makes no difference.
     */
    boolean isFull(ToLongFunction<IntVar> values) {
        long[] left = new long[kinds.size()];
        for (int node = kinds.size() - 1; node >= 0; node--) {
            left[node] = Math.min(left[node] + own[node].value(values), kinds.mostAWeek(node));
            if (kinds.parent(node) >= 0) {
                left[kinds.parent(node)] += left[node];
            }
        }
        long[] held = new long[cut.length + 2];
        for (int i = 0; i < wanted.size(); i++) {
            Wanted one = wanted.get(i);
            long gets = one.asked()[week];
            for (int node = one.node(); node >= 0; node = kinds.parent(node)) {
                gets = Math.min(gets, left[node]);
            }
            for (int node = one.node(); node >= 0; node = kinds.parent(node)) {
                left[node] -= gets;
            }
            long back = gets - served.get(i).value(values);
            held[kinds.role(one.node())] += back;
            held[cut.length] += back * one.worth();
            held[cut.length + 1] += back * one.must();
        }
        for (long of : held) {
            if (of != 0) {
                return false;
            }
        }
        return true;
    }
}
