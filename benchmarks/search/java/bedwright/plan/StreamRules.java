package bedwright.plan;

import ai.timefold.solver.core.api.score.HardMediumSoftScore;
import ai.timefold.solver.core.api.score.stream.Constraint;
import ai.timefold.solver.core.api.score.stream.ConstraintFactory;
import ai.timefold.solver.core.api.score.stream.ConstraintProvider;
import ai.timefold.solver.core.api.score.stream.uni.UniConstraintCollector;
import ai.timefold.solver.core.api.score.stream.uni.UniConstraintStream;
import bedwright.plan.StreamFacts.FamilyInBed;
import bedwright.plan.StreamFacts.JobHere;
import bedwright.plan.StreamFacts.Part;
import bedwright.plan.StreamFacts.Plot;
import bedwright.plan.StreamFacts.Store;
import bedwright.plan.StreamFacts.Use;
import bedwright.plan.StreamFacts.Week;
import bedwright.plan.StreamSums.Total;
import bedwright.plan.StreamSums.WeekBalance;
import java.util.Objects;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.Predicate;

/**
 * The same rules as {@link SolverScore} keeps, as the solver's own constraint streams, to measure the ledgers against.
 *
 * <p>Written for speed as far as streams go: plantings are mapped to facts that never change, streams are shared by using
 * the same function objects, sums over weeks, kinds and seasons are arrays within one group each, and of a week only the
 * roles are filled again whose stems changed.
 */
public final class StreamRules implements ConstraintProvider {
    private static final Predicate<Planting> IS_PLACED = planting -> planting.place() >= 0;
    private static final Function<Planting, Plot> PLOT = StreamPlots::plotOf;
    private static final Function<Plot, Iterable<Use>> ROOM = Plot::room;
    private static final Function<Plot, Iterable<Use>> STOCK = Plot::stock;
    private static final Function<Plot, Iterable<Part>> WEEKS = Plot::weeks;
    private static final Function<Plot, JobHere> JOB = Plot::job;
    private static final Function<JobHere, Iterable<Part>> SET_UP = JobHere::setUp;
    private static final Function<PlanFacts, Iterable<Part>> CONSTANTS = StreamPlots::constants;
    private static final Function<Use, Store> STORE = Use::store;
    private static final Function<Part, Week> WEEK = Part::week;
    private static final BiFunction<Week, WeekBalance, WeekBalance> WHOLE_WEEK = (week, balance) -> balance;
    private static final Predicate<Plot> HAS_FAMILY = plot -> plot.family() != null;
    private static final Function<Plot, FamilyInBed> FAMILY = plot -> Objects.requireNonNull(plot.family());
    private static final UniConstraintCollector<Use, ?, Long> BEYOND = StreamSums.beyond();
    private static final UniConstraintCollector<Part, ?, WeekBalance> BALANCE = StreamSums.balance();
    private static final UniConstraintCollector<WeekBalance, ?, Total> TOTAL = StreamSums.total();
    private static final UniConstraintCollector<Plot, ?, Long> FOLLOWERS = StreamSums.followers();

    @Override
    public Constraint[] defineConstraints(ConstraintFactory factory) {
        return new Constraint[] {
            plots(factory)
                    .flattenLast(ROOM)
                    .groupBy(STORE, BEYOND)
                    .penalize(HardMediumSoftScore.ONE_HARD, (store, over) -> over)
                    .asConstraint("room"),
            plots(factory)
                    .flattenLast(STOCK)
                    .groupBy(STORE, BEYOND)
                    .penalize(HardMediumSoftScore.ONE_SOFT, (store, over) -> over)
                    .asConstraint("extra stock"),
            total(factory).penalize(HardMediumSoftScore.ONE_HARD, Total::hard).asConstraint("hours and cutting hours"),
            total(factory)
                    .penalize(HardMediumSoftScore.ONE_MEDIUM, Total::missing)
                    .asConstraint("must be ours"),
            total(factory).impact(HardMediumSoftScore.ONE_SOFT, Total::soft).asConstraint("takings less hours"),
            plots(factory).penalize(HardMediumSoftScore.ONE_SOFT, Plot::costs).asConstraint("material and rest years"),
            plots(factory)
                    .filter(HAS_FAMILY)
                    .groupBy(FAMILY, FOLLOWERS)
                    .penalize(HardMediumSoftScore.ONE_SOFT, (family, count) -> count * family.price())
                    .asConstraint("follow-on")
        };
    }

    private static UniConstraintStream<Plot> plots(ConstraintFactory factory) {
        return factory.forEach(Planting.class).filter(IS_PLACED).map(PLOT);
    }

    private static UniConstraintStream<Total> total(ConstraintFactory factory) {
        UniConstraintStream<Part> weeks = plots(factory).flattenLast(WEEKS);
        UniConstraintStream<Part> setUp = plots(factory).groupBy(JOB).flattenLast(SET_UP);
        UniConstraintStream<Part> constant = factory.forEach(PlanFacts.class).flattenLast(CONSTANTS);
        return weeks.concat(setUp)
                .concat(constant)
                .groupBy(WEEK, BALANCE)
                .map(WHOLE_WEEK)
                .groupBy(TOTAL);
    }
}
