package bedwright.file;

import bedwright.season.Caution;
import java.time.LocalDate;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.jspecify.annotations.Nullable;

/** Records with any values that their facts allow, whether or not they hold together. */
final class RandomRecords {
    private static final String[] TEXTS = {
        "a", "zinnia, tall", "Größe \"2\"", "a/b~c", "\\ back\n\tslash", "🌻", "\u2028\u0001"
    };
    private static final int DEEPEST = 7;

    private final Random random;
    private int depth;

    RandomRecords(long seed) {
        random = new Random(seed);
    }

    <T extends Record> T make(Class<T> type) {
        Layout layout = Layout.of(type);
        @Nullable Object[] values = new @Nullable Object[layout.parts().size()];
        depth++;
        for (int i = 0; i < values.length; i++) {
            values[i] = value(layout.parts().get(i));
        }
        depth--;
        return type.cast(layout.make(values));
    }

    private @Nullable Object value(Layout.Part part) {
        boolean leaveOut = depth > DEEPEST || random.nextInt(3) == 0;
        return leaveOut && !part.mustBeGiven() ? Defaults.of(part) : value(part.shape());
    }

    private Object value(Shape shape) {
        return switch (shape) {
            case Shape.Text text -> TEXTS[random.nextInt(TEXTS.length)];
            case Shape.Whole whole -> {
                long number = (long) number(whole.range(), true);
                yield whole.wide() ? (Object) number : (Object) (int) number;
            }
            case Shape.Decimal decimal -> number(decimal.range(), random.nextBoolean());
            case Shape.Truth truth -> random.nextBoolean();
            case Shape.Date date -> LocalDate.of(1900, 1, 1).plusDays(random.nextInt(109_000));
            case Shape.DayOfYear day -> MonthDay.from(LocalDate.of(2024, 1, 1).plusDays(random.nextInt(366)));
            case Shape.Word word ->
                word.constants().get(random.nextInt(word.constants().size()));
            case Shape.Weight weight -> new Caution(random.nextInt(101));
            case Shape.Group group -> make(group.type());
            case Shape.Many many -> {
                List<Object> values = new ArrayList<>();
                int most = Math.min(many.most(), many.least() + (depth > DEEPEST ? 0 : 3));
                int count = many.least() + random.nextInt(most - many.least() + 1);
                for (int i = 0; i < count; i++) {
                    values.add(value(many.each()));
                }
                yield values;
            }
            case Shape.Named named -> {
                Map<Object, Object> values = new LinkedHashMap<>();
                for (int i = 0; i < named.least() + random.nextInt(3); i++) {
                    values.put(value(named.key()), value(named.each()));
                }
                yield values;
            }
        };
    }

    /** Ends of the range as well as any number within it, large and small. */
    private double number(Shape.Range range, boolean whole) {
        double low = Math.max(range.min(), -1e6);
        double high = Math.min(range.max(), 1e6);
        double value = switch (random.nextInt(5)) {
            case 0 -> range.max() < Double.POSITIVE_INFINITY ? range.max() : high;
            case 1 -> range.above() ? high : low;
            case 2 -> low + (high - low) * Math.pow(random.nextDouble(), 12);
            default -> low + (high - low) * random.nextDouble();
        };
        double rounded = Math.rint(value);
        // Never -0, which no °F stands for.
        return (whole && range.holds(rounded) ? rounded : value) + 0.0;
    }
}
