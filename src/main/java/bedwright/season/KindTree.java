package bedwright.season;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import org.jspecify.annotations.Nullable;

/**
 * The kinds of a season as a flat list, parents before their children: roles first met first, each followed by all
 * kinds within it.
 */
public final class KindTree {
    /** No limit on what can be sold in a week. */
    public static final long UNLIMITED = Long.MAX_VALUE / 4;

    private final List<String> paths = new ArrayList<>();
    private final List<Integer> parents = new ArrayList<>();
    private final List<Integer> roles = new ArrayList<>();
    private final List<Long> most = new ArrayList<>();
    private final Map<String, Integer> byPath = new HashMap<>();

    private KindTree() {}

    /** The tree of these roles. */
    public static KindTree of(List<Role> roles) {
        KindTree tree = new KindTree();
        for (int r = 0; r < roles.size(); r++) {
            Role role = roles.get(r);
            int node = tree.add(role.name(), -1, r, role.mostAWeek());
            tree.addAll(role.kinds(), node, r);
        }
        return tree;
    }

    private void addAll(List<Role.Kind> kinds, int parent, int role) {
        for (Role.Kind kind : kinds) {
            int node = add(paths.get(parent) + "/" + kind.name(), parent, role, kind.mostAWeek());
            addAll(kind.kinds(), node, role);
        }
    }

    private int add(String path, int parent, int role, @Nullable Integer mostAWeek) {
        int node = paths.size();
        paths.add(path);
        parents.add(parent);
        roles.add(role);
        most.add(mostAWeek == null ? UNLIMITED : 100L * mostAWeek);
        byPath.putIfAbsent(path, node);
        return node;
    }

    /** Number of kinds, roles included. */
    public int size() {
        return paths.size();
    }

    /** The kind at a path such as {@code focal/warm}, if there is one. */
    public OptionalInt find(String path) {
        Integer node = byPath.get(path);
        return node == null ? OptionalInt.empty() : OptionalInt.of(node);
    }

    /**
     * The kind at a path.
     *
     * @throws IllegalArgumentException if there is none
     */
    public int node(String path) {
        return find(path).orElseThrow(() -> new IllegalArgumentException("No kind at the path " + path));
    }

    public String path(int node) {
        return paths.get(node);
    }

    /** The kind above, or −1 for a role. */
    public int parent(int node) {
        return parents.get(node);
    }

    /** Index of the role in the season's list. */
    public int role(int node) {
        return roles.get(node);
    }

    /** Stems of this kind that can be sold in a week, in hundredths; {@link #UNLIMITED} if nothing is said. */
    public long mostAWeek(int node) {
        return most.get(node);
    }
}
