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

    /** The value at a path, or the nearest one around it where the file leaves the value out. */
    static Node nearest(Node root, String path) {
        Node node = root;
        for (String step : steps(path)) {
            Optional<Node> next = child(node, step);
            if (next.isEmpty()) {
                return node;
            }
            node = next.get();
        }
        return node;
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
