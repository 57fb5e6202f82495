package bedwright.sheet;

import bedwright.growth.Barred;
import bedwright.growth.ProspectTable;
import bedwright.growth.Spot;
import bedwright.plan.Outcome;
import bedwright.plan.Rule;
import bedwright.plan.Tried;
import bedwright.season.Crop;
import bedwright.season.Method;
import bedwright.season.Season;
import bedwright.season.Standing;
import bedwright.season.Unit;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/** What came of changes that were really tried, in words. */
final class TriedWords {
    /** Places in which a rule is broken that are told one by one. */
    private static final int TOLD = 3;

    private final Season season;
    private final Say say;

    TriedWords(Season season) {
        this.season = season;
        this.say = new Say(season);
    }

    /** The columns that tell what a change brings, after a first of its own. */
    static List<Table.Column> columns(String first) {
        return List.of(
                Table.Column.text(first),
                Table.Column.number("Stems"),
                Table.Column.number("Promised missing"),
                Table.Column.number("Hours"),
                Table.Column.number("Money"),
                Table.Column.number("As judged"),
                Table.Column.text("Can be done"));
    }

    List<String> row(String first, Tried tried) {
        return List.of(
                first,
                signed(Say.stems(tried.delivered())),
                signed(Say.stems(tried.missing())),
                signed(Say.hours(tried.work())),
                signed(say.money(tried.money())),
                signed(say.money(tried.weighed())),
                tried.isStopped() ? "no" : "yes");
    }

    /** A figure with its sign, unless it is nothing. */
    static String signed(String figure) {
        boolean nothing = figure.codePoints().noneMatch(c -> c >= '1' && c <= '9');
        return nothing || figure.startsWith("−") ? figure : "+" + figure;
    }

    /** What the columns hold. */
    String key() {
        int caution = season.caution().percent();
        return "Stems: those that go somewhere. All figures are means of the possible seasons, more (+) or less (−) than"
                + " the plan has."
                + (caution == 0
                        ? " As judged: here the same as money."
                        : " As judged: the money with the weight of the bad seasons, by which plans are compared.");
    }

    /** What stops a change; nothing where it can be done. */
    List<String> stops(String what, Tried tried) {
        List<String> sentences = new ArrayList<>();
        List<Outcome.Broken> stops = tried.stops();
        if (tried.isStopped()) {
            List<String> places = Mending.places(season, tried.after(), stops);
            for (int i = 0; i < Math.min(TOLD, places.size()); i++) {
                sentences.add(what + " is stopped: " + places.get(i));
            }
            if (places.size() > TOLD) {
                sentences.add(
                        what + ": and " + Say.count(places.size() - TOLD, "more such place", "more such places") + ".");
            }
        }
        double must = -tried.gain().medium();
        if (must > 0) {
            double stems = tried.rules().cost(Rule.MUST_BE_OURS)
                    / 100.0
                    / tried.before().seasons();
            sentences.add(what + " leaves stems missing that must be ours: " + Say.tenth(stems)
                    + " more a season, each counted with its weight.");
        }
        return sentences;
    }

    /** "bed Hedge1, sown 3 May, tray, pinched". */
    String spot(Spot spot) {
        return "bed " + season.allBeds().get(spot.bed()).name() + ", week of " + say.week(spot.sowWeek()) + ", "
                + method(spot).name();
    }

    Crop crop(int stock) {
        return season.cropOf(stock);
    }

    /** The name of what stands, or the crop. */
    String name(int stock) {
        Standing standing = season.standingOf(stock);
        return standing != null && standing.name() != null
                ? standing.name()
                : crop(stock).name();
    }

    Method method(Spot spot) {
        return crop(spot.stock()).methods().get(ProspectTable.methodOf(spot.method()));
    }

    /** Why a season does not offer a spot, as the end of a sentence. */
    String barred(Barred barred, Spot spot) {
        String bed = season.allBeds().get(spot.bed()).name();
        Method method = method(spot);
        return switch (barred) {
            case OUTSIDE_SEASON ->
                "the season runs from " + Say.fullDate(season.starts()) + " to "
                        + Say.fullDate(season.dateOf(season.days() - 1));
            case SOW_DATES ->
                "by \"" + method.name() + "\" it is sown from "
                        + (method.sowFrom() == null ? "1 January" : day(method.sowFrom())) + " to "
                        + (method.sowTo() == null ? "31 December" : day(method.sowTo()));
            case SEED_TEMPERATURE -> "the seed bed is " + bears(method) + " in that week of a usual year";
            case TOO_LATE -> "it would come into the bed only after the season's end";
            case NOT_WORKABLE ->
                "bed " + bed + " can't be worked before "
                        + say.date(Objects.requireNonNull(
                                season.allBeds().get(spot.bed()).block().workableFrom()));
            case TAKEN -> "bed " + bed + " is taken by something else in some of its weeks";
            case REST_YEARS -> "its family must not come back into bed " + bed + " so soon";
            case GIVES_NOTHING -> "it would give no stem in any possible season";
            case DECIDED -> "the season file has decided otherwise for it";
        };
    }

    private String bears(Method method) {
        Method.SeedTemperature bears = method.seedTemperature();
        if (bears == null) {
            return "too cold or too warm";
        }
        Double coldest = bears.coldest();
        Double warmest = bears.warmest();
        String least = coldest == null ? "" : "colder than the " + warmth(coldest) + " that its seed needs";
        String most = warmest == null ? "" : "warmer than the " + warmth(warmest) + " that its seed bears";
        return least + (least.isEmpty() || most.isEmpty() ? "" : ", or ") + most;
    }

    private String warmth(double degrees) {
        Unit unit = season.units().temperature();
        return Say.tenth(unit.of(degrees)) + " " + unit.symbol();
    }

    private static String day(MonthDay day) {
        return day.getDayOfMonth() + " " + Say.month(day.getMonthValue() - 1);
    }
}
