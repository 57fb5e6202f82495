package bedwright.file;

import bedwright.season.Plan;
import bedwright.season.PriceList;
import bedwright.season.Season;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A file of another sort than the one asked for: one word on that helps more than a fault for each of its keys. */
final class WrongSort {
    /** The form of plan files that is read. */
    private static final String VERSION = "1";

    /** A key that only files of a sort have at their outermost, and what such a file is called. */
    private static final Map<Class<? extends Record>, Sort> SORTS = Map.of(
            Season.class, new Sort("beds", "a season file", "the season file"),
            Plan.class, new Sort("plantings", "a plan (plan.json)", "the folder of a plan, or its plan.json"),
            PriceList.class, new Sort("weights", "a file of prices (prices.json)", "the plan's prices.json"));

    private record Sort(String key, String name, String meant) {}

    private WrongSort() {}

    /** The one fault of a file that is of another sort, or of another version's form. */
    static Optional<Fault> of(String file, Node root, Class<? extends Record> type) {
        Sort wanted = SORTS.get(type);
        if (wanted == null || !(root instanceof Node.Group group)) {
            return Optional.empty();
        }
        List<String> keys = new ArrayList<>();
        group.members().forEach(member -> keys.add(member.key()));
        for (Sort sort : SORTS.values()) {
            if (sort != wanted && keys.contains(sort.key()) && !keys.contains(wanted.key())) {
                return Optional.of(new Fault(
                        file,
                        root.place(),
                        "",
                        "This is " + sort.name() + ", but here " + wanted.name() + " is needed. Name " + wanted.meant()
                                + " instead."));
            }
        }
        return type == Plan.class ? otherVersion(file, group) : Optional.empty();
    }

    private static Optional<Fault> otherVersion(String file, Node.Group group) {
        Node found = group.get("version").orElse(null);
        if (!(found instanceof Node.Number form)
                || !form.text().matches("[1-9][0-9]{0,8}")
                || form.text().equals(VERSION)) {
            return Optional.empty();
        }
        return Optional.of(new Fault(
                file,
                form.place(),
                "/version",
                "The plan is written in form " + form.text() + ", but this Bedwright reads form " + VERSION
                        + ": another version made it. Read it with that one, or make the plan anew."));
    }
}
