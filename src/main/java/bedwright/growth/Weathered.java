package bedwright.growth;

/**
 * What noted weather has most likely taken of a planting, by what was not seen of it since.
 *
 * @param cause of what kind the weather was
 * @param day of the season on which it was worst
 * @param worst minimum in the open of that night, °C; or speed in the open of that day's gust, m/s
 * @param times nights or gusts that took something worth telling
 * @param share of the planting that it took, all together, in the mean of the possible seasons; 0 where nothing tells how
 *     much, as of a winter's cold
 */
public record Weathered(Cause cause, int day, double worst, int times, double share) {
    /** Less than this is not worth telling. */
    static final double WORTH_TELLING = 0.01;

    /** Kinds of weather. */
    public enum Cause {
        /** A night as cold as it does not stand. */
        NIGHT,
        /** The same in the winter that it stands through, for which its winter share stands. */
        WINTER,
        /** Gusts. */
        GUST
    }
}
