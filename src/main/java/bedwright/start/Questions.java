package bedwright.start;

import bedwright.season.Units;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** The questions, in the order in which they are asked. */
final class Questions {
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

    /** In metres and °C. */
    List<Question> all() {
        return all(Units.METRES);
    }

    /**
     * The same questions, asked in other units.
     *
     * @param units as answered to the question {@code units}
     */
    List<Question> all(Units units) {
        boolean feet = units == Units.FEET;
        return List.of(
                new Question(
                        "name",
                        "What is your farm or garden called?",
                        "It stands on the season sheet.",
                        before -> "My flowers",
                        (typed, before) -> Taken.of("name", typed.strip())),
                new Question(
                        "latitude",
                        "How far north does it lie, in degrees? South is negative.",
                        "The length of the day makes many crops flower sooner or later. A degree more or less does not matter.",
                        before -> "45",
                        (typed, before) -> Taken.of("latitude", Read.number(typed, "degrees", -65, 65))),
                new Question(
                        "units",
                        "Do you measure in metres and °C, or in feet and °F? Write metres or feet.",
                        "The season file is written in them, and all that you read of it comes in them.",
                        before -> "metres",
                        (typed, before) -> Taken.of("units", Taken.units(typed))),
                new Question(
                        "station",
                        "Have you the file of a weather station's daily records? Type where it lies, or none.",
                        "Ten years or more of a station near you tell frosts, warmth and storms better than memory does."
                                + " The command \"weather\" tells which files it reads.",
                        before -> NONE,
                        (typed, before) -> Taken.of("station", station(typed))),
                new Question(
                        "frosts",
                        "When are the usual last frost of spring and the first of autumn?",
                        "In half of the years the last frost comes before the first day you name. Write 10 May and 5 October,"
                                + " or none where no frost comes.",
                        before -> isSouth(before) ? "10 November and 20 April" : "10 May and 5 October",
                        (typed, before) -> Taken.frosts(typed),
                        before -> !before.containsKey("station")),
                new Question(
                        "temperatures",
                        "How warm, in " + units.temperature().symbol()
                                + ", are usual days in the warmest month, and how cold usual nights in the coldest?",
                        "From these two the months between are reckoned; roughly. Write " + temperatures(feet) + ".",
                        before -> temperatures(feet),
                        (typed, before) -> Taken.temperatures(typed, units),
                        before -> !before.containsKey("station")),
                new Question(
                        "season",
                        "On which day does the season begin, and for how many weeks is it planned?",
                        "A week begins on the weekday of that day. Begin early enough for trays: eight weeks before the last"
                                + " frost or more. Write 2027-03-01 for 40 weeks.",
                        before -> Selling.usualStart(today, latitude(before)) + " for 40 weeks",
                        (typed, before) -> Taken.season(typed)),
                new Question(
                        "beds",
                        "Which beds are there? Block by block: name, how many, length in " + units.several() + ".",
                        feet
                                ? "Beds of 4 ft. Write Field 6 x 50; Tunnel 2 x 40 tunnel."
                                : "Beds of 1.2 m. Write Field 6 x 15; Tunnel 2 x 12 tunnel.",
                        before -> feet ? "Field 6 x 50" : "Field 6 x 15",
                        (typed, before) -> Taken.of("beds", Taken.beds(typed, units))),
                new Question(
                        "storms",
                        "From which side do storms come? Or none.",
                        "Tall plants go over in them, and in the lee they stand.",
                        before -> "west",
                        (typed, before) ->
                                Taken.of("stormsFrom", Read.isNone(typed) ? null : (Object) Read.side(typed))),
                new Question(
                        "stock",
                        "How many " + units.several()
                                + " of support net are there, and how many tray cells does the bench hold?",
                        "Without net tall crops can't be netted, without cells nothing is raised in trays. Write "
                                + stock(feet) + ".",
                        before -> stock(feet),
                        (typed, before) -> Taken.stock(typed, units)),
                new Question(
                        "crops",
                        "What do you like to grow? From the crop book, parted by semicolons.",
                        "The command \"crops\" lists them. A number behind a crop is how many plants there may be at the most:"
                                + " zinnia 200; statice.",
                        before -> "sunflower, once-cut; zinnia; snapdragon; ammi; statice; basil for foliage",
                        (typed, before) -> Taken.of("crops", Taken.crops(typed))),
                new Question(
                        "currency",
                        "What is the sign of your money?",
                        "It stands before every price.",
                        before -> "$",
                        (typed, before) -> Taken.of("currency", typed.strip())),
                new Question(
                        "seed",
                        "What does seed cost for a plant, in the mean?",
                        "The crop book has no prices. In the season file each crop can have its own.",
                        before -> "0.05",
                        (typed, before) -> Taken.of("seed", Read.number(typed, "a price", 0, 10000))),
                new Question(
                        "bouquets",
                        "How many bouquets do you promise each week, and at what price?",
                        "Write 10 at 12, or none.",
                        before -> "10 at 12",
                        (typed, before) -> Taken.amountAt(typed, "bouquets", "bouquetPrice", "10 at 12")),
                new Question(
                        "stems",
                        "How many loose stems could you sell each week, and at what price?",
                        "At a stall or to shops, not promised. Write 50 at 0.8, or none.",
                        before -> "50 at 0.8",
                        (typed, before) -> Taken.amountAt(typed, "stems", "stemPrice", "50 at 0.8")),
                new Question(
                        "selling",
                        "From when to when do you sell?",
                        "Write 2027-06-14 to 2027-09-27. By the frosts is: from eleven weeks after the usual last frost to"
                                + " two weeks before the usual first.",
                        before -> Taken.BY_THE_FROSTS,
                        (typed, before) -> Taken.selling(typed)),
                new Question(
                        "events",
                        "Which events do you cut for? Day, bouquets and price each, parted by semicolons; or none.",
                        "Write 2027-07-10: 20 at 15; 2027-08-21: 12.",
                        before -> NONE,
                        (typed, before) ->
                                Taken.of("events", Read.isNone(typed) ? null : (Object) Taken.events(typed))),
                new Question(
                        "hours",
                        "How many hours a week do you work in it yourself, how many can be hired, and what is an hour worth?",
                        "All work has to fit into them. Write 20 + 0 at 15.",
                        before -> "20 + 0 at 15",
                        (typed, before) -> Taken.hours(typed)),
                new Question(
                        "cutting",
                        "How many hours a week are cool enough for cutting?",
                        "Hands times cool hours of a morning times mornings. Nobody should work on in the heat.",
                        before -> "8",
                        (typed, before) -> Taken.of("cuttingHours", Read.number(typed, "hours", 0, 1000))));
    }

    private static String temperatures(boolean feet) {
        return feet ? "79 and 25" : "26 and -4";
    }

    private static String stock(boolean feet) {
        return feet ? "100 and 1000" : "30 and 1000";
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
}
