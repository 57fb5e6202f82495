package bedwright.command;

import bedwright.season.Season;
import bedwright.season.Unit;
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

    /** A length in the units of the season file, with its unit. */
    static String length(Season season, double metres) {
        Unit unit = season.units().length();
        return number(unit.of(metres)) + " " + unit.symbol();
    }

    static String date(LocalDate date) {
        return DAY.format(date);
    }

    static String day(Season season, int day) {
        return date(season.dateOf(day));
    }

    /** How many of something there are: 1 bed, 2 beds. */
    static String count(int number, String one) {
        return number + " " + one + (number == 1 ? "" : "s");
    }

    /** An amount of money in whole main units. */
    static String money(Season season, double amount) {
        return money(season, amount, "%,.0f");
    }

    /** An amount of money to two digits behind the point. */
    static String exactMoney(Season season, double amount) {
        return money(season, amount, "%,.2f");
    }

    private static String money(Season season, double amount, String form) {
        String sign = season.currency().sign();
        boolean letters = sign.codePoints().anyMatch(Character::isLetter);
        String number = String.format(Locale.ROOT, form, Math.abs(amount));
        boolean less = amount < 0 && number.codePoints().anyMatch(c -> c >= '1' && c <= '9');
        return (less ? "−" : "") + sign + (letters ? " " : "") + number;
    }

    static String percent(double share) {
        return Math.round(100 * share) + " %";
    }
}
