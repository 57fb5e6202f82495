package bedwright.file;

import bedwright.season.Answers;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Answers for a season of one's own: JSON, UTF-8. */
public final class AnswersFile {
    private AnswersFile() {}

    /**
     * Reads answers.
     *
     * @throws FileTrouble if the file can't be read
     * @throws FaultyFile if it is at fault, with all faults
     */
    public static Answers read(Path file) {
        return parse(file.toString(), Reading.bytes(file));
    }

    /**
     * The answers that these bytes hold.
     *
     * @param name what faults call the file
     * @throws FaultyFile if they are at fault, with all faults
     */
    public static Answers parse(String name, byte[] bytes) {
        return Document.read(name, bytes, Answers.class, AnswersFile::flaws).record();
    }

    /** What stands in the file of answers: the same bytes for equal answers, everywhere. */
    public static byte[] bytes(Answers answers) {
        return Document.bytes(answers);
    }

    private static List<Flaw> flaws(Answers answers) {
        List<Flaw> flaws = new ArrayList<>();
        List<String> book = CropBookFile.ours().names();
        Set<String> seen = new HashSet<>();
        for (int i = 0; i < answers.crops().size(); i++) {
            String crop = answers.crops().get(i).crop();
            String path = "/crops/" + i + "/crop";
            if (!book.contains(crop)) {
                flaws.add(flaw(
                        path,
                        "the crop book has no crop " + Words.quoted(crop) + "." + Words.didYouMean(crop, book)
                                + " The command \"crops\" lists what it has."));
            } else if (!seen.add(crop)) {
                flaws.add(flaw(path, "the crop " + Words.quoted(crop) + " stands here twice; name it once"));
            }
        }
        Set<String> blocks = new HashSet<>();
        for (int i = 0; i < answers.beds().size(); i++) {
            String name = answers.beds().get(i).name();
            if (!blocks.add(name)) {
                flaws.add(flaw("/beds/" + i + "/name", "two blocks are called " + Words.quoted(name) + "; rename one"));
            }
        }
        dates(answers, flaws);
        return flaws;
    }

    private static void dates(Answers answers, List<Flaw> flaws) {
        var end = answers.starts().plusWeeks(answers.weeks());
        for (int i = 0; i < answers.events().size(); i++) {
            var date = answers.events().get(i).date();
            if (date.isBefore(answers.starts()) || !date.isBefore(end)) {
                flaws.add(flaw(
                        "/events/" + i + "/date",
                        "the event on " + date + " lies outside the season, which goes from " + answers.starts()
                                + " to " + end.minusDays(1) + "; change the day, the start or the weeks"));
            }
        }
        if (answers.sellFrom() != null
                && answers.sellTo() != null
                && answers.sellTo().isBefore(answers.sellFrom())) {
            flaws.add(flaw(
                    "/sellTo",
                    "selling ends on " + answers.sellTo() + ", before it begins on " + answers.sellFrom()
                            + "; write the later day here"));
        }
        if ((answers.lastFrost() == null) != (answers.firstFrost() == null)) {
            flaws.add(flaw(
                    answers.lastFrost() == null ? "/firstFrost" : "/lastFrost",
                    "of \"lastFrost\" and \"firstFrost\" only one is said; say both, or neither where no frost comes"));
        }
    }

    private static Flaw flaw(String path, String message) {
        return new Flaw(path, message, false, List.of(path));
    }
}
