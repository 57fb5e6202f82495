package bedwright.start;

import bedwright.file.BookFigures;
import bedwright.file.CropBookFile;
import java.time.LocalDate;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** The questions, in the order in which they are asked. */
final class Questions {
    private static final Pattern AMOUNT_AT = Pattern.compile("(\\S+)(?:\\s+at\\s+(\\S+))?");
    private static final Pattern TWO = Pattern.compile("(.+?)\\s+and\\s+(.+)");
    private static final Pattern FROM_TO = Pattern.compile("(.+?)\\s+to\\s+(.+)");
    private static final Pattern BLOCK =
            Pattern.compile("(.+?)\\s+(\\d+)\\s*x\\s*([0-9.]+)(?:\\s*m)?(\\s+tunnel)?", Pattern.CASE_INSENSITIVE);
    private static final Pattern SEASON = Pattern.compile("(.+?)\\s+for\\s+(\\d+)(?:\\s+weeks?)?");
    private static final Pattern CROP = Pattern.compile("(.+?)(?:\\s+(\\d+))?");
    private static final Pattern EVENT = Pattern.compile("(.+?):\\s*(\\d+)(?:\\s+at\\s+(\\S+))?");
    private static final Pattern HOURS = Pattern.compile("(\\S+)\\s*\\+\\s*(\\S+)\\s+at\\s+(\\S+)");
    private static final String BY_THE_FROSTS = "by the frosts";
    private static final String NONE = "none";

    private final LocalDate today;
    private final Function<String, Optional<String>> stationTrouble;

    /**
     * @param today from which the usual start is reckoned
     * @param stationTrouble what is wrong with a station's file, if anything is
     */
    Questions(LocalDate today, Function<String, Optional<String>> stationTrouble) {
        this.today = today;
        this.stationTrouble = stationTrouble;
    }

    List<Question> all() {
        return List.of(
                new Question(
                        "name",
                        "What is your farm or garden called?",
                        "It stands on the season sheet.",
                        before -> "My flowers",
                        (typed, before) -> of("name", typed.strip())),
                new Question(
                        "latitude",
                        "How far north does it lie, in degrees? South is negative.",
                        "The length of the day makes many crops flower sooner or later. A degree more or less does not matter.",
                        before -> "45",
                        (typed, before) -> of("latitude", Read.number(typed, "degrees", -65, 65))),
                new Question(
                        "station",
                        "Have you the file of a weather station's daily records? Type where it lies, or none.",
                        "Ten years or more of a station near you tell frosts, warmth and storms better than memory does."
                                + " The command \"weather\" tells which files it reads.",
                        before -> NONE,
                        (typed, before) -> of("station", station(typed))),
                new Question(
                        "frosts",
                        "When are the usual last frost of spring and the first of autumn?",
                        "In half of the years the last frost comes before the first day you name. Write 10 May and 5 October,"
                                + " or none where no frost comes.",
                        before -> isSouth(before) ? "10 November and 20 April" : "10 May and 5 October",
                        (typed, before) -> frosts(typed),
                        before -> !before.containsKey("station")),
                new Question(
                        "temperatures",
                        "How warm, in °C, are usual days in the warmest month, and how cold usual nights in the coldest?",
                        "From these two the months between are reckoned; roughly. Write 26 and -4.",
                        before -> "26 and -4",
                        (typed, before) -> temperatures(typed),
                        before -> !before.containsKey("station")),
                new Question(
                        "season",
                        "On which day does the season begin, and for how many weeks is it planned?",
                        "A week begins on the weekday of that day. Begin early enough for trays: eight weeks before the last"
                                + " frost or more. Write 2027-03-01 for 40 weeks.",
                        before -> FirstSeason.usualStart(today, latitude(before)) + " for 40 weeks",
                        (typed, before) -> season(typed)),
                new Question(
                        "beds",
                        "Which beds are there? Block by block: name, how many, length in metres.",
                        "Beds of 1.2 m. Write Field 6 x 15; Tunnel 2 x 12 tunnel.",
                        before -> "Field 6 x 15",
                        (typed, before) -> of("beds", beds(typed))),
                new Question(
                        "storms",
                        "From which side do storms come? Or none.",
                        "Tall plants go over in them, and in the lee they stand.",
                        before -> "west",
                        (typed, before) -> of("stormsFrom", Read.isNone(typed) ? null : (Object) Read.side(typed))),
                new Question(
                        "stock",
                        "How many metres of support net are there, and how many tray cells does the bench hold?",
                        "Without net tall crops can't be netted, without cells nothing is raised in trays. Write 30 and 1000.",
                        before -> "30 and 1000",
                        (typed, before) -> stock(typed)),
                new Question(
                        "crops",
                        "What do you like to grow? From the crop book, parted by semicolons.",
                        "The command \"crops\" lists them. A number behind a crop is how many plants there may be at the most:"
                                + " zinnia 200; statice.",
                        before -> "sunflower, once-cut; zinnia; snapdragon; ammi; statice; basil for foliage",
                        (typed, before) -> of("crops", crops(typed))),
                new Question(
                        "currency",
                        "What is the sign of your money?",
                        "It stands before every price.",
                        before -> "$",
                        (typed, before) -> of("currency", typed.strip())),
                new Question(
                        "seed",
                        "What does seed cost for a plant, in the mean?",
                        "The crop book has no prices. In the season file each crop can have its own.",
                        before -> "0.05",
                        (typed, before) -> of("seed", Read.number(typed, "a price", 0, 10000))),
                new Question(
                        "bouquets",
                        "How many bouquets do you promise each week, and at what price?",
                        "Write 10 at 12, or none.",
                        before -> "10 at 12",
                        (typed, before) -> amountAt(typed, "bouquets", "bouquetPrice", "10 at 12")),
                new Question(
                        "stems",
                        "How many loose stems could you sell each week, and at what price?",
                        "At a stall or to shops, not promised. Write 50 at 0.8, or none.",
                        before -> "50 at 0.8",
                        (typed, before) -> amountAt(typed, "stems", "stemPrice", "50 at 0.8")),
                new Question(
                        "selling",
                        "From when to when do you sell?",
                        "Write 2027-06-14 to 2027-09-27. By the frosts is: from eleven weeks after the usual last frost to"
                                + " two weeks before the usual first.",
                        before -> BY_THE_FROSTS,
                        (typed, before) -> selling(typed)),
                new Question(
                        "events",
                        "Which events do you cut for? Day, bouquets and price each, parted by semicolons; or none.",
                        "Write 2027-07-10: 20 at 15; 2027-08-21: 12.",
                        before -> NONE,
                        (typed, before) -> of("events", Read.isNone(typed) ? null : (Object) events(typed))),
                new Question(
                        "hours",
                        "How many hours a week do you work in it yourself, how many can be hired, and what is an hour worth?",
                        "All work has to fit into them. Write 20 + 0 at 15.",
                        before -> "20 + 0 at 15",
                        (typed, before) -> hours(typed)),
                new Question(
                        "cutting",
                        "How many hours a week are cool enough for cutting?",
                        "Hands times cool hours of a morning times mornings. Nobody should work on in the heat.",
                        before -> "8",
                        (typed, before) -> of("cuttingHours", Read.number(typed, "hours", 0, 1000))));
    }

    private static Map<String, Object> of(String key, @Nullable Object value) {
        Map<String, Object> map = new LinkedHashMap<>();
        put(map, key, value);
        return map;
    }

    private static void put(Map<String, Object> map, String key, @Nullable Object value) {
        if (value != null) {
            map.put(key, value);
        }
    }

    private static double latitude(Map<String, Object> before) {
        return before.get("latitude") instanceof Number number ? number.doubleValue() : 0;
    }

    private static boolean isSouth(Map<String, Object> before) {
        return latitude(before) < 0;
    }

    private @Nullable Object station(String typed) {
        if (Read.isNone(typed)) {
            return null;
        }
        stationTrouble.apply(typed.strip()).ifPresent(trouble -> {
            throw new BadAnswer(trouble);
        });
        return typed.strip();
    }

    private static Map<String, Object> frosts(String typed) {
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

    private static Map<String, Object> temperatures(String typed) {
        Matcher parts = Read.parts(TWO, typed, "26 and -4");
        double warmest = Read.number(parts.group(1), "°C by day in the warmest month", 5, 50);
        double coldest = Read.number(parts.group(2), "°C by night in the coldest month", -40, 25);
        if (coldest >= warmest) {
            throw new BadAnswer("The nights of the coldest month can't be as warm as the days of the warmest.");
        }
        Map<String, Object> map = of("warmest", warmest);
        map.put("coldest", coldest);
        return map;
    }

    private static Map<String, Object> season(String typed) {
        Matcher parts = Read.parts(SEASON, typed, "2027-03-01 for 40 weeks");
        LocalDate starts = Read.day(parts.group(1));
        Map<String, Object> map = of("starts", starts.toString());
        map.put("weeks", Read.whole(parts.group(2), "a number of weeks", 4, 104));
        return map;
    }

    private static List<Object> beds(String typed) {
        List<Object> beds = new ArrayList<>();
        for (String block : typed.split(";", -1)) {
            Matcher parts = Read.parts(BLOCK, block, "Field 6 x 15; Tunnel 2 x 12 tunnel");
            Map<String, Object> bed = of("name", parts.group(1));
            bed.put("count", Read.whole(parts.group(2), "a number of beds", 1, 500));
            bed.put("length", Read.number(parts.group(3), "a length in metres", 0.5, 2000));
            if (parts.group(4) != null) {
                bed.put("tunnel", true);
            }
            beds.add(bed);
        }
        return beds;
    }

    private static Map<String, Object> stock(String typed) {
        Matcher parts = Read.parts(TWO, typed, "30 and 1000");
        Map<String, Object> map = of("net", Read.number(parts.group(1), "metres of net", 0, 100000));
        map.put("bench", Read.whole(parts.group(2), "a number of cells", 0, 10000000));
        return map;
    }

    private static List<Object> crops(String typed) {
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

    private static Map<String, Object> amountAt(String typed, String amountKey, String priceKey, String example) {
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

    private static Map<String, Object> selling(String typed) {
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

    private static List<Object> events(String typed) {
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

    private static Map<String, Object> hours(String typed) {
        Matcher parts = Read.parts(HOURS, typed, "20 + 0 at 15");
        Map<String, Object> map = of("ownHours", Read.number(parts.group(1), "hours a week", 0, 10000));
        map.put("hiredHours", Read.number(parts.group(2), "hours a week", 0, 10000));
        map.put("rate", Read.number(parts.group(3), "what an hour is worth", 0, 100000));
        return map;
    }
}
