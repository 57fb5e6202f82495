package bedwright.climate;

import bedwright.season.Bed;
import bedwright.season.Season;

/** Shelter of beds by windbreaks, and distances to rough grass. */
public final class Shelter {
    private Shelter() {}

    /**
     * Relative speed at a bed of a gust from a direction, 0 to 1: mean of five points at the centres of fifths of its
     * length, each with the lowest of the windbreaks met by a ray upwind (bed in the lee) or downwind (bed to windward);
     * times the tunnel's factor if there is one.
     *
     * @param from degrees clockwise from north
     */
    public static double relativeSpeed(Season season, Bed bed, double from) {
        throw new UnsupportedOperationException();
    }

    /** Distance in metres from the middle of a bed to the nearest rough grass; infinite where there is none. */
    public static double toRoughGrass(Season season, Bed bed) {
        throw new UnsupportedOperationException();
    }
}
