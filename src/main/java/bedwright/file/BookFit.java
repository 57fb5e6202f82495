package bedwright.file;

import bedwright.season.Crop;
import bedwright.season.Method;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Fits a crop of the book into a season: to its kinds, nets and pests by name. Read off the tree, before anything of the
 * season is bound; what is at fault there counts as not there.
 *
 * @param kinds paths of the season's kinds
 * @param nets names of its nets
 * @param pests names of its pests
 * @param cover whether it has row cover, or may buy some
 */
record BookFit(Set<String> kinds, List<String> nets, Set<String> pests, boolean cover) {

    static BookFit of(Node.Group season) {
        Set<String> kinds = new LinkedHashSet<>();
        for (Node role : entries(season, "roles")) {
            addKinds(kinds, "", role);
        }
        List<String> nets = new ArrayList<>();
        boolean cover = false;
        if (season.get("stock").orElse(null) instanceof Node.Group stock) {
            entries(stock, "nets").forEach(net -> name(net).ifPresent(nets::add));
            cover = stock.get("cover").orElse(null) instanceof Node.Group;
        }
        Set<String> pests = new LinkedHashSet<>();
        entries(season, "pests").forEach(pest -> name(pest).ifPresent(pests::add));
        return new BookFit(kinds, nets, pests, cover);
    }

    private static void addKinds(Set<String> kinds, String above, Node node) {
        name(node).ifPresent(name -> {
            String path = above.isEmpty() ? name : above + "/" + name;
            kinds.add(path);
            entries(node, "kinds").forEach(inner -> addKinds(kinds, path, inner));
        });
    }

    /** The entries of a list under a key, if there is one. */
    static List<Node> entries(Node node, String key) {
        return node instanceof Node.Group group && group.get(key).orElse(null) instanceof Node.Many many
                ? many.entries()
                : List.of();
    }

    static Optional<String> name(Node node) {
        return node instanceof Node.Group group && group.get("name").orElse(null) instanceof Node.Text text
                ? Optional.of(text.value())
                : Optional.empty();
    }

    /** The crop with the season's kinds and nets, and appeal to the season's pests only. */
    Crop fit(Crop crop) {
        Map<String, Double> appeal = new LinkedHashMap<>(crop.appeal());
        appeal.keySet().retainAll(pests);
        List<Method> methods = crop.methods().stream()
                .map(method -> method.with(
                        method.kinds() == null ? null : fit(method.kinds()), fit(method.net()), method.figures()))
                .toList();
        return crop.with(fit(crop.kinds()), appeal, crop.figures(), methods);
    }

    /** A net that the season knows stays; in place of another stands the season's first. */
    private Method.@Nullable NetUse fit(Method.@Nullable NetUse net) {
        return net == null || nets.isEmpty() || nets.contains(net.net())
                ? net
                : new Method.NetUse(nets.get(0), net.layers());
    }

    /** Shares of kinds that are the same in this season add up. */
    private List<Crop.KindShare> fit(List<Crop.KindShare> shares) {
        Map<String, Double> fitted = new LinkedHashMap<>();
        for (Crop.KindShare share : shares) {
            fitted.merge(fit(share.kind()), share.share(), (a, b) -> Math.round((a + b) * 1e6) / 1e6);
        }
        return fitted.entrySet().stream()
                .map(e -> new Crop.KindShare(e.getKey(), e.getValue()))
                .toList();
    }

    /**
     * The season's kind nearest to one of the book, which is role, colour and flower: the whole path, the role and the
     * flower, the role and the colour, or else the role, whether or not the season has it.
     */
    String fit(String kind) {
        String[] steps = kind.split("/", -1);
        List<String> nearest = new ArrayList<>();
        nearest.add(kind);
        for (int i = 1; i < steps.length - 1; i++) {
            nearest.add(steps[0] + "/" + steps[steps.length - i]);
        }
        for (int i = steps.length - 1; i > 1; i--) {
            nearest.add(String.join("/", List.of(steps).subList(0, i)));
        }
        return nearest.stream().filter(kinds::contains).findFirst().orElse(steps[0]);
    }

    /** Whether the season has what a method needs. */
    boolean allows(Method method) {
        return (method.net() == null || !nets.isEmpty()) && (method.cover() == null || cover);
    }
}
