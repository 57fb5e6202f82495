package bedwright.season;

/** What a figure rests on. */
public enum Origin {
    /** A publication that is named. */
    PUBLISHED,
    /** Worked out from other figures; the source says from which and how. */
    CALCULATED,
    /** Remembered from publications that were not opened for it; the source says from which. */
    MEMORY,
    /** Common practice of the trade, without a source. */
    PRACTICE,
    /** Assumed: a guess that seemed better than none. */
    ASSUMED,
    /** The grower's own. */
    OWN
}
