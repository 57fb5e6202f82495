package bedwright.command;

import static org.assertj.core.api.Assertions.assertThat;

import bedwright.file.PlanFile;
import bedwright.season.KeptPlanting;
import bedwright.season.Plan;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ReplanTest {
    private static final String DAY = "2027-05-10";

    @TempDir
    private static Path planned;

    @TempDir
    private static Path changed;

    @TempDir
    private Path folder;

    @BeforeAll
    static void plan() throws IOException {
        // A weak plan, so that there is something to change.
        Ran.of("plan", "problems/tray-and-bed.json", "--seasons", 3, "--moves", 30, "--out", planned);
        Ran.of("note", planned, "1", "lost", "all", "wind", "--on", "2027-05-08", "--yes");
        copy(planned, changed);
        Ran.of("replan", changed, "--on", DAY, "--moves", 2000);
        Ran.of("replan", changed, "--accept");
    }

    @BeforeEach
    void copy() throws IOException {
        copy(planned, folder);
    }

    private static void copy(Path from, Path to) throws IOException {
        for (String name : List.of("plan.json", "season.html", "plantings.csv", "stems.svg", "season.log")) {
            Files.copy(from.resolve(name), to.resolve(name), StandardCopyOption.REPLACE_EXISTING);
        }
    }

    private void accepted() throws IOException {
        copy(changed, folder);
    }

    private Plan kept(String name) {
        return PlanFile.read(folder.resolve(name));
    }

    private Ran replan(Object... more) {
        Object[] typed = new Object[6 + more.length];
        System.arraycopy(new Object[] {"replan", folder, "--on", DAY, "--moves", 2000}, 0, typed, 0, 6);
        System.arraycopy(more, 0, typed, 6, more.length);
        return Ran.of(typed);
    }

    @Test
    void aNewPlanIsShownWithWhatItBuysAndOnlyProposed() throws IOException {
        byte[] before = Files.readAllBytes(folder.resolve("plan.json"));
        Ran ran = replan();

        assertThat(ran.out()).contains("from the largest gain:", "buys: ", " stems, ", " hours, ", "--accept");
        assertThat(Files.readAllBytes(folder.resolve("plan.json"))).isEqualTo(before);
        assertThat(folder.resolve("proposal.json")).exists();
    }

    @Test
    void acceptedExactlyWhatWasShownIsInForceAndTheFormerPlanIsKept() throws IOException {
        byte[] before = Files.readAllBytes(folder.resolve("plan.json"));
        replan();
        byte[] proposed = Files.readAllBytes(folder.resolve("proposal.json"));
        Ran.of("replan", folder, "--accept");

        assertThat(Files.readAllBytes(folder.resolve("plan.json"))).isEqualTo(proposed);
        assertThat(Files.readAllBytes(folder.resolve("plan-1.json"))).isEqualTo(before);
        assertThat(folder.resolve("proposal.json")).doesNotExist();
    }

    @Test
    void withTheSameMovesItIsTheSame() throws IOException {
        replan();
        byte[] first = Files.readAllBytes(folder.resolve("proposal.json"));
        replan();

        assertThat(Files.readAllBytes(folder.resolve("proposal.json"))).isEqualTo(first);
    }

    @Test
    void withoutAProposalThereIsNothingToAccept() {
        Ran ran = Ran.of("replan", folder, "--accept");

        assertThat(ran.code()).isEqualTo(Exit.FILE_TROUBLE);
        assertThat(ran.err()).contains("no new plan to accept", "Make one first");
    }

    @Test
    void aProposalFromBeforeTheLastNoteIsNotAccepted() {
        replan();
        Ran.of("note", folder, "say", "hail", "--on", DAY, "--yes");
        Ran ran = Ran.of("replan", folder, "--accept");

        assertThat(ran.code()).isEqualTo(Exit.FILE_TROUBLE);
        assertThat(ran.err()).contains("Something was noted since", "Run replan again");
    }

    @Test
    void aProposalFromAnotherPlanIsNotAccepted() throws IOException {
        replan();
        Files.writeString(folder.resolve("plan.json"), Files.readString(folder.resolve("plan.json")) + "\n");
        Ran ran = Ran.of("replan", folder, "--accept");

        assertThat(ran.code()).isEqualTo(Exit.FILE_TROUBLE);
        assertThat(ran.err()).contains("another than when this was proposed");
    }

    @Test
    void aDayBeforeTheLastNoteIsRefused() {
        Ran ran = Ran.of("replan", folder, "--on", "2027-05-01", "--moves", 100);

        assertThat(ran.code()).isEqualTo(Exit.USAGE);
        assertThat(ran.err()).contains("note 1 is of 8 May 2027");
    }

    @Test
    void aDayBeforeThePlanInForceWasMadeIsRefused() throws IOException {
        accepted();
        Ran ran = Ran.of("replan", folder, "--on", "2027-05-09", "--moves", 100);

        assertThat(ran.code()).isEqualTo(Exit.USAGE);
        assertThat(ran.err()).contains("the plan in force was made on 10 May 2027");
    }

    @Test
    void aRefusedChangeIsNotMade() {
        replan();
        KeptPlanting other = otherwise();
        Ran ran = replan("--keep", other.number());

        assertThat(ran.code()).as(ran.err()).isEqualTo(Exit.DONE);
        assertThat(ran.out()).doesNotContainPattern("(?m)^(- |  )" + other.number() + " .*instead of");
    }

    /** A planting in force that the proposal changes, else a new one. */
    private KeptPlanting otherwise() {
        List<KeptPlanting> before = kept("plan.json").plantings();
        return kept("proposal.json").plantings().stream()
                .filter(now -> now.standing() == null && !before.contains(now.with(now.number(), null)))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void aNumberThatNobodyKnowsIsRefused() {
        Ran ran = replan("--keep", 999);

        assertThat(ran.code()).isEqualTo(Exit.USAGE);
        assertThat(ran.err()).contains("there is no planting 999");
    }

    @Test
    void programsAreToldTheSame() {
        assertThat(replan("--format", "json").out())
                .contains("\"version\": 1", "\"on\": \"2027-05-10\"", "\"changes\": [", "\"asJudged\": ");
    }

    @Test
    void theNotesGoOnAndAPlantingThatIsGoneIsTold() throws IOException {
        accepted();
        int alive = kept("plan.json").plantings().stream()
                .filter(planting -> planting.number() != 1)
                .filter(planting -> planting.sown().isBefore(LocalDate.parse("2027-05-25")))
                .findFirst()
                .orElseThrow()
                .number();

        assertThat(Ran.of("note", folder, alive, "lost", "half", "pest", "--on", "2027-06-01", "--yes")
                        .code())
                .isEqualTo(Exit.DONE);
        assertThat(Ran.of("note", folder, "--list").out()).contains("planting 1 (", "planting " + alive + " (");
        assertThat(Ran.of("note", folder, 998, "up", "--on", "2027-06-01", "--yes")
                        .err())
                .contains("There is no planting 998");
    }

    /** In the week of 28 June two outlets take 30 and 40 minutes of service, whatever the plan: 1.2 hours. */
    @Test
    void aRuleThatNoNewPlanCanKeepIsTold() {
        for (String hours : List.of("14 hours", "6 hired hours")) {
            String gone = "helper-gone " + hours + " for 28 Jun to 4 Jul";
            assertThat(Ran.of("note", folder, gone, "--on", "2027-05-08", "--yes")
                            .code())
                    .isEqualTo(Exit.DONE);
        }
        Ran ran = Ran.of("replan", folder, "--on", DAY, "--moves", 1000);

        assertThat(ran.code()).isEqualTo(Exit.RULE_BROKEN);
        assertThat(ran.out())
                .containsPattern("(?s)to keep every rule.*- No week takes more hours than there are.*"
                        + "week of 28 June, by 1\\.2 hours");
    }

    @Test
    void aSecondAndAThirdNewPlanFollow() throws IOException {
        accepted();
        Ran.of("note", folder, "1", "pulled", "--on", "2027-05-24", "--yes");
        for (String day : List.of("2027-06-01", "2027-06-22")) {
            Ran ran = Ran.of("replan", folder, "--on", day, "--moves", 1000);
            assertThat(ran.code()).as("%s%s", ran.out(), ran.err()).isEqualTo(Exit.DONE);
            if (Files.exists(folder.resolve("proposal.json"))) {
                assertThat(Ran.of("replan", folder, "--accept").code()).isEqualTo(Exit.DONE);
            }
        }

        assertThat(Ran.of("sofar", folder, "--on", "2027-06-22").code()).isEqualTo(Exit.DONE);
        assertThat(Ran.of("recheck", folder).code()).isEqualTo(Exit.DONE);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "sofar PLAN --on 2027-05-20",
                "week PLAN",
                "week PLAN 2027-05-17",
                "why PLAN 1",
                "promise PLAN",
                "still PLAN --bed Lee1 --metres 3 --on 2027-05-20",
                "storm PLAN --from west --on 2027-07-05",
                "sheet PLAN",
                "tags PLAN",
                "buying PLAN",
                "calendar PLAN",
                "tables PLAN",
                "note PLAN --list",
                "recheck PLAN"
            })
    void everyOtherCommandWorksOnAnAcceptedPlan(String typed) throws IOException {
        accepted();
        Ran ran = Ran.of((Object[]) typed.replace("PLAN", folder.toString()).split(" "));

        assertThat(ran.code()).as(typed + ": " + ran.err()).isEqualTo(Exit.DONE);
    }

    @Test
    void aWeekBeforeTheNewPlanIsRefused() throws IOException {
        accepted();
        Ran ran = Ran.of("week", folder, "2027-04-19");

        assertThat(ran.code()).isEqualTo(Exit.USAGE);
        assertThat(ran.err()).contains("from 2027-05-10 on", "plan-1.json");
    }
}
