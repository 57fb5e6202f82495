package bedwright.plan;

import bedwright.growth.ProspectTable;
import bedwright.season.ChangePrices;
import bedwright.season.KeptPlanting;
import bedwright.season.Season;
import bedwright.season.Standing;
import bedwright.season.UnderWay;
import java.util.Arrays;

/**
 * The rule {@link Rule#CHANGES}: what it costs to put a planting elsewhere than the plan in force has it, in a season
 * under way. Each lot is told apart by where the plan in force has it; a change costs its kinds' prices together, the more
 * the nearer the first week in which anything is done otherwise.
 */
final class Changes {
    private final Season season;
    private final ProspectTable table;
    private final PlanFacts facts;
    private final ChangePrices prices;
    private final boolean any;
    /** Where the plan in force has each planting. */
    final int[] inForce;
    /** Number of the planting in force that it is a lot of, or 0. */
    final int[] number;

    Changes(PlanFacts facts) {
        this.facts = facts;
        this.season = facts.season;
        this.table = facts.table();
        this.prices = season.changes();
        this.inForce = Search.nothingPlaced(facts);
        this.number = new int[inForce.length];
        UnderWay underWay = season.underWay();
        this.any = underWay != null && !underWay.inForce().isEmpty();
        if (underWay == null || !any) {
            return;
        }
        Arrays.fill(inForce, SeasonScore.NOWHERE);
        for (KeptPlanting kept : underWay.inForce()) {
            int place = Outcomes.placeOf(facts, kept);
            if (place >= 0) {
                take(kept, place);
            }
        }
        for (int p = 0; p < inForce.length; p++) {
            inForce[p] = facts.isFixed(p) ? facts.fixedPlace[p] : inForce[p];
        }
    }

    private void take(KeptPlanting kept, int place) {
        int stock = table.stock(place);
        int lots = kept.lots();
        for (int p = facts.firstPlanting(stock); p < facts.firstPlanting(stock + 1) && lots > 0; p++) {
            if (number[p] == 0 && facts.mayBe(p, place)) {
                inForce[p] = place;
                number[p] = kept.number();
                lots--;
            }
        }
    }

    /** Whether a lot may be one of a kept planting: one of those that it is or was in the plan in force, or a new one. */
    boolean isLotOf(int planting, KeptPlanting kept) {
        Integer was = kept.was();
        int its = number[planting];
        return was == null || !any ? its == 0 || its == kept.number() : its == was;
    }

    /** What it costs to have a planting at a place, or nowhere; grains. */
    long cost(int planting, int place) {
        if (!any || inForce[planting] == place) {
            return 0;
        }
        int from = inForce[planting];
        if (from < 0) {
            return grains(prices.putIn(), firstWeek(place, true));
        }
        if (place < 0) {
            return grains(prices.leftOut(), firstWeek(from, true));
        }
        boolean only = table.bed(from) == table.bed(place)
                && table.sowWeek(from) == table.sowWeek(place)
                && table.method(from) == table.method(place);
        double price = (table.bed(from) == table.bed(place) ? 0 : prices.bed())
                + (table.sowWeek(from) == table.sowWeek(place) ? 0 : prices.week())
                + (table.method(from) == table.method(place) ? 0 : prices.method())
                + (table.until(from) == table.until(place) ? 0 : prices.pulled());
        return grains(price, Math.min(firstWeek(from, only), firstWeek(place, only)));
    }

    /**
     * The first week in which a place asks for something that can still be done otherwise: that of sowing, of planting out
     * for what is in trays, of clearing for what stands.
     */
    private int firstWeek(int place, boolean isClearing) {
        int stock = table.stock(place);
        Standing stands = season.standingOf(stock);
        if (stands == null || stands.past() == null) {
            return table.sowWeek(place);
        }
        if (stands.isInTray()) {
            return table.sowWeek(place) + facts.weeksToTheBed(stock, table.method(place));
        }
        return isClearing ? table.heldTo(table.row(place)) - 1 : season.firstWeek();
    }

    private long grains(double price, int week) {
        return Grains.ofThing(season, price * prices.times(week - season.firstWeek()));
    }
}
