package bedwright.plan;

import ai.timefold.solver.core.preview.api.domain.metamodel.GenuineEntityMetaModel;
import ai.timefold.solver.core.preview.api.domain.metamodel.PlanningVariableMetaModel;
import ai.timefold.solver.core.preview.api.move.Move;
import ai.timefold.solver.core.preview.api.move.MutableSolutionView;
import java.util.List;
import java.util.Objects;
import java.util.SequencedCollection;
import org.jspecify.annotations.Nullable;

/**
 * The one move at the bottom: puts plantings at places, or nowhere. Bed, sow week and method change together.
 *
 * @param plantings each at most once
 * @param places a place of each, or {@link SeasonScore#NOWHERE}
 */
record Put(List<Planting> plantings, List<Integer> places) implements Move<SeasonPlan> {

    static Put of(Planting planting, int place) {
        return new Put(List.of(planting), List.of(place));
    }

    static Put of(Planting one, int place, Planting other, int otherPlace) {
        return new Put(List.of(one, other), List.of(place, otherPlace));
    }

    @Override
    public void execute(MutableSolutionView<SeasonPlan> view) {
        Variables variables = Variables.of(view);
        for (int i = 0; i < plantings.size(); i++) {
            variables.put(view, plantings.get(i), places.get(i));
        }
    }

    @Override
    public SequencedCollection<Object> getPlanningEntities() {
        return List.copyOf(plantings);
    }

    @Override
    public String describe() {
        return "Put";
    }

    /** The solver's names of the three variables. */
    private record Variables(
            Object solution,
            PlanningVariableMetaModel<SeasonPlan, Planting, Integer> bed,
            PlanningVariableMetaModel<SeasonPlan, Planting, Integer> sowWeek,
            PlanningVariableMetaModel<SeasonPlan, Planting, Integer> method) {
        /** The last solver's, since one thread belongs to one search at a time. */
        private static final ThreadLocal<@Nullable Variables> LAST = new ThreadLocal<>();

        static Variables of(MutableSolutionView<SeasonPlan> view) {
            Variables last = LAST.get();
            Object solution = view.getSolutionMetaModel();
            if (last != null && last.solution == solution) {
                return last;
            }
            GenuineEntityMetaModel<SeasonPlan, Planting> entity =
                    view.getSolutionMetaModel().genuineEntity(Planting.class);
            Variables variables = new Variables(
                    solution,
                    entity.basicVariable("bed", Integer.class),
                    entity.basicVariable("sowWeek", Integer.class),
                    entity.basicVariable("method", Integer.class));
            LAST.set(variables);
            return variables;
        }

        void put(MutableSolutionView<SeasonPlan> view, Planting planting, int place) {
            var table = Objects.requireNonNull(planting.getTable());
            boolean nowhere = place < 0;
            set(view, bed, planting, planting.getBed(), nowhere ? null : table.bed(place));
            set(view, sowWeek, planting, planting.getSowWeek(), nowhere ? null : table.sowWeek(place));
            set(view, method, planting, planting.getMethod(), nowhere ? null : table.way(place));
        }

        @SuppressWarnings("NullAway") // the variables allow to be unassigned: null is such a value
        private static void set(
                MutableSolutionView<SeasonPlan> view,
                PlanningVariableMetaModel<SeasonPlan, Planting, Integer> variable,
                Planting planting,
                @Nullable Integer before,
                @Nullable Integer after) {
            if (!Objects.equals(before, after)) {
                view.changeVariable(variable, planting, after);
            }
        }
    }
}
