package bedwright.file;

import bedwright.season.Season;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * What differs between the season of a file and the season that a plan was made for, key by key. Not compared are
 * caution and possible seasons, which can be chosen anew for each plan, and remarks.
 */
public final class SeasonDifferences {
    private static final Set<String> LEFT_OUT = Set.of("caution", "possible", "about", "units");
    /** By which entries of a list are told apart. */
    private static final List<String> LABELS = List.of("name", "crop", "kind");

    private final List<String> found = new ArrayList<>();

    private SeasonDifferences() {}

    /**
     * A line for each difference, in the units and order of the season file; none if there is none.
     *
     * @param file the season of the file
     * @param plan the season that the plan was made for
     */
    public static List<String> of(Season file, Season plan) {
        SeasonDifferences differences = new SeasonDifferences();
        differences.groups("", Unbinder.group(file, file.units()), Unbinder.group(plan, file.units()));
        return differences.found;
    }

    private void groups(String where, Node.Group file, Node.Group plan) {
        Set<String> keys = new LinkedHashSet<>();
        file.members().forEach(member -> keys.add(member.key()));
        plan.members().forEach(member -> keys.add(member.key()));
        for (String key : keys) {
            if (!where.isEmpty() || !LEFT_OUT.contains(key)) {
                nodes(
                        where.isEmpty() ? key : where + ", " + key,
                        file.get(key).orElse(null),
                        plan.get(key).orElse(null));
            }
        }
    }

    private void nodes(String where, @Nullable Node file, @Nullable Node plan) {
        if (text(file).equals(text(plan))) {
            return;
        }
        if (file instanceof Node.Group one && plan instanceof Node.Group other) {
            groups(where, one, other);
        } else if (entries(file) instanceof List<Node> one
                && entries(plan) instanceof List<Node> other
                && (holdsGroups(one) || holdsGroups(other))) {
            lists(where, one, other);
        } else {
            found.add(where + ": " + said(file) + " in the season file, " + said(plan) + " in the plan");
        }
    }

    /** Entries, of which a list that is left out has none; null for what is no list. */
    private static @Nullable List<Node> entries(@Nullable Node node) {
        return node == null ? List.of() : node instanceof Node.Many many ? many.entries() : null;
    }

    private static boolean holdsGroups(List<Node> entries) {
        return entries.stream().anyMatch(Node.Group.class::isInstance);
    }

    private void lists(String where, List<Node> file, List<Node> plan) {
        Map<String, Node> one = labelled(file);
        Map<String, Node> other = labelled(plan);
        Set<String> labels = new LinkedHashSet<>(one.keySet());
        labels.addAll(other.keySet());
        int before = found.size();
        for (String label : labels) {
            if (!other.containsKey(label)) {
                found.add(where + " " + label + ": only in the season file");
            } else if (!one.containsKey(label)) {
                found.add(where + " " + label + ": only in the plan");
            } else {
                nodes(where + " " + label, one.get(label), other.get(label));
            }
        }
        if (found.size() == before) {
            found.add(where + ": in another order");
        }
    }

    /** The entries by what they are called, or by their numbers where that is not different for each. */
    private static Map<String, Node> labelled(List<Node> entries) {
        for (String key : LABELS) {
            Map<String, Node> named = new LinkedHashMap<>();
            for (Node entry : entries) {
                label(entry, key).ifPresent(label -> named.put(Words.quoted(label), entry));
            }
            if (!entries.isEmpty() && named.size() == entries.size()) {
                return named;
            }
        }
        Map<String, Node> numbered = new LinkedHashMap<>();
        for (int i = 0; i < entries.size(); i++) {
            numbered.put(Integer.toString(i + 1), entries.get(i));
        }
        return numbered;
    }

    private static Optional<String> label(Node entry, String key) {
        return entry instanceof Node.Group group
                ? group.get(key)
                        .filter(Node.Text.class::isInstance)
                        .map(Node.Text.class::cast)
                        .map(Node.Text::value)
                : Optional.empty();
    }

    private static String text(@Nullable Node node) {
        return node == null ? "" : JsonText.line(node);
    }

    private static String said(@Nullable Node node) {
        return node == null ? "nothing" : Words.shortened(JsonText.line(node));
    }
}
