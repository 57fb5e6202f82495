package bedwright.station;

import bedwright.season.Units;
import bedwright.weather.StationRecord;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Judges sampled seasons by years that their climate was not made from: how many of these fall within the band that holds
 * eight of ten sampled seasons.
 *
 * <p>With 20 years or more the climate is made from the first three fifths and judged by the rest. With fewer each year is
 * held back in turn, and the climate made from the others.
 */
public final class Judge {
    /** Years that can be split into a part to learn from and a part to judge by. */
    public static final int ENOUGH = 20;

    private static final int SEASONS = 500;
    private static final double FIRST_PART = 0.6;
    private static final int QUARTER = 90;

    private final StationRecord record;
    private final boolean isNorthern;
    private final Seen seen;
    private final List<Measure> measures;
    private final long seed;

    private Judge(StationRecord record, long seed, Units units) {
        this.record = record;
        this.seed = seed;
        isNorthern = new Months(record).isNorthern();
        seen = new Seen(record, isNorthern);
        StationClimate all = StationClimate.of(record, 0);
        double[] lastFrosts = foretold(all).of(Measure.LAST_FROST);
        int usual = lastFrosts.length == 0 ? QUARTER : (int) lastFrosts[lastFrosts.length / 2];
        measures = Measure.all(seen.beginsCommonYear(), usual, units.temperature());
    }

    /**
     * How one thing was foretold.
     *
     * @param name in a grower's words
     * @param isDay whether the figures are days counted from the year's first, or degree-days
     * @param low what one sampled season in ten stays below, mean over the climates that were made
     * @param usual the middle one, likewise
     * @param high what one in ten passes, likewise
     * @param below years held back that fell before the band
     * @param within years within it
     * @param above years behind it
     */
    public record Judged(
            String name, boolean isDay, double low, double usual, double high, int below, int within, int above) {
        /** Years held back of which this can be told. */
        public int years() {
            return below + within + above;
        }
    }

    /**
     * The judgement.
     *
     * @param isSplit whether one climate was made from the first part; else each year was held back in turn
     * @param from first year held back
     * @param to last year held back
     * @param begins the day from which days are counted, in a year of 365 days
     * @param figures thing by thing
     */
    public record Judgement(boolean isSplit, int from, int to, LocalDate begins, List<Judged> figures) {}

    /**
     * Judges by a record's own years.
     *
     * @param seed of the sampled seasons
     * @throws TooLittleWeather if there are too few years for a climate once one or some are held back
     */
    public static Judgement of(StationRecord record, long seed) {
        return of(record, seed, Units.METRES);
    }

    /**
     * Likewise.
     *
     * @param units in which what is judged is named
     */
    public static Judgement of(StationRecord record, long seed, Units units) {
        return new Judge(record, seed, units).judge();
    }

    private Judgement judge() {
        int first = record.first().getYear();
        while (seen.begins(first).isBefore(record.first())) {
            first++;
        }
        int last = record.last().getYear();
        while (seen.begins(last + 1).minusDays(1).isAfter(record.last())) {
            last--;
        }
        boolean isSplit = last - first + 1 >= ENOUGH;
        int from = isSplit ? first + (int) ((last - first + 1) * FIRST_PART) : first;
        List<Integer> heldBack = IntStream.rangeClosed(from, last).boxed().toList();
        List<List<Judged>> parts = new ArrayList<>();
        if (isSplit) {
            parts.add(judge(without(heldBack), heldBack));
        } else {
            heldBack.forEach(year -> parts.add(judge(without(List.of(year)), List.of(year))));
        }
        List<Judged> figures = new ArrayList<>();
        for (int m = 0; m < measures.size(); m++) {
            int of = m;
            List<Judged> each = parts.stream()
                    .map(part -> part.get(of))
                    .filter(j -> j.years() > 0)
                    .toList();
            if (!each.isEmpty()) {
                figures.add(together(each));
            }
        }
        return new Judgement(isSplit, from, last, seen.beginsCommonYear(), figures);
    }

    private static Judged together(List<Judged> each) {
        int n = each.size();
        return new Judged(
                each.getFirst().name(),
                each.getFirst().isDay(),
                each.stream().mapToDouble(Judged::low).sum() / n,
                each.stream().mapToDouble(Judged::usual).sum() / n,
                each.stream().mapToDouble(Judged::high).sum() / n,
                each.stream().mapToInt(Judged::below).sum(),
                each.stream().mapToInt(Judged::within).sum(),
                each.stream().mapToInt(Judged::above).sum());
    }

    /** The record without the temperatures of some years. */
    private StationRecord without(List<Integer> years) {
        double[] min = record.min().clone();
        double[] max = record.max().clone();
        for (int year : years) {
            int begin = Math.max(0, record.dayOf(seen.begins(year)));
            int end = Math.min(min.length, record.dayOf(seen.begins(year + 1)));
            Arrays.fill(min, begin, end, Double.NaN);
            Arrays.fill(max, begin, end, Double.NaN);
        }
        return new StationRecord(
                record.station(),
                record.first(),
                min,
                max,
                record.wind(),
                record.from(),
                record.kind(),
                record.flagged());
    }

    private Foretold foretold(StationClimate climate) {
        return new Foretold(climate, seen.beginsCommonYear(), isNorthern, SEASONS, seed);
    }

    private List<Judged> judge(StationRecord known, List<Integer> heldBack) {
        Foretold foretold = foretold(StationClimate.of(known, 0));
        return measures.stream()
                .map(measure -> count(measure, foretold.of(measure), heldBack))
                .toList();
    }

    private Judged count(Measure measure, double[] foretold, List<Integer> heldBack) {
        int below = 0;
        int within = 0;
        int above = 0;
        // What does not come about in each sampled season has no band.
        boolean hasBand = foretold.length == SEASONS;
        double low = hasBand ? foretold[SEASONS / 10] : 0;
        double high = hasBand ? foretold[SEASONS - 1 - SEASONS / 10] : 0;
        for (int year : heldBack) {
            double was = seen.of(measure, year);
            if (hasBand && !Double.isNaN(was)) {
                below += was < low ? 1 : 0;
                above += was > high ? 1 : 0;
                within += was >= low && was <= high ? 1 : 0;
            }
        }
        double usual = hasBand ? foretold[SEASONS / 2] : 0;
        return new Judged(measure.name(), measure.isDay(), low, usual, high, below, within, above);
    }
}
