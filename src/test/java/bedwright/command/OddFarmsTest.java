package bedwright.command;

import static org.assertj.core.api.Assertions.assertThat;

import bedwright.file.PlanFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Farms at the edge of what a season file can say. All invented. */
class OddFarmsTest {
    private static final String SITE = """
            "site": {"latitude": 50, "meanMin": [0, 0, 2, 4, 8, 11, 13, 13, 10, 6, 3, 1],
                     "meanMax": [4, 5, 9, 13, 18, 21, 23, 23, 19, 13, 8, 5]}""";
    private static final String BED = "\"beds\": [{\"name\": \"Bed\", \"length\": 5}]";
    private static final String ROLES = "\"roles\": [{\"name\": \"focal\"}]";
    private static final String CROPS = """
            "crops": [{"name": "zinnia", "kinds": [{"kind": "focal"}], "clock": {"base": 6, "emergence": 60, "firstCut": 500},
              "height": 0.8, "killing": {"young": 0, "grown": 0}, "methods": [{"name": "sown", "start": "sown", "rows": 4, "spacing": 0.25, "cutDays": 28,
              "stems": 5}]}]""";
    private static final String POOL = "\"pool\": [{\"crop\": \"zinnia\", \"plants\": 40, \"lots\": 2}]";
    private static final String OUTLET = """
            "outlets": [{"name": "Stall", "kind": "focal", "price": 1,
              "asks": [{"from": "2027-07-05", "to": "2027-08-30", "stems": 50}]}]""";

    @TempDir
    private Path temporary;

    private Ran plan(String... parts) throws IOException {
        Path file = Files.writeString(
                temporary.resolve("odd.json"),
                "{\"name\": \"Odd (invented)\", \"starts\": \"2027-04-05\", \"weeks\": 26, " + SITE + ", " + ROLES
                        + ", " + String.join(", ", parts) + ", \"possible\": {\"count\": 2, \"seed\": 1}}");
        return Ran.of("plan", file, "--moves", 200, "--out", temporary.resolve("plan"));
    }

    private void assertPlanned(Ran ran) {
        assertThat(ran.code()).as(ran.err()).isZero();
        assertThat(temporary.resolve("plan/season.html")).isNotEmptyFile();
        assertThat(Ran.of("sheet", temporary.resolve("plan")).code()).isZero();
    }

    @Test
    void oneBedIsEnough() throws IOException {
        assertPlanned(plan(BED, CROPS, POOL, OUTLET));
    }

    @Test
    void withNobodyToTakeStemsNothingIsPlanted() throws IOException {
        Ran ran = plan(BED, CROPS, POOL);

        assertPlanned(ran);
        assertThat(PlanFile.read(temporary.resolve("plan/plan.json")).plantings())
                .isEmpty();
    }

    @Test
    void withNothingToChooseFromThePlanIsEmpty() throws IOException {
        assertPlanned(plan(BED, CROPS, OUTLET));
    }

    @Test
    void withoutCropsThePlanIsEmpty() throws IOException {
        assertPlanned(plan(BED, OUTLET));
    }

    @Test
    void withNoHoursNothingIsPlanted() throws IOException {
        Ran ran = plan(BED, CROPS, POOL, OUTLET, "\"labour\": {\"own\": [{\"hours\": 0}]}");

        assertPlanned(ran);
        assertThat(PlanFile.read(temporary.resolve("plan/plan.json")).plantings())
                .isEmpty();
    }

    @Test
    void standingPlantingsThatDoNotFitBreakARule() throws IOException {
        Ran ran = plan(BED, CROPS, OUTLET, """
                "standing": [{"crop": "zinnia", "plants": 400, "method": "sown", "bed": "Bed", "sown": "2027-04-12"}]""");

        assertThat(ran.code()).as(ran.err()).isEqualTo(1);
        assertThat(ran.out()).contains("can't be carried out");
        assertThat(Ran.of("sheet", temporary.resolve("plan")).code()).isEqualTo(1);
    }

    @Test
    void aStandingPlantingWithoutAPlaceThatFitsIsLeftOut() throws IOException {
        assertPlanned(plan(BED, CROPS, OUTLET, "\"standing\": [{\"crop\": \"zinnia\", \"plants\": 400}]"));
    }

    @Test
    void choresBeyondAllHoursBreakARule() throws IOException {
        Ran ran = plan(BED, CROPS, POOL, OUTLET, """
                "labour": {"own": [{"hours": 2}], "chores": [{"name": "Watering", "hours": 3}]}""");

        assertThat(ran.code()).as(ran.err()).isEqualTo(1);
    }

    @Test
    void aSeasonOfOneWeekOverTheNormalSeasonAloneIsPlanned() throws IOException {
        Path file = Files.writeString(
                temporary.resolve("week.json"),
                "{\"name\": \"Week (invented)\", \"starts\": \"2027-04-05\", \"weeks\": 1, " + SITE + ", " + ROLES
                        + ", " + BED + ", " + CROPS + ", " + POOL + "}");
        assertPlanned(Ran.of("plan", file, "--moves", 50, "--seasons", 1, "--out", temporary.resolve("plan")));
    }

    @Test
    void aFarmWithoutBedsIsAFaultyFile() throws IOException {
        Ran ran = plan("\"beds\": []");

        assertThat(ran.code()).isEqualTo(3);
        assertThat(ran.err()).contains("beds");
        assertThat(temporary.resolve("plan")).doesNotExist();
    }

    /** 9 weeks of 50 stems at 20,000 are nine of the ten millions that are counted. */
    @Test
    void moneyJustBelowTheMostThatIsCountedIsExact() throws IOException {
        assertPlanned(plan(BED, CROPS, POOL, OUTLET.replace("\"price\": 1,", "\"price\": 20000.01,")));

        assertThat(Ran.of("recheck", temporary.resolve("plan")).code()).isZero();
        assertThat(plan(BED, CROPS, POOL, OUTLET.replace("\"price\": 1,", "\"price\": 30000,"))
                        .code())
                .isEqualTo(Exit.FAULTY_FILE);
    }
}
