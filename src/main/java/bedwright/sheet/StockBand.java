package bedwright.sheet;

import bedwright.plan.Outcome;
import bedwright.season.Season;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** What is used of bench, trays, nets and cover against what is owned. */
final class StockBand implements Band {
    private static final double KEYS = 12;
    private static final double STRIP = 16;
    private static final double GAP = 4;

    private final Season season;
    private final Say say;
    private final List<Outcome.StockUse> stocks;

    StockBand(Season season, Outcome outcome) {
        this.season = season;
        this.say = new Say(season);
        this.stocks = outcome.stocks();
    }

    @Override
    public String id() {
        return "stocks";
    }

    @Override
    public String heading() {
        return "Trays, nets and cover";
    }

    @Override
    public String caption() {
        return "What is in use each week; the thick line is what is owned, and what goes beyond it is to be bought."
                + " Trays and bench are counted in cells, nets and cover in "
                + season.units().several() + ".";
    }

    @Override
    public String description() {
        StringBuilder text = new StringBuilder();
        for (Outcome.StockUse stock : stocks) {
            int peak = peak(stock);
            text.append(text.isEmpty() ? "" : " ")
                    .append(name(stock))
                    .append(": at most ")
                    .append(amount(say, stock, peak))
                    .append(" of ")
                    .append(amount(say, stock, stock.owned()))
                    .append('.');
        }
        return text.toString();
    }

    static int peak(Outcome.StockUse stock) {
        return Arrays.stream(stock.use()).max().orElse(0);
    }

    static boolean isCells(Outcome.StockUse stock) {
        return stock.kind() == Outcome.StockKind.BENCH || stock.kind() == Outcome.StockKind.TRAYS;
    }

    /** Name for people. */
    static String name(Outcome.StockUse stock) {
        return switch (stock.kind()) {
            case BENCH -> "bench";
            case TRAYS -> "trays";
            case NET -> stock.name();
            case COVER -> "row cover";
        };
    }

    /** Amount with its unit. */
    static String amount(Say say, Outcome.StockUse stock, double amount) {
        return isCells(stock) ? Say.whole(amount) + " cells" : say.lengthWithUnit(amount);
    }

    private String figure(Outcome.StockUse stock, double amount) {
        return isCells(stock) ? Say.whole(amount) : say.length(amount);
    }

    @Override
    public double height() {
        return KEYS + TimeAxis.MONTHS + stocks.size() * (STRIP + GAP);
    }

    @Override
    public void draw(Svg svg, TimeAxis axis) {
        svg.text(0, 9, "bold", "Trays, nets, cover");
        new Keys(svg, axis.left())
                .box("use", "in use")
                .box("over", "beyond what is owned")
                .line("limit", "owned");
        axis.draw(svg, KEYS, height());
        for (int s = 0; s < stocks.size(); s++) {
            Outcome.StockUse stock = stocks.get(s);
            double top = KEYS + TimeAxis.MONTHS + s * (STRIP + GAP);
            double most = Math.max(stock.owned(), peak(stock));
            Strip strip = Strip.of(axis, top, STRIP, most).frame(svg, name(stock), amount(say, stock, most));
            svg.path(strip.between(w -> 0, w -> Math.min(stock.use()[w], stock.owned())), "use");
            svg.path(strip.between(w -> Math.min(stock.owned(), stock.use()[w]), w -> over(stock, w)), "over");
            for (int w = 0; w < axis.weeks(); w++) {
                if (over(stock, w) > 0) {
                    double y = strip.y(stock.use()[w]);
                    svg.slanted(axis.x(w), y, axis.week(), strip.y(stock.owned()) - y, 3, "overlines");
                }
            }
            svg.line(axis.left(), strip.y(stock.owned()), axis.right(), strip.y(stock.owned()), "limit");
            for (int w = 0; w < axis.weeks(); w++) {
                if (stock.use()[w] > 0) {
                    strip.hover(
                            svg,
                            w,
                            say.week(w) + ", " + name(stock) + ": " + amount(say, stock, stock.use()[w]) + " of "
                                    + amount(say, stock, stock.owned()));
                }
            }
        }
    }

    private static double over(Outcome.StockUse stock, int week) {
        return stock.use()[week] > stock.owned() ? stock.use()[week] : 0;
    }

    @Override
    public Table table() {
        List<Table.Column> columns = new ArrayList<>();
        columns.add(Table.Column.text("Week"));
        for (Outcome.StockUse stock : stocks) {
            columns.add(Table.Column.number(name(stock)
                    + (isCells(stock) ? ", cells" : ", " + say.lengths().symbol())));
        }
        List<List<String>> rows = new ArrayList<>();
        for (int w = 0; w < season.weeks(); w++) {
            List<String> row = new ArrayList<>();
            row.add(say.shortWeek(w));
            for (Outcome.StockUse stock : stocks) {
                row.add(figure(stock, stock.use()[w]));
            }
            rows.add(row);
        }
        List<String> peaks = new ArrayList<>(List.of("Most at once"));
        List<String> owned = new ArrayList<>(List.of("Owned"));
        for (Outcome.StockUse stock : stocks) {
            peaks.add(figure(stock, peak(stock)));
            owned.add(figure(stock, stock.owned()));
        }
        return new Table("stocks-table", "Bench, trays, nets and cover in use", columns, rows, List.of(peaks, owned));
    }
}
