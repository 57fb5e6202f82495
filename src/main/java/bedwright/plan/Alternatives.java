package bedwright.plan;

import bedwright.climate.PossibleSeason;
import bedwright.growth.Barring;
import bedwright.growth.Spot;
import bedwright.plan.Alternative.Sort;
import bedwright.season.KeptPlanting;
import bedwright.season.Season;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;

/** What might be done with a planting instead: each really tried, and the best of its sort told. */
public final class Alternatives {
    private final Trials trials;
    private final PlanFacts facts;
    private final Spot spot;
    private final int[] lots;

    /**
     * Of a planting of a plan.
     *
     * @param trials of facts that have the planting's {@link #spots}
     * @throws IllegalArgumentException if the plan has no lots there
     */
    public Alternatives(Trials trials, KeptPlanting planting) {
        this.trials = trials;
        this.facts = trials.facts();
        this.spot = Outcomes.spot(facts.season(), planting);
        int place = facts.table().find(spot.stock(), spot.bed(), spot.sowWeek(), spot.method());
        this.lots = place < 0 ? new int[0] : trials.lotsAt(spot.stock(), place, Integer.MAX_VALUE);
        if (lots.length == 0) {
            throw new IllegalArgumentException("The plan has no lots of planting " + planting.number() + " there");
        }
    }

    /** All spots that are tried for a planting: for facts that go only as far as these. */
    public static Set<Spot> spots(Season season, KeptPlanting planting) {
        Spot spot = Outcomes.spot(season, planting);
        Set<Spot> spots = new HashSet<>();
        for (int bed = 0; bed < season.allBeds().size(); bed++) {
            spots.add(new Spot(spot.stock(), bed, spot.sowWeek(), spot.method()));
        }
        int methods = season.crops().stream()
                .filter(crop -> crop.name().equals(planting.crop()))
                .mapToInt(crop -> crop.methods().size())
                .sum();
        for (int method = 0; method < methods; method++) {
            for (int week = 0; week < season.weeks(); week++) {
                if (method != spot.method() || Math.abs(week - spot.sowWeek()) <= 1) {
                    spots.add(new Spot(spot.stock(), spot.bed(), week, method));
                }
            }
        }
        return spots;
    }

    /** The season without the planting, even if it stands already. */
    public Tried without() {
        return trials.tried(lots, SeasonScore.NOWHERE);
    }

    int lots() {
        return lots.length;
    }

    /** Whether it can't be put elsewhere, since it stands already. */
    public boolean isFixed() {
        return facts.isFixed(lots[0]) && !facts.isHeld(lots[0]);
    }

    /** The best of each sort; none for what stands already. */
    public List<Alternative> all(List<PossibleSeason> seasons) {
        if (isFixed()) {
            return List.of();
        }
        Barring barring = Barring.of(facts.season(), seasons);
        List<Alternative> all = new ArrayList<>();
        all.add(inWeek(Sort.WEEK_EARLIER, spot.sowWeek() - 1, barring));
        all.add(inWeek(Sort.WEEK_LATER, spot.sowWeek() + 1, barring));
        all.add(best(Sort.OTHER_BED, other -> other.bed() != spot.bed()));
        all.add(best(Sort.OTHER_METHOD, other -> other.method() != spot.method()));
        Tried without = without();
        all.add(new Alternative(Sort.LEFT_OUT, null, without, null, without.isStopped() ? 0 : 1, 1));
        return List.copyOf(all);
    }

    private Alternative inWeek(Sort sort, int week, Barring barring) {
        Spot there = new Spot(spot.stock(), spot.bed(), week, spot.method());
        int place = facts.table().find(there.stock(), there.bed(), there.sowWeek(), there.method());
        var barred = barring.why(there);
        if (place < 0 || barred.isPresent()) {
            return new Alternative(sort, there, null, barred.orElse(null), 0, 0);
        }
        Tried tried = trials.tried(lots, place);
        return new Alternative(sort, there, tried, null, tried.isStopped() ? 0 : 1, 1);
    }

    /** The best of the places that are different in a way. */
    private Alternative best(Sort sort, Predicate<Spot> isOther) {
        int best = SeasonScore.NOWHERE;
        Search.Found most = null;
        int offered = 0;
        int fitting = 0;
        for (int place = facts.table().firstPlace(spot.stock());
                place < facts.table().firstPlace(spot.stock() + 1);
                place++) {
            boolean gives = facts.table().blocks(facts.table().row(place)) > 0;
            if (!gives || !isOther.test(facts.table().spot(place))) {
                continue;
            }
            Search.Found gain = trials.gain(lots, place);
            offered++;
            fitting += gain.hard() >= 0 ? 1 : 0;
            if (gain.isBetterThan(most)) {
                most = gain;
                best = place;
            }
        }
        if (best < 0) {
            return new Alternative(sort, null, null, null, 0, 0);
        }
        return new Alternative(sort, facts.table().spot(best), trials.tried(lots, best), null, fitting, offered);
    }
}
