package bedwright.file;

import bedwright.season.Nearest;
import bedwright.season.Unit;
import java.math.BigDecimal;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import tools.jackson.core.io.JsonStringEncoder;

/** How values are written in messages and files, and which word is nearest to a mistyped one. */
final class Words {
    private static final int LONG = 60;
    private static final int CHOICES = 12;

    private Words() {}

    /** A text in quotation marks, escaped as in JSON. */
    static String json(String text) {
        StringBuilder out = new StringBuilder(text.length() + 2).append('"');
        JsonStringEncoder.getInstance().quoteAsString(text, out);
        return out.append('"').toString();
    }

    /** A text in quotation marks for a message, on one line and not too long. */
    static String quoted(String text) {
        return json(shortened(text));
    }

    static String shortened(String text) {
        return text.codePointCount(0, text.length()) <= LONG
                ? text
                : text.substring(0, text.offsetByCodePoints(0, LONG)) + "…";
    }

    /** The text with a capital letter in front. */
    static String sentence(String text) {
        return text.isEmpty() ? text : text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
    }

    /** A number as it is written in a file: no exponent within usual sizes, no needless {@code .0}. */
    static String number(double value) {
        if (Double.isNaN(value) || Double.isInfinite(value)) {
            throw new IllegalArgumentException("A file cannot hold the number " + value);
        }
        double size = Math.abs(value);
        if (size == 0 || size >= 1e-7 && size < 1e17) {
            String text = new BigDecimal(Double.toString(value)).toPlainString();
            String plain = text.contains(".") ? text.replaceFirst("\\.?0+$", "") : text;
            return 1 / value == Double.NEGATIVE_INFINITY ? "-0.0" : plain;
        }
        return Double.toString(value);
    }

    /** Likewise, of a decimal figure. */
    static String number(BigDecimal value) {
        BigDecimal plain = value.stripTrailingZeros();
        return Math.abs(plain.scale() - plain.precision()) > LONG ? plain.toString() : plain.toPlainString();
    }

    /** A metric figure as it is written in a file, with its unit. */
    static String measured(double metric, Unit unit) {
        return (unit.isPlain() ? number(metric) : number(unit.written(metric))) + " " + unit.symbol();
    }

    /** The word of an enum's constant: {@code FILL_TRAYS} is {@code fill-trays}. */
    static String word(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** As in {@code sown, tray or set}, each in quotation marks; long lists are cut short. */
    static String oneOf(Collection<String> words) {
        return joined(words, " or ");
    }

    /** As in {@code sown, tray and set}, likewise. */
    static String and(Collection<String> words) {
        return joined(words, " and ");
    }

    private static String joined(Collection<String> words, String last) {
        List<String> all = words.stream().map(Words::quoted).toList();
        if (all.size() > CHOICES) {
            return String.join(", ", all.subList(0, CHOICES)) + " and " + (all.size() - CHOICES) + " more";
        }
        return all.size() < 2
                ? String.join("", all)
                : String.join(", ", all.subList(0, all.size() - 1)) + last + all.get(all.size() - 1);
    }

    /** {@code 1 entry}, {@code 3 entries}. */
    static String count(long number, String one, String several) {
        return number + " " + (number == 1 ? one : several);
    }

    /** The word most like a mistyped one, if any is near enough to be meant. */
    static Optional<String> nearest(String typed, Collection<String> words) {
        return Nearest.of(shortened(typed), words);
    }

    /** A sentence that asks whether the nearest word was meant, with a space before it, or nothing. */
    static String didYouMean(String typed, Collection<String> words) {
        return nearest(typed, words)
                .map(word -> " Did you mean " + quoted(word) + "?")
                .orElse("");
    }
}
