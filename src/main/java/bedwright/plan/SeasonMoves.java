package bedwright.plan;

import ai.timefold.solver.core.impl.heuristic.selector.move.factory.MoveIteratorFactory;
import ai.timefold.solver.core.impl.score.director.ScoreDirector;
import java.util.Iterator;
import java.util.random.RandomGenerator;
import org.jspecify.annotations.Nullable;

/** Gives the solver our moves. The only class that knows types of the solver's inside. */
public final class SeasonMoves implements MoveIteratorFactory<SeasonPlan, Put> {
    private @Nullable Layout layout;
    private @Nullable Metropolis metropolis;

    @Override
    public long getSize(ScoreDirector<SeasonPlan> director) {
        return director.getWorkingSolution().knownFacts().table().places();
    }

    @Override
    public Iterator<Put> createOriginalMoveIterator(ScoreDirector<SeasonPlan> director) {
        throw new UnsupportedOperationException("The moves are drawn, never listed");
    }

    @Override
    public Iterator<Put> createRandomMoveIterator(ScoreDirector<SeasonPlan> director, RandomGenerator random) {
        SeasonPlan plan = director.getWorkingSolution();
        PlanFacts facts = plan.knownFacts();
        Layout known = layout;
        if (known == null || known.facts() != facts) {
            known = new Layout(facts);
            layout = known;
        }
        Probe probe = plan.getProbe();
        known.follow(plan.getPlantings(), probe);
        return new DrawnMoves(known, metropolis(known, probe), probe, random);
    }

    private @Nullable Metropolis metropolis(Layout layout, @Nullable Probe probe) {
        if (probe == null || !probe.isCooling()) {
            return null;
        }
        SolverScore live = probe.live();
        if (live == null) {
            return null;
        }
        Metropolis known = metropolis;
        if (known == null || !known.isOf(layout, probe, live)) {
            known = new Metropolis(layout, new Glance(layout), probe, live);
            metropolis = known;
        }
        return known;
    }
}
