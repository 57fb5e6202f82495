package bedwright.season;

/** The currency of a season. Prices in a season file are in its main unit, as decimals. */
public record Currency(
        @Fact(value = "Sign or letters of the currency", byDefault = "\"€\"", least = 1)
        String sign,

        @Fact(value = "Digits behind the point of its smallest unit", byDefault = "2", min = 0, max = 3)
        int digits) {

    /** Smallest units in a main unit: 100 for two digits. */
    public int smallest() {
        int units = 1;
        for (int i = 0; i < digits; i++) {
            units *= 10;
        }
        return units;
    }
}
