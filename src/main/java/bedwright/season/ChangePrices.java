package bedwright.season;

/**
 * What it costs to change a plan that people already go by, beside what the change brings. For each lot, far ahead; dearer
 * the nearer the first day on which anything is done otherwise. The usual prices are assumed.
 */
public record ChangePrices(
        @Fact(value = "Another bed", unit = "money", min = 0, byDefault = "3.3")
        double bed,

        @Fact(value = "Another week", unit = "money", min = 0, byDefault = "3.3")
        double week,

        @Fact(value = "Another method", unit = "money", min = 0, byDefault = "3.3")
        double method,

        @Fact(value = "Pulled sooner or later", unit = "money", min = 0, byDefault = "3.3")
        double pulled,

        @Fact(value = "Left out", unit = "money", min = 0, byDefault = "5.5")
        double leftOut,

        @Fact(value = "Put in", unit = "money", min = 0, byDefault = "5.5")
        double putIn,

        @Fact(value = "How many times as dear a change is that is due at once", min = 1, max = 100, byDefault = "4")
        double atOnce,

        @Fact(value = "Weeks ahead from which on a change costs no more than that", min = 1, max = 80, byDefault = "8")
        int weeks) {

    /** The usual prices. */
    public static final ChangePrices USUAL = new ChangePrices(3.3, 3.3, 3.3, 3.3, 5.5, 5.5, 4, 8);

    /**
     * How many times its price a change costs, by how many weeks lie between now and its first week.
     *
     * @param ahead weeks, 0 for this one
     */
    public double times(int ahead) {
        return ahead >= weeks ? 1 : 1 + (atOnce - 1) * (weeks - Math.max(0, ahead)) / weeks;
    }

    /** So many times as dear. */
    public ChangePrices dearer(double factor) {
        return new ChangePrices(
                factor * bed,
                factor * week,
                factor * method,
                factor * pulled,
                factor * leftOut,
                factor * putIn,
                atOnce,
                weeks);
    }
}
