package bedwright.climate;

import bedwright.season.Bed;
import bedwright.season.BedBlock;
import bedwright.season.Point;
import bedwright.season.RoughGrass;
import bedwright.season.Season;
import bedwright.season.Windbreak;

/** Shelter of beds by windbreaks, and distances to rough grass. */
public final class Shelter {
    private static final int POINTS = 5;
    /** Metres, or shares of a windbreak's length, by which a ray may miss it and still meets it. */
    private static final double HAIR = 1e-9;

    private Shelter() {}

    /**
     * Relative speed at a bed of a gust from a direction, 0 to 1: mean of five points at the centres of fifths of its
     * length, each with the lowest of the windbreaks met by a ray upwind (bed in the lee) or downwind (bed to windward);
     * times the tunnel's factor if there is one. A wind that blows along the very line of a windbreak does not meet it.
     *
     * <p>The speeds are those of {@link WindbreakTable}, which are of mean wind: that gusts are slowed alike is an
     * assumption.
     *
     * @param from degrees clockwise from north
     */
    public static double relativeSpeed(Season season, Bed bed, double from) {
        if (!Double.isFinite(from)) {
            throw new IllegalArgumentException("A wind comes from a direction in degrees, not from " + from);
        }
        double towards = Math.toRadians(from);
        double east = StrictMath.sin(towards);
        double north = StrictMath.cos(towards);
        double sum = 0;
        for (int i = 0; i < POINTS; i++) {
            Point point = bed.at((i + 0.5) / POINTS);
            double lowest = 1;
            for (Windbreak windbreak : season.windbreaks()) {
                double lee = distance(point, east, north, windbreak) / windbreak.height();
                double windward = distance(point, -east, -north, windbreak) / windbreak.height();
                lowest = Math.min(lowest, WindbreakTable.lee(windbreak.density(), lee));
                lowest = Math.min(lowest, WindbreakTable.windward(windward));
            }
            sum += lowest;
        }
        BedBlock.Tunnel tunnel = bed.block().tunnel();
        return sum / POINTS * (tunnel == null ? 1 : tunnel.gusts());
    }

    /** Distance along a ray to a windbreak, metres; infinite if the ray misses it. */
    private static double distance(Point start, double east, double north, Windbreak windbreak) {
        double alongX = windbreak.to().x() - windbreak.from().x();
        double alongY = windbreak.to().y() - windbreak.from().y();
        double awayX = windbreak.from().x() - start.x();
        double awayY = windbreak.from().y() - start.y();
        double cross = east * alongY - north * alongX;
        double distance = (awayX * alongY - awayY * alongX) / cross;
        double share = (awayX * north - awayY * east) / cross;
        boolean meets = Math.abs(cross) > HAIR * Math.hypot(alongX, alongY)
                && distance >= -HAIR
                && share >= -HAIR
                && share <= 1 + HAIR;
        return meets ? Math.max(0, distance) : Double.POSITIVE_INFINITY;
    }

    /** Distance in metres from the middle of a bed to the nearest rough grass; infinite where there is none. */
    public static double toRoughGrass(Season season, Bed bed) {
        Point middle = bed.at(0.5);
        double nearest = Double.POSITIVE_INFINITY;
        for (RoughGrass edge : season.roughGrass()) {
            nearest = Math.min(nearest, distance(middle, edge.from(), edge.to()));
        }
        return nearest;
    }

    private static double distance(Point point, Point from, Point to) {
        double alongX = to.x() - from.x();
        double alongY = to.y() - from.y();
        double length2 = alongX * alongX + alongY * alongY;
        double share = length2 == 0
                ? 0
                : Math.clamp(((point.x() - from.x()) * alongX + (point.y() - from.y()) * alongY) / length2, 0, 1);
        return Math.hypot(point.x() - from.x() - share * alongX, point.y() - from.y() - share * alongY);
    }
}
