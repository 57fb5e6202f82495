package bedwright.plan;

/**
 * Where each price of a season stands in one flat array, kind after kind. A price of kind, week and season is at (cell ×
 * weeks + week) × K + season, cells as in {@link KindCells}; one of week and season at week × K + season.
 *
 * @param asked what a line that asks for a kind pays more than one that asks for the kind above: grains a hundredth
 * @param most what the limit of a kind's sales takes from the worth of its stems: grains a hundredth
 * @param hired what an hour beyond one's own costs more than an own one: grains a tick, by week and season
 * @param hours what an hour costs beyond its pay, by week: grains a tick
 * @param cutting what an hour of cutting costs beyond that, by week: grains a tick
 * @param shelves bench cells and stocks by shelf and week, beds left out: grains a mm or cell
 * @param lots what a lot costs, by stock: grains
 * @param standing what a fixed planting pays for its place in its bed, by planting: grains a mm
 * @param seasons weights of the possible seasons
 * @param must what a weighted hundredth of a stem that must be ours is worth: grains
 * @param size how many prices there are
 */
record PriceLayout(
        int asked,
        int most,
        int hired,
        int hours,
        int cutting,
        int shelves,
        int lots,
        int standing,
        int seasons,
        int must,
        int size) {

    static PriceLayout of(PlanFacts facts) {
        int stems = facts.cells.size() * facts.weeks * facts.seasonCount;
        int most = stems;
        int hired = most + stems;
        int hours = hired + facts.weeks * facts.seasonCount;
        int cutting = hours + facts.weeks;
        int shelves = cutting + facts.weeks;
        int lots = shelves + (facts.shelves.size() - facts.bench) * facts.weeks;
        int standing = lots + facts.table.stocks();
        int seasons = standing + facts.plantings();
        int must = seasons + facts.seasonCount;
        return new PriceLayout(0, most, hired, hours, cutting, shelves, lots, standing, seasons, must, must + 1);
    }
}
