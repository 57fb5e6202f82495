package bedwright.plan;

import java.util.ArrayList;
import java.util.List;

/**
 * Which changes have to be made, or taken back, together, since one alone would break a hard rule: two plantings that
 * trade beds, or one that goes where another was.
 */
final class Together {
    private final PlanFacts facts;
    private final SeasonScore score;
    private final boolean isMaking;

    /**
     * @param score measures from the plan in which they are made, or taken back
     * @param isMaking whether they are made, else taken back
     */
    Together(PlanFacts facts, SeasonScore score, boolean isMaking) {
        this.facts = facts;
        this.score = score;
        this.isMaking = isMaking;
    }

    /** By how much a plan scores more. */
    record More(long hard, long medium, long soft) {
        boolean isWorse() {
            return hard < 0 || (hard == 0 && (medium < 0 || (medium == 0 && soft < 0)));
        }

        boolean isMoreThan(More other) {
            return hard != other.hard
                    ? hard > other.hard
                    : medium != other.medium ? medium > other.medium : soft > other.soft;
        }
    }

    /** By how much the plan scores more with some changes made, or taken back. */
    More tried(List<LotsMoved> changes) {
        for (LotsMoved change : changes) {
            for (int p : change.lots()) {
                score.put(p, goal(change));
            }
        }
        score.ask();
        More more = new More(
                score.hardAfter() - score.hard(),
                score.mediumAfter() - score.medium(),
                score.softAfter() - score.soft());
        score.forget();
        return more;
    }

    private int goal(LotsMoved change) {
        return isMaking ? change.to() : change.from();
    }

    private int origin(LotsMoved change) {
        return isMaking ? change.from() : change.to();
    }

    /**
     * A change, and as few others as are needed so that no hard rule is broken further; just the change if no others help.
     */
    List<LotsMoved> with(List<LotsMoved> all, LotsMoved begin) {
        List<LotsMoved> together = new ArrayList<>(List.of(begin));
        List<LotsMoved> others = new ArrayList<>(all);
        others.remove(begin);
        More now = tried(together);
        while (now.hard() < 0) {
            LotsMoved best = null;
            More most = now;
            for (LotsMoved other : others) {
                together.add(other);
                More more = tried(together);
                together.removeLast();
                // What stands where one of them goes may have to go, too, though that alone does not help yet.
                boolean mayHelp = more.hard() > now.hard() || standsInTheWay(together, other);
                if (mayHelp && (best == null || more.isMoreThan(most))) {
                    best = other;
                    most = more;
                }
            }
            if (best == null) {
                return List.of(begin);
            }
            together.add(best);
            others.remove(best);
            now = most;
        }
        for (LotsMoved one : List.copyOf(together)) {
            List<LotsMoved> without = new ArrayList<>(together);
            without.remove(one);
            if (!one.equals(begin) && tried(without).hard() >= 0) {
                together.remove(one);
            }
        }
        return List.copyOf(together);
    }

    private boolean standsInTheWay(List<LotsMoved> together, LotsMoved other) {
        return origin(other) >= 0
                && together.stream().anyMatch(one -> goal(one) >= 0 && facts.holds.overlap(origin(other), goal(one)));
    }
}
