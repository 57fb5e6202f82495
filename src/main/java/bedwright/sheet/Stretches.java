package bedwright.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Where along a bed (or on the bench) the plantings lie. They are laid out in the order in which they come: what is free
 * then stays free, since all others that lie there already came before. So a planting always finds room where there is
 * enough in all, in one stretch if one is long enough (the shortest such), else in as few as can be, longest first. What
 * finds none lies beyond the end.
 */
final class Stretches {
    private Stretches() {}

    /**
     * What is to be laid out.
     *
     * @param from first week
     * @param to end of its weeks
     * @param amount millimetres, or cells
     */
    record Piece(Shown planting, int from, int to, long amount) {
        /** A planting in its bed. */
        static Piece inBed(Shown planting) {
            return new Piece(planting, planting.heldFrom(), planting.heldTo(), planting.millimetres());
        }

        /** A planting in its trays. */
        static Piece inTrays(Shown planting) {
            return new Piece(planting, planting.trayFrom(), planting.trayTo(), planting.cells());
        }
    }

    /**
     * A stretch, from one place to another counted from the beginning.
     *
     * @param piece what lies there
     */
    record Stretch(Piece piece, long start, long end) {
        long length() {
            return end - start;
        }

        Shown planting() {
            return piece.planting();
        }

        /** Whether it is taken in a week of that piece. */
        boolean meets(Piece other) {
            return piece.to() > other.from() && piece.from() < other.to();
        }
    }

    /** The stretches of all pieces in a bed of some length, in the order of coming. */
    static List<Stretch> layOut(List<Piece> pieces, long length) {
        List<Stretch> laid = new ArrayList<>();
        pieces.stream()
                .filter(p -> p.from() < p.to() && p.amount() > 0)
                .sorted(Comparator.comparingInt(Piece::from)
                        .thenComparing(Comparator.comparingInt(Piece::to).reversed())
                        .thenComparingInt(p -> p.planting().number()))
                .forEach(p -> lay(p, length, laid));
        return List.copyOf(laid);
    }

    private static void lay(Piece piece, long length, List<Stretch> laid) {
        List<Stretch> free = free(piece, laid, length);
        long need = piece.amount();
        for (Stretch one :
                free.stream().sorted(Comparator.comparingLong(Stretch::length)).toList()) {
            if (one.length() >= need) {
                laid.add(new Stretch(piece, one.start(), one.start() + need));
                return;
            }
        }
        for (Stretch part : free.stream()
                .sorted(Comparator.comparingLong(Stretch::length).reversed())
                .toList()) {
            long take = Math.min(need, part.length());
            if (take > 0) {
                laid.add(new Stretch(piece, part.start(), part.start() + take));
                need -= take;
            }
        }
        if (need > 0) {
            long beyond = laid.stream()
                    .filter(there -> there.meets(piece))
                    .mapToLong(Stretch::end)
                    .reduce(length, Math::max);
            laid.add(new Stretch(piece, beyond, beyond + need));
        }
    }

    /** What is free of a bed in all weeks of a piece. */
    static List<Stretch> free(Piece piece, List<Stretch> laid, long length) {
        List<Stretch> free = new ArrayList<>();
        long at = 0;
        for (Stretch there : laid.stream()
                .filter(stretch -> stretch.meets(piece))
                .sorted(Comparator.comparingLong(Stretch::start))
                .toList()) {
            if (there.start() > at && at < length) {
                free.add(new Stretch(piece, at, Math.min(there.start(), length)));
            }
            at = Math.max(at, there.end());
        }
        if (at < length) {
            free.add(new Stretch(piece, at, length));
        }
        return free;
    }
}
