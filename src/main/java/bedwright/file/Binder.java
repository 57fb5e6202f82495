package bedwright.file;

import bedwright.season.Caution;
import bedwright.season.Units;
import java.time.LocalDate;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Turns a tree into records and gathers every fault on the way. Where a value is at fault something harmless stands in
 * for it, so that the rest can still be checked; {@link #doubtful()} says where.
 */
final class Binder {
    /** A key that names the schema to an editor; it stands at the top and says nothing to us. */
    static final String SCHEMA_KEY = "$schema";

    private final String file;
    private final Units units;
    private final List<Fault> faults = new ArrayList<>();
    private final Set<String> doubtful = new LinkedHashSet<>();

    /** @param units in which the file is written */
    Binder(String file, Units units) {
        this.file = file;
        this.units = units;
    }

    List<Fault> faults() {
        return faults;
    }

    /** Paths of values that are made up because of a fault; not asked for of a file that breaks off. */
    Set<String> doubtful() {
        return doubtful;
    }

    /** The record that a whole file holds. */
    <T extends Record> T bind(Node root, Class<T> type) {
        if (root instanceof Node.Group group) {
            return type.cast(group(group, Layout.of(type, units), "", "the file"));
        }
        if (!(root instanceof Node.Unreadable)) {
            fault(root.place(), "", "A file holds one group of keys in { }, but here stands " + root.said() + ".");
        }
        doubtful.add("");
        return type.cast(standIn(Layout.of(type)));
    }

    private Record group(Node.Group group, Layout layout, String path, String label) {
        Map<String, Node.Member> given = new LinkedHashMap<>();
        Set<String> guessed = new LinkedHashSet<>();
        for (Node.Member member : group.members()) {
            Node.Member first = given.putIfAbsent(member.key(), member);
            if (first != null) {
                fault(member.place(), Pointer.to(path, member.key()), repeated(member, first));
            } else if (layout.part(member.key()).isEmpty()
                    && !(path.isEmpty() && member.key().equals(SCHEMA_KEY))) {
                unknown(member, layout, path, label, group).ifPresent(guessed::add);
            }
        }
        @Nullable Object[] values = new @Nullable Object[layout.parts().size()];
        for (int i = 0; i < values.length; i++) {
            Layout.Part part = layout.parts().get(i);
            Node.Member member = given.get(part.key());
            values[i] = member != null
                    ? value(member.value(), part, path)
                    : leftOut(group, part, path, label, guessed.contains(part.key()));
        }
        try {
            return layout.make(values);
        } catch (IllegalArgumentException e) {
            fault(group.place(), path, e.getMessage() + ".");
            doubtful.add(path);
            return standIn(layout);
        }
    }

    private static String repeated(Node.Member member, Node.Member first) {
        return "The key " + Words.quoted(member.key()) + " stands here a second time; it stands at "
                + first.place().said() + " already. Keep one of the two.";
    }

    /** Tells of an unknown key and returns the key that was meant, if one is near. */
    private Optional<String> unknown(Node.Member member, Layout layout, String path, String label, Node.Group group) {
        List<String> free = layout.keys().stream()
                .filter(key -> group.members().stream().noneMatch(m -> m.key().equals(key)))
                .toList();
        fault(member.place(), Pointer.to(path, member.key()), noSuchKey(member.key(), free, label));
        return Words.nearest(member.key(), free);
    }

    /**
     * Tells of an unknown key.
     *
     * @param free keys that could still stand there
     */
    static String noSuchKey(String key, List<String> free, String label) {
        String mend = Words.nearest(key, free)
                .map(near -> " Did you mean " + Words.quoted(near) + "?")
                .orElseGet(() -> free.isEmpty()
                        ? " All keys that belong there are given: take it away."
                        : " Take it away; keys that could still stand there: " + String.join(", ", free) + ".");
        return "There is no key " + Words.quoted(key) + " in " + label + "." + mend;
    }

    private @Nullable Object leftOut(Node.Group group, Layout.Part part, String path, String label, boolean mistyped) {
        String here = Pointer.to(path, part.key());
        if (mistyped) {
            doubtful.add(here);
        }
        if (!part.mustBeGiven()) {
            return Defaults.of(part);
        }
        if (!mistyped && !group.cut()) {
            fault(
                    group.place(),
                    here,
                    "In " + label + " the key " + Words.quoted(part.key()) + " is missing ("
                            + part.fact().value() + "). Add it with " + Scalars.expected(part.shape()) + ".");
        }
        doubtful.add(here);
        return standIn(part.inside());
    }

    private @Nullable Object value(Node node, Layout.Part part, String path) {
        Asked asked = Asked.part(part, path);
        if (node instanceof Node.Nothing && part.nullable()) {
            return null;
        }
        Object value = value(node, part.shape(), asked);
        if (value != null) {
            return value;
        }
        return part.mustBeGiven() ? standIn(part.inside()) : Defaults.of(part);
    }

    /** The value, or null if it is at fault. */
    @Nullable
    Object value(Node node, Shape shape, Asked asked) {
        if (node instanceof Node.Unreadable) {
            doubtful.add(asked.path());
            return null;
        }
        if (node instanceof Node.Nothing) {
            String usual = asked.usual();
            String mend = usual.isEmpty()
                    ? ""
                    : " Leave the key out"
                            + (usual.startsWith("{") || usual.startsWith("[") ? "" : " for the usual, " + usual) + ".";
            return wrong(node, asked, Scalars.wrongKind(node, shape, asked, mend));
        }
        if (shape instanceof Shape.Group group) {
            return node instanceof Node.Group keys
                    ? group(keys, Layout.of(group, units), asked.path(), label(keys, asked))
                    : wrong(node, asked, Scalars.wrongKind(node, shape, asked, keysOf(group)));
        }
        if (shape instanceof Shape.Many many) {
            return node instanceof Node.Many entries
                    ? many(entries, many, asked)
                    : wrong(node, asked, Scalars.wrongKind(node, shape, asked, " Put [ ] around it."));
        }
        if (shape instanceof Shape.Named named) {
            return node instanceof Node.Group keys
                    ? named(keys, named, asked)
                    : wrong(node, asked, Scalars.wrongKind(node, shape, asked, ""));
        }
        return scalar(node, shape, asked);
    }

    private String keysOf(Shape.Group group) {
        return " Its keys: " + String.join(", ", Layout.of(group, units).keys()) + ".";
    }

    /** Names a group in messages by its own name where it has one: {@code "crops" (zinnia)}. */
    private static String label(Node.Group group, Asked asked) {
        return group.get("name").or(() -> group.get("crop")).orElse(null) instanceof Node.Text text
                ? asked.label() + " (" + Words.quoted(text.value()) + ")"
                : asked.label();
    }

    private @Nullable Object scalar(Node node, Shape shape, Asked asked) {
        return switch (Scalars.read(node, shape, asked)) {
            case Scalars.Read.Value read -> read.value();
            case Scalars.Read.Wrong read -> wrong(node, asked, read.message());
        };
    }

    private @Nullable Object wrong(Node node, Asked asked, String message) {
        fault(node.place(), asked.path(), message);
        doubtful.add(asked.path());
        return null;
    }

    private List<Object> many(Node.Many node, Shape.Many shape, Asked asked) {
        List<Object> values = new ArrayList<>();
        for (int i = 0; i < node.entries().size(); i++) {
            Object value = value(node.entries().get(i), shape.each(), asked.entry(i));
            values.add(value == null ? standIn(shape.each()) : value);
        }
        checkCount(values.size(), shape.least(), shape.most(), node, node.cut(), asked);
        return values;
    }

    private Map<Object, Object> named(Node.Group node, Shape.Named shape, Asked asked) {
        Map<Object, Object> values = new LinkedHashMap<>();
        Map<String, Node.Member> given = new LinkedHashMap<>();
        for (Node.Member member : node.members()) {
            Asked under = asked.under(member.key());
            Node.Member first = given.putIfAbsent(member.key(), member);
            if (first != null) {
                fault(member.place(), under.path(), repeated(member, first));
                continue;
            }
            Asked name = new Asked("a key of " + asked.label(), under.path(), asked.fact(), null);
            Object key = scalar(new Node.Text(member.place(), member.key()), shape.key(), name);
            Object value = value(member.value(), key == null ? shape.each() : shape.under(key), under);
            if (key != null) {
                values.put(key, value == null ? standIn(shape.each()) : value);
            }
        }
        checkCount(values.size(), shape.least(), shape.most(), node, node.cut(), asked);
        return values;
    }

    private void checkCount(int count, int least, int most, Node node, boolean cut, Asked asked) {
        if ((count < least && !cut) || count > most) {
            String needed = least == most
                    ? Words.count(least, "entry", "entries")
                    : count < least
                            ? "at least " + Words.count(least, "entry", "entries")
                            : "at most " + Words.count(most, "entry", "entries");
            wrong(
                    node,
                    asked,
                    asked.label() + " has " + (count == 0 ? "none" : Words.count(count, "entry", "entries"))
                            + ", but it needs " + needed + asked.meaning() + ".");
        }
    }

    /** A harmless value in place of one at fault. */
    private static Object standIn(Shape shape) {
        return switch (shape) {
            case Shape.Text text -> "?";
            case Shape.Whole whole -> {
                long value = (long) within(whole.range());
                yield whole.wide() ? (Object) value : (Object) (int) value;
            }
            case Shape.Decimal decimal -> within(decimal.inside());
            case Shape.Truth truth -> false;
            case Shape.Date date -> LocalDate.of(2000, 1, 1);
            case Shape.DayOfYear day -> MonthDay.of(1, 1);
            case Shape.Word word -> word.constants().get(0);
            case Shape.Weight weight -> Caution.STEADY;
            case Shape.Group group -> standIn(Layout.of(group.type()));
            case Shape.Many many -> List.of();
            case Shape.Named named -> Map.of();
        };
    }

    private static Record standIn(Layout layout) {
        return layout.make(layout.parts().stream()
                .map(part -> part.mustBeGiven() ? standIn(part.inside()) : Defaults.of(part))
                .toArray());
    }

    private static double within(Shape.Range range) {
        double least = range.above() ? range.min() + 1 : range.min();
        return Math.max(Math.min(0, range.max()), least);
    }

    private void fault(Place place, String path, String message) {
        faults.add(new Fault(file, place, path, message));
    }
}
