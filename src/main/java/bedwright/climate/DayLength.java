package bedwright.climate;

/** Length of the day from latitude and day of the year. */
final class DayLength {
    /** The sun's centre below the horizon at sunrise and sunset, degrees: its upper edge is then just seen. */
    private static final double BELOW_HORIZON = 0.8333;

    private DayLength() {}

    /**
     * Hours from sunrise to sunset: the CBM model of W. C. Forsythe and others, A model comparison for daylength as a
     * function of latitude and day of year, Ecological Modelling 80 (1995) 87–95, equations 1 to 3, with p = 0.8333°.
     *
     * @param latitude degrees, south negative, −90 to 90; where the sun does not set or rise, 24 or 0 hours
     * @param dayOfYear 1 to 366
     */
    static double hours(double latitude, int dayOfYear) {
        if (!(Math.abs(latitude) <= 90)) {
            throw new IllegalArgumentException("A latitude lies between −90 and 90 degrees, not at " + latitude);
        }
        if (dayOfYear < 1 || dayOfYear > 366) {
            throw new IllegalArgumentException("A day of the year is 1 to 366, not " + dayOfYear);
        }
        double revolution = 0.2163108 + 2 * StrictMath.atan(0.9671396 * StrictMath.tan(0.00860 * (dayOfYear - 186)));
        double declination = StrictMath.asin(0.39795 * StrictMath.cos(revolution));
        double phi = Math.toRadians(latitude);
        double cosine =
                (StrictMath.sin(Math.toRadians(BELOW_HORIZON)) + StrictMath.sin(phi) * StrictMath.sin(declination))
                        / (StrictMath.cos(phi) * StrictMath.cos(declination));
        return 24 - 24 / Math.PI * StrictMath.acos(Math.clamp(cosine, -1, 1));
    }
}
