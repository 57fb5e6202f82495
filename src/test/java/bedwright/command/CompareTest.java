package bedwright.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Ways of growing compared, as the command does it. */
class CompareTest {
    private static final Path FIRST = Path.of("problems/first-bed.json");
    private static final String PLAIN = "{\"name\": \"as it stands\"}";
    private static final String SOWN =
            "{\"name\": \"sown alone\", \"barred\": [{\"start\": \"tray\"}, {\"start\": \"plugs\"}]}";

    @TempDir
    private Path temporary;

    private Path strategies(String... each) throws IOException {
        Path file = temporary.resolve("strategies.json");
        Files.writeString(file, "{\"name\": \"test\", \"strategies\": [\n" + String.join(",\n", each) + "\n]}");
        return file;
    }

    private static Ran compare(Path season, Path strategies, Path out) {
        return Ran.of("compare", season, strategies, "--moves", 300, "--searches", 2, "--judge-on", 200, "--out", out);
    }

    private static Map<String, byte[]> results(Path folder) throws IOException {
        Map<String, byte[]> results = new LinkedHashMap<>();
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.filter(Files::isRegularFile)
                    .sorted(Comparator.naturalOrder())
                    .toList()) {
                if (!file.toString().endsWith("~")) {
                    results.put(folder.relativize(file).toString(), Files.readAllBytes(file));
                }
            }
        }
        return results;
    }

    @Test
    void sameSeedAndMovesGiveTheSameFilesAndWords() throws IOException {
        Path file = strategies(PLAIN, SOWN);

        Ran one = compare(FIRST, file, temporary.resolve("one"));
        Ran other = compare(FIRST, file, temporary.resolve("other"));

        assertThat(one.code()).as(one.err()).isZero();
        assertThat(one.out()).contains("sown alone", "How to read this");
        assertThat(results(temporary.resolve("one"))).containsKeys("results.json", "strategies.csv", "seasons.csv");
        assertThat(results(temporary.resolve("other")))
                .usingRecursiveComparison()
                .isEqualTo(results(temporary.resolve("one")));
        assertThat(other.out().replace(temporary.resolve("other").toString(), "DIR"))
                .isEqualTo(one.out().replace(temporary.resolve("one").toString(), "DIR"));
    }

    /** A run that was broken off leaves the plans that were whole, and none of the others. */
    @Test
    void aRunThatWasBrokenOffGoesOnToTheSameResults() throws IOException {
        Path file = strategies(PLAIN, SOWN);
        compare(FIRST, file, temporary.resolve("through"));
        compare(FIRST, file, temporary.resolve("broken"));
        Path broken = temporary.resolve("broken");
        for (String gone : new String[] {
            "results.json",
            "strategies.csv",
            "seasons.csv",
            "strategies.json",
            "plans/sown-alone-1/plan.json",
            "plans/sown-alone-2/plan.json"
        }) {
            Files.delete(broken.resolve(gone));
        }

        Ran again = compare(FIRST, file, broken);

        assertThat(again.err())
                .contains("as it stands, search 2 of 2, was made before")
                .doesNotContain("sown alone, search 1 of 2, was made before");
        assertThat(results(broken)).usingRecursiveComparison().isEqualTo(results(temporary.resolve("through")));
    }

    @Test
    void plansOfAnotherEffortAreMadeAnew() throws IOException {
        Path file = strategies(PLAIN, SOWN);
        Path out = temporary.resolve("out");
        compare(FIRST, file, out);

        Ran again = Ran.of("compare", FIRST, file, "--moves", 301, "--searches", 2, "--judge-on", 200, "--out", out);

        assertThat(again.err()).doesNotContain("was made before");
    }

    @Test
    void aStrategyUnderWhichNothingGrowsIsRefusedBeforeAnythingIsPlanned() throws IOException {
        // Crops are left, but no bed can be worked.
        String season = Files.readString(FIRST)
                .replaceFirst("\"name\": \"Fence bed\",", "\"name\": \"Fence bed\", \"workableFrom\": \"2099-01-01\",")
                .replaceFirst("\"name\": \"Open bed\",", "\"name\": \"Open bed\", \"workableFrom\": \"2099-01-01\",");
        Path file = temporary.resolve("no-bed.json");
        Files.writeString(file, season);

        Ran ran = compare(file, strategies(PLAIN, SOWN), temporary.resolve("out"));

        assertThat(ran.code()).isEqualTo(Exit.FAULTY_FILE);
        assertThat(ran.err()).contains("as it stands", "nothing is left to plant");
        assertThat(temporary.resolve("out")).doesNotExist();
    }

    @Test
    void faultsOfTheStrategiesAreToldWithTheirPlaces() throws IOException {
        Path file = strategies(PLAIN, "{\"name\": \"b\", \"barred\": [{\"crops\": [\"rose\"]}], \"planned\": 0}");

        Ran ran = compare(FIRST, file, temporary.resolve("out"));

        assertThat(ran.code()).isEqualTo(Exit.FAULTY_FILE);
        assertThat(ran.err()).contains(file + ":3:", "\"rose\"", "2 faults; nothing was written.");
        assertThat(temporary.resolve("out")).doesNotExist();
    }

    @Test
    void tooFewSeasonsOrSearchesAreRefused() throws IOException {
        Path file = strategies(PLAIN, SOWN);

        assertThat(Ran.of("compare", FIRST, file, "--judge-on", 199).code()).isEqualTo(Exit.USAGE);
        assertThat(Ran.of("compare", FIRST, file, "--searches", 1).code()).isEqualTo(Exit.USAGE);
        assertThat(Ran.of("compare", FIRST, file, "--time", 1, "--moves", 9).code())
                .isEqualTo(Exit.USAGE);
    }

    @Test
    void worthRanksOneMoreOfEachThingAndSaysWhatCropsEarn() {
        Ran ran = Ran.of(
                "compare",
                FIRST,
                "--worth",
                "--moves",
                1000,
                "--searches",
                2,
                "--judge-on",
                200,
                "--out",
                temporary.resolve("worth"));

        assertThat(ran.code()).as(ran.err()).isZero();
        assertThat(ran.out())
                .contains("What one more would be worth, best first", "“one bed more of Open bed”: +")
                .contains("“without dill”: −", "dill: €")
                .contains("the prices of the best possible estimate");
        assertThat(temporary.resolve("worth/comparison.html")).content().contains("What each crop earns");
    }

    private Ran ask(Path season, Object... question) {
        Object[] all = Stream.of(
                        Stream.of("compare", season),
                        Stream.of(question),
                        Stream.of("--moves", 200, "--searches", 2, "--judge-on", 200),
                        Stream.of("--out", temporary.resolve("asked")))
                .flatMap(each -> each)
                .toArray();
        return Ran.of(all);
    }

    @Test
    void aUsualQuestionNeedsNoFile() {
        Ran ran = ask(FIRST, "--question", "caution");

        assertThat(ran.code()).as(ran.err()).isZero();
        assertThat(temporary.resolve("asked/comparison.html"))
                .content()
                .contains("“careful”", "would be told apart nine times in ten");
    }

    @Test
    void cropsAreLeftOutOneByOne() {
        Ran ran = ask(FIRST, "--without", "dill");

        assertThat(ran.code()).as(ran.err()).isZero();
        assertThat(ran.out()).contains("“without dill”");
    }

    @Test
    void aQuestionThatTheSeasonLeavesOpenIsRefused() {
        Ran ran = ask(Path.of("problems/farmers-problem.json"), "--question", "nets");

        assertThat(ran.code()).isEqualTo(Exit.USAGE);
        assertThat(ran.err()).contains("--question nets: no crop of this season is grown in a net");
    }

    @Test
    void twoQuestionsAtOnceAreRefused() {
        Ran ran = ask(FIRST, "--question", "caution", "--worth");

        assertThat(ran.code()).isEqualTo(Exit.USAGE);
        assertThat(ran.err()).contains("keep one of them");
    }

    @Test
    void eitherAFileOrWorthIsAsked() throws IOException {
        assertThat(Ran.of("compare", FIRST).code()).isEqualTo(Exit.USAGE);
        assertThat(Ran.of("compare", FIRST, strategies(PLAIN, SOWN), "--worth").code())
                .isEqualTo(Exit.USAGE);
    }

    /**
     * The farmer's problem (Birge and Louveaux, Introduction to Stochastic Programming, the example of chapter 1): the plan
     * for all three seasons leaves 108,390 in the mean, that for mean yields 107,240; 1,150 is what planning with
     * uncertainty is worth.
     */
    @Test
    void theFarmersProblemTellsWhatPlanningWithUncertaintyIsWorth() throws IOException {
        Path file = strategies("{\"name\": \"on mean yields\", \"planned\": 1}", "{\"name\": \"on all three\"}");
        Path out = temporary.resolve("out");

        Ran ran = Ran.of(
                "compare",
                Path.of("problems/farmers-problem.json"),
                file,
                "--moves",
                60_000,
                "--searches",
                2,
                "--out",
                out);

        assertThat(ran.code()).as(ran.err()).isZero();
        String csv = Files.readString(out.resolve("strategies.csv"));
        assertThat(csv).contains("on mean yields,107240,", "on all three,108390,");
        assertThat(csv.lines().toList().get(2)).contains(",1150,");
    }
}
