package bedwright.command;

import bedwright.season.Season;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** How numbers and dates are written on the screen. */
final class Words {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMM yyyy", Locale.ENGLISH);

    private Words() {}

    /** A number with at most one digit behind the point. */
    static String number(double value) {
        String text = String.format(Locale.ROOT, "%.1f", value);
        return text.endsWith(".0") ? text.substring(0, text.length() - 2) : text;
    }

    static String date(LocalDate date) {
        return DAY.format(date);
    }

    static String day(Season season, int day) {
        return date(season.dateOf(day));
    }

    /** An amount of money in whole main units. */
    static String money(Season season, double amount) {
        return season.currency().sign() + " " + String.format(Locale.ENGLISH, "%,d", Math.round(amount));
    }

    static String percent(double share) {
        return Math.round(100 * share) + " %";
    }
}
