package bedwright.file;

import bedwright.season.ChangePrices;
import bedwright.season.Crop;
import bedwright.season.Currency;
import bedwright.season.Labour;
import bedwright.season.Order;
import bedwright.season.Outlet;
import bedwright.season.Promise;
import bedwright.season.Recipe;
import bedwright.season.Sampling;
import bedwright.season.Season;
import bedwright.season.Standing;
import java.math.BigDecimal;
import java.math.MathContext;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Amounts so large that a plan could not be counted exactly. Money, work and stems are whole numbers of small units in a
 * plan, and these have room for so much; what is bounded here is more than any plan of the season can come to.
 */
final class SumsCheck {
    /** Longest planting and all plantings together, m: millimetres of them, layers and weeks have room in whole numbers. */
    private static final double MOST_METRES = 1_000_000;

    /** Of one planting and of all. */
    private static final double MOST_CELLS = 20_000_000;

    /** Hours of one planting, and of a season: a thousand possible ones have room. */
    private static final double MOST_HOURS_OF_ONE = 100_000;

    private static final double MOST_HOURS = 1_000_000;
    /** Of a season, and asked for in a week: 21 million of them have room in hundredths. */
    private static final double MOST_STEMS = 20_000_000;
    /** A sampled season's doubt goes no further than so many standard deviations: one in a thousand million does. */
    private static final double FURTHEST = 6;

    private static final int MINUTES = 60;

    private final Season season;
    private final Flaws flaws;
    private final List<Sum> money = new ArrayList<>();
    private double metres;
    private double cells;
    private double hours;
    private double stems;

    /** @param what as in {@code "Market" pays} */
    private record Sum(String path, String what, double size) {
        /** None of something, at a price beyond all numbers, is nothing. */
        static Sum of(String path, String what, double count, double each) {
            return new Sum(path, what, count == 0 || each == 0 ? 0 : count * each);
        }
    }

    SumsCheck(Season season, Flaws flaws) {
        this.season = season;
        this.flaws = flaws;
    }

    void run() {
        for (int i = 0; i < season.pool().size(); i++) {
            var lots = season.pool().get(i);
            int count = lots.lots();
            String path = "/pool/" + i;
            find(lots.crop()).ifPresent(crop -> plantings(path, crop, lots.plants(), count));
        }
        for (int i = 0; i < season.standing().size(); i++) {
            Standing standing = season.standing().get(i);
            String path = "/standing/" + i;
            find(standing.crop()).ifPresent(crop -> plantings(path, crop, standing.plants(), 1));
            stems += standing.stems().stream()
                    .mapToDouble(Standing.WrittenStems::stems)
                    .sum();
        }
        for (int i = 0; i < season.outlets().size(); i++) {
            outlet("/outlets/" + i, season.outlets().get(i));
        }
        for (int i = 0; i < season.orders().size(); i++) {
            order("/orders/" + i, season.orders().get(i));
        }
        work();
        tooMuch(
                "/pool",
                "bed, in all,",
                metres,
                MOST_METRES,
                season.units().length().symbol());
        tooMuch("/pool", "trays", cells, MOST_CELLS, "cells");
        tooMuch("/pool", "cutting", stems, MOST_STEMS, "stems a season, in the best of its possible seasons,");
        money();
    }

    private Optional<Crop> find(String name) {
        return season.crops().stream().filter(crop -> crop.name().equals(name)).findFirst();
    }

    private void plantings(String path, Crop crop, int plants, int count) {
        LotSize one = LotSize.of(season, crop, plants);
        if (count == 0) {
            return;
        }
        metres += count * Math.max(one.metres(), one.netMetres());
        cells += count * one.cells();
        hours += count * one.hours();
        stems += count * one.stems() * luckiest(crop);
        if (one.hours() > MOST_HOURS_OF_ONE) {
            flaws.add(
                    path + "/plants",
                    "One such planting could take " + rounded(one.hours()) + " hours, more than "
                            + rounded(MOST_HOURS_OF_ONE)
                            + ". Give fewer plants, or mend the minutes of its jobs.");
        }
        money.add(Sum.of(path, "what plantings of " + Words.quoted(crop.name()) + " cost", count, one.money()));
        money.add(Sum.of("/rotation", "what breaking the rotation costs", count, rotation()));
        money.add(Sum.of("/changes", "what changes of the plan cost", count, changes(season.changes())));
    }

    private double rotation() {
        return season.rotation().restBroken() + season.rotation().followOn();
    }

    private static double changes(ChangePrices prices) {
        return prices.atOnce()
                * (prices.bed()
                        + prices.week()
                        + prices.method()
                        + prices.pulled()
                        + prices.leftOut()
                        + prices.putIn());
    }

    /** How many times its stems a crop may give in a possible season. */
    private double luckiest(Crop crop) {
        Sampling possible = season.possible();
        if (!possible.given().isEmpty()) {
            return possible.given().stream()
                    .map(Sampling.GivenSeason::yields)
                    .mapToDouble((Map<String, Double> yields) -> yields.getOrDefault(crop.name(), 1.0))
                    .max()
                    .orElse(1);
        }
        // However many the file says, a plan may be made for several.
        return Math.exp(FURTHEST * possible.doubt().stems().of(crop.sureness("stems")));
    }

    private void outlet(String path, Outlet outlet) {
        double[] asked = new double[season.weeks()];
        for (Outlet.Ask ask : outlet.asks()) {
            spread(asked, ask.from(), ask.to(), ask.stems());
        }
        double worth = outlet.price() + lack(outlet.promise(), outlet.price(), null);
        asked(path, outlet.name(), asked, worth, outlet.service());
    }

    private void order(String path, Order order) {
        double[] bouquets = new double[season.weeks()];
        for (Order.Ask ask : order.asks()) {
            spread(bouquets, ask.from(), ask.to(), ask.bouquets());
        }
        Optional<Recipe> recipe = season.recipes().stream()
                .filter(known -> known.name().equals(order.recipe()))
                .findFirst();
        double stemsOfOne = 0;
        double worthOfOne = 0;
        for (Recipe.Line line : recipe.map(Recipe::lines).orElse(List.of())) {
            double each = line.stems() * (1 + order.spare());
            stemsOfOne += each;
            worthOfOne += each * (line.price() + lack(order.promise(), line.price(), line.buyIn()));
        }
        double[] asked = bouquets.clone();
        for (int w = 0; w < asked.length; w++) {
            asked[w] *= stemsOfOne;
            hours += bouquets[w] * recipe.map(Recipe::making).orElse(0.0) / MINUTES;
        }
        asked(path, order.name(), asked, stemsOfOne == 0 ? 0 : worthOfOne / stemsOfOne, order.service());
    }

    private void asked(String path, String name, double[] asked, double worth, int service) {
        double sum = 0;
        double most = 0;
        for (double week : asked) {
            sum += week;
            most = Math.max(most, week);
            hours += week > 0 ? service / (double) MINUTES : 0;
        }
        tooMuch(path + "/asks", Words.quoted(name), most, MOST_STEMS, "stems in one week");
        money.add(Sum.of(path, "what " + Words.quoted(name) + " pays, and loses where stems are missing", sum, worth));
    }

    /** What a missing stem costs: the usual is three times its price. */
    private static double lack(@Nullable Promise promise, double price, @Nullable Double lineBuyIn) {
        if (promise == null || promise.must() != null) {
            return 0;
        }
        Double buyIn = promise.buyIn();
        if (buyIn != null) {
            return lineBuyIn == null ? buyIn : lineBuyIn;
        }
        Double shortage = promise.shortage();
        return shortage == null ? 3 * price : shortage;
    }

    private void spread(double[] byWeek, LocalDate from, @Nullable LocalDate to, double amount) {
        int last = season.weekOf(to == null ? from : to);
        for (int w = Math.max(0, season.weekOf(from)); w <= Math.min(last, byWeek.length - 1); w++) {
            byWeek[w] += amount;
        }
    }

    private void work() {
        Labour labour = season.labour();
        double minutesAStem = season.roles().stream()
                        .mapToDouble(role -> Math.max(role.cutting(), role.clearing()))
                        .max()
                        .orElse(0)
                / 100;
        hours += stems * minutesAStem / MINUTES;
        hours += labour.chores().stream().mapToDouble(Labour.Chore::hours).sum() * season.weeks();
        boolean hired = labour.hiredRate() > labour.ownRate();
        money.add(Sum.of(
                hired ? "/labour/hiredRate" : "/labour/ownRate",
                "what hours are worth",
                hours,
                Math.max(labour.hiredRate(), labour.ownRate())));
        tooMuch("/labour", "work", hours, MOST_HOURS, "hours a season");
    }

    private void tooMuch(String path, String what, double size, double most, String unit) {
        if (size > most) {
            flaws.add(
                    path,
                    Words.sentence(what) + " could come to " + rounded(size) + " " + unit + " here; no more than "
                            + rounded(most) + " can be counted. Is a figure mistyped? Mend what is too large.");
        }
    }

    private void money() {
        double sum = money.stream().mapToDouble(Sum::size).sum();
        Currency currency = season.currency();
        double most = currency.mostCounted();
        if (sum > most) {
            Sum largest =
                    money.stream().max(Comparator.comparingDouble(Sum::size)).orElseThrow();
            flaws.add(
                    largest.path(),
                    "The money of a season could come to " + rounded(sum) + " " + currency.sign() + ", of which "
                            + rounded(largest.size()) + " is " + largest.what() + "; no more than " + rounded(most)
                            + " can be counted exactly. Is a price or an amount mistyped? Mend it"
                            + (currency.digits() == 0
                                    ? "."
                                    : ", or count in larger units: \"currency\": {\"digits\": 0}."));
        }
    }

    private static String rounded(double size) {
        return Double.isInfinite(size)
                ? "more than any number"
                : Words.number(BigDecimal.valueOf(size).round(new MathContext(2)));
    }
}
