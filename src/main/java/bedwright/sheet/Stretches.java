package bedwright.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Where along their beds the plantings lie. They are laid out in the order in which they come into the bed: what is free
 * then stays free, since all others that lie there already came before. So a planting always finds room in a bed that
 * holds no more metres than it has, in one stretch where there is one that is long enough (the shortest such), else in
 * as few as can be, longest first. What finds none lies beyond the bed's end.
 */
final class Stretches {
    private Stretches() {}

    /**
     * A stretch of bed, mm from its start.
     *
     * @param planting what lies there
     */
    record Stretch(Shown planting, long from, long to) {
        long length() {
            return to - from;
        }
    }

    /** The stretches of all plantings of a bed of some length, by planting in the order of coming in. */
    static List<Stretch> layOut(List<Shown> plantings, long length) {
        List<Stretch> laid = new ArrayList<>();
        plantings.stream()
                .filter(p -> p.heldFrom() < p.heldTo())
                .sorted(Comparator.comparingInt(Shown::heldFrom)
                        .thenComparing(Comparator.comparingInt(Shown::heldTo).reversed())
                        .thenComparingInt(Shown::number))
                .forEach(p -> lay(p, length, laid));
        return List.copyOf(laid);
    }

    private static void lay(Shown planting, long length, List<Stretch> laid) {
        List<Stretch> there = laid.stream()
                .filter(s -> s.planting().heldTo() > planting.heldFrom())
                .sorted(Comparator.comparingLong(Stretch::from))
                .toList();
        List<Stretch> free = new ArrayList<>();
        long at = 0;
        for (Stretch stretch : there) {
            if (stretch.from() > at && at < length) {
                free.add(new Stretch(planting, at, Math.min(stretch.from(), length)));
            }
            at = Math.max(at, stretch.to());
        }
        if (at < length) {
            free.add(new Stretch(planting, at, length));
        }
        long need = planting.millimetres();
        for (Stretch one : free.stream().sorted(Comparator.comparingLong(Stretch::length)).toList()) {
            if (one.length() >= need) {
                laid.add(new Stretch(planting, one.from(), one.from() + need));
                return;
            }
        }
        for (Stretch part : free.stream()
                .sorted(Comparator.comparingLong(Stretch::length).reversed())
                .toList()) {
            long take = Math.min(need, part.length());
            if (take > 0) {
                laid.add(new Stretch(planting, part.from(), part.from() + take));
                need -= take;
            }
        }
        if (need > 0) {
            long beyond = Math.max(at, length);
            laid.add(new Stretch(planting, beyond, beyond + need));
        }
    }
}
