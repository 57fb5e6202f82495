package bedwright.file;

import bedwright.season.Answers;
import bedwright.season.Plan;
import bedwright.season.Season;
import bedwright.season.Units;
import java.util.List;
import java.util.Optional;

/** The units in which a file is written: it says so itself, once. */
final class FileUnits {
    private static final String KEY = "units";

    private FileUnits() {}

    /** Of a tree; where it says nothing of units, or nothing that can be understood, metres. */
    static Units of(Node root) {
        if (!(root instanceof Node.Group group)) {
            return Units.METRES;
        }
        Node said = group.get(KEY)
                .or(() -> group.get("season")
                        .flatMap(season -> season instanceof Node.Group inner ? inner.get(KEY) : Optional.empty()))
                .orElse(null);
        if (!(said instanceof Node.Text text)) {
            return Units.METRES;
        }
        List<String> words = List.of(Words.word(Units.METRES), Words.word(Units.FEET));
        // Of a mistyped word, too, so that not every figure seems out of range.
        return Words.nearest(text.value(), words)
                .map(word -> Units.values()[words.indexOf(word)])
                .orElse(Units.METRES);
    }

    /** Of a record's file. */
    static Units ofRecord(Record record) {
        return switch (record) {
            case Season season -> season.units();
            case Plan plan -> plan.season().units();
            case Answers answers -> answers.units();
            default -> Units.METRES;
        };
    }
}
