package bedwright.command;

import bedwright.climate.PossibleSeason;
import bedwright.climate.PossibleSeasons;
import bedwright.file.PlainJson;
import bedwright.log.SaidDay;
import bedwright.log.Wish;
import bedwright.plan.Outcomes;
import bedwright.plan.PlanFacts;
import bedwright.plan.Promises;
import bedwright.plan.ToFill;
import bedwright.season.KindTree;
import bedwright.season.Plan;
import bedwright.season.Season;
import java.io.PrintWriter;
import java.time.LocalDate;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.function.Function;
import java.util.stream.IntStream;
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
            "  target/bedwright promise plans/first-bed"
        })
final class PromiseCommand implements Callable<Integer> {
    /** Seasons that a promise is judged over. */
    private static final int SEASONS = 256;

    private static final double NINE_IN_TEN = 0.9;

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
            names = "--sow-from",
            paramLabel = "DAY",
            description =
                    "With --for: from which day on something can still be started; where the order is not filled in 9"
                            + " years of 10, tells what planting besides would fill it more often.")
    private @Nullable String sowFrom;

    @Option(names = "--seed", paramLabel = "N", description = "Seed of the seasons it is judged over; left out: 1.")
    private long seed = 1;

    @Option(names = "--format", paramLabel = "text|json", description = "Words, or JSON.")
    private PlanCommand.Format format = PlanCommand.Format.TEXT;

    @Override
    public Integer call() {
        if (order != null && kind != null) {
            throw new ParameterException(
                    spec.commandLine(), "--kind goes with the list of what is free; with --for name the kinds there");
        }
        if (order == null && sowFrom != null) {
            throw new ParameterException(spec.commandLine(), "--sow-from goes with --for");
        }
        Plan plan = named.folder().read();
        Season season = plan.season();
        Wish wish = order == null ? null : understood(order, words -> Wish.of(season, words));
        LocalDate from = sowFrom == null ? null : understood(sowFrom, words -> SaidDay.of(season, words));
        List<Integer> kinds = kinds(KindTree.of(season.roles()));
        boolean areGiven = !season.possible().given().isEmpty();
        List<PossibleSeason> fresh =
                areGiven ? PossibleSeasons.of(season) : PossibleSeasons.fresh(season, SEASONS, seed);
        PlanFacts facts = PlanFacts.ofPlan(season, fresh, plan.plantings());
        Promises promises = Promises.of(facts, Outcomes.places(facts, plan.plantings()));
        PromiseWords words = new PromiseWords(season, promises, areGiven);
        PrintWriter out = spec.commandLine().getOut();
        if (format == PlanCommand.Format.JSON) {
            out.print(PlainJson.text(wish == null ? words.json(kinds) : words.json(wish)));
            out.flush();
        } else if (wish == null) {
            words.print(out, kinds);
        } else {
            words.print(out, wish);
            if (from != null && words.answer(wish).filled() < NINE_IN_TEN) {
                words.printWays(
                        out,
                        ToFill.ways(
                                plan,
                                fresh,
                                promises,
                                season.weekOf(wish.on()),
                                words.lines(wish),
                                season.weekOf(from)));
            }
        }
        return Exit.DONE;
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
