package bedwright.growth;

/**
 * Where and how a lot of a stock may stand.
 *
 * @param stock as {@link ProspectTable} numbers them
 * @param bed number of the bed in the season
 * @param sowWeek week of the season; negative for what was sown before it
 * @param method index of the method in its crop's list; with a last week where it is pulled early, as {@link
 *     ProspectTable#way(int, int)} has it
 */
public record Spot(int stock, int bed, int sowWeek, int method) {}
