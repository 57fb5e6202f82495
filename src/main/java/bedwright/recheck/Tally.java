package bedwright.recheck;

import java.util.List;

/**
 * What a recheck comes to: the score of the season model, section 8, and what it is made of, so that a difference from
 * another count can be found.
 *
 * @param hard 1/100,000 of a mm·week, minute, cell or cm over, negative; 0 if no hard rule is broken
 * @param medium 1/100 stem missing × weight, summed over the possible seasons, negative
 * @param soft money in grains, 1/6,000,000 of the smallest unit of the currency, caution included
 * @param over what breaks hard rules, by rule
 * @param seasons money by possible season
 * @param constants costs that count in every season alike
 * @param faults plantings that the season does not offer, in words; none of them is scored
 */
public record Tally(
        long hard,
        long medium,
        long soft,
        Over over,
        List<OneSeason> seasons,
        Constants constants,
        List<String> faults) {

    public Tally {
        seasons = List.copyOf(seasons);
        faults = List.copyOf(faults);
    }

    /**
     * What is over its limit, summed over the weeks.
     *
     * @param bedRoom mm·weeks, over all beds
     * @param hours ticks (1/100,000 minute), summed over the possible seasons
     * @param cuttingHours ticks, likewise
     * @param bench cells·weeks
     * @param stocks each stock of which no more can be bought: trays in cells·weeks, nets and cover in mm·weeks
     * @param notOffered plantings at places that the season does not offer; they are not in the score
     */
    public record Over(
            long bedRoom, long hours, long cuttingHours, long bench, List<StockOver> stocks, int notOffered) {
        public Over {
            stocks = List.copyOf(stocks);
        }
    }

    /**
     * A stock that is exceeded or bought.
     *
     * @param name trays, row cover, or the net's name
     * @param over mm·weeks or cells·weeks over, where none can be bought
     * @param weight hard score of one of them
     */
    public record StockOver(String name, long over, long weight) {}

    /**
     * Money of one possible season, in grains.
     *
     * @param takings paid by outlets and orders, before buying in
     * @param shortage cost of promised stems that are missing
     * @param buyIn cost of stems bought in
     * @param hoursCost hours, own and hired, clearing of leftovers among them
     * @param money takings less all costs, the constant ones among them
     * @param missing {@code must} stems missing × weight, in 1/100 stem
     */
    public record OneSeason(long takings, long shortage, long buyIn, long hoursCost, long money, long missing) {}

    /**
     * Costs that do not depend on the season, in grains.
     *
     * @param material seed, plugs, wear of net and cover
     * @param extraStock stock bought beyond what is owned
     * @param restBroken rest years broken
     * @param followOn plantings that follow another of their family
     * @param changes of the plan in force, during a season
     */
    public record Constants(long material, long extraStock, long restBroken, long followOn, long changes) {
        long sum() {
            return material + extraStock + restBroken + followOn + changes;
        }
    }
}
