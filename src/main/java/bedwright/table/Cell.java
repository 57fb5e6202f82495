package bedwright.table;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;

/** What stands in a cell. */
public sealed interface Cell {
    /** Nothing. */
    Cell EMPTY = new Empty();

    /** As a person sees it. */
    String said();

    /** A text; an empty one is no text but {@link #EMPTY}. */
    static Cell of(String text) {
        return text.isEmpty() ? EMPTY : new Text(text);
    }

    /** A whole number. */
    static Cell of(long number) {
        return new Number(BigDecimal.valueOf(number));
    }

    /** A number with so many digits behind the point. */
    static Cell of(double number, int digits) {
        return new Number(new BigDecimal(number).setScale(digits, RoundingMode.HALF_UP));
    }

    /** A date. */
    static Cell of(LocalDate date) {
        return new Day(date);
    }

    /** Nothing stands there. */
    record Empty() implements Cell {
        @Override
        public String said() {
            return "nothing";
        }
    }

    /** A text. */
    record Text(String text) implements Cell {
        @Override
        public String said() {
            return "\"" + (text.length() > 60 ? text.substring(0, 60) + "…" : text) + "\"";
        }
    }

    /** A number. */
    record Number(BigDecimal number) implements Cell {
        @Override
        public String said() {
            return plain();
        }

        /** Its digits, without an exponent. */
        public String plain() {
            return number.toPlainString();
        }
    }

    /** A date. */
    record Day(LocalDate date) implements Cell {
        @Override
        public String said() {
            return "the date " + date;
        }
    }

    /** Yes or no. */
    record Truth(boolean isTrue) implements Cell {
        @Override
        public String said() {
            return isTrue ? "true" : "false";
        }
    }

    /** Something that was not, or can't be, worked out, as in #REF!. */
    record Broken(String text) implements Cell {
        @Override
        public String said() {
            return "what the spreadsheet did not work out, " + text;
        }
    }
}
