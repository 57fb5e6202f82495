package bedwright.file;

import bedwright.season.CropBook;
import bedwright.season.Family;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Families that crops of the book belong to and a season does not name: they come along with their years of rest. */
final class BookFamilies {
    private BookFamilies() {}

    static Node.Group added(Node.Group season, Set<String> needed, CropBook book) {
        Node given = season.get("families").orElse(null);
        if (given != null && !(given instanceof Node.Many)) {
            return season;
        }
        Set<String> missing = new HashSet<>(needed);
        BookFit.entries(season, "families")
                .forEach(family -> BookFit.name(family).ifPresent(missing::remove));
        List<Node> more = book.families().stream()
                .filter(family -> missing.contains(family.name()))
                .<Node>map(family -> node(family, given == null ? season.place() : given.place()))
                .toList();
        if (more.isEmpty()) {
            return season;
        }
        List<Node.Member> members = new ArrayList<>(season.members());
        if (given instanceof Node.Many many) {
            List<Node> all = new ArrayList<>(many.entries());
            all.addAll(more);
            Node.Many longer = new Node.Many(many.place(), all, many.cut());
            members.replaceAll(
                    member -> member.value() == given ? new Node.Member(member.place(), member.key(), longer) : member);
        } else {
            members.add(new Node.Member(season.place(), "families", new Node.Many(season.place(), more, false)));
        }
        return new Node.Group(season.place(), members, season.cut());
    }

    private static Node node(Family family, Place place) {
        return Overlay.placed(Unbinder.group(family), place);
    }
}
