package bedwright.sheet;

import bedwright.climate.Gusts;
import bedwright.plan.Outcome;
import bedwright.season.Caution;
import bedwright.season.Compass;
import bedwright.season.Labour;
import bedwright.season.Plan;
import bedwright.season.Season;
import bedwright.season.Site;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;

/** What a plan comes to, in a grower's words: the same on the page and in a terminal. */
public final class Summary {
    private final SheetFacts facts;
    private final Season season;
    private final Outcome outcome;
    private final Say say;
    private final List<Shown> plantings;
    private final List<RoleWeeks> roles;

    private Summary(SheetFacts facts, List<Shown> plantings) {
        this.facts = facts;
        this.season = facts.season();
        this.outcome = facts.outcome();
        this.say = new Say(season);
        this.plantings = plantings;
        this.roles = RoleWeeks.of(season, outcome);
    }

    /**
     * Some sentences under a heading.
     *
     * @param id letters and hyphens, unique
     * @param heading what they are about
     * @param lines a sentence or more each, without line breaks of their own
     */
    public record Part(String id, String heading, List<String> lines) {
        public Part {
            lines = List.copyOf(lines);
        }
    }

    /** All parts, what matters most first. */
    public static List<Part> of(SheetFacts facts) {
        return of(facts, Shown.of(facts));
    }

    static List<Part> of(SheetFacts facts, List<Shown> plantings) {
        Summary summary = new Summary(facts, plantings);
        Outlets outlets = new Outlets(facts.season(), facts.outcome());
        List<Part> parts = new ArrayList<>();
        parts.add(new Part("short", "In short", summary.inShort()));
        Plan.Closeness closeness = facts.closeness();
        if (closeness != null) {
            List<String> best = BestWords.sentences(
                    facts.season(),
                    facts.outcome().score(),
                    closeness,
                    facts.outcome().seasons());
            parts.add(new Part("best", "How close to the best possible", best));
        }
        parts.add(new Part("missing", "Too few stems", summary.tooFew(outlets)));
        if (!facts.season().orders().isEmpty()) {
            List<Bouquets> bouquets = Bouquets.of(facts.season(), facts.outcome());
            parts.add(new Part("whole", "Whole bouquets", Bouquets.lines(summary.say, bouquets)));
        }
        parts.add(new Part("left", "Too many stems", summary.tooMany(outlets)));
        parts.add(new Part("full", "Where it is full", new Fullness(facts.season(), facts.outcome()).sentences()));
        parts.add(new Part("gusts", "Gusts to reckon with", summary.gusts()));
        parts.add(new Part(
                "weak", "Figures to doubt", new WeakFigures(facts.season(), facts.outcome(), plantings).sentences()));
        parts.add(new Part("care", "Take care", Care.sentences(facts.season(), plantings)));
        parts.add(new Part("made", "How it was made", summary.made()));
        return List.copyOf(parts);
    }

    /**
     * The summary as plain lines: headings, and each sentence indented by two spaces.
     *
     * @param width most characters a line, at least 40; words longer than that stay whole
     */
    public static String text(SheetFacts facts, int width) {
        return text(of(facts), width);
    }

    /** Parts as plain lines, likewise. */
    public static String text(List<Part> parts, int width) {
        if (width < 40) {
            throw new IllegalArgumentException("A summary needs lines of at least 40 characters, not " + width);
        }
        StringBuilder text = new StringBuilder();
        for (Part part : parts) {
            text.append(text.isEmpty() ? "" : "\n").append(part.heading()).append('\n');
            for (String line : part.lines()) {
                wrap(text, line, width);
            }
        }
        return text.toString();
    }

    static void wrap(StringBuilder text, String line, int width) {
        int column = 0;
        for (String word : line.split(" ", -1)) {
            if (column == 0) {
                text.append("- ");
                column = 2;
            } else if (column + 1 + word.length() > width) {
                text.append("\n  ");
                column = 2;
            } else {
                text.append(' ');
                column++;
            }
            text.append(word);
            column += word.length();
        }
        text.append('\n');
    }

    private List<String> inShort() {
        List<String> lines = new ArrayList<>();
        List<String> broken = new Mending(season, outcome, plantings).sentences();
        if (broken.isEmpty()) {
            lines.add("This plan can be carried out: it keeps every hard rule (bed room, hours, bench, stock).");
        } else {
            lines.add("This plan can't be carried out as it stands; "
                    + Say.count(broken.size(), "thing is", "things are") + " to be mended:");
            lines.addAll(broken);
        }
        lines.add(money());
        lines.add(costs());
        long crops = plantings.stream().map(p -> p.crop().name()).distinct().count();
        lines.add(Say.count(plantings.size(), "planting", "plantings") + " of " + Say.count(crops, "crop", "crops")
                + " on "
                + Say.count(season.allBeds().size(), "bed", "beds") + ", " + season.weeks() + " weeks from "
                + Say.fullDate(season.starts()) + ".");
        return lines;
    }

    private String money() {
        Spread money = Spread.of(outcome.money().season());
        Labour labour = season.labour();
        String own = labour.ownRate() > 0
                ? ", own hours (at " + say.price(labour.ownRate()) + ")"
                : ", but nothing for own hours";
        return "Left in a usual year: " + say.money(money.middle()) + "; in a bad one (1 in 10) "
                + say.money(money.low()) + " or less, in a good one (1 in 10) " + say.money(money.high())
                + " or more. That is after seed and material" + own + " and hired hours.";
    }

    private String costs() {
        Outcome.Money money = outcome.money();
        StringBuilder text = new StringBuilder("In the mean: ")
                .append(say.money(mean(money.takings())))
                .append(" for stems; ")
                .append(say.money(mean(money.hours())))
                .append(" for hours, ")
                .append(say.money(money.material()))
                .append(" for seed and material");
        add(text, money.extraStock(), " for nets, trays and cover to buy");
        add(text, mean(money.buyIn()), " for stems bought in");
        add(text, mean(money.shortage()), " reckoned for promised stems missing");
        add(text, money.rest() + (double) money.followOn(), " reckoned for broken rotation");
        return text.append('.').toString();
    }

    private void add(StringBuilder text, double grains, String what) {
        if (grains > 0) {
            text.append(", ").append(say.money(grains)).append(what);
        }
    }

    private static double mean(long[] figures) {
        return Spread.of(figures).mean();
    }

    private List<String> tooFew(Outlets outlets) {
        List<String> shortages = outlets.shortages();
        return shortages.isEmpty() ? List.of("Nothing that is promised goes short, in a bad year either.") : shortages;
    }

    private List<String> tooMany(Outlets outlets) {
        List<String> left = outlets.leftOvers(roles);
        return left.isEmpty() ? List.of("In a usual year hardly a stem is left over.") : left;
    }

    private List<String> gusts() {
        List<String> lines = new ArrayList<>();
        for (Site.StormSide side : season.site().storms()) {
            OptionalDouble usual = Gusts.strongestOfAYear(side, 0.5);
            OptionalDouble tenth = Gusts.strongestOfAYear(side, 0.9);
            String from = "From " + Compass.name(side.from()) + " (" + Say.whole(side.from()) + "°): ";
            lines.add(from
                    + (usual.isPresent()
                            ? "strongest gust of a usual year " + say.gust(usual.getAsDouble())
                            : "no damaging gust in a usual year")
                    + (tenth.isPresent()
                            ? ", in one year of ten " + say.gust(tenth.getAsDouble()) + " or more."
                            : "."));
        }
        return lines.isEmpty() ? List.of("The season file names no storms.") : lines;
    }

    private static String ending(Plan.Making making) {
        if (making.interrupted()) {
            return "; interrupted before its end, the best plan so far is shown.";
        }
        return making.settled() ? "; the search ended by itself, since it hardly improved any more." : ".";
    }

    private List<String> made() {
        List<String> lines = new ArrayList<>();
        int percent = season.caution().percent();
        lines.add("Caution: " + word(season.caution()) + ". " + percent
                + " % of the weight lies on the worst fifth of the" + " possible seasons, the rest on their mean.");
        lines.add("The plan was weighed over " + Say.count(outcome.seasons(), "possible season", "possible seasons")
                + seedOfSeasons()
                + ". In none of them does it react: nothing is sown again or moved once the season runs. So"
                + " it insures more than a grower needs who watches and mends.");
        Plan.Making making = facts.making();
        List<String> limits = new ArrayList<>();
        Double seconds = making.seconds();
        Long moves = making.moves();
        if (seconds != null) {
            limits.add(Say.tenth(seconds) + " seconds");
        }
        if (moves != null) {
            limits.add(Say.whole(moves) + " moves for each search");
        }
        lines.add("Made with seed " + making.seed()
                + (limits.isEmpty() ? "" : " and a limit of " + String.join(", ", limits))
                + ending(making));
        lines.add(
                "A usual year is the middle one of the possible seasons, a bad or a good one that which a tenth of them"
                        + " are worse or better than, each figure for itself.");
        return lines;
    }

    private String seedOfSeasons() {
        if (!season.possible().given().isEmpty()) {
            return " given in the season file";
        }
        return outcome.seasons() == 1
                ? ", the normal one"
                : ", drawn with seed " + season.possible().seed();
    }

    private static String word(Caution caution) {
        if (caution.equals(Caution.BOLD)) {
            return "bold";
        } else if (caution.equals(Caution.STEADY)) {
            return "steady";
        } else if (caution.equals(Caution.CAREFUL)) {
            return "careful";
        }
        return String.format(Locale.ROOT, "%d of 100", caution.percent());
    }
}
