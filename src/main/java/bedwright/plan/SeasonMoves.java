package bedwright.plan;

import ai.timefold.solver.core.impl.heuristic.selector.move.factory.MoveIteratorFactory;
import ai.timefold.solver.core.impl.score.director.ScoreDirector;
import java.util.Iterator;
import java.util.random.RandomGenerator;

/** Gives the solver our moves. The only class that knows types of the solver's inside. */
public final class SeasonMoves implements MoveIteratorFactory<SeasonPlan, Put> {

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
        return new DrawnMoves(director.getWorkingSolution(), random);
    }
}
