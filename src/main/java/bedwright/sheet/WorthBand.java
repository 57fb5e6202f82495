package bedwright.sheet;

import bedwright.season.Plan.Worth;
import bedwright.season.Season;
import java.util.ArrayList;
import java.util.List;

/** What one more of what is scarce would be worth, week by week. */
final class WorthBand implements Band {
    private static final double TITLE = 12;
    private static final double STRIP = 20;
    private static final double GAP = 5;
    /** Letters that have room beside a strip. */
    private static final int LETTERS = 22;

    private final Season season;
    private final Say say;
    private final WorthWords words;
    private final List<Worth> worths;

    WorthBand(Season season, List<Worth> worths) {
        this.season = season;
        this.say = new Say(season);
        this.words = new WorthWords(season);
        this.worths = worths;
    }

    @Override
    public String id() {
        return "worth";
    }

    @Override
    public String heading() {
        return "What one more would be worth: an estimate";
    }

    @Override
    public String caption() {
        return "By week, what the best possible would gain by one more "
                + season.units().one() + " of bed, net or cover, hour, or cell, each on"
                + " a scale of its own up to the figure at the right; where nothing stands there is enough of it. Beds of"
                + " one block stand together. What a bed brings over the season is shared out among its weeks in one of"
                + " several ways that would do. An estimate of what it would add to this plan, which may gain more or"
                + " less.";
    }

    @Override
    public String description() {
        StringBuilder text = new StringBuilder();
        for (Worth worth : worths) {
            text.append(text.isEmpty() ? "" : " ").append(words.sentence(worth));
        }
        return text.toString();
    }

    @Override
    public double height() {
        return TITLE + TimeAxis.MONTHS + worths.size() * (STRIP + GAP);
    }

    @Override
    public void draw(Svg svg, TimeAxis axis) {
        svg.text(0, 9, "bold", "One more is worth");
        axis.draw(svg, TITLE, height());
        for (int i = 0; i < worths.size(); i++) {
            Worth worth = worths.get(i);
            double top = TITLE + TimeAxis.MONTHS + i * (STRIP + GAP);
            double most = worth.weeks().stream()
                    .mapToDouble(Double::doubleValue)
                    .max()
                    .orElse(0);
            Strip strip =
                    Strip.of(axis, top, STRIP, most).frame(svg, name(worth), words.money(words.written(worth, most)));
            svg.path(strip.between(w -> 0, worth.weeks()::get), "use");
            for (int w = 0; w < axis.weeks(); w++) {
                double each = worth.weeks().get(w);
                if (each > 0) {
                    strip.hover(
                            svg,
                            w,
                            say.week(w) + ", " + words.one(worth) + ": about "
                                    + words.money(words.written(worth, each)));
                }
            }
        }
    }

    private static String name(Worth worth) {
        String name = WorthWords.name(worth);
        return name.length() <= LETTERS ? name : name.substring(0, LETTERS - 1) + "…";
    }

    @Override
    public Table table() {
        List<Table.Column> columns = new ArrayList<>();
        columns.add(Table.Column.text("Week"));
        worths.forEach(worth -> columns.add(Table.Column.number(WorthWords.name(worth))));
        List<List<String>> rows = new ArrayList<>();
        for (int w = 0; w < season.weeks(); w++) {
            List<String> row = new ArrayList<>();
            row.add(say.shortWeek(w));
            for (Worth worth : worths) {
                double each = worth.weeks().get(w);
                row.add(each == 0 ? "" : words.money(words.written(worth, each)));
            }
            rows.add(row);
        }
        List<String> season = new ArrayList<>(List.of("All season"));
        worths.forEach(worth -> season.add(words.money(words.written(worth, worth.season()))));
        return new Table("worth-table", "What one more would be worth, an estimate", columns, rows, List.of(season));
    }
}
