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
import org.apache.commons.statistics.distribution.NormalDistribution;

/** What frost leaves of a planting in one possible season (season model, section 4: frost). */
final class Frosts {
    private static final NormalDistribution NORMAL = NormalDistribution.of(0, 1);

    private final Facts facts;
    private final Placed placed;
    private final PossibleSeason possible;
    private final Course course;
    private final Calendar calendar;

    /** The planting is lost if the last spring frost of a temperature falls on or after a day. */
    private record Condition(double temperature, int day) {}

    Frosts(Facts facts, Placed placed, PossibleSeason possible, Course course, Calendar calendar) {
        this.facts = facts;
        this.placed = placed;
        this.possible = possible;
        this.course = course;
        this.calendar = calendar;
    }

    /** Share that spring, or the winter in its stead, leaves. */
    double winterAndSpring() {
        if (facts.frost.isEmpty()) {
            return 1;
        }
        return standsThroughWinter() ? winterUnlessCounted() : spring(facts.frost.get());
    }

    /** Whether it is above ground on a coldest day of the year on or before its first cut. */
    private boolean standsThroughWinter() {
        for (int coldest : facts.climate.coldestDays()) {
            boolean up = course.emergence <= coldest;
            boolean holds = coldest < 7 * (calendar.lastHeld + 1);
            if (up && holds && coldest <= course.firstCut) {
                return true;
            }
        }
        return false;
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
                least = Math.min(least, frost.springDeviate(year, c.temperature, c.day));
            }
            return NORMAL.cumulativeProbability(least);
        }
        for (Condition c : conditions) {
            if (frost.spring(year, c.temperature, possible.springFrost()) >= c.day) {
                return 0;
            }
        }
        return 1;
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
            conditions.add(new Condition(open - cover.protects(), Math.max(day, alive() + 1)));
            conditions.add(new Condition(open, Math.max(calendar.uncovered(), alive() + 1)));
        } else {
            conditions.add(new Condition(open, Math.max(day, alive() + 1)));
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
        if (facts.frost.isEmpty()) {
            return 1;
        }
        FrostDates frost = facts.frost.get();
        int cut = calendar.normal.firstCut == NEVER ? course.firstCut : calendar.normal.firstCut;
        double temperature = placed.crop().killing().grown() - Facts.tunnelProtects(placed.bed());
        int middle = 7 * week + 3;
        if (middle <= alive() + 1) {
            return 1;
        }
        for (int year = 0; year < frost.years(); year++) {
            if (frost.autumnMedian(year) > cut) {
                return possible.normal()
                        ? NORMAL.survivalProbability(frost.autumnDeviate(year, temperature, middle))
                        : frost.autumn(year, temperature, possible.autumnFrost()) >= middle ? 1 : 0;
            }
        }
        return 1;
    }
}
