package bedwright.station;

import bedwright.season.Site;
import bedwright.weather.StationRecord;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;

/**
 * Damaging gusts of a record: how often from each of four sides in each month, and how strong.
 *
 * <p>A storm is a run of days on end with gusts of 15 m/s or more (the speed at which tall plants without a net begin to
 * lie down; judgement, weak), told by its strongest. The speeds of a side's storms follow a {@link Gumbel} distribution by
 * moments, as in the published example of Valentine, Nebraska, which fits the gusts above a threshold of 20 m/s so. Sides
 * with fewer than ten storms have the strength of all sides together.
 */
final class StormFit {
    /** m/s. */
    static final double DAMAGING = 15;
    /** The strongest gust of a day by its mean wind: assumed, a gusty day inland, from memory of no certain source. */
    static final double GUST_BY_MEAN = 2.2;
    /** For a record without wind, assumed: about ten damaging gusts a year. */
    private static final double ASSUMED_A_WEEK = 0.2;

    private static final double ASSUMED_MODE = 17.5;
    private static final double ASSUMED_SCALE = 2.5;
    private static final double LEAST_DAYS = 365;
    private static final double LEAST_SCALE = 0.1;
    private static final int SIDES = 4;

    private final double otherwiseFrom;
    private final List<Storm> storms = new ArrayList<>();
    private final int[] days = new int[12];

    private record Storm(int month, double from, double speed) {}

    /**
     * @param otherwiseFrom side from which gusts without direction come, degrees
     */
    StormFit(StationRecord record, double otherwiseFrom) {
        this.otherwiseFrom = otherwiseFrom;
        Storm storm = null;
        for (int day = 0; day < record.days(); day++) {
            double gust = gust(record, day);
            int month = record.dateOf(day).getMonthValue() - 1;
            if (!Double.isNaN(gust)) {
                days[month]++;
            }
            if (gust >= DAMAGING) {
                if (storm == null || gust > storm.speed()) {
                    storm = new Storm(month, record.from()[day], gust);
                }
            } else if (storm != null) {
                storms.add(storm);
                storm = null;
            }
        }
        if (storm != null) {
            storms.add(storm);
        }
    }

    /** The strongest gust of a day, m/s; NaN if it is not known. */
    static double gust(StationRecord record, int day) {
        return record.wind()[day] * (record.kind() == StationRecord.Wind.MEAN ? GUST_BY_MEAN : 1);
    }

    /** Whether the record says enough of the wind. */
    boolean isMeasured() {
        return storms.size() >= Gumbel.LEAST
                && Arrays.stream(days).sum() >= LEAST_DAYS
                && Arrays.stream(days).allMatch(n -> n > 0);
    }

    /** Gusts assumed where the record has none, from one side. */
    static Site.StormSide assumed(double from) {
        return new Site.StormSide(from, Collections.nCopies(12, ASSUMED_A_WEEK), ASSUMED_MODE, ASSUMED_SCALE);
    }

    int storms() {
        return storms.size();
    }

    /** Whether most storms have a direction. */
    boolean hasDirections() {
        return 2 * storms.stream().filter(storm -> !Double.isNaN(storm.from())).count() > storms.size();
    }

    List<Site.StormSide> sides() {
        double[] all = speeds(storms);
        if (!hasDirections()) {
            return List.of(side(otherwiseFrom, storms, storms.size(), all));
        }
        List<Storm> directed =
                storms.stream().filter(storm -> !Double.isNaN(storm.from())).toList();
        List<Site.StormSide> sides = new ArrayList<>();
        for (int quarter = 0; quarter < SIDES; quarter++) {
            double middle = quarter * 360.0 / SIDES;
            List<Storm> own = directed.stream()
                    .filter(storm -> away(storm.from(), middle) < 180.0 / SIDES
                            || (storm.from() - middle + 360) % 360 == 180.0 / SIDES)
                    .toList();
            if (!own.isEmpty()) {
                // Storms without direction are shared out as those with one.
                sides.add(side(middle, own, own.size() * (double) storms.size() / directed.size(), all));
            }
        }
        return sides;
    }

    private static double away(double a, double b) {
        double turned = Math.abs(a - b) % 360;
        return Math.min(turned, 360 - turned);
    }

    private static double[] speeds(List<Storm> storms) {
        return storms.stream().mapToDouble(Storm::speed).toArray();
    }

    private Site.StormSide side(double from, List<Storm> own, double count, double[] all) {
        Gumbel fit = Gumbel.byMoments(own.size() >= Gumbel.LEAST ? speeds(own) : all);
        List<Double> rates = new ArrayList<>();
        for (int month = 0; month < 12; month++) {
            int inMonth = month;
            long storms = own.stream().filter(storm -> storm.month() == inMonth).count();
            rates.add(Math.round(storms * count / own.size() / (days[month] / 7.0) * 1000) / 1000.0);
        }
        return new Site.StormSide(
                from,
                rates,
                Math.round(fit.mode() * 10) / 10.0,
                Math.max(LEAST_SCALE, Math.round(fit.scale() * 10) / 10.0));
    }
}
