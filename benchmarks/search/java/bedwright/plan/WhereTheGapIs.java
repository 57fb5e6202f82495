package bedwright.plan;

import bedwright.climate.PossibleSeasons;
import bedwright.file.PlanFile;
import bedwright.file.PriceFile;
import bedwright.season.Plan;
import bedwright.season.Season;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;
import java.util.stream.IntStream;

/**
 * Where the rest to the best possible lies: what a plan leaves unused, or does at a loss, at the prices that prove its
 * bound. What is scarce and unused counts by its price, a lot by what its place brings less than the weeks of bed that it
 * takes; what is left after these lies in the stems: more or fewer of a kind in a week and season than are paid for.
 *
 * <p>Arguments: {@code plan} (a folder with plan.json and prices.json, made by {@code plan --bound}), {@code commit}.
 */
final class WhereTheGapIs {
    private final PlanFacts facts;
    private final Relaxation relaxed;
    private final Prices prices;
    private final Bound bound;
    private final SeasonScore score;
    private final int[] places;
    private final double dollar;
    private double told;

    private WhereTheGapIs(Path folder) {
        Plan kept = PlanFile.read(folder.resolve("plan.json"));
        Season season = kept.season();
        facts = PlanFacts.of(season, PossibleSeasons.of(season));
        relaxed = new Relaxation(facts);
        prices = PriceLists.of(facts, PriceFile.read(folder.resolve("prices.json"), season, facts.seasonCount));
        places = Outcomes.places(facts, kept.plantings());
        score = new SeasonScore(facts);
        for (int p = 0; p < places.length; p++) {
            score.settle(p, places[p]);
        }
        bound = new Bound(relaxed, prices, -score.medium());
        dollar = (double) facts.seasonCount * season.currency().smallest() * Grains.A_SMALLEST_UNIT;
    }

    public static void main(String[] args) {
        BenchArgs given = new BenchArgs(args, "plan", "commit");
        System.out.println(DemoFarm.heading(given.text("commit", "not named")));
        new WhereTheGapIs(Path.of(given.text("plan", "plans/demo-farm"))).tell();
    }

    private void tell() {
        double gap = bound.value() - score.soft();
        say("bound less plan", gap, bound.value() - BestPossible.nothingPlanted(facts));
        told = 0;
        lots();
        beds();
        double out = 0;
        double all = 0;
        for (int stock = 0; stock < facts.table.stocks(); stock++) {
            double price = prices.at(prices.layout.lots() + stock);
            out += price * (relaxed.lots[stock] - placed(stock));
            all += price * relaxed.lots[stock];
        }
        say("lots left out", out, all);
        hours();
        for (int shelf = facts.bench; shelf < facts.shelves.size(); shelf++) {
            int each = shelf;
            double unused = IntStream.range(0, facts.weeks)
                    .mapToDouble(w -> bound.ofShelf(each, w)
                            * (facts.shelves.get(each).holds() - score.room().used(each, w)))
                    .sum();
            double worth = IntStream.range(0, facts.weeks)
                    .mapToDouble(w ->
                            bound.ofShelf(each, w) * facts.shelves.get(each).holds())
                    .sum();
            say(facts.shelves.get(shelf).name() + " unused (below 0: more bought)", unused, worth);
        }
        say("the rest: stems, and hours hired", gap - told, gap);
    }

    private long placed(int stock) {
        return IntStream.range(0, places.length)
                .filter(p -> !facts.isFixed(p) && facts.stock(p) == stock && places[p] >= 0)
                .count();
    }

    private double weeksOfBed(int place, double[] each) {
        int row = facts.table.row(place);
        double sum = 0;
        for (int w = facts.table.heldFrom(row); w < facts.table.heldTo(row); w++) {
            sum += each[w];
        }
        return relaxed.holdsBed(place) ? sum * facts.table.millimetres(row) : 0;
    }

    private void lots() {
        double[] shortOf = IntStream.range(0, places.length)
                .filter(p -> places[p] >= 0 && !facts.isFixed(p))
                .mapToDouble(p ->
                        weeksOfBed(places[p], bound.weeksOfBed(facts.table.bed(places[p]))) - bound.brings(places[p]))
                .sorted()
                .toArray();
        say(
                "places of " + shortOf.length + " lots (the worst of them)",
                Arrays.stream(shortOf).sum(),
                shortOf[shortOf.length - 1]);
    }

    private void beds() {
        double unused = 0;
        double all = 0;
        for (int bed = 0; bed < facts.bench; bed++) {
            double[] each = bound.weeksOfBed(bed);
            for (int w = 0; w < facts.weeks; w++) {
                unused +=
                        each[w] * (facts.shelves.get(bed).holds() - score.room().used(bed, w));
                all += each[w] * facts.shelves.get(bed).holds();
            }
        }
        say("beds unused", unused, all);
    }

    private void hours() {
        double cutting = 0;
        double cuttingAll = 0;
        double any = 0;
        double anyAll = 0;
        for (int w = 0; w < facts.weeks; w++) {
            double most = (double) facts.seasonCount * facts.hours.cutting()[w];
            if (bound.cutting(w) > 0) {
                cutting += bound.cutting(w) * (most - score.hours().cuttingWork(w));
                cuttingAll += bound.cutting(w) * most;
            }
            if (relaxed.hours(w) < WorkWeeks.UNLIMITED) {
                double both = (double) facts.seasonCount * relaxed.hours(w);
                any += prices.hour(w) * (both - score.hours().allWork(w));
                anyAll += prices.hour(w) * both;
            }
        }
        say("cutting hours unused", cutting, cuttingAll);
        say("hours of any work unused", any, anyAll);
    }

    private void say(String what, double grains, double of) {
        told += grains;
        System.out.printf(Locale.ROOT, "%-50s %8.0f of %8.0f%n", what, grains / dollar, of / dollar);
    }
}
