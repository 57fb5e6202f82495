package bedwright.file;

import bedwright.season.Units;
import java.lang.reflect.Method;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.jspecify.annotations.Nullable;

/** The values that stand where keys are left out. */
final class Defaults {
    /** By the component that they stand for; kept values are the same whatever the file's units. */
    private static final Map<Method, Object> KNOWN = new ConcurrentHashMap<>();

    private Defaults() {}

    /** The value of a part whose key is left out; null if it has no default. */
    static @Nullable Object of(Layout.Part part) {
        String text = part.fact().byDefault();
        if (text.isEmpty()) {
            return null;
        }
        Object value = KNOWN.get(part.accessor());
        if (value == null) {
            // Not within the map's own computing, since a default may hold defaults.
            value = read(part, text);
            KNOWN.put(part.accessor(), value);
        }
        return value;
    }

    /** A default's JSON text as a tree. */
    static Node node(String text) {
        JsonTree tree = JsonTree.read("default", text.getBytes(StandardCharsets.UTF_8));
        Node root = tree.root();
        if (root == null || !tree.faults().isEmpty()) {
            throw new IllegalStateException("The default " + text + " is no JSON: " + tree.faults());
        }
        return root;
    }

    private static Object read(Layout.Part part, String text) {
        Binder binder = new Binder(part.key(), Units.METRES);
        Object value = binder.value(node(text), part.inside(), Asked.part(part, ""));
        if (value == null || !binder.faults().isEmpty()) {
            throw new IllegalStateException("The default of " + part.accessor() + " is at fault: " + binder.faults());
        }
        return value;
    }
}
