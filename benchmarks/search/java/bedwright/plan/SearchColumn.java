package bedwright.plan;

import bedwright.plan.SearchRow.Heap;
import bedwright.plan.SearchRow.Thumb;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** The columns of {@code how-close.csv}, in their order. A cell is empty where nothing was measured. */
enum SearchColumn {
    PROBLEM("problem", row -> row.task().problem()),
    SECONDS("seconds", row -> Integer.toString(row.task().seconds())),
    SEED("seed", row -> Long.toString(row.task().seed())),
    MONEY("money", row -> rounded(row.money(), 2)),
    MISSING("must missing", row -> Long.toString(row.missing())),
    BOUND("bound", row -> rounded(row.bound(), 2)),
    GAP("gap %", row -> rounded(row.gap(), 3)),
    THUMB_MONEY("rule of thumb money", row -> rounded(row.thumb().money(), 2)),
    THUMB_MISSING("rule of thumb must missing", row -> whole(row.thumb().missing())),
    THUMB_GAP("rule of thumb gap %", row -> rounded(row.thumb().gap(), 3)),
    MOVES("moves a second", row -> rounded(row.movesASecond(), 0)),
    TOOK("took s", row -> rounded(row.took(), 1)),
    END("MB", row -> whole(row.heap().end())),
    PEAK("peak MB", row -> whole(row.heap().peak())),
    LIMIT("limit MB", row -> whole(row.heap().limit())),
    HEALTH("health", SearchRow::health),
    DATE("date", row -> row.date() == null ? "" : row.date().toString()),
    COMMIT("commit", SearchRow::commit),
    MACHINE("machine", row -> row.setting().machine()),
    JDK("JDK", row -> row.setting().jdk());

    private final String head;
    private final Function<SearchRow, String> cell;

    SearchColumn(String head, Function<SearchRow, String> cell) {
        this.head = head;
        this.cell = cell;
    }

    static List<String> heads() {
        return Arrays.stream(values()).map(column -> column.head).toList();
    }

    static List<String> cells(SearchRow row) {
        return Arrays.stream(values()).map(column -> column.cell.apply(row)).toList();
    }

    /**
     * Reads a row.
     *
     * @param cells as many as there are columns
     * @throws IllegalArgumentException for a cell that can't be read; the message names its column
     */
    static SearchRow row(List<String> cells) {
        return new SearchRow(
                new SearchTask(PROBLEM.text(cells), (int) SECONDS.needed(SECONDS.number(cells)), (long)
                        SEED.needed(SEED.number(cells))),
                MONEY.needed(MONEY.number(cells)),
                (long) MISSING.needed(MISSING.number(cells)),
                BOUND.number(cells),
                GAP.number(cells),
                new Thumb(THUMB_MONEY.number(cells), THUMB_MISSING.wholeNumber(cells), THUMB_GAP.number(cells)),
                MOVES.needed(MOVES.number(cells)),
                TOOK.number(cells),
                new Heap(END.wholeNumber(cells), PEAK.wholeNumber(cells), LIMIT.wholeNumber(cells)),
                HEALTH.text(cells),
                DATE.day(cells),
                COMMIT.text(cells),
                new SearchSetting(MACHINE.text(cells), JDK.text(cells)));
    }

    private String text(List<String> cells) {
        return cells.get(ordinal());
    }

    private @Nullable Double number(List<String> cells) {
        String text = text(cells);
        try {
            return text.isEmpty() ? null : Double.valueOf(text);
        } catch (NumberFormatException e) {
            throw new IllegalArgumentException("Column " + head + ": expected a number, found \"" + text + "\"", e);
        }
    }

    private double needed(@Nullable Double number) {
        if (number == null) {
            throw new IllegalArgumentException("Column " + head + ": expected a number, found nothing");
        }
        return number;
    }

    private @Nullable Long wholeNumber(List<String> cells) {
        Double number = number(cells);
        return number == null ? null : (long) number.doubleValue();
    }

    private @Nullable LocalDate day(List<String> cells) {
        String text = text(cells);
        try {
            return text.isEmpty() ? null : LocalDate.parse(text);
        } catch (DateTimeParseException e) {
            throw new IllegalArgumentException(
                    "Column " + head + ": expected a date as 2026-11-29, found \"" + text + "\"", e);
        }
    }

    private static String rounded(@Nullable Double number, int digits) {
        return number == null ? "" : String.format(Locale.ROOT, "%." + digits + "f", number);
    }

    private static String whole(@Nullable Long number) {
        return number == null ? "" : number.toString();
    }
}
