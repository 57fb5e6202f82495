package bedwright.command;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Locale;
import java.util.function.Function;
import picocli.CommandLine;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads what was typed for an option, and says in plain words what is wrong with it. */
final class Typed {
    private Typed() {}

    static void register(CommandLine line) {
        ITypeConverter<Integer> small = text -> number(text, Integer::valueOf, "a whole number");
        ITypeConverter<Long> large = text -> number(text, Long::valueOf, "a whole number");
        ITypeConverter<Double> broken = text -> number(text, Double::valueOf, "a number");
        line.registerConverter(Integer.class, small);
        line.registerConverter(Long.class, large);
        line.registerConverter(long.class, large);
        line.registerConverter(Double.class, broken);
        line.registerConverter(double.class, broken);
        line.registerConverter(LocalDate.class, Typed::date);
        line.registerConverter(
                PlanCommand.Format.class, text -> word(text, PlanCommand.Format.values(), "\"text\" or \"json\""));
        line.registerConverter(
                SchemaCommand.Which.class,
                text -> word(
                        text,
                        SchemaCommand.Which.values(),
                        "\"season\", \"plan\", \"prices\", \"book\", \"answers\" or \"strategies\""));
    }

    private static <T> T number(String text, Function<String, T> reading, String wanted) {
        try {
            return reading.apply(text);
        } catch (NumberFormatException e) {
            throw new TypeConversionException("\"" + text + "\" is not " + wanted + ", or too large a one");
        }
    }

    private static LocalDate date(String text) {
        try {
            return LocalDate.parse(text);
        } catch (DateTimeParseException e) {
            throw new TypeConversionException(
                    "\"" + text + "\" is not a day of the calendar, written year-month-day as 2027-04-19");
        }
    }

    private static <T extends Enum<T>> T word(String text, T[] words, String wanted) {
        for (T word : words) {
            if (word.name().equals(text.toUpperCase(Locale.ROOT))) {
                return word;
            }
        }
        throw new TypeConversionException("\"" + text + "\" is not " + wanted);
    }
}
