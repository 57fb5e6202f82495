package bedwright.file;

import bedwright.season.Fact;
import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The keys of a record: its components with their {@link Fact}s, in the order in which they are declared.
 *
 * @param type the record
 * @param parts its components
 */
record Layout(Class<? extends Record> type, List<Part> parts) {
    private static final ClassValue<Layout> ALL = new ClassValue<>() {
        @Override
        protected Layout computeValue(Class<?> type) {
            return new Layout(
                    type.asSubclass(Record.class),
                    Arrays.stream(type.getRecordComponents()).map(Part::of).toList());
        }
    };

    /**
     * One component.
     *
     * @param key its name, which is the key in a file
     * @param nullable whether it may be left out without a default
     */
    record Part(String key, Shape shape, Fact fact, boolean nullable, Method accessor) {
        static Part of(RecordComponent component) {
            Fact fact = component.getAnnotation(Fact.class);
            if (fact == null) {
                throw new IllegalArgumentException(
                        component + " of " + component.getDeclaringRecord() + " has no fact");
            }
            return new Part(
                    component.getName(),
                    Shape.of(component.getGenericType(), fact),
                    fact,
                    component.getAnnotatedType().isAnnotationPresent(Nullable.class),
                    component.getAccessor());
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

    static Layout of(Class<? extends Record> type) {
        return ALL.get(type);
    }

    List<String> keys() {
        return parts.stream().map(Part::key).toList();
    }

    Optional<Part> part(String key) {
        return parts.stream().filter(p -> p.key().equals(key)).findFirst();
    }

    /**
     * A record of these values, in the order of the parts.
     *
     * @throws IllegalArgumentException if the record refuses them
     */
    Record make(@Nullable Object[] values) {
        Class<?>[] types = Arrays.stream(type.getRecordComponents())
                .map(RecordComponent::getType)
                .toArray(Class<?>[]::new);
        try {
            Constructor<? extends Record> constructor = type.getDeclaredConstructor(types);
            return constructor.newInstance(values);
        } catch (InvocationTargetException e) {
            if (e.getCause() instanceof IllegalArgumentException refused) {
                throw refused;
            }
            throw new IllegalStateException("Cannot make " + type, e);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException("Cannot make " + type, e);
        }
    }
}
