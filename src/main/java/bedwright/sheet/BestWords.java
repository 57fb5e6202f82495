package bedwright.sheet;

import bedwright.season.Plan;
import bedwright.season.Plan.Worth.Thing;
import bedwright.season.Season;
import java.util.ArrayList;
import java.util.List;

/** How close a plan comes to the best possible, in a grower's words. */
public final class BestWords {
    private BestWords() {}

    /**
     * What can be claimed, how it is proven, and what one more of what is scarce would be worth; a sentence or more each.
     *
     * @param score the plan's score
     */
    public static List<String> sentences(Season season, Plan.Score score, Plan.Closeness closeness, int seasons) {
        Say say = new Say(season);
        List<String> lines = new ArrayList<>();
        lines.add(claim(say, score, closeness, seasons));
        Double within = closeness.within();
        if (within == null) {
            return lines;
        }
        Double limit = closeness.seconds();
        lines.add("That is proven, whoever found the prices that prove it: the recheck command works it out again from"
                + " prices.json. They were found in "
                + Say.count(closeness.steps(), "step", "steps")
                + (limit == null ? "" : " and at most " + Say.count(Math.round(limit), "second", "seconds"))
                + "; the plan may be closer than that, but no farther.");
        WorthWords words = new WorthWords(season);
        if (!closeness.worths().isEmpty()) {
            lines.add("What one more would be worth, an estimate: what the best possible would gain by it if parts of"
                    + " lots could be planted, caution included. This plan may gain more or less.");
        }
        closeness.worths().stream()
                .filter(worth -> worth.thing() != Thing.BED)
                .map(words::sentence)
                .forEach(lines::add);
        beds(words, closeness, lines);
        return lines;
    }

    /** The dearest beds and the cheapest stand for all. */
    private static void beds(WorthWords words, Plan.Closeness closeness, List<String> lines) {
        List<Plan.Worth> beds = closeness.worths().stream()
                .filter(worth -> worth.thing() == Thing.BED)
                .sorted((one, other) -> Double.compare(other.season(), one.season()))
                .toList();
        if (!beds.isEmpty()) {
            lines.add(words.sentence(beds.getFirst()));
        }
        if (beds.size() > 1) {
            lines.add(words.sentence(beds.getLast())
                    + (beds.size() == 2 ? "" : " The other " + (beds.size() - 2) + " lie between these."));
        }
    }

    private static String claim(Say say, Plan.Score score, Plan.Closeness closeness, int seasons) {
        Double within = closeness.within();
        String most = say.money((double) closeness.bound() / seasons);
        if (within != null) {
            String so = score.medium() < 0 ? " and misses no more of the stems that must be ours" : "";
            String must = score.medium() < 0 ? " Whether fewer of these need be missing is not said." : "";
            return "Within " + Say.tenth(within)
                    + " % of the best possible: so much at most is missing of what planting can bring. No plan that keeps every hard rule"
                    + so
                    + " brings more than " + most + " in the mean of the seasons, caution included; this one brings "
                    + say.money((double) score.soft() / seasons) + ", and nothing planted "
                    + say.money((double) closeness.nothing() / seasons) + "." + must;
        }
        if (score.hard() != 0) {
            return "How close it comes to the best possible can't be claimed: it breaks a hard rule, and the best"
                    + " possible is that of plans which break none.";
        }
        if (score.soft() > closeness.bound()) {
            return "How close it comes to the best possible can't be claimed: it brings more than the prices say is"
                    + " possible. This is a fault of Bedwright's own; please report it with the season file.";
        }
        return "How close it comes to the best possible can't be claimed as a share: it has not been shown that planting"
                + " brings anything. No plan brings more than " + most + ", and nothing planted brings "
                + say.money((double) closeness.nothing() / seasons) + ".";
    }
}
