package bedwright.plan;

/** The rules of the score, each with its level, its unit and its sentence for the grower. */
public enum Rule {
    BED_ROOM(Level.HARD, "mm·weeks", "No bed holds more metres than it has."),
    HOURS(
            Level.HARD,
            "minutes",
            "No week takes more hours than there are, own and hired, in the mean of the possible seasons."),
    CUTTING_HOURS(
            Level.HARD, "minutes", "No week takes more cutting than the hands can do in its cool hours, in the mean."),
    BENCH_ROOM(Level.HARD, "cells", "The bench holds no more tray cells than it has room for."),
    STOCK_ROOM(
            Level.HARD, "cm or cells", "Nets, cover and trays that can't be bought are not used beyond what is there."),
    MUST_BE_OURS(Level.MEDIUM, "stems", "What must be ours is grown here."),
    TAKINGS(Level.SOFT, "money", "Stems that go somewhere are paid."),
    SHORTAGE(Level.SOFT, "money", "Promised stems that are missing cost their shortage price."),
    BUY_IN(Level.SOFT, "money", "Promised stems that are missing are bought in where that was agreed."),
    HOURS_PAID(Level.SOFT, "money", "Hours cost their rate: own ones first, then hired ones."),
    MATERIAL(Level.SOFT, "money", "Seed, plugs, tubers and the wear of nets and cover are paid."),
    EXTRA_STOCK(Level.SOFT, "money", "Nets, cover and trays beyond what is owned are bought."),
    REST_YEARS(Level.SOFT, "money", "A family comes back into a bed only after its rest years, or at a price."),
    FOLLOW_ON(Level.SOFT, "money", "A family does not follow itself in a bed, or at a price."),
    CHANGES(
            Level.SOFT,
            "money",
            "What people already go by is changed during the season at a price only, dearer the nearer it is.");

    /** How strict a rule is. */
    public enum Level {
        /** A plan that breaks it can't be carried out. */
        HARD,
        /** Comes before any money. */
        MEDIUM,
        /** Is counted in money. */
        SOFT
    }

    private final Level level;
    private final String unit;
    private final String sentence;

    Rule(Level level, String unit, String sentence) {
        this.level = level;
        this.unit = unit;
        this.sentence = sentence;
    }

    public Level level() {
        return level;
    }

    /** What it is counted in, for people. */
    public String unit() {
        return unit;
    }

    public String sentence() {
        return sentence;
    }
}
