package bedwright.file;

import bedwright.season.Caution;
import bedwright.season.Unit;
import bedwright.season.Units;
import java.time.LocalDate;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Turns records into the tree of a file: keys in the order of the components, what equals its default left out. */
final class Unbinder {
    private Unbinder() {}

    /** In the units that the record itself names, or in metres. */
    static Node.Group group(Record record) {
        return group(record, FileUnits.ofRecord(record));
    }

    static Node.Group group(Record record, Units units) {
        return group(record, Layout.of(record.getClass(), units), units);
    }

    private static Node.Group group(Record record, Layout layout, Units units) {
        List<Node.Member> members = new ArrayList<>();
        for (Layout.Part part : layout.parts()) {
            Object value = part.valueIn(record);
            if (value != null && !value.equals(Defaults.of(part))) {
                members.add(member(part.key(), node(value, part.shape(), units)));
            }
        }
        return new Node.Group(Place.START, members, false);
    }

    /** A single value, or a list of such, as it stands in a file. */
    static String text(Object value, Shape shape) {
        Node node = node(value, shape, Units.METRES);
        return node instanceof Node.Text text ? text.value() : JsonText.line(node);
    }

    static Node node(Object value, Shape shape, Units units) {
        return switch (shape) {
            case Shape.Text text -> text((String) value);
            case Shape.Whole whole -> number(Long.toString(((Number) value).longValue()));
            case Shape.Decimal decimal -> number(written((Double) value, decimal.unit()));
            case Shape.Truth truth -> new Node.Truth(Place.START, (Boolean) value);
            case Shape.Date date -> text(((LocalDate) value).toString());
            case Shape.DayOfYear day -> text(((MonthDay) value).toString().substring(2));
            case Shape.Word word -> text(Words.word((Enum<?>) value));
            case Shape.Weight weight -> caution((Caution) value);
            case Shape.Group group -> group((Record) value, Layout.of(group, units), units);
            case Shape.Many many -> many((List<?>) value, many.each(), units);
            case Shape.Named named -> named((Map<?, ?>) value, named, units);
        };
    }

    private static String written(double value, Unit unit) {
        return unit.isPlain() ? Words.number(value) : Words.number(unit.written(value));
    }

    private static Node caution(Caution caution) {
        for (Map.Entry<String, Caution> word : Shape.Weight.WORDS.entrySet()) {
            if (word.getValue().equals(caution)) {
                return text(word.getKey());
            }
        }
        return number(Integer.toString(caution.percent()));
    }

    private static Node many(List<?> values, Shape each, Units units) {
        return new Node.Many(
                Place.START,
                values.stream().<Node>map(value -> node(value, each, units)).toList(),
                false);
    }

    private static Node named(Map<?, ?> values, Shape.Named shape, Units units) {
        List<Node.Member> members = new ArrayList<>();
        for (Map.Entry<?, ?> entry : values.entrySet()) {
            Object key = entry.getKey();
            String name = key instanceof Enum<?> constant ? Words.word(constant) : key.toString();
            members.add(member(name, node(entry.getValue(), shape.under(key), units)));
        }
        return new Node.Group(Place.START, members, false);
    }

    static Node.Member member(String key, Node value) {
        return new Node.Member(Place.START, key, value);
    }

    static Node text(String value) {
        return new Node.Text(Place.START, value);
    }

    static Node number(String text) {
        return new Node.Number(Place.START, text);
    }
}
