package bedwright.command;

import bedwright.climate.PossibleSeasons;
import bedwright.growth.Prospect;
import bedwright.log.FaultyNotes;
import bedwright.log.LogFile;
import bedwright.log.SaidDay;
import bedwright.log.SeasonLog;
import bedwright.log.Understood;
import bedwright.plan.DemandLine;
import bedwright.plan.InForce;
import bedwright.plan.Outcome;
import bedwright.plan.Outcomes;
import bedwright.plan.PlanFacts;
import bedwright.season.Plan;
import bedwright.season.Season;
import bedwright.underway.PlantingState;
import bedwright.underway.Remaining;
import bedwright.underway.Weeks;
import java.io.IOException;
import java.io.PrintWriter;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Tells where the season is. */
@Command(
        name = "sofar",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description = {
            "Tells where the season is on a day, by the plan and what was noted: how far each planting is, how much of it"
                    + " stands and what it may still give, what noted weather has most likely taken of it, which of the coming weeks are short of what is promised, and"
                    + " what has changed since the plan. What was not noted was done as planned.",
            "",
            "  target/bedwright sofar plans/first-bed --on 2027-07-01"
        })
final class SofarCommand implements Callable<Integer> {
    /** Coming weeks that are shown. */
    private static final int WEEKS = 6;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Mixin
    private PlanNamed named = new PlanNamed();

    @Option(
            names = "--on",
            paramLabel = "DAY",
            description = "The day it is, as 1 July or 2027-07-01; left out: the day on which this is run.")
    private @Nullable String on;

    @Override
    public Integer call() {
        PlanFolder plans = named.folder();
        Plan plan = plans.read();
        SeasonLog log = log(plans, plan);
        LocalDate day = day(plan.season(), on, spec);
        Remaining now = Remaining.of(plan, log, day);
        Remaining planned = Remaining.of(plan, log.upTo(plan.notesTakenIn()), day);
        PrintWriter out = spec.commandLine().getOut();
        out.println(plan.season().name() + " on " + Words.date(day));
        out.println();
        plantings(out, now);
        out.println();
        weathered(out, now);
        weeks(out, now);
        out.println();
        changed(out, now, planned);
        now.undecided().forEach(asked -> out.println("Asked for and undecided: " + Understood.sentence(plan, asked)));
        return Exit.DONE;
    }

    /** The day that is said, or today; it has to lie in the season. */
    static LocalDate day(Season season, @Nullable String said, CommandSpec spec) {
        LocalDate day = said == null ? StartDay.or(null) : saidDay(season, said, spec);
        LocalDate last = season.starts().plusDays(season.days() - 1L);
        if (day.isBefore(season.starts()) || day.isAfter(last)) {
            throw new ParameterException(
                    spec.commandLine(),
                    day + " is outside the season. Say a day from " + season.starts() + " to " + last + " with --on.");
        }
        return day;
    }

    /** The day said with {@code --on}, in the season or not. */
    static LocalDate saidDay(Season season, String said, CommandSpec spec) {
        try {
            return SaidDay.of(season, said);
        } catch (IllegalArgumentException e) {
            throw new ParameterException(spec.commandLine(), "--on: " + e.getMessage());
        }
    }

    /** The log beside a plan. */
    static SeasonLog log(PlanFolder plans, Plan plan) {
        try {
            return LogFile.read(plans.log(), plan);
        } catch (FaultyNotes e) {
            throw new Refusal(Exit.FAULTY_FILE, plans.log() + ": " + e.getMessage());
        } catch (IOException e) {
            throw new Refusal(Exit.FILE_TROUBLE, plans.log() + ": " + e.getMessage());
        }
    }

    private static void plantings(PrintWriter out, Remaining now) {
        out.printf(
                Locale.ROOT,
                "%4s  %-26s %-12s %-12s %6s %-9s %-13s %8s %9s%n",
                "",
                "planting",
                "bed",
                "stage",
                "plants",
                "stand",
                "first cut",
                "cut",
                "to come");
        int week = now.season().firstWeek();
        for (PlantingState state : now.states()) {
            Prospect expected = state.expected();
            out.printf(
                    Locale.ROOT,
                    "%4d  %-26.26s %-12.12s %-12s %6d %-9s %-13s %8d %9s%n",
                    state.number(),
                    state.planned().crop(),
                    state.planned().bed(),
                    state.isLikelyLost() ? "likely lost" : stage(state.stage()),
                    state.plants(),
                    stand(state),
                    expected == null || expected.firstCut() == Prospect.NONE
                            ? "–"
                            : Words.day(now.season(), expected.firstCut()),
                    state.cut(),
                    expected == null || state.stage() == PlantingState.Stage.OVER
                            ? "–"
                            : String.valueOf(Math.round(Weeks.mean(expected, week, state.factor()))));
        }
        out.println("Stems to come are the mean of the possible seasons, from this week on. A stand with a ~ is what is"
                + " left as noted, of those expected, less what noted weather likely took; without one it was"
                + " counted.");
    }

    /** What noted weather has most likely taken, of what was not seen since. */
    private void weathered(PrintWriter out, Remaining now) {
        PlantingState first = null;
        for (PlantingState state : now.states()) {
            if (!state.isAlive() || state.weathered().isEmpty()) {
                continue;
            }
            if (first == null) {
                out.println("What the weather that was noted has most likely taken, where nothing was seen since:");
                first = state;
            }
            List<String> words = state.weathered().stream()
                    .map(taken -> WeatherWords.said(now.season(), taken))
                    .toList();
            out.println("  " + state.number() + " (" + state.planned().crop() + ", "
                    + state.planned().bed() + "): " + String.join("; ", words));
        }
        if (first != null) {
            out.println("  The stems to come reckon with it until a count settles it: " + Called.name() + " note "
                    + named.typed() + " " + first.number() + " stands " + first.plants() / 2
                    + ", or how many plants you count.");
            out.println();
        }
    }

    private static String stand(PlantingState state) {
        if (state.stage() == PlantingState.Stage.LEFT_OUT || state.stage() == PlantingState.Stage.TO_COME) {
            return "–";
        }
        double taken = state.isAlive() ? state.takenByWeather() : 0;
        return (state.isCounted() && taken == 0 ? "" : "~") + Words.percent(state.left() * (1 - taken));
    }

    static String stage(PlantingState.Stage stage) {
        return switch (stage) {
            case TO_COME -> "to come";
            case LEFT_OUT -> "left out";
            case RAISING -> "in trays";
            case SOWN -> "sown";
            case GROWING -> "growing";
            case CUTTING -> "in cut";
            case OVER -> "over";
        };
    }

    /** Coming weeks: what is promised, what of it is there in the mean, and in how many of ten years all of it. */
    private static void weeks(PrintWriter out, Remaining now) {
        PlanFacts facts = InForce.facts(now.season(), PossibleSeasons.of(now.season()), false);
        Season season = facts.season();
        Outcome outcome = Outcomes.of(facts, InForce.places(facts));
        out.println("Coming weeks, stems in the mean of the possible seasons:");
        out.printf(Locale.ROOT, "%-12s %-30s %9s %9s %9s%n", "week of", "promised to", "promised", "ours", "short");
        int last = Math.min(season.weeks(), season.firstWeek() + WEEKS);
        for (int w = season.firstWeek(); w < last; w++) {
            boolean isPromised = false;
            for (Map.Entry<String, double[]> of : promised(outcome, w).entrySet()) {
                double[] stems = of.getValue();
                long missing = Math.round(stems[0] - stems[1]);
                out.printf(
                        Locale.ROOT,
                        "%-12s %-30.30s %9d %9d %9s%n",
                        isPromised ? "" : Words.date(season.weekStart(w)),
                        of.getKey(),
                        Math.round(stems[0]),
                        Math.round(stems[1]),
                        missing > 0 ? String.valueOf(missing) : "–");
                isPromised = true;
            }
            out.printf(
                    Locale.ROOT,
                    "%-12s %-30s %9s %9d left over after all who take stems%n",
                    isPromised ? "" : Words.date(season.weekStart(w)),
                    isPromised ? "" : "(nothing is promised)",
                    "",
                    leftOver(outcome, w));
        }
    }

    /** By whom it is promised to, in their order: stems promised in a week, and how many of them are ours in the mean. */
    private static Map<String, double[]> promised(Outcome outcome, int week) {
        Map<String, double[]> promised = new LinkedHashMap<>();
        for (DemandLine line : outcome.demand()) {
            if (line.promise() == DemandLine.Promised.NOTHING || line.asked()[week] == 0) {
                continue;
            }
            double[] stems = promised.computeIfAbsent(line.name(), name -> new double[2]);
            stems[0] += line.asked()[week] / 100.0;
            for (int got : outcome.served()[line.index()][week]) {
                stems[1] += got / 100.0 / outcome.seasons();
            }
        }
        return promised;
    }

    private static long leftOver(Outcome outcome, int week) {
        double sum = 0;
        for (int[][] role : outcome.leftOver()) {
            for (int left : role[week]) {
                sum += left / 100.0 / outcome.seasons();
            }
        }
        return Math.round(sum);
    }

    private static void changed(PrintWriter out, Remaining now, Remaining planned) {
        Map<Integer, PlantingState> before = new HashMap<>();
        planned.states().forEach(state -> before.put(state.number(), state));
        int week = now.season().firstWeek();
        boolean isAny = false;
        for (PlantingState state : now.states()) {
            PlantingState was = Objects.requireNonNull(before.get(state.number()));
            List<String> words = differences(state, was, week);
            if (!words.isEmpty()) {
                if (!isAny) {
                    out.println("Since the plan:");
                }
                isAny = true;
                out.println("  " + state.number() + " (" + state.planned().crop() + ", "
                        + state.planned().bed() + "): " + String.join(", ", words));
            }
        }
        if (!isAny) {
            out.println("All is as planned, as far as noted.");
        }
    }

    private static List<String> differences(PlantingState now, PlantingState was, int week) {
        List<String> words = new ArrayList<>();
        if (now.stage() != was.stage()) {
            words.add(stage(now.stage()) + ", planned " + stage(was.stage()));
        }
        Prospect expected = now.expected();
        Prospect usual = was.expected();
        if (expected != null
                && usual != null
                && expected.firstCut() != Prospect.NONE
                && usual.firstCut() != Prospect.NONE
                && expected.firstCut() != usual.firstCut()) {
            int days = expected.firstCut() - usual.firstCut();
            words.add("first cut " + Words.count(Math.abs(days), "day") + (days > 0 ? " later" : " sooner"));
        }
        long stems = stems(now, week) - stems(was, week);
        if (stems != 0) {
            words.add(Words.count((int) Math.abs(stems), "stem") + (stems > 0 ? " more" : " fewer") + " to come");
        }
        return words;
    }

    private static long stems(PlantingState state, int week) {
        Prospect expected = state.expected();
        boolean isOver = state.stage() == PlantingState.Stage.OVER || state.stage() == PlantingState.Stage.LEFT_OUT;
        return expected == null || isOver ? 0 : Math.round(Weeks.mean(expected, week, state.factor()));
    }
}
