package bedwright.file;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Writes plain answers as JSON, for programs that read what a command says. */
public final class PlainJson {
    private PlainJson() {}

    /**
     * JSON of a map, in its order.
     *
     * @param answer values that are texts, numbers, truths, lists or maps of these
     * @throws IllegalArgumentException if a value is anything else
     */
    public static String text(Map<String, ?> answer) {
        return JsonText.of(node(answer));
    }

    /** Likewise as a tree, with members behind those of the answer. */
    static Node.Group group(Map<String, ?> answer, List<Node.Member> behind) {
        List<Node.Member> members = new ArrayList<>(((Node.Group) node(answer)).members());
        members.addAll(behind);
        return new Node.Group(Place.START, members, false);
    }

    private static Node node(Object value) {
        return switch (value) {
            case String text -> new Node.Text(Place.START, text);
            case Boolean truth -> new Node.Truth(Place.START, truth);
            case Number number -> new Node.Number(Place.START, number.toString());
            case List<?> list ->
                new Node.Many(Place.START, list.stream().map(PlainJson::node).toList(), false);
            case Map<?, ?> map ->
                new Node.Group(
                        Place.START,
                        map.entrySet().stream()
                                .map(e -> new Node.Member(Place.START, String.valueOf(e.getKey()), node(e.getValue())))
                                .toList(),
                        false);
            default -> throw new IllegalArgumentException("No JSON for " + value.getClass());
        };
    }
}
