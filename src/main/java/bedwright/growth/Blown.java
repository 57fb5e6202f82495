package bedwright.growth;

/**
 * What a gust does to a planting on a day of a season as usual.
 *
 * @param height of the plants that day, m
 * @param speed of the gust at the bed, m/s
 * @param flat share of the standing plants that it is expected to lay flat, 0 to 1
 * @param standsUp share of those that stand up again
 */
public record Blown(double height, double speed, double flat, double standsUp) {
    /** Share of the standing plants that are lost for good. */
    public double lost() {
        return flat * (1 - standsUp);
    }
}
