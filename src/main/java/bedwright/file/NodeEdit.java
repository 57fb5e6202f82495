package bedwright.file;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Groups of keys with one of them set or taken away. */
final class NodeEdit {
    private NodeEdit() {}

    static Node.Group empty() {
        return new Node.Group(Place.START, List.of(), false);
    }

    /** The group with this value at a key; without the key if the value is null. */
    static Node.Group with(Node.Group group, String key, @Nullable Node value) {
        List<Node.Member> members = new ArrayList<>();
        boolean found = false;
        for (Node.Member member : group.members()) {
            if (!member.key().equals(key)) {
                members.add(member);
            } else if (value != null && !found) {
                members.add(Unbinder.member(key, value));
                found = true;
            }
        }
        if (value != null && !found) {
            members.add(Unbinder.member(key, value));
        }
        return new Node.Group(group.place(), members, group.cut());
    }

    /** Likewise, of a value within groups, which are made if they are not there and there is something to be set. */
    static Node.Group with(Node.Group group, List<String> keys, @Nullable Node value) {
        String key = keys.getFirst();
        if (keys.size() == 1) {
            return with(group, key, value);
        }
        Node inner = group.get(key).orElse(null);
        if (inner == null && value == null) {
            return group;
        }
        Node.Group before = inner instanceof Node.Group there ? there : empty();
        return with(group, key, with(before, keys.subList(1, keys.size()), value));
    }

    /** What stands at the end of these keys. */
    static Optional<Node> get(Node.Group group, List<String> keys) {
        Node node = group;
        for (String key : keys) {
            Optional<Node> next = node instanceof Node.Group there ? there.get(key) : Optional.empty();
            if (next.isEmpty()) {
                return next;
            }
            node = next.get();
        }
        return Optional.of(node);
    }

    /** The text at a key; empty if there is none. */
    static String text(Node.Group group, @Nullable String key) {
        return key != null && group.get(key).orElse(null) instanceof Node.Text text ? text.value() : "";
    }

    /** The groups of a list at a key; none if there is no such list. */
    static List<Node.Group> groups(Node.Group owner, String list) {
        List<Node.Group> groups = new ArrayList<>();
        if (owner.get(list).orElse(null) instanceof Node.Many many) {
            many.entries().forEach(entry -> groups.add((Node.Group) entry));
        }
        return groups;
    }
}
