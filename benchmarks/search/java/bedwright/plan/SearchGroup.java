package bedwright.plan;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/**
 * Searches of one problem for so many seconds, of one commit and on one machine.
 *
 * @param key what they have in common
 * @param rows at least one, in the order of the file
 */
public record SearchGroup(Key key, List<SearchRow> rows) {

    /** What the searches of a group have in common. */
    public record Key(String problem, int seconds, String commit, SearchSetting setting) {
        static Key of(SearchRow row) {
            return new Key(row.task().problem(), row.task().seconds(), row.commit(), row.setting());
        }
    }

    public SearchGroup {
        rows = List.copyOf(rows);
    }

    /** The gaps that are known, the smallest first, per cent. */
    public double[] gaps() {
        return rows.stream()
                .flatMap(row -> Stream.ofNullable(row.gap()))
                .sorted()
                .mapToDouble(Double::doubleValue)
                .toArray();
    }

    /** The middle gap, or the mean of the middle two, per cent. */
    public OptionalDouble medianGap() {
        return median(gaps());
    }

    /** The rule-of-thumb season's gap, the middle one where the problems or bounds differ, per cent. */
    public OptionalDouble thumbGap() {
        return median(rows.stream()
                .flatMap(row -> Stream.ofNullable(row.thumb().gap()))
                .sorted()
                .mapToDouble(Double::doubleValue)
                .toArray());
    }

    /** The middle of the moves a second. */
    public double medianMoves() {
        return median(rows.stream()
                        .mapToDouble(SearchRow::movesASecond)
                        .sorted()
                        .toArray())
                .orElseThrow();
    }

    /** The most memory that one of them used, MB, if it was measured. */
    public Optional<Long> peakMegabytes() {
        return rows.stream()
                .flatMap(row -> Stream.ofNullable(row.heap().peak()))
                .max(Long::compare);
    }

    /** The most memory that they were given, MB, if it is known. */
    public Optional<Long> limitMegabytes() {
        return rows.stream()
                .flatMap(row -> Stream.ofNullable(row.heap().limit()))
                .max(Long::compare);
    }

    /** When the last of them was measured, if that is known. */
    public Optional<LocalDate> lastDate() {
        return rows.stream().flatMap(row -> Stream.ofNullable(row.date())).max(LocalDate::compareTo);
    }

    /** Those that are suspect. */
    public List<SearchRow> suspects() {
        return rows.stream().filter(row -> !row.isSound()).toList();
    }

    /** The middle money. */
    public OptionalDouble medianMoney() {
        return median(rows.stream().mapToDouble(SearchRow::money).sorted().toArray());
    }

    /** The middle time that a search took, s; empty if none is kept. */
    public OptionalDouble medianSeconds() {
        return median(rows.stream()
                .flatMap(row -> Stream.ofNullable(row.took()))
                .mapToDouble(Double::doubleValue)
                .sorted()
                .toArray());
    }

    private static OptionalDouble median(double[] sorted) {
        int half = sorted.length / 2;
        return sorted.length == 0
                ? OptionalDouble.empty()
                : Arrays.stream(sorted, (sorted.length - 1) / 2, half + 1).average();
    }
}
