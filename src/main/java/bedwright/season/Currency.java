package bedwright.season;

/** The currency of a season. Prices in a season file are in its main unit, as decimals. */
public record Currency(
        @Fact(value = "Sign or letters of the currency", byDefault = "\"€\"", least = 1)
        String sign,

        @Fact(value = "Digits behind the point of its smallest unit", byDefault = "2", min = 0, max = 3)
        int digits) {

    /**
     * Smallest units of money that a season may move: plans count it in small parts of these, exactly as long as their sum
     * has room among the whole numbers of a double.
     */
    public static final long MOST_SMALLEST = 1_000_000_000;

    /** Smallest units in a main unit: 100 for two digits. */
    public int smallest() {
        int units = 1;
        for (int i = 0; i < digits; i++) {
            units *= 10;
        }
        return units;
    }

    /** Main units of money that a season may move, takings and costs together: ten million for two digits. */
    public double mostCounted() {
        return (double) MOST_SMALLEST / smallest();
    }
}
