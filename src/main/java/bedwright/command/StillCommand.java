package bedwright.command;

import bedwright.climate.PossibleSeasons;
import bedwright.file.PlainJson;
import bedwright.growth.Prospect;
import bedwright.log.SeasonLog;
import bedwright.plan.Gap;
import bedwright.plan.Grains;
import bedwright.plan.Rule;
import bedwright.season.Bed;
import bedwright.season.Plan;
import bedwright.season.Rounding;
import bedwright.season.Season;
import bedwright.season.Units;
import java.io.PrintWriter;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Says what can still be started for a gap in a bed. */
@Command(
        name = "still",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description = {
            "Says what can still be started in a week for a stretch of a bed, when it would come into cut, and what the"
                    + " season would bring more with it, the best first. Each is really tried against the plan.",
            "",
            "  target/bedwright plan problems/first-bed.json --time 5",
            "  target/bedwright still plans/first-bed --bed \"Fence bed\" --metres 1 --on \"24 May\""
        })
final class StillCommand implements Callable<Integer> {
    private static final double LONGEST = 10_000;
    private static final int MM = 1000;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Mixin
    private PlanNamed named = new PlanNamed();

    @Option(names = "--bed", required = true, paramLabel = "B", description = "The bed.")
    private String bed = "";

    @ArgGroup(multiplicity = "1")
    private Stretch stretch = new Stretch();

    /** Length of the stretch, in one unit or the other. */
    static final class Stretch {
        @Option(names = "--metres", paramLabel = "M", description = "Length of the stretch, m.")
        private @Nullable BigDecimal metres;

        @Option(names = "--feet", paramLabel = "FT", description = "Length of the stretch, ft.")
        private @Nullable BigDecimal feet;

        double inMetres() {
            return feet != null
                    ? Units.FEET.length().metric(feet)
                    : Objects.requireNonNull(metres).doubleValue();
        }
    }

    @Option(
            names = "--on",
            required = true,
            paramLabel = "DAY",
            description = "A day of the week in which it is sown, set or started in trays, as 24 May or 2027-05-24.")
    private String on = "";

    @Option(names = "--most", paramLabel = "N", description = "How many ways to show; left out: 12.")
    private int most = 12;

    @Option(names = "--format", paramLabel = "text|json", description = "Words, or JSON.")
    private PlanCommand.Format format = PlanCommand.Format.TEXT;

    @Override
    public Integer call() {
        double metres = stretch.inMetres();
        if (!(metres > 0 && metres <= LONGEST)) {
            throw usage("--metres takes a length of more than 0 up to 10000 m, not " + Words.number(metres));
        }
        if (most < 1) {
            throw usage("--most takes 1 or more, not " + most);
        }
        PlanFolder plans = named.folder();
        Plan whole = plans.read();
        int week = whole.season().weekOf(SofarCommand.saidDay(whole.season(), on, spec));
        SeasonLog log = SofarCommand.log(plans, whole);
        int notes = log.inForce().size();
        // What was begun, lost or moved until then changes what a bed has room for.
        Plan plan = notes == 0
                ? whole
                : PlanNow.of(whole, log, whole.season().weekStart(week).toString(), spec)
                        .plan();
        Season season = plan.season();
        List<Gap.Way> ways =
                Gap.ways(plan, PossibleSeasons.of(season), bed(season), (int) Rounding.halfUp(metres * MM), week);
        PrintWriter out = spec.commandLine().getOut();
        if (format == PlanCommand.Format.JSON) {
            out.print(PlainJson.text(json(season, metres, week, ways)));
            out.flush();
        } else {
            print(out, season, metres, week, ways);
            if (notes > 0) {
                out.println("As the season stands in that week, by " + Words.count(notes, "note") + ".");
            }
        }
        return Exit.DONE;
    }

    /** A length as the season's file writes lengths. */
    private static String length(Season season, double metres) {
        return Words.number(season.units().length().of(metres));
    }

    private int bed(Season season) {
        List<String> beds = season.allBeds().stream().map(Bed::name).toList();
        int index = beds.indexOf(bed);
        if (index < 0) {
            throw usage("There is no bed \"" + bed + "\". There are " + String.join(", ", beds) + ".");
        }
        return index;
    }

    private ParameterException usage(String message) {
        return new ParameterException(spec.commandLine(), message);
    }

    private void print(PrintWriter out, Season season, double metres, int week, List<Gap.Way> ways) {
        List<Gap.Way> possible =
                ways.stream().filter(way -> way.breaks().isEmpty()).toList();
        out.println("Bed " + bed + ", " + length(season, metres) + " "
                + season.units().length().symbol() + ", started in the week of " + Words.date(season.weekStart(week))
                + ":");
        if (possible.isEmpty()) {
            out.println("nothing of the season's pool can be started then that the plan has room for.");
        } else {
            out.println();
            out.printf(
                    Locale.ROOT,
                    "%-52s %6s %6s  %-12s %-28s %6s  %s%n",
                    "",
                    "plants",
                    season.units().length().symbol(),
                    "in the bed",
                    "first cut, 8 years of 10",
                    "stems",
                    "the season brings");
            possible.stream().limit(most).forEach(way -> print(out, season, way));
            if (possible.size() > most) {
                out.println("… and " + (possible.size() - most) + " more (--most " + possible.size() + ").");
            }
        }
        impossible(out, ways);
        out.println();
        out.println(
                "Stems are those cut in the mean of the possible seasons, and what the season brings counts only those"
                        + " that somebody takes.");
    }

    private void print(PrintWriter out, Season season, Gap.Way way) {
        Prospect prospect = way.prospect();
        double money = Grains.toMoney(season, way.money());
        out.printf(
                Locale.ROOT,
                "%-52s %6d %6s  %-12s %-28s %6d  %s%n",
                way.crop().name() + " (" + way.method().name() + ")",
                prospect.plants(),
                length(season, prospect.millimetres() / (double) MM),
                Words.day(season, prospect.groundDay()),
                firstCut(season, prospect),
                Math.round(stems(prospect)),
                money >= 0 ? Words.money(season, money) + " more" : Words.money(season, -money) + " less");
    }

    /** When cutting begins, but for one possible season in ten at either end. */
    private static String firstCut(Season season, Prospect prospect) {
        int[] days = Arrays.stream(prospect.firstCuts())
                .filter(day -> day != Prospect.NONE && day < season.days())
                .sorted()
                .toArray();
        if (days.length == 0) {
            return "not in this season";
        }
        int tenth = days.length / 10;
        return Words.day(season, days[tenth]) + " to " + Words.day(season, days[days.length - 1 - tenth]);
    }

    private static double stems(Prospect prospect) {
        double sum = 0;
        for (int[][] kind : prospect.stems()) {
            for (int[] week : kind) {
                sum += Arrays.stream(week).average().orElse(0);
            }
        }
        return sum / 100;
    }

    private static void impossible(PrintWriter out, List<Gap.Way> ways) {
        Map<Rule, Integer> stopped = new EnumMap<>(Rule.class);
        ways.forEach(way -> way.breaks().forEach(rule -> stopped.merge(rule, 1, Integer::sum)));
        if (!stopped.isEmpty()) {
            out.println();
            out.println("Not possible beside the plan (some for several reasons):");
            stopped.forEach((rule, count) -> out.println("- " + Words.count(count, "way") + ": "
                    + switch (rule) {
                        case BED_ROOM -> "the bed is needed for something else before it would be free again.";
                        case HOURS -> "there are too few hours in some week.";
                        case CUTTING_HOURS -> "there are too few hands to cut it in some week.";
                        case BENCH_ROOM -> "the bench is full in some week.";
                        default -> "net, cover or trays are lacking in some week.";
                    }));
        }
    }

    private Map<String, Object> json(Season season, double metres, int week, List<Gap.Way> ways) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("version", 1);
        json.put("bed", bed);
        json.put(season.units().several(), season.units().length().of(metres));
        json.put("week", season.weekStart(week).toString());
        List<Object> all = new ArrayList<>();
        for (Gap.Way way : ways) {
            Map<String, Object> one = new LinkedHashMap<>();
            one.put("crop", way.crop().name());
            one.put("method", way.method().name());
            one.put("plants", way.prospect().plants());
            one.put(
                    season.units().several(),
                    season.units().length().of(way.prospect().millimetres() / (double) MM));
            one.put("inTheBed", season.dateOf(way.prospect().groundDay()).toString());
            one.put(
                    "firstCuts",
                    Arrays.stream(way.prospect().firstCuts())
                            .filter(day -> day != Prospect.NONE)
                            .sorted()
                            .mapToObj(day -> season.dateOf(day).toString())
                            .toList());
            one.put("stems", stems(way.prospect()));
            one.put("money", Grains.toMoney(season, way.money()));
            one.put("breaks", way.breaks().stream().sorted().map(Rule::sentence).toList());
            all.add(one);
        }
        json.put("ways", all);
        return json;
    }
}
