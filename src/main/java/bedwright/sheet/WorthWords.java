package bedwright.sheet;

import bedwright.season.Plan.Worth;
import bedwright.season.Season;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** What one more of something would be worth, in a grower's words. */
final class WorthWords {
    /** Stretches of weeks named before the others are only counted. */
    private static final int STRETCHES = 4;

    private final Season season;
    private final Say say;

    WorthWords(Season season) {
        this.season = season;
        this.say = new Say(season);
    }

    /** "bed Fence", "an own hour": for a table's head or beside a strip. */
    static String name(Worth worth) {
        return switch (worth.thing()) {
            case BED -> bed(worth);
            case HOUR -> "own hour";
            case CUTTING_HOUR -> "cutting hour";
            case BENCH -> "bench";
            case TRAYS -> "trays";
            case NET -> worth.name();
            case COVER -> "row cover";
        };
    }

    /** What one of it is. */
    String one(Worth worth) {
        String a = "a " + season.units().one();
        return switch (worth.thing()) {
            case BED -> a + " of " + bed(worth);
            case HOUR -> "an hour of your own, beyond its pay";
            case CUTTING_HOUR -> "an hour fit for cutting";
            case BENCH -> "a cell of the bench";
            case TRAYS -> "a cell of the trays";
            case NET -> a + " of " + worth.name();
            case COVER -> a + " of row cover";
        };
    }

    /** What stands for one metre where that is meant, for one foot in a file in feet. */
    double written(Worth worth, double money) {
        return switch (worth.thing()) {
            case BED, NET, COVER -> season.units().eachLength("").of(money);
            case HOUR, CUTTING_HOUR, BENCH, TRAYS -> money;
        };
    }

    /** Many beds have the word in their name. */
    private static String bed(Worth worth) {
        boolean saysSo = worth.name().toLowerCase(Locale.ROOT).contains("bed");
        return saysSo ? worth.name() : "bed " + worth.name();
    }

    /** Whether it is there for the whole season or not at all, so that its weeks are not had singly. */
    private static boolean isKept(Worth worth) {
        return worth.thing() != Worth.Thing.HOUR && worth.thing() != Worth.Thing.CUTTING_HOUR;
    }

    String sentence(Worth worth) {
        double most =
                worth.weeks().stream().mapToDouble(Double::doubleValue).max().orElse(0);
        String what = one(worth);
        String begin = what.substring(0, 1).toUpperCase(Locale.ROOT) + what.substring(1) + ": ";
        List<Run> runs = runs(worth);
        String weeks = runs.stream().limit(STRETCHES).map(say::weeks).collect(Collectors.joining("; "));
        int others = runs.size() - STRETCHES;
        String more = others > 0 ? "; and " + Say.count(others, "other stretch", "other stretches") : "";
        return begin
                + (isKept(worth)
                        ? "about " + money(written(worth, worth.season())) + " if you had it all season, through the "
                        : "up to about " + money(written(worth, most)) + ", in the ")
                + weeks
                + more + ".";
    }

    /** The stretches of weeks in which one more is worth something. */
    List<Run> runs(Worth worth) {
        return Run.of(season.weeks(), w -> worth.weeks().get(w) > 0 ? 1 : 0);
    }

    /** Whole money where it is much, else with the digits of its currency. */
    String money(double amount) {
        return amount >= 100 ? say.price(Math.rint(amount)).replaceFirst("\\.0+$", "") : say.price(amount);
    }
}
