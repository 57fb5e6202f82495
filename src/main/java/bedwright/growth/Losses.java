package bedwright.growth;

import bedwright.climate.FrostDates;
import bedwright.climate.Gust;
import bedwright.climate.Gusts;
import bedwright.climate.PossibleSeason;
import bedwright.season.Crop;
import bedwright.season.Method;
import bedwright.season.Pest;
import bedwright.season.Site;
import bedwright.season.Stock;
import java.util.Arrays;
import java.util.List;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.jspecify.annotations.Nullable;

/** What is lost of a planting on the way, as shares surviving (season model, section 4). */
final class Losses {
    private static final NormalDistribution NORMAL = NormalDistribution.of(0, 1);
    /** Days after the coldest one up to which the winter share stands for the cold: to the middle of summer. */
    private static final int HALF_A_YEAR = 182;

    private final World world;
    private final Grown grown;
    private final Ground.BedClass bed;
    /** The one that {@link #night} is of. */
    private @Nullable Development nightOf;

    private int night;

    Losses(Grown grown, Ground.BedClass bed) {
        this.world = grown.world;
        this.grown = grown;
        this.bed = bed;
    }

    /** Share of the plants that come up or take, pests aside. */
    double stand(PossibleSeason season) {
        return grown.noted.counted() == Noted.NOT ? unseenStand(season) * grown.noted.left() : grown.noted.left();
    }

    private double unseenStand(PossibleSeason season) {
        double share = grown.method.emergence();
        return switch (grown.method.start()) {
            case TRAY -> 1;
            case PLUGS, SET -> share;
            case SOWN -> share * seedBed(season);
        };
    }

    private double seedBed(PossibleSeason season) {
        Site.BadSeedBed bad = world.season.site().badSeedBed();
        int week = grown.calendar.sowWeek();
        if (week < 0) {
            return 1;
        }
        if (season.normal()) {
            return 1 - bad.chance() * (1 - bad.share());
        }
        return season.badSeedBed()[week] ? bad.share() : 1;
    }

    /** Share that a pest leaves of seed and seedlings. */
    double pest(int pest, PossibleSeason season, Development development) {
        double bite = bite(pest, season);
        if (bite == 0) {
            return 1;
        }
        Pest kind = world.season.pests().get(pest);
        double exposure = 0;
        if (isSeed() && kind.takes().contains(Pest.Takes.SEED)) {
            exposure += exposure(pest, afterPests(grown.start.firstDay()), development.emergence);
        }
        if (kind.takes().contains(Pest.Takes.SEEDLINGS)) {
            exposure += exposure(pest, afterPests(development.emergence), Math.min(development.hardy, world.days));
        }
        return Math.exp(-bite * exposure);
    }

    /** Whether it lies in the bed as seed, a tuber or the like, and is not known to be up from the start. */
    private boolean isSeed() {
        Method.Start how = grown.method.start();
        return (how == Method.Start.SOWN || how == Method.Start.SET) && grown.start.emergence() == Start.UNKNOWN;
    }

    /** The first day, from a day on, whose losses to pests are not known already. */
    private int afterPests(int day) {
        return Math.max(day, grown.noted.pests() + 1);
    }

    /** Share that a pest leaves of the blooms of a week. */
    double blooms(int pest, PossibleSeason season, int week) {
        if (!world.season.pests().get(pest).takes().contains(Pest.Takes.BLOOMS)) {
            return 1;
        }
        double bite = bite(pest, season);
        return bite == 0 ? 1 : Math.exp(-bite * exposure(pest, 7 * week, 7 * week + 7));
    }

    /** Share of its plants, or of a week's blooms, that a pest takes in the seven days up to a day. */
    Eaten eaten(int pest, PossibleSeason season, Development development, int day) {
        Pest kind = world.season.pests().get(pest);
        double bite = bite(pest, season);
        int first = day - 6;
        int up = development.emerges() ? development.emergence : Integer.MAX_VALUE;
        double plants = 0;
        if (isSeed() && kind.takes().contains(Pest.Takes.SEED)) {
            plants += exposure(pest, Math.max(first, grown.start.firstDay()), Math.min(day + 1, up));
        }
        if (kind.takes().contains(Pest.Takes.SEEDLINGS)) {
            plants += exposure(pest, Math.max(first, up), Math.min(day + 1, development.hardy));
        }
        boolean isCut = development.firstCut != Development.NEVER
                && day >= development.firstCut
                && day < 7 * grown.calendar.heldTo();
        double blooms = isCut && kind.takes().contains(Pest.Takes.BLOOMS) ? exposure(pest, first, day + 1) : 0;
        return new Eaten(1 - Math.exp(-bite * plants), 1 - Math.exp(-bite * blooms), grown.calendar.isCoveredOn(day));
    }

    /** Pressure × cover over days, the first included, the end not. */
    private double exposure(int pest, int first, int end) {
        Stock.Cover cover = world.season.stock().cover();
        double leak = cover == null ? 1 : cover.letsThrough();
        double sum = 0;
        for (int d = Math.max(first, -BedWeather.BEFORE); d < end; d++) {
            double pressure = world.pressure(pest, d);
            sum += grown.calendar.isCoveredOn(d) ? pressure * leak : pressure;
        }
        return sum;
    }

    /** How much of a pest's pressure reaches this crop in this bed. */
    private double bite(int pest, PossibleSeason season) {
        Pest kind = world.season.pests().get(pest);
        Double range = kind.range();
        double edge = range == null ? 1 : Math.exp(-bed.toGrass() / range);
        return season.pestYear()[pest] * grown.crop.appeal().getOrDefault(kind.name(), 0.0) * edge;
    }

    /**
     * The day of the noted night that killed it, or {@link Development#NEVER}. One on which it came into the ground was
     * over then, and of one up to the day on which it was last seen alive nothing is to be told any more.
     */
    int killedByNight(Development development) {
        if (nightOf != development) {
            nightOf = development;
            int first = firstNight(development);
            night = world.nights.isEmptyFrom(first)
                    ? Development.NEVER
                    : tooCold(development, Math.max(first, lastOfWinter(development) + 1));
        }
        return night;
    }

    /** The coldest noted night for which its winter share stands though it is colder than it stands, or NEVER. */
    int coldestOfWinter(Development development) {
        int coldest = Development.NEVER;
        int last = lastOfWinter(development);
        for (int day = tooCold(development, firstNight(development));
                day <= last;
                day = tooCold(development, day + 1)) {
            if (coldest == Development.NEVER || world.nights.least(day) < world.nights.least(coldest)) {
                coldest = day;
            }
        }
        return coldest;
    }

    /** The first noted night, from a day on, that it does not stand, or NEVER. */
    private int tooCold(Development development, int from) {
        Crop.Killing killing = grown.crop.killing();
        double most = Math.max(killing.young(), killing.grown()) - bed.protects();
        return world.nights.firstAsColdAs(from, most, day -> dies(development, day));
    }

    private int firstNight(Development development) {
        int inTheOpen = Math.max(development.emergence, grown.start.groundDay() + 1);
        return Math.max(inTheOpen, grown.noted.alive() + 1);
    }

    /** Temperature in the open that kills it on a day, where it stands, °C. */
    private double dies(Development development, int day) {
        Crop.Killing killing = grown.crop.killing();
        Stock.Cover cover = world.season.stock().cover();
        double covered = cover != null && grown.calendar.isCoveredOn(day) ? cover.protects() : 0;
        return (day < development.grown ? killing.young() : killing.grown()) - bed.protects() - covered;
    }

    /** Share that the winter leaves, if it stands through one before it is cut; else that of the last spring frost. */
    double springOrWinter(PossibleSeason season, Development development) {
        if (killedByNight(development) < development.firstCut) {
            return 0;
        }
        FrostDates frost = world.frost;
        if (frost == null) {
            return 1;
        }
        if (standsThroughWinter(development)) {
            return isWinterCounted(development) ? 1 : grown.method.winterShare() * hardWinter(season);
        }
        return spring(frost, season, development);
    }

    private boolean standsThroughWinter(Development development) {
        return lastOfWinter(development) != Noted.NOT;
    }

    /** The last day for whose cold its winter share stands, or {@link Noted#NOT} if it stands through no winter. */
    private int lastOfWinter(Development development) {
        int last = Noted.NOT;
        for (int day : world.climate.coldestDays()) {
            if (development.emergence <= day
                    && day < 7 * grown.calendar.heldTo()
                    && (development.firstCut == Development.NEVER || day <= development.firstCut)) {
                last = day + HALF_A_YEAR;
            }
        }
        return last;
    }

    /** Whether the stand was counted after the winter that it stood through. */
    private boolean isWinterCounted(Development development) {
        for (int day : world.climate.coldestDays()) {
            if (day >= development.emergence && day <= grown.noted.counted()) {
                return true;
            }
        }
        return false;
    }

    private double hardWinter(PossibleSeason season) {
        Site.HardWinter hard = world.season.site().hardWinter();
        if (season.normal()) {
            return 1 - hard.chance() * (1 - hard.share());
        }
        return season.hardWinter() ? hard.share() : 1;
    }

    private double spring(FrostDates frost, PossibleSeason season, Development development) {
        boolean stoodBefore = grown.stood && development.emergence < 0;
        int up = stoodBefore ? 0 : development.emergence;
        int year = nearestSpring(frost, up);
        if (stoodBefore && frost.springMedian(year) < 0) {
            return 1;
        }
        Crop.Killing killing = grown.crop.killing();
        Dates dates = new Dates(frost, year, season.springFrost());
        dates.falls(killing.young(), up);
        if (development.grown != Development.NEVER) {
            dates.falls(killing.grown(), stoodBefore ? Math.max(0, development.grown) : development.grown);
        }
        if (season.normal()) {
            return dates.usual();
        }
        return dates.killed ? 0 : 1;
    }

    /** Whether one spring's frosts fall on or after the days that matter, and from which deviate on they do. */
    private final class Dates {
        private final FrostDates frost;
        private final int year;
        private final double deviate;
        private double leastDeviate = Double.POSITIVE_INFINITY;
        private double uncoveredFrom = Double.POSITIVE_INFINITY;
        private double uncoveredTo = Double.NEGATIVE_INFINITY;
        private boolean killed;

        Dates(FrostDates frost, int year, double deviate) {
            this.frost = frost;
            this.year = year;
            this.deviate = deviate;
        }

        /**
         * Killed if a frost of this temperature falls on or after the day, or, if it is covered then, after the cover; if
         * it is still to be covered, before that, too.
         */
        void falls(double temperature, int day) {
            double bare = temperature - bed.protects();
            int laid = 7 * grown.calendar.coverOn();
            boolean isLate = day < laid && grown.calendar.isCoveredOn(laid) && day >= 7 * grown.calendar.groundWeek();
            if (isLate) {
                checkUpTo(bare, day, laid);
            }
            if (isLate || grown.calendar.isCoveredOn(day)) {
                Stock.Cover cover = world.season.stock().cover();
                double covered = cover == null ? bare : bare - cover.protects();
                check(covered, Math.max(day, laid));
                check(bare, 7 * grown.calendar.coverOff());
            } else {
                check(bare, day);
            }
        }

        /** Killed by a frost on the days from one on, up to another, which is not included. */
        private void checkUpTo(double temperature, int from, int to) {
            int day = firstUnknown(from);
            if (day < to) {
                int falls = frost.spring(year, temperature, deviate);
                killed |= falls >= day && falls < to;
                uncoveredFrom = Math.min(uncoveredFrom, frost.springDeviate(year, temperature, day));
                uncoveredTo = Math.max(uncoveredTo, frost.springDeviate(year, temperature, to));
            }
        }

        /** Share of the usual year's chances in which none of it is killed. */
        double usual() {
            double left = NORMAL.cumulativeProbability(leastDeviate);
            double to = Math.min(uncoveredTo, leastDeviate);
            return to <= uncoveredFrom ? left : left - NORMAL.probability(uncoveredFrom, to);
        }

        /**
         * The first day, from one on, of whose night nothing is known: a frost up to the day on which it was seen alive did
         * not kill it, and a last frost that would fall on a night that was noted falls on the one before.
         */
        private int firstUnknown(int from) {
            return world.nights.firstUnknown(Math.max(from, grown.noted.alive() + 1));
        }

        private void check(double temperature, int from) {
            int day = firstUnknown(from);
            killed |= frost.spring(year, temperature, deviate) >= day;
            leastDeviate = Math.min(leastDeviate, frost.springDeviate(year, temperature, day));
        }
    }

    private static int nearestSpring(FrostDates frost, int day) {
        int nearest = 0;
        for (int y = 1; y < frost.years(); y++) {
            if (Math.abs(frost.springMedian(y) - day) < Math.abs(frost.springMedian(nearest) - day)) {
                nearest = y;
            }
        }
        return nearest;
    }

    /** Share that the first autumn frost, and a night that killed it in cut, leave of a week's stems. */
    double autumn(PossibleSeason season, Development development, int week) {
        int middle = 7 * week + 3;
        int killed = killedByNight(development);
        if (killed >= development.firstCut && killed < middle) {
            return 0;
        }
        FrostDates frost = world.frost;
        if (frost == null) {
            return 1;
        }
        int firstCut = grown.normal.firstCut == Development.NEVER ? development.firstCut : grown.normal.firstCut;
        double temperature = grown.crop.killing().grown() - bed.protects();
        for (int y = 0; y < frost.years(); y++) {
            if (frost.autumnMedian(y) > firstCut) {
                // A first frost that would fall on a night that was noted comes on the next one that was not.
                int since = world.nights.knownSince(middle);
                if (since <= grown.noted.alive() + 1) {
                    return 1;
                }
                if (season.normal()) {
                    return 1 - NORMAL.cumulativeProbability(frost.autumnDeviate(y, temperature, since));
                }
                return frost.autumn(y, temperature, season.autumnFrost()) >= since ? 1 : 0;
            }
        }
        return 1;
    }

    /** Shares that storms leave by week of the season. */
    double[] storms(PossibleSeason season, Development development) {
        return storms(season, development, world.weeks - 1);
    }

    /**
     * Likewise, as far as is asked for.
     *
     * @param last the last week that is asked for; of later ones nothing is told in the normal season
     */
    double[] storms(PossibleSeason season, Development development, int last) {
        return season.normal() ? usualStorms(season, development, last) : gusts(season, development);
    }

    private double[] gusts(PossibleSeason season, Development development) {
        double[] left = new double[world.weeks];
        List<Gust> gusts = season.gusts();
        double standing = 1;
        int next = 0;
        for (int w = 0; w < left.length; w++) {
            while (next < gusts.size() && gusts.get(next).day() <= 7 * w + 3) {
                standing *= 1 - lost(development, gusts.get(next++));
            }
            left[w] = standing;
        }
        return left;
    }

    /** Share of a planting above ground that a gust takes, unless what storms left was noted since. */
    double lost(Development development, Gust gust) {
        boolean isSpared = gust.day() < development.emergence || gust.day() <= grown.noted.storms();
        return isSpared ? 0 : blown(development, gust).lost();
    }

    /** What a gust does on its day; nothing while there is no height. */
    Blown blown(Development development, Gust gust) {
        double speed = gust.speed() * bed.gusts().get(world.ground.direction(gust));
        double half = half(development, gust.day());
        Crop.Stand stand = grown.crop.stand();
        double flat = half == Double.POSITIVE_INFINITY ? 0 : Gusts.flattened(speed, half, stand.spread());
        return new Blown(height(development, gust.day()), speed, flat, stand.standsUp());
    }

    /** What was noted of gusts, and what they take in the mean of years on days of which nothing was noted. */
    private double[] usualStorms(PossibleSeason season, Development development, int last) {
        double[] left = gusts(season, development);
        int[] noted =
                season.gusts().stream().mapToInt(Gust::day).distinct().sorted().toArray();
        List<Site.StormSide> sides = world.season.site().storms();
        double[] flattened = new double[sides.size()];
        double of = Double.NaN;
        double sum = 0;
        for (int w = 0; w < left.length && w <= last; w++) {
            double half = feared(development, w);
            double loss = 0;
            if (half != Double.POSITIVE_INFINITY) {
                // Full grown it is as easily laid flat week after week.
                if (half != of) {
                    Arrays.fill(flattened, Double.NaN);
                    of = half;
                }
                loss = usualLoss(sides, flattened, half, 7 * w + 3);
            }
            left[w] *= Math.exp(-(sum + loss * (4 - between(noted, 7 * w, 7 * w + 4)) / 7));
            sum += loss - loss * between(noted, 7 * w, 7 * w + 7) / 7;
        }
        return left;
    }

    /** How many of these days lie from one up to another, which is not included. */
    private static int between(int[] days, int from, int to) {
        int count = 0;
        for (int day : days) {
            count += day >= from && day < to ? 1 : 0;
        }
        return count;
    }

    /** Gust that lays half of it flat in a week, m/s; infinite in weeks in which it has nothing to fear. */
    private double feared(Development development, int week) {
        int day = 7 * week + 3;
        return development.emergence == Development.NEVER
                        || week < Math.floorDiv(development.emergence, 7)
                        || day <= grown.noted.storms()
                ? Double.POSITIVE_INFINITY
                : half(development, day);
    }

    /** @param flattened expected share laid flat by a gust of each side; not a number where it is not known yet */
    private double usualLoss(List<Site.StormSide> sides, double[] flattened, double half, int day) {
        Crop.Stand stand = grown.crop.stand();
        double loss = 0;
        for (int s = 0; s < sides.size(); s++) {
            Site.StormSide side = sides.get(s);
            double rate = side.gustsAWeek().get(world.climate.month(day));
            if (rate > 0) {
                if (Double.isNaN(flattened[s])) {
                    flattened[s] = Gusts.expectedFlattened(
                            side.mode(), side.scale(), bed.gusts().get(s), half, stand.spread());
                }
                loss += rate * flattened[s] * (1 - stand.standsUp());
            }
        }
        return loss;
    }

    /** Gust that lays half of it flat at the height of a day, m/s; infinite while it has no height. */
    private double half(Development development, int day) {
        Crop crop = grown.crop;
        double height = height(development, day);
        if (height <= 0) {
            return Double.POSITIVE_INFINITY;
        }
        Double gust = grown.method.gust();
        Double reference = crop.stand().height();
        return (gust == null ? crop.stand().gust() : gust)
                * (reference == null ? crop.height() : reference)
                / height
                * (day < grown.calendar.netCounts() ? 1 : strengthening());
    }

    private double height(Development development, int day) {
        Double own = grown.method.height();
        return (own == null ? grown.crop.height() : own) * development.heightShare(day);
    }

    private double strengthening() {
        var use = grown.method.net();
        if (use == null) {
            return 1;
        }
        for (Stock.Net net : world.season.stock().nets()) {
            if (net.name().equals(use.net())) {
                return net.strengthens();
            }
        }
        throw new IllegalArgumentException("No net named " + use.net());
    }
}
