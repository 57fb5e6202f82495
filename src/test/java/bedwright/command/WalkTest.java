package bedwright.command;

import static org.assertj.core.api.Assertions.assertThat;

import bedwright.file.PlanFile;
import bedwright.season.Plan;
import bedwright.season.Season;
import java.io.ByteArrayInputStream;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A round that is walked after a storm or an attack: answers in, notes and one page out. */
class WalkTest {
    private static final String DAY = "2027-07-05";

    @TempDir
    private static Path planned;

    @TempDir
    private Path folder;

    @BeforeAll
    static void plan() {
        Ran.of("plan", Path.of("problems/tray-and-bed.json"), "--moves", 500, "--out", planned);
    }

    @BeforeEach
    void copy() throws Exception {
        Files.copy(planned.resolve("plan.json"), folder.resolve("plan.json"));
    }

    private static Ran answering(String answers, Object... typed) {
        InputStream before = System.in;
        System.setIn(new ByteArrayInputStream(answers.getBytes(StandardCharsets.UTF_8)));
        try {
            return Ran.of(typed);
        } finally {
            System.setIn(before);
        }
    }

    private Ran storm(String answers, Object... more) {
        return walked(
                answers, List.of("storm", folder, "--from", "west", "--on", DAY, "--gust", "140", "--walk"), more);
    }

    private static Ran walked(String answers, List<Object> typed, Object... more) {
        Object[] all = new Object[typed.size() + more.length];
        for (int i = 0; i < all.length; i++) {
            all[i] = i < typed.size() ? typed.get(i) : more[i - typed.size()];
        }
        return answering(answers, all);
    }

    private List<String> notes() throws Exception {
        Path log = folder.resolve("season.log");
        return Files.exists(log) ? Files.readAllLines(log) : List.of();
    }

    /** The round's plantings by number, in its order, as it asks for them. */
    private List<Integer> asked() {
        Plan plan = PlanFile.read(folder.resolve("plan.json"));
        return storm("")
                .out()
                .lines()
                .filter(line -> line.matches("\\d+ .*, bed .*: *"))
                .map(line -> Integer.valueOf(line.substring(0, line.indexOf(' '))))
                .filter(plan::has)
                .toList();
    }

    @Test
    void answersBecomeNotesInWalkingOrder() throws Exception {
        assertThat(storm("all\nhalf\n", "--yes").code()).isEqualTo(Exit.DONE);

        assertThat(notes()).hasSize(2);
        assertThat(notes().get(0)).matches(DAY + " \\d+ lost all wind");
        assertThat(notes().get(1)).matches(DAY + " \\d+ lost half wind");
    }

    @Test
    void someIsAQuarterAndNoneIsNotedToo() throws Exception {
        storm("some\nnone\n", "--yes");

        assertThat(notes().get(0)).endsWith("lost 1/4 wind");
        assertThat(notes().get(1)).endsWith("lost 0% wind");
    }

    @Test
    void whatIsLeftForACountIsNotNotedAndIsAskedAgain() throws Exception {
        Ran first = storm("later\nhalf\n", "--yes");
        Ran second = storm("20\n", "--yes");

        assertThat(first.out()).contains("Still to be counted");
        assertThat(second.out()).contains("Noted already: ");
        assertThat(notes()).hasSize(2);
        assertThat(notes().get(1)).endsWith("lost 20 wind");
    }

    @Test
    void nothingIsWrittenWithoutAYes() throws Exception {
        Ran ran = storm("all\nend\nn\n");

        assertThat(ran.out()).contains("lost 100 % of what stood to wind", "Nothing was written.");
        assertThat(notes()).isEmpty();
    }

    @Test
    void aYesAfterTheAnswersWrites() throws Exception {
        storm("all\nend\ny\n");

        assertThat(notes()).hasSize(1);
    }

    @Test
    void anAnswerThatIsNotUnderstoodIsRefusedWithItsLine() throws Exception {
        Ran ran = storm("half\nmost of it\n", "--yes");

        assertThat(ran.code()).isEqualTo(Exit.FAULTY_FILE);
        assertThat(ran.err()).contains("standard input:2:1: \"most of it\" is not understood", "half", "later");
        assertThat(notes()).isEmpty();
    }

    @Test
    void moreThanStoodIsRefused() throws Exception {
        Ran ran = storm("100000\n", "--yes");

        assertThat(ran.code()).isEqualTo(Exit.FAULTY_FILE);
        assertThat(ran.err()).contains("can't be lost");
        assertThat(notes()).isEmpty();
    }

    @Test
    void theRoundAsksForEveryPlantingLikelyLaidFlat() {
        assertThat(asked()).isNotEmpty().doesNotHaveDuplicates();
    }

    @Test
    void thePageTellsWhoseOrderIsShortAndByWhenToCall() {
        Ran ran = storm("all\n".repeat(asked().size()), "--yes");

        assertThat(ran.out()).contains("Orders that are short for it").containsPattern("Call (by \\d|today)");
    }

    @Test
    void earlierNoticeMeansAnEarlierCall() {
        String all = "all\n".repeat(asked().size());
        Ran week = storm(all, "--yes");
        Ran longer = storm("", "--yes", "--notice", 300);

        assertThat(week.out()).contains("Call by");
        assertThat(longer.out()).contains("Call today").doesNotContain("Call by");
    }

    @Test
    void thePageTellsWhatSownNowStillComesInOrThatNothingDoes() {
        assertThat(storm("all\n".repeat(asked().size()), "--yes").out())
                .contains("What sown or set now, in the week of 5 Jul 2027, still comes in:")
                .containsPattern("- bed .*: (nothing that would bring more|.* first cut about )");
    }

    @Test
    void whatIsLostIsNoLongerOnTheRoundOfALaterStorm() {
        int gone = asked().getFirst();
        storm("all\nend\n", "--yes");

        Ran later = Ran.of("storm", folder, "--from", "west", "--on", "2027-07-12", "--gust", "140");

        assertThat(later.out().lines().filter(line -> line.strip().startsWith(gone + "  ")))
                .isEmpty();
    }

    @Test
    void anAttackIsWalkedLikewise() throws Exception {
        Season season = PlanFile.read(folder.resolve("plan.json")).season();
        for (int week = 0; week < season.weeks(); week++) {
            String on = season.weekStart(week).toString();
            Ran ran = walked("half\n", List.of("eaten", folder, "--on", on, "--walk", "--yes"));
            assertThat(ran.code()).as(ran.err()).isEqualTo(Exit.DONE);
            assertThat(ran.out()).startsWith("First: be sure what it is");
            if (!notes().isEmpty()) {
                assertThat(notes().getFirst()).endsWith("lost half pest");
                return;
            }
        }
        assertThat(notes()).as("a planting that something eats").isNotEmpty();
    }

    @Test
    void aPestThatIsNotThereIsToldWithThoseThatAre() {
        Ran ran = Ran.of("eaten", folder, "--on", DAY, "--by", "dragons");

        assertThat(ran.code()).isEqualTo(Exit.USAGE);
        assertThat(ran.err()).contains("names no pest \"dragons\"", "There are ");
    }
}
