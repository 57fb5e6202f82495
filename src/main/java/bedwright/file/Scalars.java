package bedwright.file;

import bedwright.season.Caution;
import java.math.BigDecimal;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.MonthDay;
import java.time.YearMonth;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Single values: texts, numbers, words and dates, as they are written in a file. */
final class Scalars {
    /** Calendar years that a date may have: others are mistyped. */
    static final int FIRST_YEAR = 1900;

    static final int LAST_YEAR = 2200;

    private static final Pattern DATE = Pattern.compile("([0-9]{4})-([0-9]{2})-([0-9]{2})");
    private static final Pattern DAY = Pattern.compile("([0-9]{2})-([0-9]{2})");
    private static final int LARGEST_EXPONENT = 400;

    private Scalars() {}

    /** A value, or what is wrong with what stands there. */
    sealed interface Read {
        record Value(Object value) implements Read {}

        record Wrong(String message) implements Read {}
    }

    static Read read(Node node, Shape shape, Asked asked) {
        return switch (shape) {
            case Shape.Text text -> text(node, text, asked);
            case Shape.Whole whole -> whole(node, whole, asked);
            case Shape.Decimal decimal -> decimal(node, decimal, asked);
            case Shape.Truth truth -> truth(node, asked);
            case Shape.Date date -> date(node, asked);
            case Shape.DayOfYear day -> dayOfYear(node, asked);
            case Shape.Word word -> word(node, word, asked);
            case Shape.Weight weight -> weight(node, asked);
            case Shape.Group group -> throw new IllegalArgumentException("Not a single value: " + group);
            case Shape.Many many -> throw new IllegalArgumentException("Not a single value: " + many);
            case Shape.Named named -> throw new IllegalArgumentException("Not a single value: " + named);
        };
    }

    /** What a message says was expected. */
    static String expected(Shape shape) {
        return switch (shape) {
            case Shape.Text text -> "a text in quotation marks";
            case Shape.Whole whole -> "a whole number";
            case Shape.Decimal decimal -> "a number";
            case Shape.Truth truth -> "true or false";
            case Shape.Date date -> "a date as in \"2027-05-03\"";
            case Shape.DayOfYear day -> "a day of the year as in \"05-03\" (month, then day)";
            case Shape.Word word -> Words.oneOf(word.words());
            case Shape.Weight weight -> "\"bold\", \"steady\", \"careful\" or a whole number from 0 to 100";
            case Shape.Group group -> "a group of keys in { }";
            case Shape.Many many -> "a list in [ ]";
            case Shape.Named named -> "a group { } of names with their values";
        };
    }

    /** The fault of a value of another kind than asked. */
    static String wrongKind(Node node, Shape shape, Asked asked, String mend) {
        return asked.label() + " needs " + expected(shape) + ", but here stands " + node.said() + "." + mend;
    }

    private static Read wrong(Node node, Shape shape, Asked asked, String mend) {
        return new Read.Wrong(wrongKind(node, shape, asked, mend));
    }

    private static Read text(Node node, Shape.Text shape, Asked asked) {
        if (!(node instanceof Node.Text text)) {
            String mend = node instanceof Node.Number number ? " Write \"" + Words.shortened(number.text()) + "\"" : "";
            return wrong(node, shape, asked, mend);
        }
        if (text.value().strip().length() < shape.least()) {
            return new Read.Wrong(asked.label() + " is empty. Write a text" + asked.meaning() + ".");
        }
        return new Read.Value(text.value());
    }

    private static Read truth(Node node, Asked asked) {
        return node instanceof Node.Truth truth
                ? new Read.Value(truth.value())
                : wrong(node, new Shape.Truth(), asked, " Write true or false, without quotation marks.");
    }

    private static Read whole(Node node, Shape.Whole shape, Asked asked) {
        if (!(node instanceof Node.Number number)) {
            return wrong(node, shape, asked, unquote(node));
        }
        BigDecimal value = exact(number.text());
        if (value == null) {
            return new Read.Wrong(asked.label() + " is " + Words.shortened(number.text())
                    + ", which is out of any range. Write a whole number"
                    + range(shape.range(), asked.fact().unit()) + ".");
        }
        if (value.stripTrailingZeros().scale() > 0) {
            return wrong(node, shape, asked, " Leave off what is behind the point.");
        }
        if (!shape.range().holds(value.doubleValue())) {
            return outOfRange(number, shape.range(), asked.fact().unit(), asked);
        }
        try {
            return new Read.Value(shape.wide() ? (Object) value.longValueExact() : (Object) value.intValueExact());
        } catch (ArithmeticException e) {
            return new Read.Wrong(asked.label() + " is " + Words.shortened(number.text())
                    + ", which is larger than any such number here.");
        }
    }

    private static Read decimal(Node node, Shape.Decimal shape, Asked asked) {
        if (!(node instanceof Node.Number number)) {
            return wrong(node, shape, asked, unquote(node));
        }
        double value = Double.parseDouble(number.text());
        String unit = shape.unit().symbol();
        if (Double.isInfinite(value)) {
            return new Read.Wrong(asked.label() + " is " + Words.shortened(number.text())
                    + ", which is larger than any number can be here. Write a number" + range(shape.range(), unit)
                    + ".");
        }
        BigDecimal exact = shape.unit().isPlain() ? null : exact(number.text());
        double metric =
                shape.unit().isPlain() ? value : shape.unit().metric(exact == null ? BigDecimal.valueOf(value) : exact);
        return shape.holds(value, metric) ? new Read.Value(metric) : outOfRange(number, shape.range(), unit, asked);
    }

    private static String range(Shape.Range range, String unit) {
        return range.isOpen() ? "" : " " + range.said(unit);
    }

    private static Read outOfRange(Node.Number number, Shape.Range range, String unit, Asked asked) {
        return new Read.Wrong(asked.label() + " is " + Words.shortened(number.text()) + ", but it must be"
                + range(range, unit) + asked.meaning() + ". Write a number in that range.");
    }

    private static String unquote(Node node) {
        if (!(node instanceof Node.Text text)) {
            return "";
        }
        String inside = text.value().strip();
        if (inside.matches("-?[0-9]+(\\.[0-9]+)?")) {
            return " Take off the quotation marks.";
        }
        return inside.matches("-?[0-9]+,[0-9]+")
                ? " Write it with a point and without quotation marks: " + inside.replace(',', '.')
                : " Write a number alone, without unit and quotation marks.";
    }

    /** The number, or null if its exponent is absurd. */
    private static @Nullable BigDecimal exact(String text) {
        double rough = Double.parseDouble(text);
        if (Double.isInfinite(rough)) {
            return null;
        }
        try {
            BigDecimal value = new BigDecimal(text);
            return Math.abs((long) value.scale()) > LARGEST_EXPONENT ? null : value;
        } catch (NumberFormatException e) {
            return null;
        }
    }

    private static Read date(Node node, Asked asked) {
        Shape shape = new Shape.Date();
        if (!(node instanceof Node.Text text)) {
            return wrong(node, shape, asked, "");
        }
        Matcher parts = DATE.matcher(text.value());
        if (!parts.matches()) {
            return wrong(node, shape, asked, " Write year, month and day with all their digits, as in 2027-05-03.");
        }
        int year = Integer.parseInt(parts.group(1));
        int month = Integer.parseInt(parts.group(2));
        int day = Integer.parseInt(parts.group(3));
        try {
            LocalDate date = LocalDate.of(year, month, day);
            return year < FIRST_YEAR || year > LAST_YEAR
                    ? new Read.Wrong(asked.label() + " is " + Words.quoted(text.value()) + ", but years from "
                            + FIRST_YEAR + " to " + LAST_YEAR + " are expected. Mend the year.")
                    : new Read.Value(date);
        } catch (DateTimeException e) {
            String why = month < 1 || month > 12
                    ? "there are 12 months"
                    : "that month has " + YearMonth.of(year, month).lengthOfMonth() + " days";
            return noSuchDay(text, asked, why);
        }
    }

    private static Read dayOfYear(Node node, Asked asked) {
        Shape shape = new Shape.DayOfYear();
        if (!(node instanceof Node.Text text)) {
            return wrong(node, shape, asked, "");
        }
        Matcher parts = DAY.matcher(text.value());
        if (!parts.matches()) {
            String mend = DATE.matcher(text.value()).matches()
                    ? " It holds in every year: leave the year off, and write "
                            + Words.quoted(text.value().substring(5))
                    : " Write month and day with two digits each, as in 05-03 for the third of May.";
            return wrong(node, shape, asked, mend);
        }
        int month = Integer.parseInt(parts.group(1));
        try {
            return new Read.Value(MonthDay.of(month, Integer.parseInt(parts.group(2))));
        } catch (DateTimeException e) {
            String why = month < 1 || month > 12
                    ? "there are 12 months, and the month comes first"
                    : "that month is shorter";
            return noSuchDay(text, asked, why);
        }
    }

    private static Read noSuchDay(Node.Text text, Asked asked, String why) {
        return new Read.Wrong(asked.label() + " is " + Words.quoted(text.value()) + ", but there is no such day: " + why
                + ". Mend the date.");
    }

    private static Read word(Node node, Shape.Word shape, Asked asked) {
        if (!(node instanceof Node.Text text)) {
            return wrong(node, shape, asked, "");
        }
        return shape.constant(text.value())
                .<Read>map(Read.Value::new)
                .orElseGet(() -> new Read.Wrong(asked.label() + " is " + Words.quoted(text.value())
                        + ", but it must be one of " + Words.oneOf(shape.words()) + "."
                        + Words.didYouMean(text.value(), shape.words())));
    }

    private static Read weight(Node node, Asked asked) {
        if (node instanceof Node.Text text && Shape.Weight.WORDS.get(text.value()) instanceof Caution caution) {
            return new Read.Value(caution);
        }
        if (node instanceof Node.Number) {
            Read percent = whole(node, new Shape.Whole(Shape.Weight.PERCENT, false), asked);
            return percent instanceof Read.Value value ? new Read.Value(new Caution((Integer) value.value())) : percent;
        }
        String near = node instanceof Node.Text text
                ? Words.didYouMean(
                        text.value(),
                        Shape.Weight.WORDS.keySet().stream().sorted().toList())
                : "";
        return wrong(node, new Shape.Weight(), asked, near);
    }
}
