package bedwright.sheet;

import bedwright.compare.Comparison;
import bedwright.compare.Judged;
import bedwright.compare.Way;
import java.util.List;

/** What each way of growing leaves in a bad, a usual and a good year. */
final class YearsPicture {
    static final double WIDTH = 960;
    static final double NAMES = 230;
    /** Letters of a name for which there is room. */
    static final int LETTERS = 42;

    private static final double RIGHT = WIDTH - 150;
    private static final double KEYS = 16;
    private static final double AXIS = 16;
    private static final double ROW = 24;

    private final Comparison comparison;
    private final Say say;

    YearsPicture(Comparison comparison) {
        this.comparison = comparison;
        this.say = new Say(comparison.season());
    }

    static String name(Way way) {
        String name = way.name();
        return name.length() <= LETTERS ? name : name.substring(0, LETTERS - 1) + "…";
    }

    Figure figure() {
        List<Spread> years =
                comparison.ways().stream().map(ComparisonWords::money).toList();
        double least = years.stream().mapToDouble(Spread::low).min().orElseThrow();
        double most = years.stream().mapToDouble(Spread::high).max().orElseThrow();
        for (Way way : comparison.ways()) {
            for (double plan : way.moneyOfPlans()) {
                least = Math.min(least, plan);
                most = Math.max(most, plan);
            }
        }
        double height = KEYS + AXIS + ROW * years.size() + 4;
        MoneyScale scale = MoneyScale.of(comparison.season(), least, most, NAMES, RIGHT);
        String heading = "Money of a year";
        Svg svg = new Svg(Svg.Form.INLINE, "years-picture", WIDTH, height, heading, description(years));
        new Keys(svg, NAMES)
                .box("use", "8 years of 10")
                .line("limit", "usual year")
                .line("whisker", "mean of each plan");
        scale.draw(svg, KEYS, height);
        for (int i = 0; i < years.size(); i++) {
            row(svg, scale, comparison.ways().get(i), years.get(i), KEYS + AXIS + ROW * i);
        }
        String caption =
                "What is left of a year's money, all seasons alike for all ways: the bar reaches from a bad year (1"
                        + " in 10 is worse) to a good one (1 in 10 is better), the thick stroke is a usual one. The thin strokes"
                        + " below are the means of the plans of a way: how far they lie apart is the luck of the searches.";
        return new Figure("years", heading, caption, svg.done());
    }

    private void row(Svg svg, MoneyScale scale, Way way, Spread years, double top) {
        double low = scale.x(years.low());
        double high = scale.x(years.high());
        svg.mark(
                "mark",
                way.name() + ": bad year " + say.money(years.low()) + ", usual " + say.money(years.middle()) + ", good "
                        + say.money(years.high()) + ", mean " + say.money(years.mean()));
        svg.text(NAMES - 8, top + 12, "end", name(way));
        svg.rect(low, top + 3, high - low, 11, "use");
        svg.line(scale.x(years.middle()), top + 2, scale.x(years.middle()), top + 15, "limit");
        for (Judged plan : way.plans()) {
            svg.line(scale.x(plan.meanMoney()), top + 15, scale.x(plan.meanMoney()), top + 21, "whisker");
        }
        svg.text(
                RIGHT + 8,
                top + 12,
                "small",
                say.money(years.low()) + " · " + say.money(years.middle()) + " · " + say.money(years.high()));
        svg.rect(0, top, WIDTH, ROW, "hit");
        svg.end();
    }

    private String description(List<Spread> years) {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < years.size(); i++) {
            text.append(text.isEmpty() ? "" : " ")
                    .append(comparison.ways().get(i).name())
                    .append(": ")
                    .append(say.money(years.get(i).middle()))
                    .append(" in a usual year.");
        }
        return text.toString();
    }
}
