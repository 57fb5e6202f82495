package bedwright.recheck;

import static bedwright.recheck.Facts.NEVER;

import bedwright.climate.Gust;
import bedwright.climate.Gusts;
import bedwright.climate.PossibleSeason;
import bedwright.climate.Shelter;
import bedwright.season.Crop;
import bedwright.season.Past;
import bedwright.season.Site;
import java.util.List;

/** What gusts leave standing of a planting in one possible season (season model, section 4: storm). */
final class Storms {
    private final Facts facts;
    private final Placed placed;
    private final PossibleSeason possible;
    private final Course course;

    Storms(Facts facts, Placed placed, PossibleSeason possible, Course course) {
        this.facts = facts;
        this.placed = placed;
        this.possible = possible;
        this.course = course;
    }

    /** Share that stands in each week of the season. */
    double[] standing() {
        return possible.normal() ? expected() : afterGusts();
    }

    private double[] afterGusts() {
        double[] standing = new double[facts.weeks()];
        for (int week = 0; week < facts.weeks(); week++) {
            standing[week] = 1;
        }
        for (Gust gust : possible.gusts()) {
            double left = leaves(gust);
            for (int week = 0; week < facts.weeks(); week++) {
                if (7 * week + 3 >= gust.day()) {
                    standing[week] *= left;
                }
            }
        }
        return standing;
    }

    /** Share that a gust leaves standing. */
    private double leaves(Gust gust) {
        double height = course.height(gust.day());
        if (height == 0 || gust.day() <= known()) {
            return 1;
        }
        double speed = gust.speed() * Shelter.relativeSpeed(facts.season, placed.bed(), gust.from());
        return 1 - Gusts.flattened(speed, half(height), stand().spread()) * (1 - stand().standsUp());
    }

    /**
     * Normal season: exp(−what is lost in the mean of years on the days up to a week's fourth); on days of which a gust was
     * noted, what that took instead.
     */
    private double[] expected() {
        List<Gust> noted = facts.notedGusts();
        double[] standing = new double[facts.weeks()];
        double left = 1;
        double lost = 0;
        for (int day = 0; day < facts.days(); day++) {
            int today = day;
            List<Gust> gusts =
                    noted.stream().filter(gust -> gust.day() == today).toList();
            if (gusts.isEmpty()) {
                lost += expectedLoss(day / 7) / 7;
            }
            for (Gust gust : gusts) {
                left *= leaves(gust);
            }
            if (day % 7 == 3) {
                standing[day / 7] = left * Math.exp(-lost);
            }
        }
        return standing;
    }

    private double expectedLoss(int week) {
        int day = 7 * week + 3;
        double height = course.emergence == NEVER ? 0 : course.height(day);
        if (height == 0 || day <= known()) {
            return 0;
        }
        double sum = 0;
        for (Site.StormSide side : facts.season.site().storms()) {
            double relative = Shelter.relativeSpeed(facts.season, placed.bed(), side.from());
            double flat = Gusts.expectedFlattened(side.mode(), side.scale(), relative, half(height), stand().spread());
            sum += side.gustsAWeek().get(facts.climate.month(day)) * flat * (1 - stand().standsUp());
        }
        return sum;
    }

    /** The day up to which it is known what storms have left. */
    private int known() {
        Past past = placed.past();
        int none = Integer.MIN_VALUE;
        return past == null
                ? none
                : Math.max(
                        Placed.day(facts.season, past.counted(), none), Placed.day(facts.season, past.storms(), none));
    }

    private Crop.Stand stand() {
        return placed.crop().stand();
    }

    /** Gust that lays half of it flat at a height, m/s. */
    private double half(double height) {
        Double own = placed.method().gust();
        double gust = own == null ? stand().gust() : own;
        double reference = stand().height() == null ? placed.crop().height() : stand().height();
        double net = placed.method().net() == null
                ? 1
                : facts.net(placed.method().net().net()).orElseThrow().strengthens();
        return gust * reference / height * net;
    }
}
