package bedwright.recheck;

import static bedwright.recheck.Facts.NEVER;

import bedwright.climate.PossibleSeason;
import bedwright.climate.Shelter;
import bedwright.season.Method;
import bedwright.season.Past;
import bedwright.season.Pest;
import bedwright.season.Standing;
import bedwright.season.Stock;

/** What pests leave (season model, section 4): exp(−Σ pressure × multiplier × appeal × edge × leak). */
final class Pests {
    private final Facts facts;
    private final Placed placed;
    private final PossibleSeason possible;
    private final Course course;
    private final Calendar calendar;

    Pests(Facts facts, Placed placed, PossibleSeason possible, Course course, Calendar calendar) {
        this.facts = facts;
        this.placed = placed;
        this.possible = possible;
        this.course = course;
        this.calendar = calendar;
    }

    /** Share that survives as seed and as seedlings. */
    double seedAndSeedlings() {
        Past past = placed.past();
        int known = past == null
                ? Integer.MIN_VALUE / 2
                : Math.max(
                        Placed.day(facts.season, past.counted(), Integer.MIN_VALUE / 2),
                        Placed.day(facts.season, past.pests(), Integer.MIN_VALUE / 2));
        int tenderTo = course.hardy == NEVER ? facts.days() : course.hardy;
        double sum = taken(Pest.Takes.SEEDLINGS, Math.max(course.emergence, known + 1), tenderTo);
        Method.Start start = placed.method().start();
        if (start == Method.Start.SOWN || start == Method.Start.SET) {
            sum += taken(Pest.Takes.SEED, Math.max(seedFrom(), known + 1), course.emergence);
        }
        return Math.exp(-sum);
    }

    /** Share of a cut week's blooms that is left. */
    double blooms(int week) {
        return Math.exp(-taken(Pest.Takes.BLOOMS, 7 * week, 7 * week + 7));
    }

    /** First day in the ground as seed; of a planting whose clock is given, the day after, if it was not up yet. */
    private int seedFrom() {
        Standing.ClockReading reading = placed.clock();
        if (reading == null) {
            return placed.sowDay(facts.season);
        }
        return course.wasUp ? course.emergence : facts.season.dayOf(reading.on()) + 1;
    }

    /** Sum of what all pests of a stage take on the days from {@code from} up to, not including, {@code to}. */
    private double taken(Pest.Takes stage, int from, int to) {
        double sum = 0;
        for (int p = 0; p < facts.season.pests().size(); p++) {
            Pest pest = facts.season.pests().get(p);
            double appeal = placed.crop().appeal().getOrDefault(pest.name(), 0.0);
            if (!pest.takes().contains(stage) || appeal == 0) {
                continue;
            }
            double all = possible.pestYear()[p] * appeal * edge(pest);
            for (int day = from; day < to; day++) {
                sum += pressure(pest, facts.climate.weekOfYear(day)) * all * leak(day);
            }
        }
        return sum;
    }

    /** Pressure a day in a week of the year: of the last entry that holds its first day. */
    static double pressure(Pest pest, int weekOfYear) {
        double pressure = 0;
        for (Pest.Pressure entry : pest.pressure()) {
            if (Facts.inSpan(7 * weekOfYear + 1, entry.from(), entry.to())) {
                pressure = entry.aDay();
            }
        }
        return pressure;
    }

    private double edge(Pest pest) {
        if (pest.range() == null) {
            return 1;
        }
        return Math.exp(-Shelter.toRoughGrass(facts.season, placed.bed()) / pest.range());
    }

    private double leak(int day) {
        Stock.Cover cover = facts.season.stock().cover();
        return cover != null && calendar.covered(day) ? cover.letsThrough() : 1;
    }
}
