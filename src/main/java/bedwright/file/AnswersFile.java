package bedwright.file;

import bedwright.season.Answers;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;

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
        Flaws flaws = new Flaws();
        List<String> book = CropBookFile.ours().names();
        List<String> crops = answers.crops().stream().map(Answers.Wanted::crop).toList();
        for (int i = 0; i < crops.size(); i++) {
            String path = "/crops/" + i + "/crop";
            if (!book.contains(crops.get(i))) {
                flaws.add(
                        path,
                        "the crop book has no crop " + Words.quoted(crops.get(i)) + "."
                                + Words.didYouMean(crops.get(i), book)
                                + " The command \"crops\" lists what it has.");
            } else if (crops.indexOf(crops.get(i)) < i) {
                flaws.add(path, "the crop " + Words.quoted(crops.get(i)) + " stands here twice; name it once");
            }
        }
        flaws.unlessDifferent(
                "block of beds",
                answers.beds().stream().map(Answers.Block::name).toList(),
                i -> "/beds/" + i + "/name");
        dates(answers, flaws);
        return flaws.found();
    }

    private static void dates(Answers answers, Flaws flaws) {
        LocalDate end = answers.starts().plusWeeks(answers.weeks());
        for (int i = 0; i < answers.events().size(); i++) {
            LocalDate date = answers.events().get(i).date();
            if (date.isBefore(answers.starts()) || !date.isBefore(end)) {
                flaws.add(
                        "/events/" + i + "/date",
                        "the event on " + date + " lies outside the season, which goes from " + answers.starts()
                                + " to " + end.minusDays(1) + "; change the day, the start or the weeks");
            }
        }
        if (answers.sellFrom() != null
                && answers.sellTo() != null
                && answers.sellTo().isBefore(answers.sellFrom())) {
            flaws.add(
                    "/sellTo",
                    "selling ends on " + answers.sellTo() + ", before it begins on " + answers.sellFrom()
                            + "; write the later day here");
        }
        if ((answers.lastFrost() == null) != (answers.firstFrost() == null)) {
            flaws.add(
                    answers.lastFrost() == null ? "/firstFrost" : "/lastFrost",
                    "of \"lastFrost\" and \"firstFrost\" only one is said; say both, or neither where no frost comes");
        }
    }
}
