package bedwright.plan;

import bedwright.plan.SearchRow.Heap;
import bedwright.plan.SearchRow.Thumb;
import java.util.Arrays;
import java.util.List;
import java.util.function.Function;

/** The columns of {@code how-close.csv}, in their order. A cell is empty where nothing was measured. */
enum SearchColumn {
    PROBLEM("problem", row -> row.task().problem()),
    SECONDS("seconds", row -> Integer.toString(row.task().seconds())),
    SEED("seed", row -> Long.toString(row.task().seed())),
    MONEY("money", row -> ResultCell.of(row.money(), 2)),
    MISSING("must missing", row -> Long.toString(row.missing())),
    BOUND("bound", row -> ResultCell.of(row.bound(), 2)),
    GAP("gap %", row -> ResultCell.of(row.gap(), 3)),
    THUMB_MONEY("rule of thumb money", row -> ResultCell.of(row.thumb().money(), 2)),
    THUMB_MISSING("rule of thumb must missing", row -> ResultCell.of(row.thumb().missing())),
    THUMB_GAP("rule of thumb gap %", row -> ResultCell.of(row.thumb().gap(), 3)),
    MOVES("moves a second", row -> ResultCell.of(row.movesASecond(), 0)),
    TOOK("took s", row -> ResultCell.of(row.took(), 1)),
    END("MB", row -> ResultCell.of(row.heap().end())),
    PEAK("peak MB", row -> ResultCell.of(row.heap().peak())),
    LIMIT("limit MB", row -> ResultCell.of(row.heap().limit())),
    HEALTH("health", SearchRow::health),
    DATE("date", row -> ResultCell.of(row.date())),
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
                new SearchTask(PROBLEM.in(cells).text(), (int) SECONDS.in(cells).needed(), (long)
                        SEED.in(cells).needed()),
                MONEY.in(cells).needed(),
                (long) MISSING.in(cells).needed(),
                BOUND.in(cells).number(),
                GAP.in(cells).number(),
                new Thumb(
                        THUMB_MONEY.in(cells).number(),
                        THUMB_MISSING.in(cells).whole(),
                        THUMB_GAP.in(cells).number()),
                MOVES.in(cells).needed(),
                TOOK.in(cells).number(),
                new Heap(
                        END.in(cells).whole(),
                        PEAK.in(cells).whole(),
                        LIMIT.in(cells).whole()),
                HEALTH.in(cells).text(),
                DATE.in(cells).day(),
                COMMIT.in(cells).text(),
                new SearchSetting(MACHINE.in(cells).text(), JDK.in(cells).text()));
    }

    private ResultCell in(List<String> cells) {
        return new ResultCell(head, cells.get(ordinal()));
    }
}
