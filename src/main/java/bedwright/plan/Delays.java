package bedwright.plan;

import bedwright.growth.ProspectTable;
import bedwright.growth.Spot;
import bedwright.season.KeptPlanting;
import bedwright.season.Season;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What it would cost to begin plantings of a plan a week later, or not at all: each is really tried, all else staying as
 * planned, and what it changes is told by the difference of the plan's own score.
 *
 * <p>Not for use by several threads at once.
 */
public final class Delays {
    private final PlanFacts facts;
    private final SeasonScore score;

    private Delays(PlanFacts facts, int[] places) {
        this.facts = facts;
        this.score = new SeasonScore(facts);
        int[] all = places.clone();
        for (int p = 0; p < all.length; p++) {
            all[p] = facts.isFixed(p) ? facts.fixedPlace[p] : all[p];
        }
        score.settleAll(all);
    }

    /**
     * Measures from a plan.
     *
     * @param places where each planting is, by its number in the facts; −1 where it is left out
     */
    public static Delays of(PlanFacts facts, int[] places) {
        return new Delays(facts, places);
    }

    /** The spots of all later weeks that plantings of a plan may be asked about. */
    public static List<Spot> spots(Season season, List<KeptPlanting> plan) {
        List<Spot> spots = new ArrayList<>();
        for (KeptPlanting planting : plan) {
            Spot spot = Outcomes.spot(season, planting);
            if (spot.stock() < season.pool().size()) {
                for (int w = Math.max(0, spot.sowWeek() + 1); w < season.weeks(); w++) {
                    spots.add(new Spot(spot.stock(), spot.bed(), w, spot.method()));
                }
            }
        }
        return spots;
    }

    /**
     * What a delay costs.
     *
     * @param grains money lost in the mean of the seasons, caution included, in grains; below 0 where it gains
     * @param mustStems stems more that must be ours and are missing, × their weight, in the mean of the seasons
     * @param isLeftOut whether it means that they are left out, since no later week will do
     * @param stopped the hard rule that a week later would break, or null
     */
    public record Delay(
            double grains,
            double mustStems,
            boolean isLeftOut,
            @Nullable Rule stopped) {}

    /** Begins plantings of the plan a week later; where one can't be, they are all left out. */
    public Delay later(List<KeptPlanting> plantings) {
        List<Integer> lots = new ArrayList<>();
        List<Integer> to = new ArrayList<>();
        boolean isOffered = true;
        for (KeptPlanting planting : plantings) {
            Spot spot = Outcomes.spot(facts.season(), planting);
            int next = next(spot, spot.sowWeek() + 1);
            for (int lot : lots(planting, spot)) {
                isOffered &= next >= 0 && (!facts.isFixed(lot) || facts.isHeld(lot));
                lots.add(lot);
                to.add(next);
            }
        }
        if (!isOffered) {
            return leftOut(lots, null);
        }
        for (int i = 0; i < lots.size(); i++) {
            score.put(lots.get(i), to.get(i));
        }
        Answer answer = score.ask();
        Rule stopped = null;
        if (score.hardAfter() < score.hard()) {
            for (Rule rule : Rule.values()) {
                if (rule.level() == Rule.Level.HARD && answer.cost(rule) > 0 && stopped == null) {
                    stopped = rule;
                }
            }
        }
        Delay delay = told(false, stopped);
        score.forget();
        return stopped == null ? delay : leftOut(lots, stopped);
    }

    /** Leaves plantings of the plan out. */
    public Delay leftOut(List<KeptPlanting> plantings) {
        List<Integer> lots = new ArrayList<>();
        plantings.forEach(planting -> lots.addAll(lots(planting, Outcomes.spot(facts.season(), planting))));
        return leftOut(lots, null);
    }

    private Delay leftOut(List<Integer> lots, @Nullable Rule stopped) {
        lots.forEach(lot -> score.put(lot, SeasonScore.NOWHERE));
        score.ask();
        Delay delay = told(true, stopped);
        score.forget();
        return delay;
    }

    private Delay told(boolean isLeftOut, @Nullable Rule stopped) {
        double seasons = facts.seasonCount;
        return new Delay(
                (score.soft() - score.softAfter()) / seasons,
                (score.medium() - score.mediumAfter()) / seasons / 100,
                isLeftOut,
                stopped);
    }

    /**
     * The last sow week, each from the planting's own on being offered in its bed and by its method, that still gives
     * stems; its own where none later does.
     */
    public int lastWeek(KeptPlanting planting) {
        Spot spot = Outcomes.spot(facts.season(), planting);
        int last = spot.sowWeek();
        while (next(spot, last + 1) >= 0) {
            last++;
        }
        return last;
    }

    private int next(Spot spot, int week) {
        ProspectTable table = facts.table();
        int place = table.find(spot.stock(), spot.bed(), week, spot.method());
        if (place < 0 || table.blocks(table.row(place)) == 0) {
            return -1;
        }
        return place;
    }

    private List<Integer> lots(KeptPlanting planting, Spot spot) {
        int place = facts.table().find(spot.stock(), spot.bed(), spot.sowWeek(), spot.method());
        List<Integer> lots = new ArrayList<>();
        for (int p = facts.firstPlanting(spot.stock()); p < facts.firstPlanting(spot.stock() + 1); p++) {
            if (score.place(p) == place && place >= 0 && facts.changes.isLotOf(p, planting)) {
                lots.add(p);
            }
        }
        if (lots.size() != planting.lots()) {
            throw new IllegalArgumentException("Planting " + planting.number() + " is not in this plan");
        }
        return lots;
    }
}
