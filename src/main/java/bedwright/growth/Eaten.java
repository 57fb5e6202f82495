package bedwright.growth;

/**
 * What a pest takes of a planting in a week of a season as usual.
 *
 * @param plants share of the seed or seedlings, 0 to 1
 * @param blooms share of that week's blooms, 0 to 1
 * @param isCovered whether it lies under row cover
 */
public record Eaten(double plants, double blooms, boolean isCovered) {}
