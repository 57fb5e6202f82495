package bedwright.recheck;

import static bedwright.recheck.Facts.NEVER;

import bedwright.climate.FrostDates;
import bedwright.climate.PossibleSeason;
import bedwright.season.Crop;
import bedwright.season.Past;
import bedwright.season.Site;
import bedwright.season.Stock;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.apache.commons.statistics.distribution.NormalDistribution;

/** What frost leaves of a planting in one possible season (season model, section 4: frost). */
final class Frosts {
    private static final NormalDistribution NORMAL = NormalDistribution.of(0, 1);
    /** Days after the coldest one for whose cold the winter share stands. */
    private static final int HALF_A_YEAR = 182;

    private final Facts facts;
    private final Placed placed;
    private final PossibleSeason possible;
    private final Course course;
    private final Calendar calendar;
    /** By day, °C in the open. */
    private final Map<Integer, Double> notedMinima;
    /** Day of the noted night that killed it; NEVER if none did. */
    private final int killed;

    /** The planting is lost if the last spring frost of a temperature falls on or after a day. */
    private record Condition(double temperature, int day) {}

    Frosts(Facts facts, Placed placed, PossibleSeason possible, Course course, Calendar calendar) {
        this.facts = facts;
        this.placed = placed;
        this.possible = possible;
        this.course = course;
        this.calendar = calendar;
        this.notedMinima = facts.notedMinima();
        this.killed = killedOn();
    }

    /** The day of the first noted night that was too cold for it, where it stood, as old as it was; NEVER if none was. */
    private int killedOn() {
        int first = NEVER;
        for (Map.Entry<Integer, Double> night : notedMinima.entrySet()) {
            int day = night.getKey();
            if (day < first && isExposed(day) && night.getValue() <= killing(day)) {
                first = day;
            }
        }
        return first;
    }

    /** Whether a night finds it above ground, not yet seen alive after it, and not in a winter that has its own share. */
    private boolean isExposed(int day) {
        boolean isOut = placed.clock() != null || day > placed.groundDay(facts.season);
        boolean isWinter = false;
        for (int coldest : facts.climate.coldestDays()) {
            isWinter |= standsThrough(coldest) && day <= coldest + HALF_A_YEAR;
        }
        return day >= course.emergence && isOut && day > alive() && !isWinter;
    }

    /** Temperature in the open that kills it on a day. */
    private double killing(int day) {
        Crop.Killing killing = placed.crop().killing();
        double open = (day >= course.grown ? killing.grown() : killing.young()) - Facts.tunnelProtects(placed.bed());
        Stock.Cover cover = facts.season.stock().cover();
        return cover != null && calendar.covered(day) ? open - cover.protects() : open;
    }

    /** Share that spring, or the winter in its stead, leaves. */
    double winterAndSpring() {
        if (killed < course.firstCut) {
            return 0;
        }
        if (facts.frost.isEmpty()) {
            return 1;
        }
        return standsThroughWinter() ? winterUnlessCounted() : spring(facts.frost.get());
    }

    /** Whether it is above ground on a coldest day of the year on or before its first cut. */
    private boolean standsThroughWinter() {
        for (int coldest : facts.climate.coldestDays()) {
            if (standsThrough(coldest)) {
                return true;
            }
        }
        return false;
    }

    private boolean standsThrough(int coldest) {
        boolean up = course.emergence <= coldest;
        boolean holds = coldest < 7 * (calendar.lastHeld + 1);
        return up && holds && coldest <= course.firstCut;
    }

    /** A stand counted after the coldest day tells what the winter has left. */
    private double winterUnlessCounted() {
        Past past = placed.past();
        int none = Integer.MIN_VALUE;
        int counted = past == null ? none : Placed.day(facts.season, past.counted(), none);
        for (int coldest : facts.climate.coldestDays()) {
            if (course.emergence <= coldest && coldest <= counted) {
                return 1;
            }
        }
        return winter();
    }

    /** The last day on which it was seen alive: no frost up to it killed it. */
    private int alive() {
        Past past = placed.past();
        return past == null ? Integer.MIN_VALUE / 2 : Placed.day(facts.season, past.alive(), Integer.MIN_VALUE / 2);
    }

    private double winter() {
        Site.HardWinter hard = facts.season.site().hardWinter();
        double share = placed.method().winterShare();
        if (possible.normal()) {
            return share * (1 - hard.chance() * (1 - hard.share()));
        }
        return possible.hardWinter() ? share * hard.share() : share;
    }

    private double spring(FrostDates frost) {
        int up = course.emergence;
        if (placed.isStanding() && up < 0) {
            if (!springLiesInSeason(frost)) {
                return 1;
            }
            up = 0;
        }
        int year = nearestSpring(frost, up);
        List<Condition> conditions = conditions(up);
        if (possible.normal()) {
            double least = Double.POSITIVE_INFINITY;
            for (Condition c : conditions) {
                int day = c.day;
                while (!kills(day, c)) {
                    day++;
                }
                least = Math.min(least, frost.springDeviate(year, c.temperature, day));
            }
            return NORMAL.cumulativeProbability(least);
        }
        for (Condition c : conditions) {
            if (kills(frost.spring(year, c.temperature, possible.springFrost()), c)) {
                return 0;
            }
        }
        return 1;
    }

    /**
     * Whether a last frost on a day meets a condition. On a night that was noted there was none but what was noted, so it
     * fell on the night before; and none fell up to the day on which it was seen alive.
     */
    private boolean kills(int lastFrost, Condition condition) {
        int fell = lastFrost;
        while (notedMinima.containsKey(fell)) {
            fell--;
        }
        return fell >= condition.day && fell > alive();
    }

    /** The first frost of an autumn that would come on a day: on the next night that was not noted. */
    private int comes(int firstFrost) {
        int comes = firstFrost;
        while (notedMinima.containsKey(comes)) {
            comes++;
        }
        return comes;
    }

    private List<Condition> conditions(int up) {
        Crop.Killing killing = placed.crop().killing();
        List<Condition> conditions = new ArrayList<>();
        addConditions(conditions, killing.young(), up);
        if (course.grown != NEVER) {
            addConditions(conditions, killing.grown(), Math.max(up, course.grown));
        }
        return conditions;
    }

    /** From a day on it must not freeze: under the cover while that lies, and without it from then on. */
    private void addConditions(List<Condition> conditions, double killing, int day) {
        double open = killing - Facts.tunnelProtects(placed.bed());
        Stock.Cover cover = facts.season.stock().cover();
        if (cover != null && calendar.covered(day)) {
            conditions.add(new Condition(open - cover.protects(), day));
            conditions.add(new Condition(open, calendar.uncovered()));
        } else {
            conditions.add(new Condition(open, day));
        }
    }

    private boolean springLiesInSeason(FrostDates frost) {
        for (int year = 0; year < frost.years(); year++) {
            int median = frost.springMedian(year);
            if (median >= 0 && median < facts.days()) {
                return true;
            }
        }
        return false;
    }

    /** The year whose median last frost is nearest to a day, the earlier on a tie. */
    private static int nearestSpring(FrostDates frost, int day) {
        int nearest = 0;
        for (int year = 1; year < frost.years(); year++) {
            if (Math.abs(frost.springMedian(year) - day) < Math.abs(frost.springMedian(nearest) - day)) {
                nearest = year;
            }
        }
        return nearest;
    }

    /** Share of the stems of a week that the first autumn frost leaves; the season's first cut must have come. */
    double autumn(int week) {
        int middle = 7 * week + 3;
        if (killed >= course.firstCut && killed < middle) {
            return 0;
        }
        if (facts.frost.isEmpty()) {
            return 1;
        }
        FrostDates frost = facts.frost.get();
        int cut = calendar.normal.firstCut == NEVER ? course.firstCut : calendar.normal.firstCut;
        double temperature = placed.crop().killing().grown() - Facts.tunnelProtects(placed.bed());
        int mayCome = middle;
        while (comes(mayCome - 1) >= middle) {
            mayCome--;
        }
        if (mayCome <= alive() + 1) {
            return 1;
        }
        for (int year = 0; year < frost.years(); year++) {
            if (frost.autumnMedian(year) > cut) {
                return possible.normal()
                        ? NORMAL.survivalProbability(frost.autumnDeviate(year, temperature, mayCome))
                        : comes(frost.autumn(year, temperature, possible.autumnFrost())) >= middle ? 1 : 0;
            }
        }
        return 1;
    }
}
