package bedwright.season;

/** How sure a figure is. */
public enum Sureness {
    /** Measured, and agreed on by more than one source. */
    SURE,
    /** Published, or long experience. */
    FAIR,
    /** A guess, or one person's word. */
    WEAK
}
