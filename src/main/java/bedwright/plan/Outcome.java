package bedwright.plan;

import bedwright.season.KeptPlanting;
import bedwright.season.Plan;
import java.util.List;

/**
 * What a plan brings, in all its possible seasons: all that a sheet, a summary or a table shows. Computed afresh from
 * the plan, never taken from a running search. Arrays are not to be written to.
 *
 * <p>Units: stems 1/100, lengths mm, work in ticks and money in grains (see {@link Grains}). Index k is the possible
 * season, w the week.
 *
 * @param seasons number of possible seasons, K
 * @param score the whole score
 * @param plantings the plantings by number; lots of one crop with the same bed, week and method are one
 * @param demand everybody who takes stems
 * @param served stems that demand line i gets: {@code served[i][w][k]}
 * @param stems stems that come from a kind and all kinds within it: {@code stems[node][w][k]}
 * @param leftOver stems of a role that go nowhere: {@code leftOver[role][w][k]}
 * @param work what work there is
 * @param stocks what is used of bench, trays, nets and cover
 * @param bedUse metres held: {@code bedUse[bed][w]}, mm
 * @param money where the money comes from and goes
 * @param broken every hard rule broken, by place and week; empty for a plan that can be carried out
 */
public record Outcome(
        int seasons,
        Plan.Score score,
        List<KeptPlanting> plantings,
        List<DemandLine> demand,
        int[][][] served,
        int[][][] stems,
        int[][][] leftOver,
        Work work,
        List<StockUse> stocks,
        int[][] bedUse,
        Money money,
        List<Broken> broken) {

    /**
     * Work in ticks.
     *
     * @param chores standing work by week
     * @param making making up bouquets, by week
     * @param service serving outlets, by week
     * @param plantings work on the plantings, set-up included, by week
     * @param cutting cutting {@code [w][k]}
     * @param clearing clearing of stems left over {@code [w][k]}
     * @param own own hours by week; {@link Long#MAX_VALUE} / 4 where there is no limit
     * @param hired hours that can be hired, by week
     * @param cuttingLimit hours fit for cutting, by week; {@link Long#MAX_VALUE} / 4 where there is no limit
     */
    public record Work(
            long[] chores,
            long[] making,
            long[] service,
            long[] plantings,
            long[][] cutting,
            long[][] clearing,
            long[] own,
            long[] hired,
            long[] cuttingLimit) {

        /** All work of a week in a season, ticks. */
        public long all(int week, int k) {
            return chores[week] + making[week] + service[week] + plantings[week] + cutting[week][k] + clearing[week][k];
        }
    }

    /** What kind of stock it is. */
    public enum StockKind {
        BENCH,
        TRAYS,
        NET,
        COVER
    }

    /**
     * Use of one stock.
     *
     * @param name its name, as a person reads it
     * @param use by week: cells, or mm
     * @param owned cells, or mm
     * @param canBuy whether more can be bought
     * @param extra cost of the peak beyond what is owned, grains
     */
    public record StockUse(StockKind kind, String name, int[] use, long owned, boolean canBuy, long extra) {}

    /**
     * Money in grains; each by possible season, or the same in every one.
     *
     * @param takings for stems delivered or ordered
     * @param shortage for promised stems missing
     * @param buyIn for promised stems bought in
     * @param hours own and hired
     * @param season what is left in each season: takings less everything else
     * @param material seed, plugs and wear
     * @param extraStock nets, trays and cover beyond what is owned
     * @param rest rest years broken
     * @param followOn families following themselves
     * @param changes of the plan in force, during a season: a price on them, which nobody pays
     */
    public record Money(
            long[] takings,
            long[] shortage,
            long[] buyIn,
            long[] hours,
            long[] season,
            long material,
            long extraStock,
            long rest,
            long followOn,
            long changes) {}

    /**
     * A hard rule broken.
     *
     * @param rule the rule's sentence for the grower
     * @param where bed, stock or "hours"
     * @param week week, or −1
     * @param by by how much, in the unit (mean over the seasons)
     * @param unit m, hours, cells
     */
    public record Broken(String rule, String where, int week, double by, String unit) {}
}
