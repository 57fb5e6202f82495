package bedwright.sheet;

import bedwright.plan.DemandLine;
import bedwright.plan.Outcome;
import bedwright.season.KindTree;
import bedwright.season.Season;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToLongFunction;

/** Who gets what: promised first, and where they go short; and what is left over. */
final class Outlets {
    /** A week's left-over stems are told of from this share of the role's stems on. */
    private static final double TOLD_SHARE = 0.1;
    /** And from so many stems on, hundredths. */
    private static final long TOLD = 2000;

    private static final int BAD_YEAR = 1;
    private static final int USUAL_YEAR = 2;

    private final Say say;
    private final Outcome outcome;
    private final KindTree kinds;
    private final int weeks;
    private final List<DemandLine> lines;

    Outlets(Season season, Outcome outcome) {
        this.say = new Say(season);
        this.outcome = outcome;
        this.kinds = KindTree.of(season.roles());
        this.weeks = season.weeks();
        this.lines = outcome.demand().stream()
                .filter(line -> Arrays.stream(line.asked()).sum() > 0)
                .sorted(Comparator.comparingInt(Outlets::rank)
                        .thenComparing(
                                Comparator.comparingInt(DemandLine::weight).reversed())
                        .thenComparingInt(DemandLine::index))
                .toList();
    }

    private static int rank(DemandLine line) {
        return switch (line.promise()) {
            case MUST_BE_OURS -> 0;
            case SHORTAGE_PRICE, BOUGHT_IN -> 1;
            case NOTHING -> 2;
        };
    }

    private String label(DemandLine line) {
        return line.order() < 0 ? line.name() : line.name() + " (" + kind(line) + ")";
    }

    /** The kind from its role down: "focal, warm, zinnia". */
    private String kind(DemandLine line) {
        return kinds.path(line.node()).replace("/", ", ");
    }

    private Spread missing(DemandLine line, int week) {
        return Spread.of(outcome.seasons(), k -> line.asked()[week] - (long) outcome.served()[line.index()][week][k]);
    }

    /** For each promised line and run of weeks in which it goes short, a sentence. */
    List<String> shortages() {
        List<String> sentences = new ArrayList<>();
        for (DemandLine line : lines) {
            if (line.promise() == DemandLine.Promised.NOTHING) {
                continue;
            }
            Spread[] missing = new Spread[weeks];
            for (int w = 0; w < weeks; w++) {
                missing[w] = missing(line, w);
            }
            for (Run run : Run.of(weeks, w -> sort(missing[w]))) {
                sentences.add(label(line) + ", " + say.weeks(run) + ": " + shortage(missing, run) + mended(line));
            }
        }
        return sentences;
    }

    private static int sort(Spread missing) {
        if (missing.middle() > RoleWeeks.NOTICED) {
            return USUAL_YEAR;
        }
        return missing.high() > RoleWeeks.NOTICED ? BAD_YEAR : 0;
    }

    private static String shortage(Spread[] missing, Run run) {
        String usual = range(missing, run, Spread::middle);
        String bad = range(missing, run, Spread::high);
        boolean isOne = (run.sort() == BAD_YEAR ? bad : usual).equals("1");
        String stems = (isOne ? " stem" : " stems") + (run.weeks() > 1 ? " a week" : "");
        if (run.sort() == BAD_YEAR) {
            return "enough in a usual year, short of " + bad + stems + " in a bad one";
        }
        return usual.equals(bad)
                ? "short of " + usual + stems + ", in a usual year and in a bad one"
                : "short of " + usual + stems + " in a usual year, of " + bad + " in a bad one";
    }

    private static String mended(DemandLine line) {
        return switch (line.promise()) {
            case MUST_BE_OURS -> " (must be ours).";
            case BOUGHT_IN -> " (to be bought in).";
            case SHORTAGE_PRICE, NOTHING -> ".";
        };
    }

    private static String range(Spread[] spreads, Run run, ToLongFunction<Spread> figure) {
        long least = Long.MAX_VALUE;
        long most = Long.MIN_VALUE;
        for (int w = run.from(); w <= run.to(); w++) {
            least = Math.min(least, figure.applyAsLong(spreads[w]));
            most = Math.max(most, figure.applyAsLong(spreads[w]));
        }
        return Say.range(Say.stems(least), Say.stems(most));
    }

    /** For each role and run of weeks in which a good part of its stems goes nowhere in a usual year, a sentence. */
    List<String> leftOvers(List<RoleWeeks> roles) {
        List<String> sentences = new ArrayList<>();
        for (RoleWeeks role : roles) {
            for (Run run : Run.of(weeks, w -> isTold(role, w) ? 1 : 0)) {
                String stems = range(role.left(), run, Spread::middle);
                sentences.add(role.name() + ", " + say.weeks(run) + ": " + stems + " stems"
                        + (run.weeks() > 1 ? " a week" : "") + " that nobody takes in a usual year.");
            }
        }
        return sentences;
    }

    private static boolean isTold(RoleWeeks role, int week) {
        long left = role.left()[week].middle();
        return left >= TOLD && left >= TOLD_SHARE * role.ready()[week].middle();
    }

    /** Everybody who takes stems, promised first. */
    Table table() {
        List<Table.Column> columns = List.of(
                Table.Column.text("Who"),
                Table.Column.text("Kind"),
                Table.Column.text("Promised"),
                Table.Column.text("Weeks"),
                Table.Column.number("Asked for"),
                Table.Column.number("Gets in a usual year"),
                Table.Column.number("1 year in 10"),
                Table.Column.number("mean"),
                Table.Column.number("Weeks short, usual year"));
        List<List<String>> rows = new ArrayList<>();
        double askedInAll = 0;
        double meanInAll = 0;
        for (DemandLine line : lines) {
            long asked = Arrays.stream(line.asked()).sum();
            int[][] served = outcome.served()[line.index()];
            Spread got = Spread.of(outcome.seasons(), k -> {
                long sum = 0;
                for (int[] week : served) {
                    sum += week[k];
                }
                return sum;
            });
            int shortWeeks = 0;
            int first = -1;
            int last = -1;
            for (int w = 0; w < weeks; w++) {
                shortWeeks += missing(line, w).middle() > RoleWeeks.NOTICED ? 1 : 0;
                if (line.asked()[w] > 0) {
                    first = first < 0 ? w : first;
                    last = w;
                }
            }
            rows.add(List.of(
                    line.name(),
                    kind(line),
                    promise(line),
                    first == last ? say.shortWeek(first) : say.shortWeek(first) + " to " + say.shortWeek(last),
                    Say.stems(asked),
                    Say.stems(got.middle()),
                    Say.stems(got.low()),
                    Say.stems(got.mean()),
                    Say.whole(shortWeeks)));
            askedInAll += asked;
            meanInAll += got.mean();
        }
        List<List<String>> totals =
                List.of(List.of("All", "", "", "", Say.stems(askedInAll), "", "", Say.stems(meanInAll), ""));
        return new Table("outlets-table", "Who gets what in the season, in stems", columns, rows, totals);
    }

    private static String promise(DemandLine line) {
        return switch (line.promise()) {
            case MUST_BE_OURS -> "must be ours";
            case BOUGHT_IN -> "yes, else bought in";
            case SHORTAGE_PRICE -> "yes";
            case NOTHING -> "no";
        };
    }
}
