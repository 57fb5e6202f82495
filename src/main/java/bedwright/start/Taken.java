package bedwright.start;

import bedwright.file.BookFigures;
import bedwright.file.CropBookFile;
import bedwright.season.Unit;
import bedwright.season.Units;
import java.time.LocalDate;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** What was typed, as values of the answers file by key. */
final class Taken {
    static final String BY_THE_FROSTS = "by the frosts";

    private static final Pattern AMOUNT_AT = Pattern.compile("(\\S+)(?:\\s+at\\s+(\\S+))?");
    private static final Pattern TWO = Pattern.compile("(.+?)\\s+and\\s+(.+)");
    private static final Pattern FROM_TO = Pattern.compile("(.+?)\\s+to\\s+(.+)");
    private static final Pattern BLOCK = Pattern.compile(
            "(.+?)\\s+(\\d+)\\s*x\\s*([0-9.]+)(?:\\s*(?:m|ft))?(\\s+tunnel)?", Pattern.CASE_INSENSITIVE);
    private static final Pattern SEASON = Pattern.compile("(.+?)\\s+for\\s+(\\d+)(?:\\s+weeks?)?");
    private static final Pattern CROP = Pattern.compile("(.+?)(?:\\s+(\\d+))?");
    private static final Pattern EVENT = Pattern.compile("(.+?):\\s*(\\d+)(?:\\s+at\\s+(\\S+))?");
    private static final Pattern HOURS = Pattern.compile("(\\S+)\\s*\\+\\s*(\\S+)\\s+at\\s+(\\S+)");

    private static final Set<String> METRES = Set.of("metres", "metre", "meters", "meter", "m", "°c", "c", "metric");
    private static final Set<String> FEET = Set.of("feet", "foot", "ft", "°f", "f", "inches");

    private Taken() {}

    /** One value; none where it is left out. */
    static Map<String, Object> of(String key, @Nullable Object value) {
        Map<String, Object> map = new LinkedHashMap<>();
        put(map, key, value);
        return map;
    }

    private static void put(Map<String, Object> map, String key, @Nullable Object value) {
        if (value != null) {
            map.put(key, value);
        }
    }

    static Map<String, Object> frosts(String typed) {
        if (Read.isNone(typed)) {
            return Map.of();
        }
        Matcher parts = Read.parts(TWO, typed, "10 May and 5 October");
        Map<String, Object> map = of("lastFrost", text(Read.dayOfYear(parts.group(1))));
        map.put("firstFrost", text(Read.dayOfYear(parts.group(2))));
        return map;
    }

    private static String text(MonthDay day) {
        return String.format(Locale.ROOT, "%02d-%02d", day.getMonthValue(), day.getDayOfMonth());
    }

    static Map<String, Object> temperatures(String typed, Units units) {
        Unit degrees = units.temperature();
        Matcher parts = Read.parts(TWO, typed, units == Units.FEET ? "79 and 25" : "26 and -4");
        double warmest = number(parts.group(1), degrees.symbol() + " by day in the warmest month", degrees, 5, 50);
        double coldest = number(parts.group(2), degrees.symbol() + " by night in the coldest month", degrees, -40, 25);
        if (coldest >= warmest) {
            throw new BadAnswer("The nights of the coldest month can't be as warm as the days of the warmest.");
        }
        Map<String, Object> map = of("warmest", warmest);
        map.put("coldest", coldest);
        return map;
    }

    /** A number as it is typed, of a range that is given in metric units. */
    private static double number(String typed, String what, Unit unit, double least, double most) {
        return Read.number(typed, what, unit.least(least), unit.most(most));
    }

    /** The word of the answers file. */
    static String units(String typed) {
        String word = typed.strip().toLowerCase(Locale.ROOT);
        if (METRES.contains(word)) {
            return "metres";
        }
        if (FEET.contains(word)) {
            return "feet";
        }
        throw new BadAnswer("\"" + typed.strip() + "\" is neither metres nor feet. Write one of the two.");
    }

    static Map<String, Object> season(String typed) {
        Matcher parts = Read.parts(SEASON, typed, "2027-03-01 for 40 weeks");
        LocalDate starts = Read.day(parts.group(1));
        Map<String, Object> map = of("starts", starts.toString());
        map.put("weeks", Read.whole(parts.group(2), "a number of weeks", 4, 104));
        return map;
    }

    static List<Object> beds(String typed, Units units) {
        List<Object> beds = new ArrayList<>();
        for (String block : typed.split(";", -1)) {
            Matcher parts = Read.parts(
                    BLOCK,
                    block,
                    units == Units.FEET ? "Field 6 x 50; Tunnel 2 x 40 tunnel" : "Field 6 x 15; Tunnel 2 x 12 tunnel");
            Map<String, Object> bed = of("name", parts.group(1));
            bed.put("count", Read.whole(parts.group(2), "a number of beds", 1, 500));
            bed.put("length", number(parts.group(3), "a length in " + units.several(), units.length(), 0.5, 2000));
            if (parts.group(4) != null) {
                bed.put("tunnel", true);
            }
            beds.add(bed);
        }
        return beds;
    }

    static Map<String, Object> stock(String typed, Units units) {
        Matcher parts = Read.parts(TWO, typed, units == Units.FEET ? "100 and 1000" : "30 and 1000");
        Map<String, Object> map =
                of("net", number(parts.group(1), units.several() + " of net", units.length(), 0, 100000));
        map.put("bench", Read.whole(parts.group(2), "a number of cells", 0, 10000000));
        return map;
    }

    static List<Object> crops(String typed) {
        List<String> book = CropBookFile.ours().names();
        List<Object> crops = new ArrayList<>();
        List<String> named = new ArrayList<>();
        for (String one : typed.split(";", -1)) {
            Matcher parts = Read.parts(CROP, one, "zinnia 200; statice");
            String name = book.stream()
                    .filter(known -> known.equalsIgnoreCase(parts.group(1)))
                    .findFirst()
                    .orElseThrow(() -> unknown(parts.group(1)));
            if (named.contains(name)) {
                throw new BadAnswer("\"" + name + "\" stands there twice. Name each crop once.");
            }
            named.add(name);
            Map<String, Object> crop = of("crop", name);
            if (parts.group(2) != null) {
                crop.put("plants", Read.whole(parts.group(2), "a number of plants", 1, 100000));
            }
            crops.add(crop);
        }
        return crops;
    }

    private static BadAnswer unknown(String name) {
        List<String> like = BookFigures.like(CropBookFile.ours(), name);
        return new BadAnswer("There is no crop \"" + name + "\" in the crop book. "
                + (like.isEmpty()
                        ? "The command \"crops\" lists what it has."
                        : "Did you mean \"" + String.join("\" or \"", like) + "\"?"));
    }

    static Map<String, Object> amountAt(String typed, String amountKey, String priceKey, String example) {
        if (Read.isNone(typed)) {
            return of(amountKey, 0);
        }
        Matcher parts = Read.parts(AMOUNT_AT, typed, example);
        Map<String, Object> map = of(amountKey, Read.whole(parts.group(1), "a number", 0, 100000));
        if (parts.group(2) != null) {
            map.put(priceKey, Read.number(parts.group(2), "a price", 0, 10000));
        }
        return map;
    }

    static Map<String, Object> selling(String typed) {
        if (typed.isBlank() || typed.strip().equalsIgnoreCase(BY_THE_FROSTS)) {
            return Map.of();
        }
        Matcher parts = Read.parts(FROM_TO, typed, "2027-06-14 to 2027-09-27");
        LocalDate from = Read.day(parts.group(1));
        LocalDate to = Read.day(parts.group(2));
        if (to.isBefore(from)) {
            throw new BadAnswer("Selling can't end before it begins. Write the earlier day first.");
        }
        Map<String, Object> map = of("sellFrom", from.toString());
        map.put("sellTo", to.toString());
        return map;
    }

    static List<Object> events(String typed) {
        List<Object> events = new ArrayList<>();
        for (String one : typed.split(";", -1)) {
            Matcher parts = Read.parts(EVENT, one, "2027-07-10: 20 at 15; 2027-08-21: 12");
            Map<String, Object> event = of("date", Read.day(parts.group(1)).toString());
            event.put("bouquets", Read.whole(parts.group(2), "a number of bouquets", 1, 100000));
            if (parts.group(3) != null) {
                event.put("price", Read.number(parts.group(3), "a price", 0, 100000));
            }
            events.add(event);
        }
        return events;
    }

    static Map<String, Object> hours(String typed) {
        Matcher parts = Read.parts(HOURS, typed, "20 + 0 at 15");
        Map<String, Object> map = of("ownHours", Read.number(parts.group(1), "hours a week", 0, 10000));
        map.put("hiredHours", Read.number(parts.group(2), "hours a week", 0, 10000));
        map.put("rate", Read.number(parts.group(3), "what an hour is worth", 0, 100000));
        return map;
    }
}
