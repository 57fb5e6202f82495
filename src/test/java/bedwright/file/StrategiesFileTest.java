package bedwright.file;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import bedwright.season.Season;
import bedwright.season.Strategies;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Files of strategies: what they say, and what is refused in them. */
class StrategiesFileTest {
    private static final Season FIRST = SeasonFile.read(Path.of("problems/first-bed.json"));
    private static final Season FARM = SeasonFile.read(Path.of("problems/demo-farm.json"));

    private static String file(String changes) {
        return "{\"name\": \"test\", \"strategies\": [\n{\"name\": \"plain\"},\n{\"name\": \"changed\"" + changes
                + "}]}";
    }

    private static List<Fault> faults(Season season, String text) {
        return catchThrowableOfType(
                        FaultyFile.class, () -> StrategiesFile.parse("s.json", text.getBytes(UTF_8), season))
                .faults();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "`, \"outlets\": [{\"outlet\": \"Stall, focal\", \"amount\": 9000000}]`|/strategies/1|can be counted",
                "`, \"barred\": [{\"crops\": [\"sunflower, onec-cut\"]}]`|/strategies/1/barred/0/crops/0"
                        + "|Did you mean \"sunflower, once-cut\"",
                "`, \"barred\": [{\"methods\": [\"by aeroplane\"]}]`|/strategies/1/barred/0/methods/0|no method",
                "`, \"barred\": [{\"crops\": [\"dill\"], \"netted\": true}]`|/strategies/1/barred/0|changes nothing",
                "`, \"barred\": [{}]`|/strategies/1|nothing is left to plant",
                "`, \"only\": [{\"crops\": [\"dill\"], \"start\": \"sown\"}], \"barred\": [{\"start\": \"sown\"}]`"
                        + "|/strategies/1/only/0|contradict",
                "`, \"ruleOfThumb\": true, \"caution\": \"bold\"`|/strategies/1/caution|contradicts",
                "`, \"planned\": 1, \"doubt\": true`|/strategies/1/doubt|contradict",
                "`, \"beds\": [{\"beds\": \"Fence bed\", \"count\": -1}]`|/strategies/1/beds/0/count|at least 1",
                "`, \"beds\": [{\"beds\": \"Fense bed\", \"count\": 1}]`|/strategies/1/beds/0/beds|Fence bed",
                "`, \"beds\": [{\"beds\": \"Open bed\", \"metres\": 1}, {\"beds\": \"Open bed\", \"metres\": 2}]`"
                        + "|/strategies/1/beds/1/beds|twice",
                "`, \"outlets\": [{\"outlet\": \"nobody\", \"times\": 2}]`|/strategies/1/outlets/0/outlet|nobody",
                "`, \"bench\": -100000`|/strategies/1/bench|Take away no more",
                "`, \"planned\": 0`|/strategies/1/planned|between 1 and 1000",
                "`, \"hiredHours\": [{\"from\": \"2031-01-01\", \"more\": 4}]`|/strategies/1/hiredHours/0|No week",
                "`, \"watered\": true`|/strategies/1/watered|watered",
                "`, \"beds\": [{\"beds\": \"Open bed\"}]`|/strategies/1/beds/0|changes nothing",
                "`, \"beds\": [{\"beds\": \"Open bed\", \"metres\": -11.6}]`|/strategies/1/beds/0/metres"
                        + "|now 12 m long, would have 0.4",
                "`, \"trays\": 5`|/strategies/1/trays|never short of trays",
                "`, \"cover\": 5`|/strategies/1/cover|no row cover",
                "`, \"nets\": [{\"net\": \"Net\", \"metres\": -7}]`|/strategies/1/nets/0/metres|The season has 6 m of this net",
                "`, \"outlets\": [{\"outlet\": \"Stall, focal\"}]`|/strategies/1/outlets/0|neither is said",
                "`, \"outlets\": [{\"outlet\": \"Stall, focal\", \"times\": 2, \"amount\": 5}]`"
                        + "|/strategies/1/outlets/0|both are said",
                "`, \"outlets\": [{\"outlet\": \"Porch bouquets\", \"amount\": 1.5}]`"
                        + "|/strategies/1/outlets/0/amount|only whole bouquets",
                "`, \"windbreaks\": [{\"name\": \"Board fence\", \"from\": {\"x\": 0, \"y\": 0}, \"to\": {\"x\": 9, \"y\": 9},"
                        + " \"height\": 2, \"density\": \"solid\"}]`|/strategies/1/windbreaks/0/name|\"Board fence\" already",
                "`, \"only\": [{\"crops\": [\"dil\"]}]`|/strategies/1/only/0/crops/0|Did you mean \"dill\"",
                "`, \"ruleOfThumb\": true, \"planned\": 4`|/strategies/1/planned|\"planned\" contradicts",
                "`, \"ruleOfThumb\": true, \"doubt\": false`|/strategies/1/doubt|\"doubt\" contradicts",
            })
    void whatIsWrongIsRefusedAtItsPlace(String changes, String path, String says) {
        List<Fault> faults = faults(FIRST, file(changes));

        assertThat(faults).anySatisfy(fault -> {
            assertThat(fault.path()).isEqualTo(path);
            assertThat(fault.message()).contains(says);
            assertThat(fault.line()).isEqualTo(3);
            assertThat(fault.column()).isPositive();
        });
    }

    /** A crop that may be grown in no way is left out; that is what was said. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                ", \"only\": [{\"start\": \"tray\"}], \"barred\": [{\"crops\": [\"sunflower, branching\"]}]",
                ", \"only\": [{\"crops\": [\"dill\", \"sunflower, once-cut\"], \"start\": \"tray\"}]",
                ", \"ruleOfThumb\": true"
            })
    void whatContradictsNothingIsAllowed(String changes) {
        assertThat(StrategiesFile.parse("s.json", file(changes).getBytes(UTF_8), FIRST)
                        .strategies())
                .hasSize(2);
    }

    @Test
    void whereANameIsMistypedNoMoreIsConcluded() {
        assertThat(faults(FIRST, file(", \"only\": [{\"crops\": [\"dil\"]}], \"barred\": [{}]")))
                .extracting(Fault::path)
                .containsExactly("/strategies/1/only/0/crops/0");
    }

    @Test
    void allFaultsAreToldAtOnce() {
        List<Fault> faults = faults(
                FIRST,
                file(", \"barred\": [{\"crops\": [\"rose\"]}], \"nets\": [{\"net\": \"none such\", \"metres\": 1}],"
                        + " \"planned\": 5000"));

        assertThat(faults)
                .extracting(Fault::path)
                .containsExactly("/strategies/1/barred/0/crops/0", "/strategies/1/nets/0/net", "/strategies/1/planned");
    }

    @Test
    void twoStrategiesOfOneNameAreRefused() {
        assertThat(faults(FIRST, "{\"name\": \"t\", \"strategies\": [{\"name\": \"a\"}, {\"name\": \"a\"}]}"))
                .singleElement()
                .satisfies(fault -> assertThat(fault.path()).isEqualTo("/strategies/1/name"));
    }

    @Test
    void aWayInWhichSomethingStandsAlreadyCantBeBarred() {
        List<Fault> faults = faults(
                FARM, file(", \"barred\": [{\"crops\": [\"bachelor's button\"], \"methods\": [\"autumn sown\"]}]"));

        assertThat(faults)
                .singleElement()
                .satisfies(fault -> assertThat(fault.message()).contains("stands already"));
    }

    @Test
    void aCropThatStandsAlreadyCanBeLeftOutOfThePoolWhole() {
        assertThat(StrategiesFile.parse(
                                "s.json",
                                file(", \"barred\": [{\"crops\": [\"bachelor's button\"]}]")
                                        .getBytes(UTF_8),
                                FARM)
                        .strategies())
                .hasSize(2);
    }

    @Test
    void aSeasonThatGivesItsPossibleSeasonsLetsNoneBeDrawn() {
        Season given = SeasonFile.read(Path.of("problems/farmers-problem.json"));

        assertThat(faults(given, file(", \"planned\": 16")))
                .singleElement()
                .satisfies(fault -> assertThat(fault.path()).isEqualTo("/strategies/1/planned"));
    }

    @Test
    void norCanItsDoubtBeChanged() {
        Season given = SeasonFile.read(Path.of("problems/farmers-problem.json"));

        assertThat(faults(given, file(", \"doubt\": false"))).singleElement().satisfies(fault -> {
            assertThat(fault.path()).isEqualTo("/strategies/1/doubt");
            assertThat(fault.message()).contains("Leave \"doubt\" out");
        });
    }

    @Test
    void theNormalSeasonAloneCanBePlannedOnInstead() {
        Season given = SeasonFile.read(Path.of("problems/farmers-problem.json"));

        assertThat(StrategiesFile.parse("s.json", file(", \"planned\": 1").getBytes(UTF_8), given)
                        .strategies())
                .hasSize(2);
    }

    @Test
    void whatIsWrittenIsReadBack() {
        String text = file(
                ", \"only\": [{\"crops\": [\"zinnia\"], \"start\": \"tray\", \"netted\": true}],"
                        + " \"caution\": 20, \"planned\": 4, \"doubt\": false, \"beds\": [{\"beds\": \"Ridge\", \"count\": -1}],"
                        + " \"nets\": [{\"net\": \"fine mesh\", \"metres\": -130}], \"bench\": 100, \"trays\": 50, \"cover\": 10,"
                        + " \"ownHours\": [{\"from\": \"2027-06-01\", \"more\": 8}], \"cuttingHands\": [{\"more\": 1}],"
                        + " \"windbreaks\": [{\"name\": \"Net\", \"from\": {\"x\": 50, \"y\": 0}, \"to\": {\"x\": 50, \"y\": 30},"
                        + " \"height\": 2, \"density\": \"medium\"}], \"outlets\": [{\"outlet\": \"Village fair\", \"amount\": 30}]");
        Strategies read = StrategiesFile.parse("s.json", text.getBytes(UTF_8), FARM);

        assertThat(StrategiesFile.parse("s.json", StrategiesFile.bytes(read), FARM))
                .isEqualTo(read);
    }

    @Test
    void moreOfWhatHasNoLimitChangesNothing() throws IOException {
        String text = Files.readString(Path.of("problems/first-bed.json"));
        String unlimited = text.replace("\"own\": [{\"hours\": 6}],", "")
                .replace("\"cutting\": [{\"hands\": 1, \"coolHours\": 1.5, \"mornings\": 3}],", "");
        Season season = SeasonFile.parse("unlimited", unlimited.getBytes(UTF_8));

        assertThat(faults(season, file(", \"ownHours\": [{\"more\": 4}], \"cuttingHands\": [{\"more\": 1}]")))
                .extracting(Fault::path)
                .containsExactly("/strategies/1/ownHours", "/strategies/1/cuttingHands");
    }

    @Test
    void noMoreCanBeTakenAwayThanThereIs() throws IOException {
        String text = Files.readString(Path.of("problems/first-bed.json"));
        String stocked = text.replace(
                "\"bench\": 150,", "\"bench\": 150, \"trays\": {\"cells\": 300}, \"cover\": {\"metres\": 20},");
        Season season = SeasonFile.parse("stocked", stocked.getBytes(UTF_8));

        assertThat(faults(season, file(", \"trays\": -301, \"cover\": -20.5")))
                .extracting(Fault::path)
                .containsExactly("/strategies/1/trays", "/strategies/1/cover");
        assertThat(StrategiesFile.parse(
                                "s.json",
                                file(", \"trays\": -300, \"cover\": -20").getBytes(UTF_8),
                                season)
                        .strategies())
                .hasSize(2);
    }
}
