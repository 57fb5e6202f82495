package bedwright.sheet;

import bedwright.growth.Barred;
import bedwright.growth.Spot;
import bedwright.plan.HeldPlaces;
import bedwright.plan.Tried;
import bedwright.season.Held;
import bedwright.season.KeptPlanting;
import bedwright.season.Season;
import java.util.ArrayList;
import java.util.List;

/** What is held in place, in a grower's words: what it costs, and what stands against it. */
public final class HeldWords {
    /** Beds that are named. */
    private static final int NAMED = 6;

    private final Season season;
    private final Say say;
    private final TriedWords words;

    public HeldWords(Season season) {
        this.season = season;
        this.say = new Say(season);
        this.words = new TriedWords(season);
    }

    /** "3 lots of zinnia in bed Hedge1, week of 3 May, tray". */
    public String said(Held held) {
        return Say.count(held.lots(), "lot", "lots") + " of " + held.crop() + " in bed " + held.bed() + ", "
                + say.weeks(season.weekOf(held.sown()), season.weekOf(held.sown())) + ", " + held.method();
    }

    /**
     * Why something can't be held as it is, and what would mend it, as lines of text.
     *
     * @param width most characters a line
     */
    public String trouble(HeldPlaces.Trouble trouble, int width) {
        StringBuilder text = new StringBuilder();
        Barred barred = trouble.barred();
        List<String> why = barred != null
                ? List.of("the season does not offer it: " + words.barred(barred, trouble.spot()) + ".")
                : Mending.places(season, trouble.outcome(), trouble.broken());
        Summary.wrap(text, said(trouble.held()) + ", can't be held there: " + String.join(" ", why), width);
        Summary.wrap(text, mends(trouble), width);
        return text.toString();
    }

    private String mends(HeldPlaces.Trouble trouble) {
        List<String> ways = new ArrayList<>();
        int lots = trouble.held().lots();
        if (trouble.fits() > 0) {
            ways.add("hold only " + trouble.fits() + " of the " + lots + " lots there");
        }
        List<String> weeks = new ArrayList<>();
        Integer earlier = trouble.earlier();
        if (earlier != null) {
            weeks.add(date(earlier));
        }
        Integer later = trouble.later();
        if (later != null) {
            weeks.add(date(later));
        }
        if (!weeks.isEmpty()) {
            ways.add("hold it in that bed from " + String.join(" or ", weeks)
                    + " on (the nearest " + (weeks.size() == 1 ? "week" : "weeks") + " in which "
                    + (lots == 1 ? "it fits" : "all of them fit") + " by this method)");
        }
        if (!trouble.beds().isEmpty()) {
            List<String> beds = trouble.beds().stream()
                    .limit(NAMED)
                    .map(bed -> season.allBeds().get(bed).name())
                    .toList();
            int more = trouble.beds().size() - beds.size();
            ways.add("hold it at that time in " + String.join(", ", beds)
                    + (more > 0 ? " or " + more + " more beds" : ""));
        }
        return ways.isEmpty()
                ? "No other week of this bed and no other bed at that time has room for it by this method, beside what"
                        + " stands and what else is held: hold less, or take something else away."
                : "To mend it: " + String.join("; or ", ways) + ".";
    }

    private String date(int week) {
        return season.weekStart(week).toString();
    }

    /**
     * What holding each in its place costs, as lines of text; nothing where nothing is held.
     *
     * @param plantings those of the plan
     * @param width most characters a line
     */
    public String costs(List<HeldPlaces.Cost> costs, List<KeptPlanting> plantings, int width) {
        if (costs.isEmpty()) {
            return "";
        }
        StringBuilder text = new StringBuilder("Held in place\n");
        int tried = 0;
        for (HeldPlaces.Cost cost : costs) {
            tried += cost.tried();
            String number = plantings.stream()
                    .filter(planting -> cost.held().isAt(planting, season))
                    .findFirst()
                    .map(planting -> "No. " + planting.number() + ": ")
                    .orElse("");
            Summary.wrap(text, number + said(cost.held()) + ". " + price(cost), width);
        }
        Summary.wrap(
                text,
                "How this was worked out: in this plan, with all else left as it is, only these lots were put at each other"
                        + " place that the season offers them, and left out: " + Say.count(tried, "change", "changes")
                        + ", each really tried, by what plans are judged by (money with the weight of the bad seasons)."
                        + " A search without the hold might find more, since it would fill the freed place anew.",
                width);
        return text.toString();
    }

    private String price(HeldPlaces.Cost cost) {
        Tried best = cost.best();
        if (best == null) {
            return "The season offers it no other place.";
        }
        Spot to = cost.to();
        String there = to == null ? "left out" : "in " + words.spot(to);
        double grains = cost.grains();
        double missing = -best.gain().medium() / 100.0 / best.before().seasons();
        if (missing < 0) {
            return "Holding it there costs stems that must be ours: " + there + " would leave " + Say.tenth(-missing)
                    + " fewer of them missing, and money would be "
                    + TriedWords.signed(say.money(grains)) + " a season.";
        }
        return grains > 0 && missing == 0
                ? "Holding it there costs " + say.money(grains) + " a season: the best found for it is " + there + "."
                : "Holding it there costs nothing: the best of all else, " + there + ", would bring "
                        + (missing > 0 ? "fewer stems that must be ours" : say.money(Math.abs(grains)) + " less") + ".";
    }
}
