package bedwright.command;

import static org.assertj.core.api.Assertions.assertThat;

import bedwright.file.PlanFile;
import bedwright.file.SeasonFile;
import bedwright.season.Held;
import bedwright.season.KeptPlanting;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class HoldTest {
    private static final Path PROBLEM = Path.of("problems/first-bed.json");

    @TempDir
    private static Path made;

    @TempDir
    private Path temporary;

    private Path season;
    private Path plan;
    private String before;

    @BeforeAll
    static void makeAPlan() {
        assertThat(Ran.of("plan", PROBLEM, "--moves", 500, "--out", made).code())
                .isZero();
    }

    @BeforeEach
    void takeItAlong() throws IOException {
        season = temporary.resolve("mine.json");
        plan = temporary.resolve("plan");
        Files.copy(PROBLEM, season);
        Files.createDirectory(plan);
        Files.copy(made.resolve("plan.json"), plan.resolve("plan.json"));
        before = Files.readString(season);
    }

    private Ran plan(Object... more) {
        Object[] all = new Object[6 + more.length];
        System.arraycopy(new Object[] {"plan", season, "--moves", 500, "--out", plan}, 0, all, 0, 6);
        System.arraycopy(more, 0, all, 6, more.length);
        return Ran.of(all);
    }

    private List<KeptPlanting> plantings() {
        return PlanFile.read(plan.resolve("plan.json")).plantings();
    }

    private KeptPlanting dill() {
        return plantings().stream()
                .filter(planting -> planting.crop().equals("dill"))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void aPlantingIsHeldAsItStandsAndStaysThere() {
        KeptPlanting dill = dill();

        Ran ran = plan("--hold", dill.number());

        assertThat(ran.code()).isZero();
        assertThat(ran.err()).contains("Held from now on in " + season);
        assertThat(ran.out()).contains("Held in place", "of dill in bed " + dill.bed(), "How this was worked out");
        assertThat(SeasonFile.read(season).held())
                .containsExactly(new Held("dill", dill.lots(), dill.bed(), dill.sown(), "sown", null));
        assertThat(temporary.resolve("mine.json~")).hasContent(before);
        assertThat(plan.resolve("season.html")).content().contains("sown, held in place");
        assertThat(Ran.of("check", season).out()).contains("held in place)");
    }

    @Test
    void laterPlansKeepItWithoutBeingTold() {
        plan("--hold", dill().number() + "=Open bed,2027-06-02");

        assertThat(plan("--seed", 7).code()).isZero();
        assertThat(plantings())
                .anySatisfy(planting -> assertThat(planting.crop() + ", " + planting.bed() + ", " + planting.sown())
                        .isEqualTo("dill, Open bed, 2027-05-31"));
        assertThat(Ran.of("recheck", plan).code()).isZero();
    }

    @Test
    void heldAgainItIsHeldOtherwiseAndNotTwice() {
        plan("--hold", dill().number() + "=Open bed,2027-06-02");
        int number = plantings().stream()
                .filter(planting -> planting.sown().equals(LocalDate.of(2027, 5, 31)))
                .filter(planting -> planting.crop().equals("dill"))
                .findFirst()
                .orElseThrow()
                .number();

        plan("--hold", number + "=,2027-06-07");

        assertThat(SeasonFile.read(season).held())
                .extracting(held -> held.bed() + ", " + held.sown())
                .containsExactly("Open bed, 2027-06-07");
    }

    @Test
    void lotsMoreOfACropAreHeld() {
        assertThat(plan("--hold", "2 dill=Open bed,2027-06-07").code()).isZero();

        assertThat(SeasonFile.read(season).held())
                .containsExactly(new Held("dill", 2, "Open bed", LocalDate.of(2027, 6, 7), "sown", null));
        assertThat(plantings())
                .anySatisfy(planting ->
                        assertThat(planting.crop() + planting.sown()).isEqualTo("dill2027-06-07"));
    }

    @Test
    void whyTellsThatItIsHeldAndWhatElseCouldBeDone() {
        plan("--hold", "dill=Open bed,2027-06-07");
        int number = plantings().stream()
                .filter(planting -> planting.sown().equals(LocalDate.of(2027, 6, 7)))
                .findFirst()
                .orElseThrow()
                .number();

        assertThat(Ran.of("why", plan, number).out()).contains("held in place", "a week earlier", "left out");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '"',
            value = {
                "44 | no planting No. 44",
                "1=Fense bed | no bed is named",
                "1=2027-05-17 | write a comma first",
                "1=,2027-05-37 | not a day of the calendar",
                "1=,2026-05-17 | outside the season",
                "1=,,sow | no method",
                "dil=Open bed,2027-06-07 | nor a crop",
                "dill=Open bed | say where, when and how",
                "\"sunflower, once-cut=Open bed,2027-05-17\" | one of the methods",
                "40 dill=Open bed,2027-06-07 | which has"
            })
    void whatIsMistypedIsToldAndNothingIsWritten(String hold, String told) throws IOException {
        Ran ran = plan("--hold", hold);

        assertThat(ran.code()).isEqualTo(Exit.USAGE);
        assertThat(ran.err()).contains("--hold").containsIgnoringCase(told.equals("which has") ? "pool has 3" : told);
        assertThat(Files.readString(season)).isEqualTo(before);
    }

    @Test
    void whatBreaksAHardRuleIsToldWithWhatWouldMendItAndNothingIsWritten() throws IOException {
        byte[] planned = Files.readAllBytes(plan.resolve("plan.json"));

        Ran ran = plan(
                "--hold", "3 dill=Open bed,2027-05-24", "--hold", "2 sunflower, once-cut=Open bed,2027-05-31,sown");

        assertThat(ran.code()).isEqualTo(Exit.RULE_BROKEN);
        assertThat(ran.err())
                .contains("can't be held there", "Broken then: Open bed", "To mend it: hold", "Nothing was planned");
        assertThat(Files.readString(season)).isEqualTo(before);
        assertThat(Files.readAllBytes(plan.resolve("plan.json"))).isEqualTo(planned);
    }

    @Test
    void withoutAPlanThereIsNoNumber() {
        Ran ran = Ran.of("plan", season, "--moves", 500, "--out", temporary.resolve("other"), "--hold", "3");

        assertThat(ran.code()).isEqualTo(Exit.USAGE);
        assertThat(ran.err()).contains("--from");
    }
}
