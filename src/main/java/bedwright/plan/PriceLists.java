package bedwright.plan;

import bedwright.season.PriceList;
import bedwright.season.Season;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** {@link Prices} as they are kept in a file, in money and rounded to some digits, and back. */
final class PriceLists {
    /** Digits that are kept of a price. */
    private static final MathContext DIGITS = new MathContext(6);
    /** A price below this, in money, is none. */
    private static final double LEAST = 1e-7;

    private final PlanFacts facts;
    private final PriceLayout layout;
    private final Season season;
    private final int weeks;
    private final int seasons;
    /** Money for a grain in the sum over the possible seasons, and in one of them. */
    private final double aGrain;

    private final double ofMean;

    private PriceLists(PlanFacts facts) {
        this.facts = facts;
        this.layout = PriceLayout.of(facts);
        this.season = facts.season;
        this.weeks = facts.weeks;
        this.seasons = facts.seasonCount;
        this.aGrain = Grains.toMoney(season, 1);
        this.ofMean = aGrain / seasons;
    }

    /** Prices as they are kept. */
    static PriceList kept(PlanFacts facts, Prices prices) {
        return new PriceLists(facts).kept(prices);
    }

    /**
     * The prices that were kept.
     *
     * @throws IllegalArgumentException if they are not this season's: the message says why
     */
    static Prices of(PlanFacts facts, PriceList kept) {
        return new PriceLists(facts).of(kept);
    }

    private PriceList kept(Prices prices) {
        int shelf = layout.shelves();
        List<List<Double>> shelves = new ArrayList<>();
        for (int s = facts.bench; s < facts.shelves.size(); s++) {
            double unit = s == facts.bench || s == facts.trays ? 1 : 1000;
            shelves.add(list(prices, shelf + (s - facts.bench) * weeks, weeks, unit * ofMean));
        }
        List<List<Double>> hired = new ArrayList<>();
        for (int w = 0; w < weeks; w++) {
            hired.add(list(prices, layout.hired() + w * seasons, seasons, Grains.TICKS_AN_HOUR * aGrain));
        }
        int nets = facts.cover - facts.firstNet;
        return new PriceList(
                1,
                list(prices, layout.seasons(), seasons, 1),
                round(prices.at(layout.must()) * 100 * aGrain),
                list(prices, layout.hours(), weeks, Grains.TICKS_AN_HOUR * aGrain),
                list(prices, layout.cutting(), weeks, Grains.TICKS_AN_HOUR * aGrain),
                hired.stream().allMatch(List::isEmpty) ? List.of() : hired,
                shelves.get(0),
                shelves.get(1),
                shelves.subList(2, 2 + nets).stream().allMatch(List::isEmpty)
                        ? List.of()
                        : shelves.subList(2, 2 + nets),
                shelves.get(2 + nets),
                list(prices, layout.lots(), facts.table.stocks(), ofMean),
                list(
                        prices,
                        layout.standing() + firstStanding(),
                        season.standing().size(),
                        1000 * ofMean),
                stems(prices));
    }

    private int firstStanding() {
        return facts.plantings() - season.standing().size();
    }

    private List<PriceList.Stems> stems(Prices prices) {
        List<PriceList.Stems> all = new ArrayList<>();
        for (int c = 0; c < facts.cells.size(); c++) {
            for (int w = 0; w < weeks; w++) {
                int at = (c * weeks + w) * seasons;
                List<Double> asked = list(prices, layout.asked() + at, seasons, 100 * aGrain);
                List<Double> most = list(prices, layout.most() + at, seasons, 100 * aGrain);
                if (!asked.isEmpty() || !most.isEmpty()) {
                    String kind = facts.kinds.path(facts.cells.node(c));
                    all.add(new PriceList.Stems(kind, season.weekStart(w), asked, most));
                }
            }
        }
        return all;
    }

    /** Some prices in money; none at all where each is 0. */
    private static List<Double> list(Prices prices, int from, int count, double unit) {
        Double[] some = new Double[count];
        boolean isNone = true;
        for (int i = 0; i < count; i++) {
            some[i] = round(prices.at(from + i) * unit);
            isNone &= some[i] == 0;
        }
        return isNone ? List.of() : Arrays.asList(some);
    }

    private static double round(double price) {
        return price < LEAST ? 0 : new BigDecimal(price).round(DIGITS).doubleValue();
    }

    private Prices of(PriceList kept) {
        double[] each = new double[layout.size()];
        mustBe(kept.weights().size() == seasons, "weights", kept.weights().size(), seasons, "possible seasons");
        set(each, layout.seasons(), kept.weights(), seasons, 1, "weights");
        each[layout.must()] = kept.must() / (100 * aGrain);
        double anHour = Grains.TICKS_AN_HOUR * aGrain;
        set(each, layout.hours(), kept.hours(), weeks, anHour, "hours");
        set(each, layout.cutting(), kept.cutting(), weeks, anHour, "cutting");
        int hiredWeeks = kept.hired().size();
        mustBe(hiredWeeks == 0 || hiredWeeks == weeks, "hired", hiredWeeks, weeks, "weeks");
        for (int w = 0; w < hiredWeeks; w++) {
            set(each, layout.hired() + w * seasons, kept.hired().get(w), seasons, anHour, "hired");
        }
        shelf(each, facts.bench, kept.bench(), 1, "bench");
        shelf(each, facts.trays, kept.trays(), 1, "trays");
        int nets = facts.cover - facts.firstNet;
        mustBe(
                kept.nets().isEmpty() || kept.nets().size() == nets,
                "nets",
                kept.nets().size(),
                nets,
                "nets");
        for (int n = 0; n < kept.nets().size(); n++) {
            shelf(each, facts.firstNet + n, kept.nets().get(n), 1000, "nets");
        }
        shelf(each, facts.cover, kept.cover(), 1000, "cover");
        set(each, layout.lots(), kept.lots(), facts.table.stocks(), ofMean, "lots");
        int standing = season.standing().size();
        set(each, layout.standing() + firstStanding(), kept.standing(), standing, 1000 * ofMean, "standing");
        kept.stems().forEach(stems -> set(each, stems));
        return new Prices(facts, each);
    }

    private void shelf(double[] each, int shelf, List<Double> some, double unit, String what) {
        set(each, layout.shelves() + (shelf - facts.bench) * weeks, some, weeks, unit * ofMean, what);
    }

    private void set(double[] each, PriceList.Stems stems) {
        int node = facts.kinds.find(stems.kind()).orElse(-1);
        if (node < 0 || facts.cells.node(facts.cells.of(node)) != node) {
            throw new IllegalArgumentException("nobody asks for stems of the kind \"" + stems.kind() + "\" here");
        }
        int week = season.weekOf(stems.week());
        if (week < 0 || week >= weeks) {
            throw new IllegalArgumentException("the week of " + stems.week() + " is not one of this season's");
        }
        int at = (facts.cells.of(node) * weeks + week) * seasons;
        set(each, layout.asked() + at, stems.asked(), seasons, 100 * aGrain, "asked");
        set(each, layout.most() + at, stems.most(), seasons, 100 * aGrain, "most");
    }

    private static void set(double[] each, int from, List<Double> some, int count, double unit, String what) {
        mustBe(some.isEmpty() || some.size() == count, what, some.size(), count, "entries");
        for (int i = 0; i < some.size(); i++) {
            each[from + i] = some.get(i) / unit;
        }
    }

    private static void mustBe(boolean fits, String key, int found, int expected, String what) {
        if (!fits) {
            throw new IllegalArgumentException(
                    "\"" + key + "\" has " + found + " entries, but this season has " + expected + " " + what);
        }
    }
}
