package bedwright.start;

import bedwright.season.Answers;
import bedwright.season.Site;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.MonthDay;
import java.time.temporal.TemporalAdjusters;

/**
 * When is sold: as the answers say, else as the frosts of the place allow.
 *
 * @param answers without fault
 * @param site of the place
 */
record Selling(Answers answers, Site site) {
    private static final int WEEKS_AFTER_FROST = 11;
    private static final int WEEKS_FROM_START = 14;
    private static final int WEEKS_BEFORE_END = 2;

    /** First day of the season's week that a day lies in, or of its first or last week. */
    LocalDate weekOf(LocalDate day) {
        long week = Math.floorDiv(day.toEpochDay() - answers.starts().toEpochDay(), 7L);
        return answers.starts().plusWeeks(Math.clamp(week, 0, answers.weeks() - 1));
    }

    /** First day of the first week of selling. */
    LocalDate from() {
        LocalDate said = answers.sellFrom();
        if (said != null) {
            return weekOf(said);
        }
        Site.Frost frost = site.frost();
        return frost == null
                ? weekOf(answers.starts().plusWeeks(WEEKS_FROM_START))
                : weekOf(next(frost.lastSpring().usual(), answers.starts()).plusWeeks(WEEKS_AFTER_FROST));
    }

    /** First day of the last week of selling. */
    LocalDate to() {
        LocalDate said = answers.sellTo();
        LocalDate from = from();
        Site.Frost frost = site.frost();
        LocalDate to = said != null
                ? said
                : frost == null
                        ? answers.starts().plusWeeks(answers.weeks() - WEEKS_BEFORE_END)
                        : next(frost.firstAutumn().usual(), from).minusWeeks(WEEKS_BEFORE_END);
        LocalDate week = weekOf(to);
        return week.isBefore(from) ? from : week;
    }

    private static LocalDate next(MonthDay day, LocalDate from) {
        LocalDate of = day.atYear(from.getYear());
        return of.isBefore(from) ? day.atYear(from.getYear() + 1) : of;
    }

    /**
     * The day on which a season is usually begun: the first Monday of March, of September in the south, that is to come.
     *
     * @param today from when on
     */
    static LocalDate usualStart(LocalDate today, double latitude) {
        MonthDay first = latitude < 0 ? MonthDay.of(9, 1) : MonthDay.of(3, 1);
        LocalDate of = next(first, today);
        return of.with(TemporalAdjusters.nextOrSame(DayOfWeek.MONDAY));
    }
}
