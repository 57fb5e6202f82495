package bedwright.file;

import bedwright.season.Fact;
import bedwright.season.Unit;
import bedwright.season.Units;
import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.jspecify.annotations.Nullable;

/**
 * The keys of a record: its components with their {@link Fact}s, in the order in which they are declared, as they stand
 * in a file of some units.
 *
 * @param type the record
 * @param parts its components
 */
record Layout(Class<? extends Record> type, List<Part> parts) {
    private static final Map<Asked, Layout> ALL = new ConcurrentHashMap<>();
    private static final Map<Class<? extends Record>, Constructor<? extends Record>> MAKING = new ConcurrentHashMap<>();

    private record Asked(Class<? extends Record> type, Units units, boolean byLength) {
        Layout layout() {
            return new Layout(
                    type,
                    Arrays.stream(type.getRecordComponents())
                            .map(component -> Part.of(component, units, byLength))
                            .toList());
        }
    }

    /**
     * One component.
     *
     * @param key its key in a file: its name, but for the few that name a unit
     * @param inside its shape as it is kept, whatever the file's units
     * @param nullable whether it may be left out without a default
     */
    record Part(String key, Shape shape, Shape inside, Fact fact, boolean nullable, Method accessor) {
        static Part of(RecordComponent component, Units units, boolean byLength) {
            Fact fact = component.getAnnotation(Fact.class);
            if (fact == null) {
                throw new IllegalArgumentException(
                        component + " of " + component.getDeclaringRecord() + " has no fact");
            }
            Unit kept = Unit.plain(fact.unit());
            Unit unit = fact.each() && !byLength ? kept : units.of(fact);
            boolean named = units == Units.FEET && !fact.inFeet().isEmpty();
            return new Part(
                    named ? fact.inFeet() : component.getName(),
                    Shape.of(component.getGenericType(), fact, unit),
                    Shape.of(component.getGenericType(), fact, kept),
                    fact,
                    component.getAnnotatedType().isAnnotationPresent(Nullable.class),
                    component.getAccessor());
        }

        /** Unit in which its numbers are written; empty where they have none or are money. */
        String unit() {
            String unit = Shape.unit(shape, fact);
            return unit.equals("money") ? "" : unit;
        }

        boolean hasDefault() {
            return !fact.byDefault().isEmpty();
        }

        boolean mustBeGiven() {
            return !nullable && !hasDefault();
        }

        @Nullable
        Object valueIn(Record record) {
            try {
                return accessor.invoke(record);
            } catch (IllegalAccessException | InvocationTargetException e) {
                throw new IllegalStateException("Cannot read " + key + " of " + record.getClass(), e);
            }
        }
    }

    /** In a file in metres. */
    static Layout of(Class<? extends Record> type) {
        return of(type, Units.METRES);
    }

    static Layout of(Class<? extends Record> type, Units units) {
        return of(new Shape.Group(type), units);
    }

    static Layout of(Shape.Group group, Units units) {
        return ALL.computeIfAbsent(new Asked(group.type(), units, group.byLength()), Asked::layout);
    }

    List<String> keys() {
        return parts.stream().map(Part::key).toList();
    }

    Optional<Part> part(String key) {
        for (Part part : parts) {
            if (part.key().equals(key)) {
                return Optional.of(part);
            }
        }
        return Optional.empty();
    }

    /**
     * A record of these values, in the order of the parts.
     *
     * @throws IllegalArgumentException if the record refuses them
     */
    Record make(@Nullable Object[] values) {
        try {
            return MAKING.computeIfAbsent(type, Layout::constructor).newInstance(values);
        } catch (InvocationTargetException e) {
            if (e.getCause() instanceof IllegalArgumentException refused) {
                throw refused;
            }
            throw new IllegalStateException("Cannot make " + type, e);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException("Cannot make " + type, e);
        }
    }

    private static Constructor<? extends Record> constructor(Class<? extends Record> type) {
        Class<?>[] types = Arrays.stream(type.getRecordComponents())
                .map(RecordComponent::getType)
                .toArray(Class<?>[]::new);
        try {
            return type.getDeclaredConstructor(types);
        } catch (NoSuchMethodException e) {
            throw new IllegalStateException("Cannot make " + type, e);
        }
    }
}
