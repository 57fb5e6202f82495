package bedwright.growth;

import bedwright.season.Season;
import bedwright.season.UnderWay;
import java.util.Arrays;
import java.util.NavigableMap;
import java.util.TreeMap;
import java.util.function.IntToDoubleFunction;

/** Nights whose minimum was noted, by the day of the season in whose early hours it was that cold. */
final class NotedNights {
    private final int[] days;
    private final double[] least;

    private NotedNights(NavigableMap<Integer, Double> minima) {
        days = minima.keySet().stream().mapToInt(Integer::intValue).toArray();
        least = minima.values().stream().mapToDouble(Double::doubleValue).toArray();
    }

    static NotedNights of(Season season) {
        NavigableMap<Integer, Double> minima = new TreeMap<>();
        UnderWay underWay = season.underWay();
        if (underWay != null) {
            for (UnderWay.DaySeen day : underWay.weather()) {
                Double minimum = day.least();
                if (minimum != null) {
                    minima.put(season.dayOf(day.on()), minimum);
                }
            }
        }
        return new NotedNights(minima.tailMap(0, true).headMap(season.days(), false));
    }

    /** Minimum of a noted night in the open, °C. */
    double least(int day) {
        int at = at(day);
        if (at < 0) {
            throw new IllegalArgumentException("Nothing was noted of the night of day " + day);
        }
        return least[at];
    }

    /** The first day, from one on, whose night was not noted. */
    int firstUnknown(int from) {
        int day = from;
        for (int at = at(from); at >= 0 && at < days.length && days[at] == day; at++) {
            day++;
        }
        return day;
    }

    /** The day from which on all nights before a day were noted; the day itself where the one before it was not. */
    int knownSince(int day) {
        int since = day;
        for (int at = at(day - 1); at >= 0 && days[at] == since - 1; at--) {
            since--;
        }
        return since;
    }

    /**
     * The first night, from a day on, that was as cold as something does not stand or colder.
     *
     * @param stands the temperature of each day at which it dies, °C
     * @return {@link Development#NEVER} if there was none
     */
    int firstAsColdAs(int from, IntToDoubleFunction stands) {
        int first = at(from);
        for (int at = first < 0 ? -first - 1 : first; at < days.length; at++) {
            if (least[at] <= stands.applyAsDouble(days[at])) {
                return days[at];
            }
        }
        return Development.NEVER;
    }

    private int at(int day) {
        return Arrays.binarySearch(days, day);
    }
}
