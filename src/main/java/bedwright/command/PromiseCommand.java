package bedwright.command;

import bedwright.climate.PossibleSeason;
import bedwright.climate.PossibleSeasons;
import bedwright.file.PlainJson;
import bedwright.log.FaultyNotes;
import bedwright.log.SaidDay;
import bedwright.log.SeasonLog;
import bedwright.log.Understood;
import bedwright.log.Wish;
import bedwright.plan.Outcomes;
import bedwright.plan.PlanFacts;
import bedwright.plan.Promises;
import bedwright.plan.PutInFront;
import bedwright.plan.Search;
import bedwright.plan.ToFill;
import bedwright.season.KindTree;
import bedwright.season.Plan;
import bedwright.season.Season;
import bedwright.underway.Remaining;
import java.io.IOException;
import java.io.PrintWriter;
import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.Callable;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Says what can still be promised. */
@Command(
        name = "promise",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description = {
            "Says in how many years of ten an order can be filled from a plan, after everybody who was promised stems"
                    + " already, and what it would take from others. Without --for it lists what is free to promise by"
                    + " week. Judged over seasons that the plan was not made on.",
            "",
            "  target/bedwright plan problems/first-bed.json --time 5",
            "  target/bedwright promise plans/first-bed --for \"12 Jul: 40 focal, 30 filler\"",
            "  target/bedwright promise plans/first-bed --for \"12 Jul: 40 focal\" --ask Inn --on \"1 Jun\"",
            "  target/bedwright promise plans/first-bed"
        })
final class PromiseCommand implements Callable<Integer> {
    /** Seasons that a promise is judged over. */
    private static final int SEASONS = 256;

    private static final double NINE_IN_TEN = 0.9;
    /** Days for which what is asked for is held. */
    private static final int HELD = 14;

    private static final int LONGEST = 600;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Mixin
    private PlanNamed named = new PlanNamed();

    @Option(
            names = "--for",
            paramLabel = "ORDER",
            description =
                    "A day and what is wanted on it, like \"12 Sep: 120 focal, 60 spike\". The stems are those of the"
                            + " day's week.")
    private @Nullable String order;

    @Option(
            names = "--kind",
            paramLabel = "KIND",
            description = "Without --for: lists the kinds within this one, instead of focal, spike and so on.")
    private @Nullable String kind;

    @Option(
            names = "--on",
            paramLabel = "DAY",
            description = "The day it is: what is left of the season then is judged, by what was noted. Left out: where"
                    + " notes were made today, or the last note's day where today is outside the season; else the plan is"
                    + " judged as it was made.")
    private @Nullable String on;

    @Option(
            names = "--sow-from",
            paramLabel = "DAY",
            description =
                    "With --for: from which day on something can still be started; where the order is not filled in 9"
                            + " years of 10, tells what planting besides would fill it more often.")
    private @Nullable String sowFrom;

    @Option(
            names = "--again",
            paramLabel = "SECONDS",
            description = "With --for: also in how many years it could be filled if the rest of the season were planned"
                    + " again with it in front, looking for so many seconds after the opening.")
    private @Nullable Double again;

    @Option(
            names = "--ask",
            paramLabel = "NAME",
            description =
                    "With --for: notes the order as asked for by somebody and undecided; until it lapses its stems"
                            + " are held for them.")
    private @Nullable String asks;

    @Option(
            names = "--until",
            paramLabel = "DAY",
            description = "With --ask: the last day on which it is held; left out: two weeks on, or the order's day.")
    private @Nullable String until;

    @Option(names = "--seed", paramLabel = "N", description = "Seed of the seasons it is judged over; left out: 1.")
    private long seed = 1;

    @Option(names = "--format", paramLabel = "text|json", description = "Words, or JSON.")
    private PlanCommand.Format format = PlanCommand.Format.TEXT;

    @Override
    public Integer call() {
        check();
        PlanFolder plans = named.folder();
        PlanNow now = PlanNow.of(plans, on, spec);
        Plan plan = now.plan();
        Season season = plan.season();
        Wish wish = order == null ? null : understood(order, words -> Wish.of(season, words));
        if (wish != null && now.on() != null && season.weekOf(wish.on()) < season.firstWeek()) {
            throw new ParameterException(
                    spec.commandLine(),
                    "--for: the week of " + wish.on() + " is over on " + now.on()
                            + ". Name a later day, or another --on.");
        }
        List<Integer> kinds = kinds(KindTree.of(season.roles()));
        boolean areGiven = !season.possible().given().isEmpty();
        List<PossibleSeason> fresh =
                areGiven ? PossibleSeasons.of(season) : PossibleSeasons.fresh(season, SEASONS, seed);
        PlanFacts facts = PlanFacts.ofPlan(season, fresh, plan.plantings());
        Promises promises = Promises.of(facts, Outcomes.places(facts, plan.plantings()));
        PromiseWords words = new PromiseWords(season, promises, areGiven, now);
        PutInFront.Result planned =
                wish == null || again == null ? null : plannedAgain(now, fresh, promises, wish, words);
        PrintWriter out = spec.commandLine().getOut();
        if (format == PlanCommand.Format.JSON) {
            out.print(PlainJson.text(wish == null ? words.json(kinds) : words.json(wish, planned)));
            out.flush();
        } else if (wish == null) {
            words.print(out, kinds);
        } else {
            words.print(out, wish, planned);
            ways(out, now, fresh, promises, wish, words);
        }
        if (wish != null && asks != null) {
            hold(plans, now, wish);
        }
        return Exit.DONE;
    }

    private void check() {
        String wrong = order != null && kind != null
                ? "--kind goes with the list of what is free; with --for name the kinds there"
                : order == null && (sowFrom != null || again != null || asks != null)
                        ? (sowFrom != null ? "--sow-from" : again != null ? "--again" : "--ask") + " goes with --for"
                        : asks == null && until != null
                                ? "--until goes with --ask"
                                : again != null && !(again >= 0 && again <= LONGEST)
                                        ? "--again takes seconds from 0 to " + LONGEST + ", not " + again
                                        : null;
        if (wrong != null) {
            throw new ParameterException(spec.commandLine(), wrong);
        }
    }

    /** What planting besides would fill the order, where there is time and it is not filled anyway. */
    private void ways(
            PrintWriter out,
            PlanNow now,
            List<PossibleSeason> fresh,
            Promises promises,
            Wish wish,
            PromiseWords words) {
        Season season = now.plan().season();
        Integer from = sowFrom != null
                ? Integer.valueOf(season.weekOf(understood(sowFrom, said -> SaidDay.of(season, said))))
                : now.on() != null ? now.firstOpenWeek() : null;
        if (from != null && words.answer(wish).filled() < NINE_IN_TEN) {
            words.printWays(
                    out, ToFill.ways(now.plan(), fresh, promises, season.weekOf(wish.on()), words.lines(wish), from));
        }
    }

    private PutInFront.Result plannedAgain(
            PlanNow now, List<PossibleSeason> fresh, Promises promises, Wish wish, PromiseWords words) {
        Season season = now.plan().season();
        Season underWay = now.on() != null
                ? season
                : Remaining.holding(now.plan(), now.log(), season.starts()).season();
        Duration time = Duration.ofMillis(Math.round(1000 * Objects.requireNonNull(again)));
        return PutInFront.of(
                underWay,
                fresh,
                promises,
                season.weekOf(wish.on()),
                words.lines(wish),
                new Search.Limits(seed, time, null));
    }

    /** Notes the order as asked for. */
    private void hold(PlanFolder plans, PlanNow now, Wish wish) {
        Plan plan = plans.read();
        LocalDate day = now.on() != null ? now.on() : SofarCommand.day(plan.season(), on, spec);
        LocalDate last = until == null
                ? Stream.of(day.plusDays(HELD), wish.on())
                        .min(LocalDate::compareTo)
                        .orElseThrow()
                : understood(until, said -> SaidDay.of(plan.season(), said));
        String line = day + " order-asked " + asks + " until " + last + " for " + wish.on() + ": "
                + wish.lines().stream()
                        .map(one -> one.stems() + " " + Wish.spoken(one.kind()))
                        .collect(Collectors.joining(", "));
        PrintWriter out = format == PlanCommand.Format.JSON
                ? spec.commandLine().getErr()
                : spec.commandLine().getOut();
        try {
            SeasonLog after = now.log().plus(plan, line + "\n");
            if (!NoteCommand.append(plans, plan, now.log(), List.of(line))) {
                throw new Refusal(
                        Exit.FILE_TROUBLE, plans.log() + ": Somebody else wrote into the log meanwhile; ask again.");
            }
            out.println();
            out.println(Understood.sentence(plan, after.entries().getLast()));
            out.println("Written to " + plans.log());
        } catch (FaultyNotes e) {
            throw new Refusal(
                    Exit.USAGE, "It can't be held: " + e.faults().getFirst().message() + " Nothing was written.");
        } catch (IOException e) {
            throw new Refusal(Exit.FILE_TROUBLE, plans.log() + ": " + e.getMessage() + "; nothing was written.");
        }
    }

    /** What is listed: roles, or the kinds right within the one named. */
    private List<Integer> kinds(KindTree tree) {
        int above = kind == null ? -1 : understood(kind, words -> Wish.kind(tree, words));
        List<Integer> within = IntStream.range(0, tree.size())
                .filter(node -> tree.parent(node) == above)
                .boxed()
                .toList();
        return within.isEmpty() ? List.of(above) : within;
    }

    private <T> T understood(String words, Function<String, T> reader) {
        try {
            return reader.apply(words);
        } catch (IllegalArgumentException e) {
            throw new ParameterException(spec.commandLine(), String.valueOf(e.getMessage()));
        }
    }
}
