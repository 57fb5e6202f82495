package bedwright.recheck;

import bedwright.season.Labour;
import bedwright.season.Role;
import java.util.ArrayList;
import java.util.List;

/** What stems bring and hours cost in each possible season (season model, sections 5, 7 and 8). */
final class Markets {
    private final Facts facts;
    private final HourLimits limits;
    private final Demand demand;
    private final List<Demand.Taker> takers;
    private final long[] fixedWork;
    private final long[][][] stems;
    private final long[] ticksToCut;
    private final long[] ticksToClear;

    /** All hours and those of cutting, in ticks, by possible season and week. */
    private final long[][] hours;

    private final long[][] cutting;
    private final long[] takings;
    private final long[] shortage;
    private final long[] buyIn;
    private final long[] missing;

    /**
     * @param plantingWork ticks by week, without cutting
     * @param stems 1/100 stems by possible season, week and kind
     */
    Markets(Facts facts, long[] plantingWork, long[][][] stems) {
        this.facts = facts;
        this.stems = stems;
        limits = new HourLimits(facts.season);
        demand = new Demand(facts);
        takers = demand.inOrder();
        fixedWork = plantingWork.clone();
        for (int week = 0; week < facts.weeks(); week++) {
            fixedWork[week] += limits.chores[week] + demand.work[week];
        }
        List<Role> roles = facts.season.roles();
        ticksToCut = new long[roles.size()];
        ticksToClear = new long[roles.size()];
        for (int role = 0; role < roles.size(); role++) {
            ticksToCut[role] = Units.ticksAHundredth(roles.get(role).cutting());
            ticksToClear[role] = Units.ticksAHundredth(roles.get(role).clearing());
        }
        hours = new long[stems.length][facts.weeks()];
        cutting = new long[stems.length][facts.weeks()];
        takings = new long[stems.length];
        shortage = new long[stems.length];
        buyIn = new long[stems.length];
        missing = new long[stems.length];
        for (int k = 0; k < stems.length; k++) {
            for (int week = 0; week < facts.weeks(); week++) {
                sell(k, week);
            }
        }
    }

    private void sell(int k, int week) {
        int roles = facts.season.roles().size();
        Filling filling = new Filling(facts.kinds, takers, week, stems[k][week], roles);
        for (int t = 0; t < takers.size(); t++) {
            Demand.Taker taker = takers.get(t);
            long asked = taker.asked()[week];
            long delivered = filling.delivered[t];
            long lacking = asked - delivered;
            switch (taker.promised()) {
                case NOTHING -> takings[k] += taker.price() * delivered;
                case MUST -> {
                    takings[k] += taker.price() * delivered;
                    missing[k] += taker.extra() * lacking;
                }
                case BUY_IN -> {
                    takings[k] += taker.price() * asked;
                    buyIn[k] += taker.extra() * lacking;
                }
                case SHORTAGE -> {
                    takings[k] += taker.price() * delivered;
                    shortage[k] += taker.extra() * lacking;
                }
            }
        }
        hours[k][week] = fixedWork[week];
        for (int role = 0; role < roles; role++) {
            long cut = filling.served[role] * ticksToCut[role];
            cutting[k][week] += cut;
            hours[k][week] += cut + filling.left[role] * ticksToClear[role];
        }
    }

    /** Ticks over own and hired hours: by week what all seasons together need beyond K times the limit. */
    long hoursOver() {
        long over = 0;
        for (int week = 0; week < facts.weeks(); week++) {
            if (limits.own[week] < Units.UNLIMITED) {
                over += over(hours, week, limits.own[week] + limits.hired[week]);
            }
        }
        return over;
    }

    /** Ticks over the hours fit for cutting, likewise. */
    long cuttingOver() {
        long over = 0;
        for (int week = 0; week < facts.weeks(); week++) {
            if (limits.cutting[week] < Units.UNLIMITED) {
                over += over(cutting, week, limits.cutting[week]);
            }
        }
        return over;
    }

    private static long over(long[][] ticks, int week, long limit) {
        long sum = 0;
        for (long[] season : ticks) {
            sum += season[week];
        }
        return Math.max(0, sum - ticks.length * limit);
    }

    /** The seasons' money. */
    List<Tally.OneSeason> seasons(Tally.Constants constants) {
        List<Tally.OneSeason> seasons = new ArrayList<>();
        for (int k = 0; k < stems.length; k++) {
            long cost = hoursCost(hours[k]);
            long money = takings[k] - shortage[k] - buyIn[k] - cost - constants.sum();
            seasons.add(new Tally.OneSeason(takings[k], shortage[k], buyIn[k], cost, money, missing[k]));
        }
        return seasons;
    }

    /** Hours up to one's own at the owner's rate, the rest at the hired one. */
    private long hoursCost(long[] ticks) {
        Labour labour = facts.season.labour();
        long ownRate = facts.units.grainsATick(labour.ownRate());
        long hiredRate = facts.units.grainsATick(labour.hiredRate());
        long cost = 0;
        for (int week = 0; week < facts.weeks(); week++) {
            long own = Math.min(ticks[week], limits.own[week]);
            cost += own * ownRate + (ticks[week] - own) * hiredRate;
        }
        return cost;
    }
}
