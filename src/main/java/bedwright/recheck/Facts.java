package bedwright.recheck;

import bedwright.climate.FrostDates;
import bedwright.climate.Gust;
import bedwright.climate.PossibleSeason;
import bedwright.climate.SiteClimate;
import bedwright.season.Bed;
import bedwright.season.Crop;
import bedwright.season.KindTree;
import bedwright.season.Sampling;
import bedwright.season.Season;
import bedwright.season.Stock;
import bedwright.season.UnderWay;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** The season with what every part of the recheck asks of it. */
final class Facts {
    /** A day or week that never comes. */
    static final int NEVER = Integer.MAX_VALUE;

    final Season season;
    final SiteClimate climate;
    final Optional<FrostDates> frost;
    final KindTree kinds;
    final List<Bed> beds;
    final Units units;

    Facts(Season season) {
        this.season = season;
        climate = SiteClimate.of(season);
        frost = season.site().frost() == null ? Optional.empty() : FrostDates.of(season);
        kinds = KindTree.of(season.roles());
        beds = season.allBeds();
        units = new Units(season.currency());
    }

    /** The week it is: weeks before it count no more. */
    int now() {
        return season.firstWeek();
    }

    int weeks() {
        return season.weeks();
    }

    int days() {
        return season.days();
    }

    /** The normal season: nothing strays. */
    PossibleSeason normal() {
        double[] crops = new double[season.crops().size()];
        Arrays.fill(crops, 1);
        double[] pests = new double[season.pests().size()];
        Arrays.fill(pests, 1);
        double[] deviation = new double[days()];
        UnderWay underWay = season.underWay();
        if (underWay != null) {
            underWay.weather().stream()
                    .filter(seen -> season.dayOf(seen.on()) >= 0 && season.dayOf(seen.on()) < days())
                    .forEach(seen -> deviation[season.dayOf(seen.on())] = seen.warmer());
        }
        return new PossibleSeason(true, deviation, List.of(), pests, 0, 0, new boolean[weeks()], false, crops, crops);
    }

    /** Minima that were noted of the season's days, in the open, by day, °C. */
    Map<Integer, Double> notedMinima() {
        Map<Integer, Double> minima = new HashMap<>();
        if (season.underWay() != null) {
            for (UnderWay.DaySeen seen : season.underWay().weather()) {
                int day = season.dayOf(seen.on());
                if (seen.least() != null && day >= 0 && day < days()) {
                    minima.put(day, seen.least());
                }
            }
        }
        return minima;
    }

    /** Gusts that were noted, of the season's days. */
    List<Gust> notedGusts() {
        List<Gust> noted = new ArrayList<>();
        if (season.underWay() != null) {
            for (Sampling.GivenGust gust : season.underWay().gusts()) {
                int day = season.dayOf(gust.on());
                if (day >= 0 && day < days()) {
                    noted.add(new Gust(day, -1, gust.from(), gust.speed()));
                }
            }
        }
        return noted;
    }

    /** Minimum of a day at a bed, °C. */
    double min(PossibleSeason possible, Bed bed, int day) {
        return climate.normalMin(day) + deviation(possible, day) + warmth(bed);
    }

    /** Maximum of a day at a bed, °C. */
    double max(PossibleSeason possible, Bed bed, int day) {
        return climate.normalMax(day) + deviation(possible, day) + warmth(bed);
    }

    /** Mean temperature of a week at a bed, °C. */
    double mean(PossibleSeason possible, Bed bed, int week) {
        double sum = 0;
        for (int day = 7 * week; day < 7 * week + 7; day++) {
            sum += (min(possible, bed, day) + max(possible, bed, day)) / 2;
        }
        return sum / 7;
    }

    private static double deviation(PossibleSeason possible, int day) {
        return day < 0 ? 0 : possible.deviation()[day];
    }

    private static double warmth(Bed bed) {
        return bed.block().tunnel() == null ? 0 : bed.block().tunnel().warmth();
    }

    /** Degrees of frost that a bed's tunnel keeps off. */
    static double tunnelProtects(Bed bed) {
        return bed.block().tunnel() == null ? 0 : bed.block().tunnel().protects();
    }

    /** The stock's net of a name. */
    Optional<Stock.Net> net(String name) {
        return season.stock().nets().stream()
                .filter(net -> net.name().equals(name))
                .findFirst();
    }

    /** The crop of a name, by its index; −1 if there is none. */
    int cropIndex(String name) {
        List<Crop> crops = season.crops();
        for (int i = 0; i < crops.size(); i++) {
            if (crops.get(i).name().equals(name)) {
                return i;
            }
        }
        return -1;
    }

    /**
     * Whether a day of the year lies in a span that includes both ends and wraps the new year if it ends before it
     * starts; an end that is not given is that end of the calendar year.
     */
    static boolean inSpan(int dayOfYear, @Nullable MonthDay from, @Nullable MonthDay to) {
        int first = from == null ? 1 : dayOfYear(from);
        int last = to == null ? 365 : dayOfYear(to);
        return first <= last ? first <= dayOfYear && dayOfYear <= last : dayOfYear >= first || dayOfYear <= last;
    }

    /** Day of a year of 365 days; 29 February counts as 28 February. */
    static int dayOfYear(MonthDay day) {
        return day.atYear(2001).getDayOfYear();
    }
}
