package bedwright.file;

import bedwright.season.Crop;
import bedwright.season.CropBook;
import bedwright.season.Figure;
import bedwright.season.Method;
import bedwright.season.Origin;
import bedwright.season.Sureness;
import bedwright.season.Units;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Fills up the crops of a season file that are taken from the crop book: where such an entry says nothing the book's
 * figures stand. What comes from the book has its place where the file names the book's crop or method, so that a fault
 * shows there.
 */
final class FromBook {
    /** The key that names a crop of the book, or a method of such a crop. */
    static final String KEY = "book";

    private static final Figure OWN =
            new Figure(Sureness.FAIR, Origin.OWN, "the season file's own, in place of the crop book's");

    private final String file;
    private final CropBook book;
    private final BookFit fit;
    private final Units units;
    private final Set<String> families = new LinkedHashSet<>();
    private final List<Fault> faults = new ArrayList<>();
    private final Set<String> doubtful = new LinkedHashSet<>();
    private final Overlay overlay;

    private FromBook(String file, CropBook book, Node.Group season) {
        this.file = file;
        this.book = book;
        fit = BookFit.of(season);
        units = FileUnits.of(season);
        overlay = new Overlay(file, faults);
    }

    /**
     * A tree with nothing left to be taken from the book.
     *
     * @param doubtful paths of values that are made up because of a fault
     */
    record Filled(Node root, List<Fault> faults, Set<String> doubtful) {
        static Filled as(Node root) {
            return new Filled(root, List.of(), Set.of());
        }
    }

    static Filled fill(String file, Node root) {
        boolean any = BookFit.entries(root, "crops").stream()
                .anyMatch(entry ->
                        entry instanceof Node.Group group && group.get(KEY).isPresent());
        if (!any || !(root instanceof Node.Group season)) {
            return Filled.as(root);
        }
        FromBook from = new FromBook(file, CropBookFile.ours(), season);
        return new Filled(from.season(season), from.faults, from.doubtful);
    }

    private Node.Group season(Node.Group season) {
        List<Node.Member> members = new ArrayList<>();
        boolean first = true;
        for (Node.Member member : season.members()) {
            if (first && member.key().equals("crops") && member.value() instanceof Node.Many crops) {
                first = false;
                List<Node> entries = new ArrayList<>();
                for (int i = 0; i < crops.entries().size(); i++) {
                    entries.add(
                            crops.entries().get(i) instanceof Node.Group group
                                            && group.get(KEY).isPresent()
                                    ? crop(group, i)
                                    : crops.entries().get(i));
                }
                Node filled = new Node.Many(crops.place(), entries, crops.cut());
                members.add(new Node.Member(member.place(), member.key(), filled));
            } else {
                members.add(member);
            }
        }
        return BookFamilies.added(new Node.Group(season.place(), members, season.cut()), families, book);
    }

    private Node.Group crop(Node.Group entry, int number) {
        String path = "/crops/" + number;
        String label = "entry " + (number + 1) + " of \"crops\"";
        Node named = entry.get(KEY).orElseThrow();
        List<Node.Member> own = Overlay.without(entry, KEY);
        Optional<Crop> found =
                named instanceof Node.Text text ? BookFigures.find(book, text.value()) : Optional.empty();
        if (found.isEmpty()) {
            unknown(named, path, "crop %s in the crop book", book.names(), " The command \"crops\" lists them.");
        }
        Crop plain = found.orElseGet(() -> nearest(named));
        if (plain.family() != null && found.isPresent() && !Overlay.has(own, "family")) {
            families.add(plain.family());
        }
        Crop crop = fit.fit(plain);
        roles(crop, own, named, path);
        List<Figure> stems = new ArrayList<>();
        List<Node> methods = methods(crop, own, named, path, stems);
        Map<String, Figure> figures = new LinkedHashMap<>(crop.figures());
        Layout layout = Layout.of(Crop.class);
        Set<String> changed = Overlay.changed(own, layout);
        // The crop is as sure of its stems as of the weakest of the methods that are taken, where each says its own.
        if (!stems.isEmpty() && stems.size() == methods.size()) {
            figures.put("stems", BookFigures.weakest(stems));
        }
        changed.stream().filter(figures::containsKey).forEach(key -> figures.put(key, OWN));
        Node.Group base = Overlay.placed(
                Unbinder.group(crop.with(crop.kinds(), crop.appeal(), figures, crop.methods()), units), named.place());
        List<Node.Member> others = new ArrayList<>();
        boolean replaced = false;
        for (Node.Member member : own) {
            boolean list = !replaced && member.key().equals("methods") && member.value() instanceof Node.Many;
            replaced |= list;
            others.add(list ? listed(member, methods) : member);
        }
        if (!Overlay.has(own, "methods")) {
            others.add(new Node.Member(named.place(), "methods", new Node.Many(named.place(), methods, false)));
        }
        String name = named instanceof Node.Text text ? label + " (" + Words.quoted(text.value()) + ")" : label;
        return new Node.Group(entry.place(), overlay.over(base, others, layout, path, name), entry.cut());
    }

    private static Node.Member listed(Node.Member member, List<Node> methods) {
        boolean cut = member.value() instanceof Node.Many many && many.cut();
        return new Node.Member(
                member.place(), "methods", new Node.Many(member.value().place(), methods, cut));
    }

    /** So that what else the entry says can still be checked. */
    private Crop nearest(Node named) {
        return (named instanceof Node.Text text ? Words.nearest(text.value(), book.names()) : Optional.<String>empty())
                .flatMap(name -> BookFigures.find(book, name))
                .orElseGet(() -> BookFigures.figured(book, book.crops().get(0)));
    }

    private void roles(Crop crop, List<Node.Member> own, Node named, String path) {
        if (fit.kinds().isEmpty() || Overlay.has(own, "kinds")) {
            return;
        }
        for (Crop.KindShare share : crop.kinds()) {
            if (!fit.kinds().contains(share.kind())) {
                fault(
                        named,
                        path + "/kinds",
                        "The crop book counts " + Words.quoted(crop.name()) + " to the role "
                                + Words.quoted(share.kind())
                                + ", but this season's roles are "
                                + Words.and(fit.kinds().stream()
                                        .filter(kind -> !kind.contains("/"))
                                        .toList())
                                + ". Add that role, or give the crop \"kinds\" of this season here.");
                return;
            }
        }
    }

    private List<Node> methods(Crop crop, List<Node.Member> own, Node named, String path, List<Figure> stems) {
        Optional<Node> given = own.stream()
                .filter(member -> member.key().equals("methods"))
                .map(Node.Member::value)
                .findFirst();
        if (given.isEmpty()) {
            List<Method> allowed = crop.methods().stream().filter(fit::allows).toList();
            List<Method> taken = allowed.isEmpty() ? crop.methods() : allowed;
            List<Node> nodes = new ArrayList<>();
            for (Method method : taken) {
                net(method, List.of(), named, path + "/methods/" + nodes.size());
                addStems(stems, method.figures());
                nodes.add(Overlay.placed(Unbinder.group(method, units), named.place()));
            }
            return nodes;
        }
        List<Node> nodes = new ArrayList<>();
        if (given.get() instanceof Node.Many many) {
            for (int i = 0; i < many.entries().size(); i++) {
                nodes.add(method(crop, many.entries().get(i), path + "/methods/" + i, i, stems));
            }
        }
        return nodes;
    }

    private static void addStems(List<Figure> stems, Map<String, Figure> figures) {
        if (figures.containsKey("stems")) {
            stems.add(figures.get("stems"));
        }
    }

    private Node method(Crop crop, Node entry, String path, int number, List<Figure> stems) {
        Node named = entry instanceof Node.Group group ? group.get(KEY).orElse(entry) : entry;
        if (entry instanceof Node.Group ? named == entry : !(entry instanceof Node.Text)) {
            return entry;
        }
        List<String> names = crop.methods().stream().map(Method::name).toList();
        Optional<Method> found = named instanceof Node.Text text
                ? crop.methods().stream()
                        .filter(method -> method.name().equals(text.value()))
                        .findFirst()
                : Optional.empty();
        if (found.isEmpty()) {
            String there = " There is " + Words.and(names) + ".";
            unknown(named, path, "method %s of " + Words.quoted(crop.name()) + " in the crop book", names, there);
        }
        Method method = found.orElseGet(() -> crop.methods().get(0));
        List<Node.Member> own = entry instanceof Node.Group group ? Overlay.without(group, KEY) : List.of();
        net(method, own, named, path);
        Map<String, Figure> figures = new LinkedHashMap<>(method.figures());
        Layout layout = Layout.of(Method.class);
        for (String key : Overlay.changed(own, layout)) {
            boolean ofCrop =
                    crop.figures().containsKey(key) && !BookFigures.ownKeys().contains(key);
            if (figures.containsKey(key) || ofCrop) {
                figures.put(key, OWN);
            }
        }
        addStems(stems, figures);
        Node.Group base = Overlay.placed(
                Unbinder.group(method.with(method.kinds(), method.net(), figures), units), named.place());
        boolean cut = entry instanceof Node.Group group && group.cut();
        String label = "entry " + (number + 1) + " of \"methods\" (" + Words.quoted(method.name()) + ")";
        return new Node.Group(entry.place(), overlay.over(base, own, layout, path, label), cut);
    }

    private void net(Method method, List<Node.Member> own, Node named, String path) {
        if (method.net() != null && fit.nets().isEmpty() && !Overlay.has(own, "net")) {
            fault(
                    named,
                    path + "/net",
                    "The method " + Words.quoted(method.name())
                            + " of the crop book stands in support net, but \"stock\""
                            + " has no \"nets\". Add one there (of length 0, with a price, if it is still to be bought), take"
                            + " another method, or write \"net\": null here to grow it without.");
        }
    }

    private void unknown(Node named, String path, String what, List<String> names, String otherwise) {
        doubtful.add(path);
        if (named instanceof Node.Text text) {
            String near = Words.didYouMean(text.value(), names);
            fault(
                    named,
                    path + "/" + KEY,
                    "There is no " + what.replace("%s", Words.quoted(text.value())) + "."
                            + (near.isEmpty() ? otherwise : near));
        } else if (!(named instanceof Node.Unreadable)) {
            fault(
                    named,
                    path + "/" + KEY,
                    "\"book\" needs a text in quotation marks, the name of a " + what.replace(" %s", "")
                            + ", but here stands " + named.said() + "." + otherwise);
        }
    }

    private void fault(Node at, String path, String message) {
        faults.add(new Fault(file, at.place(), path, message));
        doubtful.add(path);
    }
}
