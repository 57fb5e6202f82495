package bedwright.plan;

import java.util.Arrays;
import java.util.List;
import java.util.function.Function;

/** The columns of {@code other-ways.csv}, in their order. A cell is empty where there was nothing. */
enum OtherWayColumn {
    PROBLEM("problem", OtherWay::problem),
    WAY("way", row -> row.way().label()),
    SECONDS("seconds", row -> Integer.toString(row.seconds())),
    TOOK("took s", row -> ResultCell.of(row.took(), 0)),
    MONEY("money", row -> ResultCell.of(row.money(), 2)),
    MISSING("must missing", row -> ResultCell.of(row.missing())),
    GAP("gap %", row -> ResultCell.of(row.gap(), 3)),
    OUTCOME("what came of it", OtherWay::outcome),
    BESIDE("beside", OtherWay::beside),
    DATE("date", row -> ResultCell.of(row.date())),
    COMMIT("commit", OtherWay::commit),
    MACHINE("machine", row -> row.setting().machine()),
    JDK("JDK", row -> row.setting().jdk());

    private final String head;
    private final Function<OtherWay, String> cell;

    OtherWayColumn(String head, Function<OtherWay, String> cell) {
        this.head = head;
        this.cell = cell;
    }

    static List<String> heads() {
        return Arrays.stream(values()).map(column -> column.head).toList();
    }

    static List<String> cells(OtherWay row) {
        return Arrays.stream(values()).map(column -> column.cell.apply(row)).toList();
    }

    /**
     * Reads a row.
     *
     * @param cells as many as there are columns
     * @throws IllegalArgumentException for a cell that can't be read; the message names its column
     */
    static OtherWay row(List<String> cells) {
        return new OtherWay(
                PROBLEM.in(cells).text(),
                OtherWay.Way.of(WAY.in(cells).text()),
                (int) SECONDS.in(cells).needed(),
                TOOK.in(cells).needed(),
                MONEY.in(cells).number(),
                MISSING.in(cells).whole(),
                GAP.in(cells).number(),
                OUTCOME.in(cells).text(),
                BESIDE.in(cells).text(),
                DATE.in(cells).day(),
                COMMIT.in(cells).text(),
                new SearchSetting(MACHINE.in(cells).text(), JDK.in(cells).text()));
    }

    private ResultCell in(List<String> cells) {
        return new ResultCell(head, cells.get(ordinal()));
    }
}
