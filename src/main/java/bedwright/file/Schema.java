package bedwright.file;

import bedwright.season.Answers;
import bedwright.season.Crop;
import bedwright.season.CropBook;
import bedwright.season.Fact;
import bedwright.season.Job;
import bedwright.season.Method;
import bedwright.season.Plan;
import bedwright.season.PriceList;
import bedwright.season.Season;
import bedwright.season.Strategies;
import bedwright.season.Units;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * JSON Schemas (draft 2020-12) of season and plan files, made from the records and their {@link Fact}s, for editors that
 * complete and check while one writes. They say what each value may be; what must hold between values only the reader
 * says.
 */
public final class Schema {
    private static final String DRAFT = "https://json-schema.org/draft/2020-12/schema";

    /** Definitions by name, in the order in which they are first needed. */
    private final Map<String, Node> definitions = new LinkedHashMap<>();

    /** Names that a crop may be taken from the crop book by; empty where none can. */
    private final List<String> book;

    private Schema(List<String> book) {
        this.book = book;
    }

    /** The schema of a season file. */
    public static String season() {
        return new Schema(CropBookFile.ours().names()).of(Season.class, "A season", "season");
    }

    /** The schema of a plan file. */
    public static String plan() {
        return new Schema(List.of()).of(Plan.class, "A plan with its season", "plan");
    }

    /** The schema of a price file. */
    public static String prices() {
        return new Schema(List.of()).of(PriceList.class, "Prices of what a season has too little of", "prices");
    }

    /** The schema of a crop book. */
    public static String book() {
        return new Schema(List.of()).of(CropBook.class, "A crop book", "crop-book");
    }

    /** The schema of answers for a season of one's own. */
    public static String answers() {
        return new Schema(List.of()).of(Answers.class, "Answers for a season of one's own", "answers");
    }

    /** The schema of a file of strategies. */
    public static String strategies() {
        return new Schema(List.of()).of(Strategies.class, "Ways of growing to be compared", "strategies");
    }

    private String of(Class<? extends Record> type, String title, String name) {
        List<Node.Member> members = new ArrayList<>(
                List.of(text("$schema", DRAFT), text("$id", "urn:bedwright:" + name + ":1"), text("title", title)));
        Node.Member ownKey = Unbinder.member(
                Binder.SCHEMA_KEY,
                group(text("type", "string"), text("description", "Where this schema lies, for an editor")));
        members.addAll(root(type, ownKey));
        members.add(Unbinder.member(
                "$defs",
                new Node.Group(
                        Place.START,
                        definitions.entrySet().stream()
                                .map(e -> Unbinder.member(e.getKey(), e.getValue()))
                                .toList(),
                        false)));
        return JsonText.of(new Node.Group(Place.START, members, false));
    }

    private List<Node.Member> root(Class<? extends Record> type, Node.Member ownKey) {
        return namesUnits(type)
                ? eitherUnits(units -> define(new Shape.Group(type), units, Stream.of(ownKey)))
                : keys(Layout.of(type), Units.METRES, Stream.of(ownKey));
    }

    /** Whether a record says in which units it is written. */
    private static boolean namesUnits(Class<? extends Record> type) {
        return Layout.of(type).parts().stream()
                .anyMatch(part -> part.shape() instanceof Shape.Word word && word.type() == Units.class);
    }

    /** One definition or the other, as the key {@code units} says. */
    private static List<Node.Member> eitherUnits(Function<Units, String> defined) {
        Node feet = group(Unbinder.member("const", Unbinder.text(Words.word(Units.FEET))));
        Node saysFeet = group(
                Unbinder.member("properties", group(Unbinder.member("units", feet))),
                Unbinder.member("required", new Node.Many(Place.START, List.of(Unbinder.text("units")), false)));
        return List.of(
                Unbinder.member("if", saysFeet),
                Unbinder.member("then", reference(defined.apply(Units.FEET))),
                Unbinder.member("else", reference(defined.apply(Units.METRES))));
    }

    private static Node reference(String definition) {
        return group(text("$ref", "#/$defs/" + definition));
    }

    /** A record as an object without other keys than its own. */
    private List<Node.Member> keys(Layout layout, Units units, Stream<Node.Member> first) {
        List<Node.Member> properties = new ArrayList<>(first.toList());
        for (Layout.Part part : layout.parts()) {
            properties.add(Unbinder.member(part.key(), part(part, shape(part.shape(), units), units)));
        }
        List<String> required = layout.parts().stream()
                .filter(Layout.Part::mustBeGiven)
                .map(Layout.Part::key)
                .toList();
        return object(properties, required);
    }

    private static List<Node.Member> object(List<Node.Member> properties, List<String> keys) {
        List<Node> required = keys.stream().<Node>map(Unbinder::text).toList();
        List<Node.Member> members = new ArrayList<>();
        members.add(text("type", "object"));
        members.add(Unbinder.member("properties", new Node.Group(Place.START, properties, false)));
        if (!required.isEmpty()) {
            members.add(Unbinder.member("required", new Node.Many(Place.START, required, false)));
        }
        members.add(Unbinder.member("additionalProperties", new Node.Truth(Place.START, false)));
        return members;
    }

    private static Node part(Layout.Part part, List<Node.Member> shape, Units units) {
        List<Node.Member> members = new ArrayList<>();
        members.add(text("description", description(part)));
        if (part.nullable()) {
            Node nothing = group(text("type", "null"));
            Node given = new Node.Group(Place.START, shape, false);
            members.add(Unbinder.member("anyOf", new Node.Many(Place.START, List.of(given, nothing), false)));
        } else {
            members.addAll(shape);
        }
        if (part.hasDefault()) {
            members.add(Unbinder.member("default", usual(part, units)));
        }
        return new Node.Group(Place.START, members, false);
    }

    private static Node usual(Layout.Part part, Units units) {
        Object usual = Defaults.of(part);
        return units == Units.METRES || usual == null
                ? Defaults.node(part.fact().byDefault())
                : Unbinder.node(usual, part.shape(), units);
    }

    private static String description(Layout.Part part) {
        return part.unit().isEmpty() ? part.fact().value() : part.fact().value() + " (" + part.unit() + ")";
    }

    private List<Node.Member> shape(Shape shape, Units units) {
        return switch (shape) {
            case Shape.Text text ->
                text.least() == 0
                        ? List.of(text("type", "string"))
                        : List.of(text("type", "string"), text("pattern", "\\S"));
            case Shape.Whole whole -> number("integer", whole.range());
            case Shape.Decimal decimal -> number("number", decimal.range());
            case Shape.Truth truth -> List.of(text("type", "boolean"));
            case Shape.Date date ->
                List.of(
                        text("type", "string"),
                        text("format", "date"),
                        text("pattern", "^(19|2[01])[0-9]{2}-[0-9]{2}-[0-9]{2}$|^2200-[0-9]{2}-[0-9]{2}$"));
            case Shape.DayOfYear day ->
                List.of(text("type", "string"), text("pattern", "^(0[1-9]|1[0-2])-(0[1-9]|[12][0-9]|3[01])$"));
            case Shape.Word word -> List.of(words(word.words()));
            case Shape.Weight weight ->
                List.of(Unbinder.member(
                        "anyOf",
                        new Node.Many(
                                Place.START,
                                List.of(
                                        group(words(Shape.Weight.WORDS.keySet().stream()
                                                .sorted()
                                                .toList())),
                                        new Node.Group(Place.START, number("integer", Shape.Weight.PERCENT), false)),
                                false)));
            case Shape.Group group -> {
                if (group.type() == Crop.class && !book.isEmpty()) {
                    yield bookOr(Crop.class, units);
                }
                yield namesUnits(group.type())
                        ? eitherUnits(each -> define(group, each, Stream.empty()))
                        : List.of(text("$ref", "#/$defs/" + define(group, units, Stream.empty())));
            }
            case Shape.Many many -> many(many, units);
            case Shape.Named named -> named(named, units);
        };
    }

    private List<Node.Member> many(Shape.Many many, Units units) {
        List<Node.Member> members = new ArrayList<>();
        members.add(text("type", "array"));
        members.add(Unbinder.member("items", new Node.Group(Place.START, shape(many.each(), units), false)));
        addCounts(members, "minItems", many.least(), "maxItems", many.most());
        return members;
    }

    private List<Node.Member> named(Shape.Named named, Units units) {
        List<Node.Member> members = new ArrayList<>();
        members.add(text("type", "object"));
        members.add(Unbinder.member("propertyNames", new Node.Group(Place.START, shape(named.key(), units), false)));
        members.add(Unbinder.member(
                "additionalProperties", new Node.Group(Place.START, shape(widest(named), units), false)));
        addCounts(members, "minProperties", named.least(), "maxProperties", named.most());
        return members;
    }

    /** Where jobs are counted by different units, the shape that allows what any of them may have. */
    private static Shape widest(Shape.Named named) {
        return named.under(Job.PINCH);
    }

    private static void addCounts(List<Node.Member> members, String min, int least, String max, int most) {
        if (least > 0) {
            members.add(Unbinder.member(min, Unbinder.number(Integer.toString(least))));
        }
        if (most < Integer.MAX_VALUE) {
            members.add(Unbinder.member(max, Unbinder.number(Integer.toString(most))));
        }
    }

    private static List<Node.Member> number(String type, Shape.Range range) {
        List<Node.Member> members = new ArrayList<>();
        members.add(text("type", type));
        if (range.min() > Integer.MIN_VALUE) {
            members.add(Unbinder.member(
                    range.above() ? "exclusiveMinimum" : "minimum", Unbinder.number(Words.number(range.min()))));
        }
        if (range.max() != Integer.MAX_VALUE && range.max() < Double.POSITIVE_INFINITY) {
            members.add(Unbinder.member("maximum", Unbinder.number(Words.number(range.max()))));
        }
        return members;
    }

    /** The name under which a record is defined, once it is; a kind within a kind finds itself there. */
    private String define(Shape.Group group, Units units, Stream<Node.Member> first) {
        Units needed = hasUnits(group.type(), new HashSet<>()) ? units : Units.METRES;
        String name = name(group.type(), needed);
        if (!definitions.containsKey(name)) {
            definitions.put(name, new Node.Nothing(Place.START));
            definitions.put(name, new Node.Group(Place.START, keys(Layout.of(group, needed), needed, first), false));
        }
        return name;
    }

    /** Whether a record, or one within it, is written otherwise in feet. */
    private static boolean hasUnits(Class<? extends Record> type, Set<Class<?>> seen) {
        return seen.add(type)
                && Layout.of(type, Units.FEET).parts().stream().anyMatch(part -> hasUnit(part.shape(), seen));
    }

    private static boolean hasUnit(Shape shape, Set<Class<?>> seen) {
        return switch (shape) {
            case Shape.Decimal decimal -> !decimal.unit().isPlain();
            case Shape.Group group -> hasUnits(group.type(), seen);
            case Shape.Many many -> hasUnit(many.each(), seen);
            case Shape.Named named -> hasUnit(named.each(), seen);
            default -> false;
        };
    }

    private static String name(Class<? extends Record> type, Units units) {
        String plain =
                type.getName().substring(type.getPackageName().length() + 1).replace('$', '.');
        return units == Units.METRES ? plain : plain + "-in-" + Words.word(units);
    }

    /** Either the whole record, or one of the book with what differs. */
    private List<Node.Member> bookOr(Class<? extends Record> type, Units units) {
        Node named = new Node.Many(Place.START, List.of(Unbinder.text(FromBook.KEY)), false);
        return List.of(
                Unbinder.member("if", group(Unbinder.member("required", named))),
                Unbinder.member("then", group(text("$ref", "#/$defs/" + defineOfBook(new Shape.Group(type), units)))),
                Unbinder.member("else", reference(define(new Shape.Group(type), units, Stream.empty()))));
    }

    /** A record of which every key may be left out, since it is taken from the book. */
    private String defineOfBook(Shape.Group group, Units units) {
        Class<? extends Record> type = group.type();
        Units needed = hasUnits(type, new HashSet<>()) ? units : Units.METRES;
        String name = name(type, needed) + "-of-the-book";
        if (!definitions.containsKey(name)) {
            definitions.put(name, new Node.Nothing(Place.START));
            List<Node.Member> properties = new ArrayList<>();
            if (type == Crop.class) {
                properties.add(Unbinder.member(
                        FromBook.KEY,
                        group(
                                text(
                                        "description",
                                        "Name of the crop in the crop book; what this entry does not say stands as it is"
                                                + " there"),
                                words(book))));
            } else if (type == Method.class) {
                properties.add(Unbinder.member(
                        FromBook.KEY,
                        group(text("description", "Name of the method in the crop book"), text("type", "string"))));
            }
            for (Layout.Part part : Layout.of(group, needed).parts()) {
                properties.add(Unbinder.member(part.key(), part(part, shapeOfBook(part.shape(), needed), needed)));
            }
            boolean names = type == Crop.class || type == Method.class;
            definitions.put(
                    name,
                    new Node.Group(Place.START, object(properties, names ? List.of(FromBook.KEY) : List.of()), false));
        }
        return name;
    }

    private List<Node.Member> shapeOfBook(Shape shape, Units units) {
        if (shape instanceof Shape.Group group) {
            return List.of(text("$ref", "#/$defs/" + defineOfBook(group, units)));
        }
        if (shape instanceof Shape.Many many
                && many.each() instanceof Shape.Group each
                && each.type() == Method.class) {
            Node picked = group(text("type", "string"), text("description", "A method of the book, as it is there"));
            Node other = new Node.Group(Place.START, bookOr(Method.class, units), false);
            List<Node.Member> members = new ArrayList<>();
            members.add(text("type", "array"));
            members.add(Unbinder.member(
                    "items",
                    group(Unbinder.member("anyOf", new Node.Many(Place.START, List.of(picked, other), false)))));
            addCounts(members, "minItems", many.least(), "maxItems", many.most());
            return members;
        }
        return shape(shape, units);
    }

    private static Node.Member words(List<String> words) {
        return Unbinder.member(
                "enum",
                new Node.Many(
                        Place.START, words.stream().<Node>map(Unbinder::text).toList(), false));
    }

    private static Node.Member text(String key, String value) {
        return Unbinder.member(key, Unbinder.text(value));
    }

    private static Node group(Node.Member... members) {
        return new Node.Group(Place.START, Arrays.asList(members), false);
    }
}
