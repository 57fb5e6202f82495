package bedwright.sheet;

import bedwright.sheet.Stretches.Piece;
import bedwright.sheet.Stretches.Stretch;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.SplittableRandom;

/**
 * Where along a bed plantings lie so that as few as possible are in two places: many layouts are drawn, in orders and into
 * rooms of their own, and the one with the fewest splits is kept. The same bed is always laid out in the same way.
 */
final class WholeStretches {
    private static final int TRIES = 1500;
    private static final long SEED = 20270301;

    private final List<Piece> pieces;
    private final long length;
    private final SplittableRandom random = new SplittableRandom(SEED);

    private WholeStretches(List<Piece> pieces, long length) {
        this.pieces = pieces;
        this.length = length;
    }

    /** The stretches of all pieces in a bed of some length, in the order of coming. */
    static List<Stretch> layOut(List<Piece> pieces, long length) {
        List<Stretch> plain = Stretches.layOut(pieces, length);
        List<Piece> laid = plain.stream().map(Stretch::piece).distinct().toList();
        if (plain.size() == laid.size()) {
            return plain;
        }
        return new WholeStretches(laid, length).best(plain);
    }

    private List<Stretch> best(List<Stretch> plain) {
        List<Stretch> best = plain;
        for (int i = 0; i < TRIES && best.size() > pieces.size(); i++) {
            List<Stretch> drawn = drawn(i % 2 == 0, best.size());
            best = drawn.isEmpty() ? best : drawn;
        }
        return best.stream()
                .sorted(Comparator.comparingInt((Stretch s) -> pieces.indexOf(s.piece()))
                        .thenComparingLong(Stretch::start))
                .toList();
    }

    /**
     * A layout with fewer stretches than the best so far, or nothing.
     *
     * @param isByComing whether pieces are laid out by their first weeks, or in any order
     */
    private List<Stretch> drawn(boolean isByComing, int best) {
        List<Stretch> laid = new ArrayList<>();
        int left = pieces.size();
        for (Piece piece : order(isByComing)) {
            left--;
            if (!lay(piece, laid) || laid.size() + left >= best) {
                return List.of();
            }
        }
        return laid;
    }

    private List<Piece> order(boolean isByComing) {
        List<Piece> order = new ArrayList<>(pieces);
        for (int i = order.size() - 1; i > 0; i--) {
            int j = random.nextInt(i + 1);
            Piece one = order.get(i);
            order.set(i, order.get(j));
            order.set(j, one);
        }
        if (isByComing) {
            order.sort(Comparator.comparingInt(Piece::from));
        }
        return order;
    }

    /** Lays a piece into one drawn room that is long enough, else into the longest ones; false if there is too little. */
    private boolean lay(Piece piece, List<Stretch> laid) {
        List<Stretch> free = Stretches.free(piece, laid, length);
        List<Stretch> enough =
                free.stream().filter(room -> room.length() >= piece.amount()).toList();
        if (!enough.isEmpty()) {
            Stretch room = enough.get(random.nextInt(enough.size()));
            long start = random.nextBoolean() ? room.start() : room.end() - piece.amount();
            laid.add(new Stretch(piece, start, start + piece.amount()));
            return true;
        }
        long need = piece.amount();
        for (Stretch room : free.stream()
                .sorted(Comparator.comparingLong(Stretch::length).reversed())
                .toList()) {
            long take = Math.min(need, room.length());
            if (take > 0) {
                laid.add(new Stretch(piece, room.start(), room.start() + take));
                need -= take;
            }
        }
        return need == 0;
    }
}
