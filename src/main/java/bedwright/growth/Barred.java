package bedwright.growth;

/** Why a season does not offer a planting some bed, week and method. */
public enum Barred {
    /** It would be sown before the season or after it. */
    OUTSIDE_SEASON,
    /** The method is not sown at that time of the year. */
    SOW_DATES,
    /** The seed bed is too cold or too warm in that week. */
    SEED_TEMPERATURE,
    /** It would come into the bed only after the season's end. */
    TOO_LATE,
    /** The bed can't be worked yet. */
    NOT_WORKABLE,
    /** The bed is taken by something else while it would stand there. */
    TAKEN,
    /** Its family must not come back into this bed so soon. */
    REST_YEARS,
    /** It would give no stem in any possible season. */
    GIVES_NOTHING,
    /** What already stands or is bought was decided otherwise. */
    DECIDED
}
