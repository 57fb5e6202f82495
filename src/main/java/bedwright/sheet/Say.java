package bedwright.sheet;

import bedwright.plan.Grains;
import bedwright.season.Rounding;
import bedwright.season.Season;
import bedwright.season.Unit;
import java.time.LocalDate;
import java.time.Month;
import java.time.format.TextStyle;
import java.util.Locale;

/** Figures and dates as a grower reads them. The same in every locale. */
public final class Say {
    /** A season longer than this meets the same date twice, so that dates need their year. */
    private static final int DAYS_WITHOUT_YEAR = 365;

    private final Season season;
    private final boolean withYear;

    Say(Season season) {
        this.season = season;
        this.withYear = season.days() > DAYS_WITHOUT_YEAR;
    }

    static String month(int month) {
        return Month.of(month + 1).getDisplayName(TextStyle.FULL, Locale.ENGLISH);
    }

    /** A whole number, halves up, with commas between thousands. */
    public static String whole(double value) {
        long rounded = value < 0 ? -Rounding.halfUp(-value) : Rounding.halfUp(value);
        String digits = Long.toString(Math.abs(rounded));
        StringBuilder text = new StringBuilder(rounded < 0 ? "−" : "");
        for (int i = 0; i < digits.length(); i++) {
            if (i > 0 && (digits.length() - i) % 3 == 0) {
                text.append(',');
            }
            text.append(digits.charAt(i));
        }
        return text.toString();
    }

    /** A number with one decimal, which is left out where it is 0. */
    public static String tenth(double value) {
        long tenths = Rounding.halfUp(Math.abs(value) * 10);
        String sign = value < 0 && tenths > 0 ? "−" : "";
        long ones = tenths / 10;
        return sign + whole(ones) + (tenths % 10 == 0 ? "" : "." + tenths % 10);
    }

    /** Hundredths of stems as whole stems. */
    static String stems(double hundredths) {
        return whole(hundredths / 100);
    }

    /** Ticks of work as hours. */
    static String hours(double ticks) {
        return tenth(ticks / Grains.TICKS_AN_HOUR);
    }

    /** "Mon". */
    static String weekday(LocalDate day) {
        return day.getDayOfWeek().getDisplayName(TextStyle.SHORT, Locale.ENGLISH);
    }

    /** Minutes as hours and minutes: "1:05". */
    static String clock(long minutes) {
        long hours = minutes / 60;
        return whole(hours) + ":" + (minutes % 60 < 10 ? "0" : "") + minutes % 60;
    }

    /** Millimetres in the lengths of the season file, metres or feet, without unit. */
    String length(double millimetres) {
        return tenth(lengths().of(millimetres / 1000));
    }

    /** Likewise with the unit: "12.5 m". */
    String lengthWithUnit(double millimetres) {
        return length(millimetres) + " " + lengths().symbol();
    }

    /** How the season file writes lengths. */
    Unit lengths() {
        return season.units().length();
    }

    /** "Metres" or "Feet": a table's head. */
    String lengthsHead() {
        String several = season.units().several();
        return several.substring(0, 1).toUpperCase(Locale.ROOT) + several.substring(1);
    }

    /** A gust: "21 m/s" or "47 mph". */
    String gust(double metresASecond) {
        Unit speed = season.units().speed();
        return whole(speed.of(metresASecond)) + " " + speed.symbol();
    }

    /** A share as per cent. */
    static String percent(double share) {
        return whole(share * 100) + " %";
    }

    /** Two figures of which the first may be the second: "12 to 15", or "12". */
    static String range(String least, String most) {
        return least.equals(most) ? least : least + " to " + most;
    }

    /** "1 week", "3 weeks". */
    public static String count(long count, String one, String more) {
        return whole(count) + " " + (count == 1 ? one : more);
    }

    /** Grains as whole money with the currency's sign. */
    String money(double grains) {
        double amount = Grains.toMoney(season, grains);
        String sign = season.currency().sign();
        boolean letters = sign.codePoints().anyMatch(Character::isLetter);
        String text = sign + (letters ? " " : "") + whole(Math.abs(amount));
        return amount < 0 && !whole(amount).equals("0") ? "−" + text : text;
    }

    /** A price or rate in main units, with the digits of its currency. */
    String price(double amount) {
        String sign = season.currency().sign();
        boolean letters = sign.codePoints().anyMatch(Character::isLetter);
        String form = "%." + season.currency().digits() + "f";
        return sign + (letters ? " " : "") + String.format(Locale.ROOT, form, amount);
    }

    /** "3 May", with the year where the season is so long that it needs one. */
    String date(LocalDate date) {
        return dayAndMonth(date) + (withYear ? " " + date.getYear() : "");
    }

    /** "3 May" with the month cut to three letters, for tables. */
    String shortDate(LocalDate date) {
        String month = month(date.getMonthValue() - 1).substring(0, 3);
        return date.getDayOfMonth() + " " + month + (withYear ? " " + date.getYear() : "");
    }

    /** "3 May" with the month cut to three letters, where the year is plain. */
    static String shortDay(LocalDate date) {
        return date.getDayOfMonth() + " " + month(date.getMonthValue() - 1).substring(0, 3);
    }

    /** The first day of a week, for tables. */
    String shortWeek(int week) {
        return shortDate(season.weekStart(week));
    }

    /** "3 May 2027". */
    static String fullDate(LocalDate date) {
        return dayAndMonth(date) + " " + date.getYear();
    }

    private static String dayAndMonth(LocalDate date) {
        return date.getDayOfMonth() + " " + month(date.getMonthValue() - 1);
    }

    /** The first day of a week. */
    String week(int week) {
        return date(season.weekStart(week));
    }

    /** "week of 3 May", or "weeks of 3 May to 17 May". */
    String weeks(Run run) {
        return weeks(run.from(), run.to());
    }

    /** The same for a first and a last week. */
    String weeks(int from, int to) {
        if (from == to) {
            return "week of " + week(from);
        }
        LocalDate first = season.weekStart(from);
        LocalDate last = season.weekStart(to);
        String start = first.getYear() == last.getYear() ? dayAndMonth(first) : date(first);
        return "weeks of " + start + " to " + date(last);
    }
}
