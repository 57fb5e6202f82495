package bedwright.file;

import bedwright.season.Units;
import bedwright.table.Cell;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;

/** Single values as they stand in a cell, and read from one. */
final class TableCells {
    private static final List<String> YES = List.of("yes", "true", "x", "1");
    private static final List<String> NO = List.of("no", "false", "0");

    private TableCells() {}

    /** A single value in its cell; how it is written its shape says. */
    static Cell written(Object value, Shape shape) {
        Node node = Unbinder.node(value, shape, Units.METRES);
        return switch (node) {
            case Node.Number number -> new Cell.Number(new BigDecimal(number.text()));
            case Node.Truth truth -> new Cell.Truth(truth.value());
            case Node.Text text when shape instanceof Shape.Date -> Cell.of(LocalDate.parse(text.value()));
            case Node.Text text -> Cell.of(text.value());
            default -> throw new IllegalArgumentException("No single value: " + node.said());
        };
    }

    /** A value as a file would hold it, or what is wrong with it. */
    sealed interface Read {
        record Value(Node node) implements Read {}

        record Wrong(String message) implements Read {}
    }

    /** Reads a cell in which something stands. */
    static Read read(Cell cell, Shape shape) {
        if (cell instanceof Cell.Broken) {
            return new Read.Wrong("Here stands " + cell.said() + ". Mend the formula, or write the value itself.");
        }
        return switch (shape) {
            case Shape.Text text -> value(Unbinder.text(plain(cell)));
            case Shape.Whole whole -> number(cell, "a whole number");
            case Shape.Decimal decimal -> number(cell, "a number");
            case Shape.Truth truth -> truth(cell);
            case Shape.Date date -> date(cell);
            // A spreadsheet makes a day of this year out of a day of any.
            case Shape.DayOfYear day ->
                value(Unbinder.text(plain(cell).strip().replaceFirst("^[0-9]{4}-(?=[0-9]{2}-[0-9]{2}$)", "")));
            case Shape.Word word ->
                value(Unbinder.text(plain(cell).strip().toLowerCase(Locale.ROOT).replace(' ', '-')));
            case Shape.Weight weight -> throw new IllegalArgumentException("No column holds a caution");
            case Shape.Group group -> throw new IllegalArgumentException("No single value: " + group);
            case Shape.Many many -> throw new IllegalArgumentException("No single value: " + many);
            case Shape.Named named -> throw new IllegalArgumentException("No single value: " + named);
        };
    }

    private static Read value(Node node) {
        return new Read.Value(node);
    }

    static String plain(Cell cell) {
        return switch (cell) {
            case Cell.Text text -> text.text();
            case Cell.Number number -> number.plain();
            case Cell.Day day -> day.date().toString();
            case Cell.Truth truth -> truth.isTrue() ? "yes" : "no";
            case Cell.Empty empty -> "";
            case Cell.Broken broken -> broken.text();
        };
    }

    private static Read number(Cell cell, String expected) {
        if (cell instanceof Cell.Number number) {
            return value(Unbinder.number(number.plain()));
        }
        String text = plain(cell).strip();
        if (cell instanceof Cell.Text && text.matches("-?[0-9]{1,30}(\\.[0-9]{1,30})?")) {
            return value(Unbinder.number(text.replaceFirst("^(-?)0+(?=[0-9])", "$1")));
        }
        String mend = cell instanceof Cell.Day
                ? " The spreadsheet took it for a date: set the cell's form to number and write it again."
                : text.matches("-?[0-9]+,[0-9]+")
                        ? " Write it with a point: " + text.replace(',', '.') + "."
                        : " Write the number alone, without unit or sign.";
        return new Read.Wrong("This cell needs " + expected + ", but here stands " + cell.said() + "." + mend);
    }

    private static Read truth(Cell cell) {
        String text = plain(cell).strip().toLowerCase(Locale.ROOT);
        if (YES.contains(text) || NO.contains(text)) {
            return value(new Node.Truth(Place.START, YES.contains(text)));
        }
        return new Read.Wrong("This cell needs yes or no, but here stands " + cell.said() + ". Write yes or no.");
    }

    private static Read date(Cell cell) {
        if (cell instanceof Cell.Day || plain(cell).strip().matches("[0-9]{4}-[0-9]{2}-[0-9]{2}")) {
            return value(Unbinder.text(plain(cell).strip()));
        }
        return new Read.Wrong("This cell needs a date, but here stands " + cell.said()
                + ". Write year, month and day with all their digits, as in 2027-05-03.");
    }
}
