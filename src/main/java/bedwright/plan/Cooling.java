package bedwright.plan;

/**
 * How far a round of annealing has cooled, over its moves or its time, whichever is further on: evenly between two shares of
 * a temperature, then quickly to nothing. Hotter than that what the round began with is only lost, and colder nothing
 * moves any more: see the contributors' page.
 *
 * @param soft temperature at first, grains summed over the seasons
 * @param moves of the round
 * @param nanos of the round; {@link Long#MAX_VALUE} where only moves count
 */
record Cooling(long soft, long moves, long nanos) {
    private static final double FIRST = 0.75;
    private static final double LAST = 0.2;
    /** Share of the round in which it cools to nothing. */
    private static final double QUENCH = 0.04;

    /** The temperature after so many moves and so long a time. */
    double after(long asked, long nanosGone) {
        double gone = Math.max((double) asked / moves, nanos == Long.MAX_VALUE ? 0 : (double) nanosGone / nanos);
        double left = Math.max(0, 1 - gone);
        return left < QUENCH
                ? soft * LAST * left / QUENCH
                : soft * (LAST + (FIRST - LAST) * (left - QUENCH) / (1 - QUENCH));
    }
}
