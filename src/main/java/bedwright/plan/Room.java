package bedwright.plan;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Looks for lots to plant, and for what might make room for them, trying each. */
final class Room {
    /** Plantings of which lots are left out to make room, at most. */
    private static final int MOST_LEFT_OUT = 3;

    private final Trials trials;
    private final PlanFacts facts;

    Room(Trials trials) {
        this.trials = trials;
        this.facts = trials.facts();
    }

    /**
     * The best way to put so many lots of a place's stock there: such as are left out, or else those of one planting that
     * stands elsewhere.
     *
     * @return null if there are not so many
     */
    @Nullable
    Shift put(int place, int lots) {
        int stock = facts.table().stock(place);
        int[] leftOut = trials.lotsAt(stock, SeasonScore.NOWHERE, lots);
        if (leftOut.length == lots) {
            return new Shift(leftOut, place);
        }
        Shift best = null;
        Search.Found most = null;
        for (int from : standing(stock)) {
            int[] there = trials.lotsAt(stock, from, lots);
            if (from != place && there.length == lots) {
                Search.Found gain = trials.gain(there, place);
                if (gain.isBetterThan(most)) {
                    most = gain;
                    best = new Shift(there, place);
                }
            }
        }
        return best;
    }

    /** Places where lots of a stock stand that may be moved, each once. */
    private List<Integer> standing(int stock) {
        List<Integer> places = new ArrayList<>();
        for (int p = facts.firstPlanting(stock); p < facts.firstPlanting(stock + 1); p++) {
            int at = trials.place(p);
            if (at >= 0 && !facts.isFixed(p) && !places.contains(at)) {
                places.add(at);
            }
        }
        return places;
    }

    /**
     * A way to make room in the bed for lots that go there: to leave out lots of a planting that stands there at the same
     * time, as many as take no less room; where that is not enough, of a second and a third one. Each time the planting is
     * taken that leaves least of the hard rules broken, and of those the one that is missed least.
     *
     * @return the lots with what makes room for them; null if that is not enough
     */
    @Nullable
    List<Shift> inPlaceOfOthers(Shift put) {
        List<Shift> all = new ArrayList<>(List.of(put));
        for (int i = 0; i < MOST_LEFT_OUT; i++) {
            Shift best = null;
            Search.Found most = trials.gain(all);
            for (Shift out : others(put)) {
                if (all.stream().noneMatch(shift -> isFrom(shift, trials.place(out.plantings()[0])))) {
                    List<Shift> more = new ArrayList<>(all);
                    more.add(out);
                    Search.Found gain = trials.gain(more);
                    if (gain.isBetterThan(most)) {
                        most = gain;
                        best = out;
                    }
                }
            }
            if (best == null) {
                return null;
            }
            all.add(best);
            if (most.hard() >= 0) {
                return all;
            }
        }
        return null;
    }

    /** As many lots of each planting that stands in the bed at the same time as take no less room. */
    private List<Shift> others(Shift put) {
        var table = facts.table();
        int row = table.row(put.to());
        long wanted = (long) put.plantings().length * table.millimetres(row);
        List<Shift> others = new ArrayList<>();
        for (int stock = 0; stock < table.stocks(); stock++) {
            for (int at : standing(stock)) {
                int there = table.row(at);
                boolean meets = table.bed(at) == table.bed(put.to())
                        && table.heldFrom(there) < table.heldTo(row)
                        && table.heldFrom(row) < table.heldTo(there)
                        && table.millimetres(there) > 0;
                if (meets && !isFrom(put, at)) {
                    long lots = (wanted + table.millimetres(there) - 1) / table.millimetres(there);
                    others.add(new Shift(trials.lotsAt(stock, at, Math.toIntExact(lots)), SeasonScore.NOWHERE));
                }
            }
        }
        return others;
    }

    /** Whether the lots that are put somewhere come from a place. */
    private boolean isFrom(Shift shift, int place) {
        return trials.place(shift.plantings()[0]) == place;
    }
}
