package bedwright.file;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** JSON pointers (RFC 6901). */
final class Pointer {
    private Pointer() {}

    static String to(String path, String key) {
        return path + "/" + key.replace("~", "~0").replace("/", "~1");
    }

    static String to(String path, int entry) {
        return path + "/" + entry;
    }

    /** Its steps, unescaped. */
    static List<String> steps(String path) {
        List<String> steps = new ArrayList<>();
        if (!path.isEmpty()) {
            for (String step : path.substring(1).split("/", -1)) {
                steps.add(step.replace("~1", "/").replace("~0", "~"));
            }
        }
        return steps;
    }

    /**
     * The place of the value at a path, or of the nearest one around it where the file leaves the value out.
     *
     * @param ofKey whether the place of the last key is wanted rather than that of its value
     */
    static Place place(Node root, String path, boolean ofKey) {
        Node node = root;
        Place place = root.place();
        List<String> steps = steps(path);
        for (int i = 0; i < steps.size(); i++) {
            Optional<Node> next = child(node, steps.get(i));
            if (next.isEmpty()) {
                return node.place();
            }
            boolean last = i == steps.size() - 1;
            place = last && ofKey && node instanceof Node.Group group
                    ? keyPlace(group, steps.get(i))
                    : next.get().place();
            node = next.get();
        }
        return place;
    }

    private static Place keyPlace(Node.Group group, String key) {
        return group.members().stream()
                .filter(m -> m.key().equals(key))
                .findFirst()
                .map(Node.Member::place)
                .orElse(group.place());
    }

    private static Optional<Node> child(Node node, String step) {
        if (node instanceof Node.Group group) {
            return group.get(step);
        }
        if (node instanceof Node.Many many && step.matches("[0-9]{1,9}")) {
            int entry = Integer.parseInt(step);
            return entry < many.entries().size() ? Optional.of(many.entries().get(entry)) : Optional.empty();
        }
        return Optional.empty();
    }
}
