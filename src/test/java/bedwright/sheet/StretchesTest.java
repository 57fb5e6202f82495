package bedwright.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import bedwright.season.KeptPlanting;
import bedwright.season.Season;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Where along a bed plantings lie. */
class StretchesTest {
    private static final Season SEASON = SmallFarm.season();

    private static Stretches.Piece piece(int number, int from, int to, long amount) {
        var crop = SEASON.crops().getFirst();
        KeptPlanting kept =
                new KeptPlanting(number, crop.name(), "sown", "Fence1", LocalDate.of(2027, 5, 10), 1, null, 1, 48);
        Shown planting = new Shown(
                kept,
                crop.name(),
                crop,
                crop.methods().getFirst(),
                0,
                0,
                false,
                0,
                0,
                from,
                to,
                from,
                to,
                amount,
                0,
                null,
                0,
                0,
                0,
                new long[0],
                new Spread(0, 0, 0, 0),
                new double[0],
                new long[0][]);
        return new Stretches.Piece(planting, from, to, amount);
    }

    private static List<String> places(List<Stretches.Stretch> laid) {
        return laid.stream()
                .map(s -> s.planting().number() + ": " + s.start() + "-" + s.end())
                .toList();
    }

    @Test
    void lieSideBySideInTheOrderOfComing() {
        assertThat(places(Stretches.layOut(List.of(piece(1, 2, 5, 3), piece(2, 0, 9, 4)), 10)))
                .containsExactly("2: 0-4", "1: 4-7");
    }

    @Test
    void comeIntoTheShortestRoomThatHoldsThem() {
        // 1 lies at 0, 2 at 1, 3 at 5, 4 at 7; in week 5 the rooms 1 to 5 and 7 to 10 are free.
        List<Stretches.Piece> pieces =
                List.of(piece(1, 0, 9, 1), piece(2, 0, 4, 4), piece(3, 1, 9, 2), piece(4, 2, 4, 3), piece(5, 5, 8, 3));
        assertThat(places(Stretches.layOut(pieces, 10)))
                .containsExactly("1: 0-1", "2: 1-5", "3: 5-7", "4: 7-10", "5: 7-10");
    }

    @Test
    void areSplitWhereNoRoomIsLongEnough() {
        // In week 5 the rooms 3 to 5 and 8 to 10 are free, of 2 each; 4 needs both.
        List<Stretches.Piece> pieces =
                List.of(piece(1, 0, 9, 3), piece(2, 0, 4, 2), piece(3, 1, 9, 3), piece(4, 5, 9, 4));
        assertThat(places(Stretches.layOut(pieces, 10)))
                .containsExactly("1: 0-3", "2: 3-5", "3: 5-8", "4: 3-5", "4: 8-10");
    }

    @Test
    void lieBeyondTheEndWhereABedIsOverfull() {
        assertThat(places(Stretches.layOut(List.of(piece(1, 0, 3, 8), piece(2, 1, 3, 5)), 10)))
                .containsExactly("1: 0-8", "2: 8-10", "2: 10-13");
    }

    /** Pieces of which as many as a drawn order lets fit into a bed. */
    private static List<Stretches.Piece> drawn(long seed, int weeks, long length) {
        Random random = new Random(seed);
        long[] used = new long[weeks];
        List<Stretches.Piece> pieces = new ArrayList<>();
        for (int i = 1; i <= 200; i++) {
            int from = random.nextInt(weeks);
            int to = from + 1 + random.nextInt(Math.min(6, weeks - from));
            long amount = 1L + random.nextInt(300);
            boolean fits = true;
            for (int w = from; w < to; w++) {
                fits &= used[w] + amount <= length;
            }
            if (fits) {
                for (int w = from; w < to; w++) {
                    used[w] += amount;
                }
                pieces.add(piece(i, from, to, amount));
            }
        }
        assertThat(pieces).hasSizeGreaterThan(15);
        return pieces;
    }

    private static void assertEachLiesWhollyInTheBedAndNoneOverAnother(
            List<Stretches.Piece> pieces, List<Stretches.Stretch> laid, int weeks, long length) {
        for (Stretches.Piece piece : pieces) {
            assertThat(laid.stream()
                            .filter(s -> s.piece() == piece)
                            .mapToLong(Stretches.Stretch::length)
                            .sum())
                    .isEqualTo(piece.amount());
        }
        boolean[][] taken = new boolean[weeks][(int) length];
        for (Stretches.Stretch stretch : laid) {
            assertThat(stretch.end()).isLessThanOrEqualTo(length);
            for (int w = stretch.piece().from(); w < stretch.piece().to(); w++) {
                for (int at = (int) stretch.start(); at < stretch.end(); at++) {
                    assertThat(taken[w][at])
                            .as("week %d, place %d taken twice", w, at)
                            .isFalse();
                    taken[w][at] = true;
                }
            }
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void alwaysFindRoomWhereThereIsEnoughAndNeverLieOverOneAnother(long seed) {
        List<Stretches.Piece> pieces = drawn(seed, 20, 1000);

        assertEachLiesWhollyInTheBedAndNoneOverAnother(pieces, Stretches.layOut(pieces, 1000), 20, 1000);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void drawnForFewSplitsNeverLieOverOneAnotherEither(long seed) {
        List<Stretches.Piece> pieces = drawn(seed, 20, 1000);

        assertEachLiesWhollyInTheBedAndNoneOverAnother(pieces, WholeStretches.layOut(pieces, 1000), 20, 1000);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void drawnForFewSplitsAreNeverSplitMore(long seed) {
        List<Stretches.Piece> pieces = drawn(seed, 20, 1000);

        assertThat(WholeStretches.layOut(pieces, 1000).size())
                .isLessThanOrEqualTo(Stretches.layOut(pieces, 1000).size());
    }

    /** Laid out as they come, 4 is split; were 3 at the far end, as here found, it lies whole. */
    @Test
    void drawnForFewSplitsLieWholeWhereTheOrderOfComingSplits() {
        List<Stretches.Piece> pieces =
                List.of(piece(1, 0, 9, 3), piece(2, 0, 4, 2), piece(3, 1, 9, 3), piece(4, 5, 9, 4));

        assertThat(Stretches.layOut(pieces, 10)).hasSize(5);
        assertThat(WholeStretches.layOut(pieces, 10)).hasSize(4);
    }

    /** Pairs of stretches that share metres in a week. */
    static List<List<Stretches.Stretch>> overlaps(List<Stretches.Stretch> laid) {
        List<List<Stretches.Stretch>> pairs = new ArrayList<>();
        for (int i = 0; i < laid.size(); i++) {
            for (int j = i + 1; j < laid.size(); j++) {
                Stretches.Stretch one = laid.get(i);
                Stretches.Stretch other = laid.get(j);
                if (one.meets(other.piece()) && one.start() < other.end() && other.start() < one.end()) {
                    pairs.add(List.of(one, other));
                }
            }
        }
        return pairs;
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12})
    void noTwoPlantingsShareAStretchInAWeekHoweverTheyCome(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        long length = 20_000L + random.nextInt(20_000);
        int weeks = 30;
        long[] used = new long[weeks];
        List<Stretches.Piece> pieces = new ArrayList<>();
        for (int i = 0; i < 200; i++) {
            int from = random.nextInt(weeks);
            int to = Math.min(weeks, from + 1 + random.nextInt(14));
            long amount = 500L + random.nextInt(9_000);
            if (LongStream.of(used).skip(from).limit(to - from).allMatch(there -> there + amount <= length)) {
                for (int w = from; w < to; w++) {
                    used[w] += amount;
                }
                pieces.add(piece(i, from, to, amount));
            }
        }
        List<Stretches.Stretch> laid = WholeStretches.layOut(pieces, length);
        assertThat(overlaps(laid)).isEmpty();
        assertThat(laid).allMatch(stretch -> stretch.start() >= 0 && stretch.end() <= length);
        for (Stretches.Piece piece : pieces) {
            assertThat(laid.stream()
                            .filter(stretch -> stretch.piece().equals(piece))
                            .mapToLong(Stretches.Stretch::length)
                            .sum())
                    .isEqualTo(piece.amount());
        }
    }
}
