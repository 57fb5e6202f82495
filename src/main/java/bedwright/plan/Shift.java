package bedwright.plan;

/** Plantings of one stock that stand together, and a place for them or {@link SeasonScore#NOWHERE}. */
record Shift(int[] plantings, int to) {}
