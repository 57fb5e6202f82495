package bedwright.plan;

import ai.timefold.solver.core.api.score.HardMediumSoftScore;
import ai.timefold.solver.core.api.score.calculator.IncrementalScoreCalculator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Lets the solver ask {@link SeasonScore}. A move, and the undoing of the one before, arrive as one batch of changes;
 * whatever stands as it was last asked about has been kept, and becomes part of what is measured from.
 */
public final class SolverScore implements IncrementalScoreCalculator<SeasonPlan, HardMediumSoftScore> {
    private @Nullable SeasonScore score;
    private @Nullable Probe probe;
    private Planting[] plantings = new Planting[0];
    private int[] touched = new int[0];
    private boolean[] isTouched = new boolean[0];
    private int touchedCount;
    private int[] asked = new int[0];
    private int[] askedPlace = new int[0];
    private int askedCount;
    /** Whether the changes last asked about are a move that was not given to the solver yet. */
    private boolean isAhead;

    @Override
    public void resetWorkingSolution(SeasonPlan plan) {
        PlanFacts facts = plan.knownFacts();
        List<Planting> all = plan.getPlantings();
        SeasonScore fresh = new SeasonScore(facts);
        plantings = all.toArray(Planting[]::new);
        touched = new int[plantings.length];
        asked = new int[plantings.length];
        askedPlace = new int[plantings.length];
        isTouched = new boolean[plantings.length];
        touchedCount = 0;
        askedCount = 0;
        isAhead = false;
        for (int p = 0; p < plantings.length; p++) {
            if (plantings[p].getId() != p) {
                throw new IllegalStateException("Planting " + plantings[p].getId() + " stands at number " + p);
            }
            fresh.settle(p, plantings[p].place());
        }
        score = fresh;
        probe = plan.getProbe();
        if (probe != null) {
            probe.noteMoved(plantings.length);
            probe.look(this);
        }
    }

    @Override
    public void beforeVariableChanged(Object entity, String variableName) {
        // What a planting was is known from the plan measured from.
    }

    @Override
    public void afterVariableChanged(Object entity, String variableName) {
        int id = ((Planting) entity).getId();
        if (!isTouched[id]) {
            isTouched[id] = true;
            touched[touchedCount++] = id;
            if (probe != null) {
                probe.moved(id);
            }
        }
    }

    @Override
    public HardMediumSoftScore calculateScore() {
        SeasonScore from = known();
        if (isAhead && isAsAsked()) {
            forgetTouched();
        } else {
            keepWhatStands(from);
            for (int t = 0; t < touchedCount; t++) {
                int id = touched[t];
                ask(from, id, plantings[id].place());
            }
            forgetTouched();
            from.ask();
        }
        isAhead = false;
        if (probe != null && !probe.isCooling()) {
            probe.count();
        }
        return HardMediumSoftScore.of(from.hardAfter(), from.mediumAfter(), from.softAfter());
    }

    private SeasonScore known() {
        if (score == null) {
            throw new IllegalStateException("No plan has been set");
        }
        return score;
    }

    private void ask(SeasonScore from, int id, int place) {
        if (place != from.place(id)) {
            from.put(id, place);
            asked[askedCount] = id;
            askedPlace[askedCount] = place;
            askedCount++;
        }
    }

    private void forgetTouched() {
        for (int t = 0; t < touchedCount; t++) {
            isTouched[touched[t]] = false;
        }
        touchedCount = 0;
    }

    /** Whether the plan now has just the changes last asked about. */
    private boolean isAsAsked() {
        for (int a = 0; a < askedCount; a++) {
            if (plantings[asked[a]].place() != askedPlace[a]) {
                return false;
            }
        }
        return touchedCount == askedCount;
    }

    /** The score, measuring from the plan as it stands. */
    SeasonScore score() {
        SeasonScore from = known();
        keepWhatStands(from);
        isAhead = false;
        for (int t = 0; t < touchedCount; t++) {
            from.settle(touched[t], plantings[touched[t]].place());
        }
        forgetTouched();
        return from;
    }

    /** Asks about a move before it is given to the solver, which will then find it answered. */
    void askAhead(Layout trial) {
        SeasonScore from = score();
        for (int i = 0; i < trial.moved(); i++) {
            ask(from, trial.movedPlanting(i), trial.movedTo(i));
        }
        from.ask();
        isAhead = true;
    }

    /** Forgets what was asked ahead. */
    void forget() {
        known().forget();
        askedCount = 0;
        isAhead = false;
    }

    /** Of the changes last asked about, makes those that still stand part of the plan measured from. */
    private void keepWhatStands(SeasonScore from) {
        if (askedCount == 0) {
            return;
        }
        int standing = 0;
        for (int a = 0; a < askedCount; a++) {
            standing += plantings[asked[a]].place() == askedPlace[a] ? 1 : 0;
        }
        if (standing == askedCount) {
            from.take();
            for (int a = 0; a < askedCount; a++) {
                from.moved(asked[a], askedPlace[a]);
            }
        } else {
            from.forget();
            for (int a = 0; standing > 0 && a < askedCount; a++) {
                if (plantings[asked[a]].place() == askedPlace[a]) {
                    from.settle(asked[a], askedPlace[a]);
                }
            }
        }
        askedCount = 0;
    }
}
