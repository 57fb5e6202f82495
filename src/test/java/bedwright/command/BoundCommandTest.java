package bedwright.command;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import bedwright.file.PlanFile;
import bedwright.season.Plan;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** How close a plan comes to the best possible, as the commands tell it. */
class BoundCommandTest {
    private static final Path FIRST = Path.of("problems/first-bed.json");
    private static final Pattern WITHIN = Pattern.compile("Within ([0-9.]+) %");

    @TempDir
    private Path temporary;

    private Path folder;

    @BeforeEach
    void nameAFolder() {
        folder = temporary.resolve("first");
    }

    private Ran plan(Path out, Object... more) {
        Object[] args = new Object[6 + more.length];
        System.arraycopy(new Object[] {"plan", FIRST, "--moves", 500, "--out", out}, 0, args, 0, 6);
        System.arraycopy(more, 0, args, 6, more.length);
        return Ran.of(args);
    }

    private static Plan.Closeness closeness(Path folder) {
        return Objects.requireNonNull(PlanFile.read(folder.resolve("plan.json")).closeness());
    }

    private static double within(String text) {
        Matcher matcher = WITHIN.matcher(text);
        assertThat(matcher.find()).as(text).isTrue();
        return Double.parseDouble(matcher.group(1));
    }

    @Test
    void withoutBoundNothingIsClaimed() throws IOException {
        Ran ran = plan(folder);

        assertThat(ran.out()).doesNotContain("best possible");
        assertThat(Files.readString(folder.resolve("season.html"))).doesNotContain("best possible");
        assertThat(PlanFile.read(folder.resolve("plan.json")).closeness()).isNull();
        assertThat(folder.resolve("prices.json")).doesNotExist();
    }

    @Test
    void screenSheetAndPlanSayTheSame() throws IOException {
        Ran ran = plan(folder, "--bound-steps", 400);

        double within = within(ran.out());
        assertThat(within(Files.readString(folder.resolve("season.html")))).isEqualTo(within);
        assertThat(closeness(folder).within()).isEqualTo(within);
    }

    @Test
    void asJsonThePlanSaysIt() throws IOException {
        Ran ran = plan(folder, "--bound-steps", 400, "--format", "json");

        assertThat(ran.out().getBytes(UTF_8)).isEqualTo(Files.readAllBytes(folder.resolve("plan.json")));
        assertThat(ran.out()).contains("\"within\": ").contains("\"worths\": ");
    }

    @Test
    void whatOneMoreWouldBeWorthIsSaidToBeAnEstimate() {
        assertThat(plan(folder, "--bound-steps", 400).out().replaceAll("\\s+", " "))
                .contains("worth, an estimate")
                .contains("A metre of Net: about €");
    }

    @Test
    void movesStepsAndSeedDecideAll() {
        Path again = temporary.resolve("again");
        plan(folder, "--bound-steps", 300);
        plan(again, "--bound-steps", 300);

        assertThat(again.resolve("plan.json")).hasSameBinaryContentAs(folder.resolve("plan.json"));
        assertThat(again.resolve("prices.json")).hasSameBinaryContentAs(folder.resolve("prices.json"));
        assertThat(again.resolve("season.html")).hasSameBinaryContentAs(folder.resolve("season.html"));
    }

    @Test
    void theRecheckComesToTheSame() {
        double within = within(plan(folder, "--bound-steps", 400).out());
        Ran ran = Ran.of("recheck", folder);

        assertThat(ran.code()).isZero();
        assertThat(within(ran.out())).isEqualTo(within);
    }

    /** Whatever prices are given, what is claimed from them is true: only less of it. */
    @Test
    void theRecheckTrustsThePricesNotThePlan() throws IOException {
        double within = within(plan(folder, "--bound-steps", 400).out());
        Path prices = folder.resolve("prices.json");
        Files.writeString(prices, Files.readString(prices).replace("\"asked\": [1.", "\"asked\": [7."));

        assertThat(within(Ran.of("recheck", folder).out())).isGreaterThan(within + 1);
    }

    @Test
    void theRecheckTellsWherePricesAreAtFault() throws IOException {
        plan(folder, "--bound-steps", 100);
        Path prices = folder.resolve("prices.json");
        Files.writeString(prices, Files.readString(prices).replace("\"weights\": [", "\"weights\": [1, "));
        Ran ran = Ran.of("recheck", folder);

        assertThat(ran.code()).isEqualTo(3);
        assertThat(ran.err()).contains("prices.json:3:").contains("needs 4");
    }

    @Test
    void withoutPricesTheRecheckCountsThePlanAlone() {
        plan(folder);
        Ran ran = Ran.of("recheck", folder);

        assertThat(ran.code()).isZero();
        assertThat(ran.out()).contains("scores what its file says").contains("nothing is said of the best possible");
    }

    @Test
    void theRecheckRefusesAScoreThatIsNotThePlans() throws IOException {
        plan(folder);
        Path file = folder.resolve("plan.json");
        long soft = PlanFile.read(file).score().soft();
        Files.writeString(file, Files.readString(file).replace("\"soft\": " + soft, "\"soft\": " + (soft + 1)));
        Ran ran = Ran.of("recheck", folder);

        assertThat(ran.code()).isEqualTo(3);
        assertThat(ran.err()).contains("counted again").contains("changed by hand");
    }

    @Test
    void theSheetDrawnAnewSaysTheSame() throws IOException {
        plan(folder, "--bound-steps", 200);
        byte[] sheet = Files.readAllBytes(folder.resolve("season.html"));
        Files.delete(folder.resolve("season.html"));

        assertThat(Ran.of("sheet", folder).code()).isZero();
        assertThat(folder.resolve("season.html")).hasBinaryContent(sheet);
    }

    @Test
    void theSheetDrawnAnewWithoutThePricesClaimsNothing() throws IOException {
        plan(folder, "--bound-steps", 200);
        Files.delete(folder.resolve("prices.json"));
        Ran ran = Ran.of("sheet", folder);

        assertThat(ran.err()).contains("prices.json is gone");
        assertThat(Files.readString(folder.resolve("season.html"))).doesNotContain("best possible");
    }

    @Test
    void pricesOfAFormerPlanDontStayBesideTheNext() {
        plan(folder, "--bound-steps", 100);
        plan(folder);

        assertThat(folder.resolve("prices.json")).doesNotExist();
        assertThat(folder.resolve("prices.json~")).exists();
    }

    @Test
    void moreStepsClaimNoLess() {
        double few = within(plan(folder, "--bound-steps", 50).out());
        double many = within(plan(folder, "--bound-steps", 800).out());

        assertThat(many).isLessThanOrEqualTo(few);
    }
}
