package bedwright.sheet;

import bedwright.compare.Comparison;
import bedwright.compare.CropEarnings;
import bedwright.compare.Difference;
import bedwright.compare.OneMore;
import bedwright.compare.Way;
import bedwright.plan.Grains;
import bedwright.season.Plan;
import bedwright.season.Season;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;

/** What one more of each thing would be worth, best first, and what each crop earns, in words. */
public final class OneMoreWords {
    private static final double MILLIMETRES = 1000;

    private final Season season;
    private final Say say;

    private OneMoreWords(Season season) {
        this.season = season;
        this.say = new Say(season);
    }

    private record Ranked(OneMore what, Difference found) {}

    /**
     * Two parts: what one more is worth, and what crops earn.
     *
     * @param all what was tried, in the order of the comparison's ways after the first
     * @param prices what the bound's prices estimate
     * @param crops what crops earn in a plan of the season as it stands
     */
    public static List<Summary.Part> of(
            Comparison comparison, List<OneMore> all, List<Plan.Worth> prices, List<CropEarnings> crops) {
        OneMoreWords words = new OneMoreWords(comparison.season());
        List<Ranked> ranked = new ArrayList<>();
        for (int i = 0; i < all.size(); i++) {
            Way way = comparison.ways().get(i + 1);
            ranked.add(new Ranked(all.get(i), Difference.of(way, comparison.first())));
        }
        List<String> more = ranked.stream()
                .filter(one -> one.what().of() > 0)
                .sorted(Comparator.comparingDouble(one -> -one.found().mean()))
                .map(one -> words.more(one, prices))
                .toList();
        List<String> without = ranked.stream()
                .filter(one -> one.what().of() == 0)
                .sorted(Comparator.comparingDouble(one -> one.found().mean()))
                .map(words::without)
                .toList();
        List<Summary.Part> parts = new ArrayList<>();
        parts.add(new Summary.Part("one-more", "What one more would be worth, best first", more));
        if (!without.isEmpty()) {
            parts.add(new Summary.Part("left-out", "Each crop left out, the most missed first", without));
        }
        parts.add(new Summary.Part("earns", "What each crop earns", words.earns(crops)));
        return parts;
    }

    private String more(Ranked one, List<Plan.Worth> prices) {
        Difference found = one.found();
        OneMore what = one.what();
        String came = found.isTold()
                ? plus(found.low()) + " to " + plus(found.high()) + " a season"
                : "no telling (" + plus(found.low()) + " to " + plus(found.high()) + ")";
        String each = what.of() == 1
                ? ""
                : ", which is " + exact(found.mean() / what.of()) + " for one " + what.unit() + " in the mean";
        OptionalDouble price = price(what, prices);
        String by = price.isEmpty()
                ? ""
                : "; the prices of the best possible estimate " + say.price(price.getAsDouble() * what.amount())
                        + " for all of it";
        return "“" + what.strategy().name() + "”: " + came + each + by + ".";
    }

    private OptionalDouble price(OneMore what, List<Plan.Worth> prices) {
        if (what.thing() == null) {
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(prices.stream()
                .filter(worth -> worth.thing() == what.thing() && worth.name().equals(what.name()))
                .mapToDouble(Plan.Worth::season)
                .sum());
    }

    private String without(Ranked one) {
        Difference found = one.found();
        return "“" + one.what().strategy().name() + "”: "
                + (found.isTold()
                        ? plus(found.low()) + " to " + plus(found.high()) + " a season."
                        : "no telling (" + plus(found.low()) + " to " + plus(found.high()) + ").");
    }

    private List<String> earns(List<CropEarnings> crops) {
        List<String> lines = new ArrayList<>();
        lines.add(
                "What a plan brings with a crop's plantings more than with just them left out, after all they cost; one"
                        + " plan of the season as it stands, on the same fresh seasons.");
        crops.stream()
                .sorted(Comparator.comparingDouble(crop -> -crop.money() / Math.max(1, crop.room())))
                .forEach(crop -> lines.add(crop.crop() + ": " + say.money(crop.money()) + " a season; "
                        + exact(season.units().eachLength("").of(crop.money() * MILLIMETRES / Math.max(1, crop.room())))
                        + " a " + season.units().one() + " and week in the bed, "
                        + (crop.work() > 0
                                ? exact(crop.money() * Grains.TICKS_AN_HOUR / crop.work()) + " an hour beyond its pay."
                                : "no work.")));
        return lines;
    }

    private String exact(double grains) {
        double amount = Grains.toMoney(season, grains);
        return (amount < 0 ? "−" : "") + say.price(Math.abs(amount));
    }

    private String plus(double grains) {
        String money = say.money(grains);
        return grains > 0 && !money.startsWith("−") ? "+" + money : money;
    }
}
