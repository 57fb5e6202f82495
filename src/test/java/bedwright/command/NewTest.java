package bedwright.command;

import static org.assertj.core.api.Assertions.assertThat;

import bedwright.file.SeasonFile;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** A season of one's own, from the first question to the plan. */
class NewTest {
    private static final Path ANSWERS = Path.of("problems/answers/new-garden.json");

    @TempDir
    private Path folder = Path.of("");

    private Path file() {
        return folder.resolve("season.json");
    }

    private static Ran typed(String lines, Object... args) {
        InputStream before = System.in;
        System.setIn(new ByteArrayInputStream(lines.getBytes(StandardCharsets.UTF_8)));
        try {
            return Ran.of(args);
        } finally {
            System.setIn(before);
        }
    }

    @Test
    void answersOfAFileMakeASeasonThatPlansAtOnce() {
        Ran made = Ran.of("new", file(), "--answers", ANSWERS);
        Ran planned = Ran.of("plan", file(), "--moves", "20000", "--seed", "1", "--out", folder.resolve("plan"));

        assertThat(made.code()).as(made.err()).isEqualTo(Exit.DONE);
        assertThat(planned.code()).as(planned.err()).isEqualTo(Exit.DONE);
        assertThat(folder.resolve("plan/season.html")).isRegularFile();
    }

    @Test
    void enterAloneMakesASeasonThatPlansAtOnce() {
        Ran made = typed("\n".repeat(40), "new", file(), "--today", "2026-11-25");
        Ran planned = Ran.of("plan", file(), "--moves", "20000", "--seed", "1", "--out", folder.resolve("plan"));

        assertThat(made.code()).as(made.err()).isEqualTo(Exit.DONE);
        assertThat(SeasonFile.read(file()).starts()).hasToString("2027-03-01");
        assertThat(planned.code()).as(planned.err()).isEqualTo(Exit.DONE);
    }

    @Test
    void keptAnswersMakeTheSameSeasonAgain() throws IOException {
        Path kept = folder.resolve("answers.json");
        Path again = folder.resolve("again.json");
        typed("Rill\n50\n" + "\n".repeat(40), "new", file(), "--keep-answers", kept, "--today", "2026-11-25");
        Ran made = Ran.of("new", again, "--answers", kept);

        assertThat(made.code()).as(made.err()).isEqualTo(Exit.DONE);
        assertThat(Files.readString(again)).isEqualTo(Files.readString(file()));
    }

    @Test
    void itSaysWhatItAssumed() {
        assertThat(Ran.of("new", file(), "--answers", ANSWERS).out())
                .contains("Assumed", "4 years", "mean winds", "no windbreak", "the command \"crops\"");
    }

    @Test
    void inputThatEndsWritesNothing() {
        Ran ran = typed("Rill\n", "new", file());

        assertThat(ran.code()).isEqualTo(Exit.USAGE);
        assertThat(ran.err()).contains("nothing was written");
        assertThat(file()).doesNotExist();
    }

    @Test
    void aFileThatIsThereIsNotWrittenOverUnasked() throws IOException {
        Files.writeString(file(), "mine");
        Ran ran = Ran.of("new", file(), "--answers", ANSWERS);

        assertThat(ran.code()).isEqualTo(Exit.FILE_TROUBLE);
        assertThat(ran.err()).contains("is there already", "--replace");
        assertThat(file()).hasContent("mine");
    }

    @Test
    void whatIsReplacedIsKept() throws IOException {
        Files.writeString(file(), "mine");
        Ran ran = Ran.of("new", file(), "--answers", ANSWERS, "--replace");

        assertThat(ran.code()).as(ran.err()).isEqualTo(Exit.DONE);
        assertThat(folder.resolve("season.json~")).hasContent("mine");
    }

    static Stream<Arguments> faulty() {
        String whole = "{\"starts\": \"2027-03-01\", \"latitude\": 45, \"beds\": [{\"name\": \"A\", \"length\": 9}],"
                + " \"crops\": [{\"crop\": \"zinnia\"}]";
        return Stream.of(
                Arguments.of(
                        "{\"latitude\": 45}", List.of("\"starts\" is missing", "\"beds\" is missing", "\"crops\"")),
                Arguments.of(
                        "{\"starts\": \"2027-03-01\", \"latitude\": 99, \"beds\": [{\"name\": \"A\", \"lenght\": 9}],"
                                + " \"crops\": [{\"crop\": \"zinna\"}]}",
                        List.of("99", "Did you mean \"length\"?", "Did you mean \"zinnia\"?")),
                Arguments.of(
                        whole + ", \"events\": [{\"date\": \"2029-07-01\", \"bouquets\": 5}], \"lastFrost\": \"05-10\","
                                + " \"sellFrom\": \"2027-08-01\", \"sellTo\": \"2027-07-01\"}",
                        List.of("lies outside the season", "only one is said", "before it begins")),
                Arguments.of(
                        "{\"starts\": \"2027-03-01\", \"latitude\": 45, \"beds\": [{\"name\": \"A\", \"length\": 9},"
                                + " {\"name\": \"A\", \"length\": 8}], \"crops\": [{\"crop\": \"zinnia\"},"
                                + " {\"crop\": \"zinnia\"}]}",
                        List.of("another block of beds \"A\" before", "stands here twice")),
                Arguments.of(whole, List.of("answers.json:1:")));
    }

    /** All faults at once, and nothing written. */
    @ParameterizedTest
    @MethodSource("faulty")
    void faultyAnswersAreToldAllAtOnce(String text, List<String> words) throws IOException {
        Path answers = folder.resolve("answers.json");
        Files.writeString(answers, text);
        Ran ran = Ran.of("new", file(), "--answers", answers);

        assertThat(ran.code()).isEqualTo(Exit.FAULTY_FILE);
        assertThat(ran.err().toLowerCase(java.util.Locale.ROOT))
                .contains(words.stream()
                        .map(word -> word.toLowerCase(java.util.Locale.ROOT))
                        .toList());
        assertThat(file()).doesNotExist();
    }

    /** Commands of the README's walk, as they stand there, but for the folder that they write into. */
    private static List<String> walk() throws IOException {
        List<String> commands = new ArrayList<>();
        boolean isWalk = false;
        for (String line : Files.readAllLines(Path.of("README.md"))) {
            if (line.startsWith("## ")) {
                isWalk = line.equals("## A season of your own");
            }
            if (isWalk && line.startsWith("target/bedwright ")) {
                commands.add(line.substring("target/bedwright ".length()));
            }
        }
        return commands;
    }

    @Test
    void theReadmesWalkLeadsToAPlan() throws IOException {
        List<String> commands = walk();
        assertThat(commands).hasSizeGreaterThanOrEqualTo(4);
        for (String command : commands) {
            Object[] args = Stream.of(command.split(" "))
                    .map(word -> word.equals("my-season.json") ? file().toString() : word)
                    .map(word ->
                            word.equals("my-plan") ? folder.resolve("my-plan").toString() : word)
                    .map(word -> word.equals("10") ? "2" : word)
                    .toArray();
            Ran ran = Ran.of(args);
            assertThat(ran.code()).as(command + "\n" + ran.err()).isEqualTo(Exit.DONE);
        }

        assertThat(folder.resolve("my-plan/season.html")).isRegularFile();
        assertThat(SeasonFile.read(file()).crops()).hasSize(6);
        assertThat(SeasonFile.read(file()).allBeds()).hasSize(4);
    }
}
