package bedwright.file;

import bedwright.season.Caution;
import bedwright.season.Fact;
import bedwright.season.Job;
import bedwright.season.Unit;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.Type;
import java.time.LocalDate;
import java.time.MonthDay;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What may stand at a place of a file, read off the type and the {@link Fact} of a record's component. */
sealed interface Shape {
    /** A text of so many characters at least. */
    record Text(int least) implements Shape {}

    /** A whole number; {@code wide} if it is a {@code long}. */
    record Whole(Range range, boolean wide) implements Shape {}

    /**
     * A number.
     *
     * @param inside where it may lie, as it is kept
     * @param unit how it is written
     */
    record Decimal(Range inside, Unit unit) implements Shape {
        /** Where it may lie, as it is written; never narrower than inside. */
        Range range() {
            return unit.isPlain()
                    ? inside
                    : new Range(unit.least(inside.min()), unit.most(inside.max()), inside.above());
        }

        /** Whether a written number may stand here. */
        boolean holds(double written, double metric) {
            return inside.holds(metric) || (!unit.isPlain() && range().holds(written));
        }
    }

    /** True or false. */
    record Truth() implements Shape {}

    /** A date such as 2027-05-03. */
    record Date() implements Shape {}

    /** A day of any year, such as 05-03. */
    record DayOfYear() implements Shape {}

    /** One of an enum's constants, in small letters with hyphens. */
    record Word(Class<? extends Enum<?>> type) implements Shape {
        List<String> words() {
            return constants().stream().map(Words::word).toList();
        }

        List<? extends Enum<?>> constants() {
            return Arrays.asList(type.getEnumConstants());
        }

        Optional<Enum<?>> constant(String word) {
            for (Enum<?> constant : constants()) {
                if (Words.word(constant).equals(word)) {
                    return Optional.of(constant);
                }
            }
            return Optional.empty();
        }
    }

    /** A caution: a word or whole per cent. */
    record Weight() implements Shape {
        /** What stands as a number. */
        static final Range PERCENT = new Range(0, 100, false);

        /** The words with what they stand for. */
        static final Map<String, Caution> WORDS =
                Map.of("bold", Caution.BOLD, "steady", Caution.STEADY, "careful", Caution.CAREFUL);
    }

    /**
     * The keys of a record.
     *
     * @param byLength whether what it has for each unit is for each metre or foot: not so of jobs counted by plants
     */
    record Group(Class<? extends Record> type, boolean byLength) implements Shape {
        Group(Class<? extends Record> type) {
            this(type, true);
        }
    }

    /** A list. */
    record Many(Shape each, int least, int most) implements Shape {}

    /** Values by key; the key is a {@link Text} or a {@link Word}. */
    record Named(Shape key, Shape each, int least, int most) implements Shape {
        /** The value's shape under a key. */
        Shape under(Object name) {
            return name instanceof Job job && !job.isByLength() && each instanceof Group group
                    ? new Group(group.type(), false)
                    : each;
        }
    }

    /** Where a number may lie; {@code above} if the least is itself refused. */
    record Range(double min, double max, boolean above) {
        boolean holds(double value) {
            return (above ? value > min : value >= min) && value <= max;
        }

        boolean isOpen() {
            return min == Double.NEGATIVE_INFINITY && max == Double.POSITIVE_INFINITY;
        }

        /** As in {@code between 0 and 4 m}. */
        String said(String unit) {
            String behind = unit.isEmpty() || unit.equals("money") ? "" : " " + unit;
            if (max == Double.POSITIVE_INFINITY) {
                return (above ? "above " : "at least ") + Words.number(min) + behind;
            }
            if (min == Double.NEGATIVE_INFINITY) {
                return "at most " + Words.number(max) + behind;
            }
            return above
                    ? "above " + Words.number(min) + " and at most " + Words.number(max) + behind
                    : "between " + Words.number(min) + " and " + Words.number(max) + behind;
        }
    }

    /** The unit in which the numbers of a shape are written; that of the fact where they are whole. */
    static String unit(Shape shape, Fact fact) {
        return switch (shape) {
            case Decimal decimal -> decimal.unit().symbol();
            case Many many -> unit(many.each(), fact);
            case Named named -> unit(named.each(), fact);
            default -> fact.unit();
        };
    }

    /**
     * The shape of a component's type.
     *
     * @param unit how its numbers are written
     */
    static Shape of(Type type, Fact fact, Unit unit) {
        return of(type, fact, unit, fact.least());
    }

    private static Shape of(Type type, Fact fact, Unit unit, int leastCharacters) {
        Range range = new Range(fact.min(), fact.max(), fact.above());
        if (type instanceof ParameterizedType generic) {
            Type[] of = generic.getActualTypeArguments();
            if (generic.getRawType() == List.class) {
                return new Many(of(of[0], fact, unit, 0), fact.least(), fact.most());
            }
            if (generic.getRawType() == Map.class) {
                return new Named(of(of[0], fact, unit, 1), of(of[1], fact, unit, 0), fact.least(), fact.most());
            }
        }
        if (type == int.class || type == Integer.class) {
            double min = Math.max(Integer.MIN_VALUE, range.min());
            double max = Math.min(Integer.MAX_VALUE, range.max());
            return new Whole(new Range(min, max, range.above()), false);
        }
        if (type == long.class || type == Long.class) {
            return new Whole(range, true);
        }
        if (type == double.class || type == Double.class) {
            return new Decimal(range, unit);
        }
        if (type == boolean.class || type == Boolean.class) {
            return new Truth();
        }
        if (type == String.class) {
            return new Text(leastCharacters);
        }
        if (type == LocalDate.class) {
            return new Date();
        }
        if (type == MonthDay.class) {
            return new DayOfYear();
        }
        if (type == Caution.class) {
            return new Weight();
        }
        if (type instanceof Class<?> simple && simple.isEnum()) {
            @SuppressWarnings("unchecked") // isEnum() says so
            Class<? extends Enum<?>> words = (Class<? extends Enum<?>>) simple;
            return new Word(words);
        }
        if (type instanceof Class<?> simple && simple.isRecord()) {
            return new Group(simple.asSubclass(Record.class));
        }
        throw new IllegalArgumentException("A file has no form for " + type.getTypeName());
    }
}
