package bedwright.sheet;

import bedwright.compare.Comparison;
import bedwright.compare.Difference;
import bedwright.compare.Way;
import java.util.ArrayList;
import java.util.List;

/** What each way of growing brings more or less than the first, and how sure that is. */
final class DifferencesPicture {
    private static final double WIDTH = YearsPicture.WIDTH;
    private static final double NAMES = YearsPicture.NAMES;
    private static final double RIGHT = WIDTH - 190;
    private static final double KEYS = 16;
    private static final double AXIS = 16;
    private static final double ROW = 24;

    private final Comparison comparison;
    private final Say say;

    DifferencesPicture(Comparison comparison) {
        this.comparison = comparison;
        this.say = new Say(comparison.season());
    }

    Figure figure() {
        List<Way> others = comparison.ways().subList(1, comparison.ways().size());
        List<Difference> differences = new ArrayList<>();
        double least = 0;
        double most = 0;
        for (Way way : others) {
            Difference found = Difference.of(way, comparison.first());
            differences.add(found);
            least = Math.min(least, Math.min(found.low(), found.mean() - found.luck()));
            most = Math.max(most, Math.max(found.high(), found.mean() + found.luck()));
        }
        double height = KEYS + AXIS + ROW * others.size() + 4;
        MoneyScale scale = MoneyScale.of(comparison.season(), least, most, NAMES, RIGHT);
        ComparisonWords words = new ComparisonWords(comparison);
        StringBuilder description = new StringBuilder();
        for (int i = 0; i < others.size(); i++) {
            description.append(i == 0 ? "" : " ").append(words.difference(others.get(i), differences.get(i)));
        }
        String heading = "Against “" + comparison.first().name() + "”";
        Svg svg = new Svg(Svg.Form.INLINE, "differences-picture", WIDTH, height, heading, description.toString());
        new Keys(svg, NAMES)
                .box("cut", "more or less, beyond chance")
                .box("rest", "no telling")
                .line("limit", "mean")
                .line("whisker", "what the luck of the searches may do");
        scale.draw(svg, KEYS, height);
        for (int i = 0; i < others.size(); i++) {
            row(svg, scale, others.get(i), differences.get(i), KEYS + AXIS + ROW * i, words);
        }
        String caption =
                "What a way brings more (to the right of 0) or less than the first in the mean of all seasons: in 95"
                        + " of 100 such comparisons the bar holds the true difference. Where it holds 0 there is no telling, and the"
                        + " bar is empty. The thin stroke below is the part that the luck of the searches may have in it.";
        return new Figure("differences", heading, caption, svg.done());
    }

    private void row(Svg svg, MoneyScale scale, Way way, Difference found, double top, ComparisonWords words) {
        svg.mark("mark", words.difference(way, found));
        svg.text(NAMES - 8, top + 12, "end", YearsPicture.name(way));
        double low = scale.x(found.low());
        double high = scale.x(found.high());
        svg.rect(low, top + 3, Math.max(1, high - low), 11, found.isTold() ? "cut" : "rest");
        svg.line(scale.x(found.mean()), top + 1, scale.x(found.mean()), top + 16, "limit");
        svg.line(
                scale.x(found.mean() - found.luck()),
                top + 19,
                scale.x(found.mean() + found.luck()),
                top + 19,
                "whisker");
        svg.text(
                RIGHT + 8,
                top + 12,
                "small",
                found.isTold() ? plus(found.low()) + " to " + plus(found.high()) : "no telling");
        svg.rect(0, top, WIDTH, ROW, "hit");
        svg.end();
    }

    private String plus(double grains) {
        String money = say.money(grains);
        return grains > 0 && !money.startsWith("−") ? "+" + money : money;
    }
}
