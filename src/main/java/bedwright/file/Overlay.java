package bedwright.file;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Lays what a file says over what the crop book says, and gathers the faults of keys that neither knows. */
final class Overlay {
    private final String file;
    private final List<Fault> faults;

    /**
     * @param faults takes what is found
     */
    Overlay(String file, List<Fault> faults) {
        this.file = file;
        this.faults = faults;
    }

    /** Members of the book's group, the file's own in their place, then whatever else the file says. */
    List<Node.Member> over(Node.Group base, List<Node.Member> own, Layout layout, String path, String label) {
        Map<String, Node.Member> first = new LinkedHashMap<>();
        own.forEach(member -> first.putIfAbsent(member.key(), member));
        List<Node.Member> members = new ArrayList<>();
        for (Node.Member member : base.members()) {
            Node.Member mine = first.get(member.key());
            members.add(
                    mine == null
                            ? member
                            : over(member, mine, layout.part(member.key()).orElseThrow(), path));
        }
        for (Node.Member member : own) {
            boolean taken =
                    first.get(member.key()) == member && base.get(member.key()).isPresent();
            if (member.key().equals(FromBook.KEY)) {
                faults.add(new Fault(
                        file,
                        member.place(),
                        Pointer.to(path, member.key()),
                        "The key \"book\" stands a second time in " + label + ". Keep one of the two."));
            } else if (layout.part(member.key()).isEmpty()) {
                List<String> free = layout.keys().stream()
                        .filter(key -> !first.containsKey(key))
                        .toList();
                faults.add(new Fault(
                        file,
                        member.place(),
                        Pointer.to(path, member.key()),
                        Binder.noSuchKey(member.key(), free, label)));
            } else if (!taken) {
                members.add(member);
            }
        }
        return members;
    }

    /** Groups of keys are laid over one another; of names with values each value is taken whole, and so are lists. */
    private Node.Member over(Node.Member base, Node.Member mine, Layout.Part part, String path) {
        if (!(base.value() instanceof Node.Group below) || !(mine.value() instanceof Node.Group above)) {
            return mine;
        }
        String here = Pointer.to(path, mine.key());
        List<Node.Member> members;
        if (part.shape() instanceof Shape.Group group) {
            members = over(below, above.members(), Layout.of(group.type()), here, Words.quoted(mine.key()));
        } else {
            members = new ArrayList<>(below.members().stream()
                    .filter(member -> above.get(member.key()).isEmpty())
                    .toList());
            members.addAll(above.members());
        }
        return new Node.Member(mine.place(), mine.key(), new Node.Group(above.place(), members, above.cut()));
    }

    /** Keys of figures, at any depth, that the file says otherwise than the book. */
    static Set<String> changed(List<Node.Member> own, Layout layout) {
        Set<String> keys = new LinkedHashSet<>();
        for (Node.Member member : own) {
            Optional<Layout.Part> part = layout.part(member.key());
            if (part.isEmpty() || member.key().equals("methods") || member.key().equals("figures")) {
                continue;
            }
            keys.add(member.key());
            if (part.get().shape() instanceof Shape.Group group && member.value() instanceof Node.Group inner) {
                keys.addAll(changed(inner.members(), Layout.of(group.type())));
            }
        }
        return keys;
    }

    static boolean has(List<Node.Member> members, String key) {
        return members.stream().anyMatch(member -> member.key().equals(key));
    }

    /** Members of a group but for the first of a key. */
    static List<Node.Member> without(Node.Group group, String key) {
        List<Node.Member> members = new ArrayList<>(group.members());
        for (int i = 0; i < members.size(); i++) {
            if (members.get(i).key().equals(key)) {
                members.remove(i);
                break;
            }
        }
        return members;
    }

    /** The same values, all at one place. */
    static Node.Group placed(Node.Group group, Place place) {
        return new Node.Group(
                place,
                group.members().stream()
                        .map(member -> new Node.Member(place, member.key(), placed(member.value(), place)))
                        .toList(),
                false);
    }

    static Node placed(Node node, Place place) {
        return switch (node) {
            case Node.Group group -> placed(group, place);
            case Node.Many many ->
                new Node.Many(
                        place,
                        many.entries().stream()
                                .map(entry -> placed(entry, place))
                                .toList(),
                        false);
            case Node.Text text -> new Node.Text(place, text.value());
            case Node.Number number -> new Node.Number(place, number.text());
            case Node.Truth truth -> new Node.Truth(place, truth.value());
            case Node.Nothing nothing -> new Node.Nothing(place);
            case Node.Unreadable unreadable -> new Node.Unreadable(place);
        };
    }
}
