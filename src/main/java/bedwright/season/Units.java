package bedwright.season;

/**
 * The units in which a file is written and in which a person reads what comes of it: one setting for a file. Inside,
 * everything is in metres, °C and m/s. The factors are exact by definition (NIST Special Publication 811, 2008 edition,
 * appendix B: foot, inch, mile an hour, degree Fahrenheit).
 */
public enum Units {
    /** Metres, °C, m/s. */
    METRES("metre", "metres"),
    /** Feet, inches, °F, miles an hour. */
    FEET("foot", "feet");

    private static final String FOOT = "0.3048";

    private final String one;
    private final String several;

    Units(String one, String several) {
        this.one = one;
        this.several = several;
    }

    /** What a length is counted in: {@code metre} or {@code foot}. */
    public String one() {
        return one;
    }

    /** What lengths are counted in: {@code metres} or {@code feet}. */
    public String several() {
        return several;
    }

    /** Of lengths: m or ft. */
    public Unit length() {
        return this == METRES ? Unit.plain("m") : Unit.of("ft", FOOT, "1", "0");
    }

    /** Of the distance of plants, their height, the width of a bed or a path: m or in. */
    public Unit smallLength() {
        return this == METRES ? Unit.plain("m") : Unit.of("in", "0.0254", "1", "0");
    }

    /** Of what each metre or foot takes or costs. */
    public Unit eachLength(String symbol) {
        return this == METRES ? Unit.plain(symbol) : Unit.of(symbol, "1", FOOT, "0");
    }

    /** Of temperatures: °C or °F. */
    public Unit temperature() {
        return this == METRES ? Unit.plain("°C") : Unit.of("°F", "5", "9", "32");
    }

    /** Of differences between temperatures: °C or °F. */
    public Unit degrees() {
        return this == METRES ? Unit.plain("°C") : Unit.of("°F", "5", "9", "0");
    }

    /** Of sums of warmth: °C·d or °F·d. */
    public Unit degreeDays() {
        return this == METRES ? Unit.plain("°C·d") : Unit.of("°F·d", "5", "9", "0");
    }

    /** Of days for each degree: days/°C or days/°F. */
    public Unit daysADegree() {
        return this == METRES ? Unit.plain("days/°C") : Unit.of("days/°F", "9", "5", "0");
    }

    /** Of wind: m/s or mph. */
    public Unit speed() {
        return this == METRES ? Unit.plain("m/s") : Unit.of("mph", "0.44704", "1", "0");
    }

    /**
     * The measure of a figure of a record.
     *
     * @param fact what it is, in metric units
     */
    public Unit of(Fact fact) {
        if (fact.each()) {
            return eachLength(fact.unit());
        }
        return switch (fact.unit()) {
            case "m" -> fact.small() ? smallLength() : length();
            case "°C" -> temperature();
            case "°C difference" -> degrees();
            case "°C·d" -> degreeDays();
            case "days/°C" -> daysADegree();
            case "m/s" -> speed();
            default -> Unit.plain(fact.unit());
        };
    }
}
