package bedwright.file;

import bedwright.season.BookCrop;
import bedwright.season.Crop;
import bedwright.season.CropBook;
import bedwright.season.Evidence;
import bedwright.season.Figure;
import bedwright.season.Harvest;
import bedwright.season.Method;
import bedwright.season.Units;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** The figures of a crop of the book, one by one. */
public final class BookFigures {
    /** Keys of a crop that say what it is rather than how much of something. */
    private static final Set<String> NO_FIGURES_OF_CROP =
            Set.of("name", "family", "clock", "killing", "jobs", "harvest", "figures", "methods");

    private static final Set<String> NO_FIGURES_OF_METHOD = Set.of("name", "start", "pinched", "jobs", "figures");

    /** Asked of each crop, also where its value is the usual one. */
    private static final Set<String> OF_EACH_CROP =
            Set.of("base", "emergence", "firstCut", "leastDayLength", "young", "grown", "tender", "height", "stand");

    /** Asked of each method likewise. */
    private static final Set<String> OF_EACH_METHOD =
            Set.of("rows", "spacing", "cutDays", "stems", "saleable", "emergence");

    private static final Set<String> OF_RAISED_PLANTS = Set.of("headStart", "check");

    private static final MathContext DIGITS = new MathContext(4);

    /** Crops of our own book by name, as far as they were asked for. */
    private static final Map<String, Crop> OF_OURS = new ConcurrentHashMap<>();

    private BookFigures() {}

    /**
     * A figure with what it rests on.
     *
     * @param method the method whose it is, or null for the crop's own
     * @param key the key under which evidence speaks of it
     * @param what what it is: a sentence
     * @param value as in a season file
     * @param unit as in °C·d; empty if it has none
     * @param figure what it rests on; null if nobody says
     */
    public record Given(
            @Nullable String method,
            String key,
            String what,
            String value,
            String unit,
            @Nullable Figure figure) {}

    /**
     * A crop of the book with what its figures rest on as figures of the crop and of its methods; of what it does not
     * have nothing is said. Where the evidence of stems a plant differs by method the crop is as sure of them as of its
     * weakest: possible seasons doubt all methods of a crop alike.
     */
    static Crop figured(CropBook book, BookCrop entry) {
        Map<String, Figure> ofCrop = new LinkedHashMap<>();
        Map<String, Map<String, Figure>> ofMethods = new LinkedHashMap<>();
        List<Evidence> all = new ArrayList<>(entry.evidence());
        all.addAll(book.usual());
        for (Evidence piece : all) {
            for (String key : piece.of()) {
                if (piece.methods().isEmpty()) {
                    ofCrop.putIfAbsent(key, piece.figure());
                }
                for (String method : piece.methods()) {
                    ofMethods
                            .computeIfAbsent(method, name -> new LinkedHashMap<>())
                            .putIfAbsent(key, piece.figure());
                }
            }
        }
        Crop crop = with(entry.crop(), ofCrop, ofMethods);
        Set<String> keys = of(crop).stream().map(Given::key).collect(Collectors.toSet());
        ofCrop.keySet().retainAll(keys);
        List<Figure> stems = crop.methods().stream()
                .flatMap(method -> Stream.ofNullable(method.figures().get("stems")))
                .toList();
        // With a method of whose stems nobody says anything, the others' evidence must not pass for its own.
        if (!ofCrop.containsKey("stems") && stems.size() == crop.methods().size()) {
            ofCrop.put("stems", weakest(stems));
        }
        return with(entry.crop(), ofCrop, ofMethods);
    }

    /** The least sure of some figures, of equally sure ones the first. */
    static Figure weakest(List<Figure> figures) {
        return figures.stream()
                .reduce((a, b) -> a.sure().compareTo(b.sure()) >= 0 ? a : b)
                .orElseThrow();
    }

    private static Crop with(Crop crop, Map<String, Figure> ofCrop, Map<String, Map<String, Figure>> ofMethods) {
        List<Method> methods = crop.methods().stream()
                .map(method ->
                        method.with(method.kinds(), method.net(), ofMethods.getOrDefault(method.name(), Map.of())))
                .toList();
        return crop.with(crop.kinds(), crop.appeal(), ofCrop, methods);
    }

    /** A crop of the book, with what its figures rest on; or nothing if it has no such crop. */
    public static Optional<Crop> find(CropBook book, String name) {
        return book == CropBookFile.ours()
                ? Optional.ofNullable(
                        OF_OURS.computeIfAbsent(name, asked -> read(book, asked).orElse(null)))
                : read(book, name);
    }

    private static Optional<Crop> read(CropBook book, String name) {
        return book.crops().stream()
                .filter(entry -> entry.crop().name().equals(name))
                .map(entry -> figured(book, entry))
                .findFirst();
    }

    /** Names in the book that one of no crop may have meant: those with it in them, or the nearest in spelling. */
    public static List<String> like(CropBook book, String name) {
        String wanted = name.toLowerCase(Locale.ROOT).strip();
        List<String> within = book.names().stream()
                .filter(known -> known.toLowerCase(Locale.ROOT).contains(wanted)
                        || wanted.contains(known.toLowerCase(Locale.ROOT)))
                .toList();
        return within.isEmpty() ? Words.nearest(name, book.names()).stream().toList() : within;
    }

    /** All crops of the book, with what their figures rest on. */
    public static List<Crop> crops(CropBook book) {
        return book.crops().stream().map(entry -> figured(book, entry)).toList();
    }

    /** The figures of a crop whose evidence stands in its and its methods' {@code figures}, in metric units. */
    public static List<Given> of(Crop crop) {
        return of(crop, Units.METRES);
    }

    /** Likewise, values and units as in a file of such units. */
    public static List<Given> of(Crop crop, Units units) {
        List<Given> all = new ArrayList<>();
        add(all, units, crop, NO_FIGURES_OF_CROP, null, crop.figures(), Map.of(), Set.of("tender", "height", "stand"));
        add(all, units, crop.clock(), Set.of("convention"), null, crop.figures(), Map.of(), OF_EACH_CROP);
        add(all, units, crop.killing(), Set.of(), null, crop.figures(), Map.of(), OF_EACH_CROP);
        Harvest harvest = crop.harvest();
        if (harvest != null) {
            add(all, units, harvest, Set.of(), null, crop.figures(), Map.of(), Set.of());
        }
        for (Method method : crop.methods()) {
            // Not what merely bears the name of a crop's own key.
            Map<String, Figure> ofAll = new HashMap<>(crop.figures());
            ofAll.keySet().removeAll(ownKeys());
            add(all, units, method, NO_FIGURES_OF_METHOD, method.name(), method.figures(), ofAll, always(method));
        }
        return all;
    }

    /** Keys of a crop itself, which evidence that names no method speaks of. */
    static Set<String> ownKeys() {
        Set<String> keys = new HashSet<>();
        for (Class<? extends Record> type : List.of(Crop.class, Crop.Clock.class, Crop.Killing.class, Harvest.class)) {
            keys.addAll(Layout.of(type).keys());
        }
        return keys;
    }

    private static Set<String> always(Method method) {
        Set<String> keys = new HashSet<>(OF_EACH_METHOD);
        if (method.start() == Method.Start.TRAY || method.start() == Method.Start.PLUGS) {
            keys.addAll(OF_RAISED_PLANTS);
        }
        if (method.pinched()) {
            keys.add("pinchDelay");
        }
        return keys;
    }

    private static void add(
            List<Given> all,
            Units units,
            Record record,
            Set<String> leftOut,
            @Nullable String method,
            Map<String, Figure> figures,
            Map<String, Figure> otherwise,
            Set<String> always) {
        for (Layout.Part part : Layout.of(record.getClass(), units).parts()) {
            Object value = part.valueIn(record);
            if (value == null
                    || leftOut.contains(part.key())
                    || (value.equals(Defaults.of(part)) && !always.contains(part.key()))
                    || (part.key().equals("kinds") && value instanceof Collection<?> kinds && kinds.size() < 2)) {
                continue;
            }
            Figure figure = figures.containsKey(part.key()) ? figures.get(part.key()) : otherwise.get(part.key());
            leaves(all, units, method, part.key(), part, value, figure);
        }
    }

    /** A group of keys has one evidence, but each of its figures stands for itself. */
    private static void leaves(
            List<Given> all,
            Units units,
            @Nullable String method,
            String key,
            Layout.Part part,
            Object value,
            @Nullable Figure figure) {
        if (value instanceof Record group) {
            for (Layout.Part inner : Layout.of(group.getClass(), units).parts()) {
                Object within = inner.valueIn(group);
                if (within != null) {
                    leaves(all, units, method, key, inner, within, figure);
                }
            }
            if (Layout.of(group.getClass()).parts().stream().allMatch(inner -> inner.valueIn(group) == null)) {
                all.add(new Given(method, key, part.fact().value(), "{ }", "", figure));
            }
            return;
        }
        String what = part.fact().value().replaceFirst("; left out: .*", "");
        all.add(new Given(method, key, what, said(value, part.shape()), part.unit(), figure));
    }

    /** In other units than the book's own, with no more digits than a figure of the book can mean. */
    private static String said(Object value, Shape shape) {
        return shape instanceof Shape.Decimal decimal && !decimal.unit().isPlain()
                ? Words.number(
                        BigDecimal.valueOf(decimal.unit().of((Double) value)).round(DIGITS))
                : Unbinder.text(value, shape);
    }
}
