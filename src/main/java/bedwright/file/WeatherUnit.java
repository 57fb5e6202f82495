package bedwright.file;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.jspecify.annotations.Nullable;

/** Units of a weather file's columns, named in their headings. */
final class WeatherUnit {
    /** A knot is 1,852 m an hour, a mile 1,609.344 m: by definition. */
    private static final double KNOT = 1852 / 3600.0;

    private static final double MILE_AN_HOUR = 1609.344 / 3600;

    private WeatherUnit() {}

    /**
     * From the unit that a heading names to °C, m/s or degrees; null if it names none.
     *
     * @param words the heading's words in small letters
     */
    static @Nullable DoubleUnaryOperator of(Measured.Kind kind, List<String> words) {
        if (kind.isDirection()) {
            return value -> value;
        }
        for (String word : words) {
            DoubleUnaryOperator unit = kind.isTemperature() ? temperature(word) : speed(word);
            if (unit != null) {
                return unit;
            }
        }
        return null;
    }

    private static @Nullable DoubleUnaryOperator temperature(String word) {
        return switch (word) {
            case "c", "°c", "degc", "celsius" -> value -> value;
            case "f", "°f", "degf", "fahrenheit" -> value -> (value - 32) / 1.8;
            default -> null;
        };
    }

    private static @Nullable DoubleUnaryOperator speed(String word) {
        return switch (word) {
            case "m/s", "ms", "mps" -> value -> value;
            case "km/h", "kmh", "kph" -> value -> value / 3.6;
            case "mph", "mi/h" -> value -> value * MILE_AN_HOUR;
            case "kn", "kt", "kts", "knot", "knots" -> value -> value * KNOT;
            default -> null;
        };
    }
}
