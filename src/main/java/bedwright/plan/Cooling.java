package bedwright.plan;

/**
 * How far a round of annealing has cooled: evenly from a temperature to nothing, over the round's moves or its time,
 * whichever is further on.
 *
 * @param soft temperature at first, grains summed over the seasons
 * @param moves of the round
 * @param nanos of the round; {@link Long#MAX_VALUE} where only moves count
 */
record Cooling(long soft, long moves, long nanos) {
    /** The temperature after so many moves and so long a time. */
    double after(long asked, long nanosGone) {
        double gone = Math.max((double) asked / moves, nanos == Long.MAX_VALUE ? 0 : (double) nanosGone / nanos);
        return soft * Math.max(0, 1 - gone);
    }
}
