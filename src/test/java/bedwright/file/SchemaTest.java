package bedwright.file;

import static org.assertj.core.api.Assertions.assertThat;

import bedwright.season.Plan;
import bedwright.season.PriceList;
import bedwright.season.Season;
import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The schemas, held by a validator that knows nothing of us. */
class SchemaTest {
    private static final SchemaRegistry DRAFT = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12);
    private static final com.networknt.schema.Schema SEASON = DRAFT.getSchema(Schema.season());
    private static final com.networknt.schema.Schema PLAN = DRAFT.getSchema(Schema.plan());

    @ParameterizedTest
    @ValueSource(strings = {"season", "plan", "prices", "crop-book", "answers", "strategies"})
    void areKeptAsTheRecordsSay(String name) throws IOException {
        String kept = Files.readString(SchemaWriter.FOLDER.resolve(name + ".schema.json"));

        assertThat(kept)
                .as("the kept schema; after a change of the records run SchemaWriter to write it anew")
                .isEqualTo(
                        switch (name) {
                            case "season" -> Schema.season();
                            case "plan" -> Schema.plan();
                            case "prices" -> Schema.prices();
                            case "answers" -> Schema.answers();
                            case "strategies" -> Schema.strategies();
                            default -> Schema.book();
                        });
    }

    @Test
    void areSchemasOfTheDraftThatTheyName() {
        com.networknt.schema.Schema draft =
                DRAFT.getSchema(SchemaLocation.of("https://json-schema.org/draft/2020-12/schema"));

        assertThat(draft.validate(Schema.season(), InputFormat.JSON)).isEmpty();
        assertThat(draft.validate(Schema.plan(), InputFormat.JSON)).isEmpty();
        assertThat(draft.validate(Schema.prices(), InputFormat.JSON)).isEmpty();
        assertThat(draft.validate(Schema.book(), InputFormat.JSON)).isEmpty();
        assertThat(draft.validate(Schema.answers(), InputFormat.JSON)).isEmpty();
        assertThat(draft.validate(Schema.strategies(), InputFormat.JSON)).isEmpty();
    }

    static IntStream seeds() {
        return IntStream.range(100, 120);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void allowWhatTheReaderAllows(int seed) {
        Season season = new RandomRecords(seed).make(Season.class);
        Plan plan = new RandomRecords(seed).make(Plan.class);
        PriceList prices = new RandomRecords(seed).make(PriceList.class);

        assertThat(validate(SEASON, SeasonFile.bytes(season))).isEmpty();
        assertThat(validate(PLAN, PlanFile.bytes(plan))).isEmpty();
        assertThat(validate(DRAFT.getSchema(Schema.prices()), PriceFile.bytes(prices)))
                .isEmpty();
    }

    @Test
    void allowTheCropBook() throws IOException {
        assertThat(validate(
                        DRAFT.getSchema(Schema.book()),
                        Files.readAllBytes(SchemaWriter.FOLDER.resolve("crop-book.json"))))
                .isEmpty();
    }

    @Test
    void allowTheAnswersThatComeWithUs() throws IOException {
        assertThat(validate(
                        DRAFT.getSchema(Schema.answers()),
                        Files.readAllBytes(Path.of("problems/answers/new-garden.json"))))
                .isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"plain", "own"})
    void allowCropsFromTheBook(String name) {
        assertThat(validate(SEASON, Resources.bytes("book/" + name + ".json"))).isEmpty();
    }

    @Test
    void allowABooksCropInNoPlan() {
        String season = new String(Resources.bytes("book/plain.json"), StandardCharsets.UTF_8);
        byte[] plan = ("{ \"version\": 1, \"season\": " + season + "}").getBytes(StandardCharsets.UTF_8);

        assertThat(validate(PLAN, plan).stream()
                        .map(e -> e.getInstanceLocation().toString())
                        .toList())
                .contains("/season/crops/0");
    }

    @Test
    void allowAnEditorsKey() {
        String page = new String(Resources.bytes("page.json"), StandardCharsets.UTF_8);
        byte[] marked = page.replaceFirst("\\{", "{ \"\\$schema\": \"season.schema.json\",")
                .getBytes(StandardCharsets.UTF_8);

        assertThat(validate(SEASON, marked)).isEmpty();
        assertThat(SeasonFile.parse("marked", marked)).isEqualTo(Resources.season("page.json"));
    }

    static Stream<Path> problems() throws IOException {
        Path folder = Path.of("problems");
        if (!Files.isDirectory(folder)) {
            return Stream.of(Path.of("src/test/resources/bedwright/file/page.json"));
        }
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(f -> f.toString().endsWith(".json")).sorted().toList().stream();
        }
    }

    @ParameterizedTest
    @MethodSource("problems")
    void allowTheSeasonsThatComeWithUs(Path season) throws IOException {
        assertThat(validate(SEASON, Files.readAllBytes(season))).isEmpty();
    }

    /** Each with the JSON pointers at which the schema must complain. */
    static Stream<List<String>> faults() {
        return Stream.of(
                List.of("unknown-keys", "/beds/0", "/crops/0", "/outlets/0"),
                List.of("missing-keys", "", "/site/frost/lastSpring", "/beds/0", "/crops/0", "/crops/0/methods/0"),
                List.of(
                        "wrong-types",
                        "/weeks",
                        "/site/meanMax/1",
                        "/site/meanMax/3",
                        "/beds/0/count",
                        "/stock",
                        "/families/0/never",
                        "/pool",
                        "/outlets/0/name",
                        "/outlets/0/price"),
                List.of("wrong-counts", "/site/meanMin", "/site/meanMax", "/pests/0/takes", "/roles/1/name"),
                List.of("nulls", "/weeks", "/beds/0/count", "/orders", "/site/meanMax/7", "/crops/0/methods/0"),
                List.of(
                        "out-of-range",
                        "/weeks",
                        "/site/latitude",
                        "/site/meanMin/4",
                        "/beds/0/length",
                        "/crops/0/clock/emergence",
                        "/crops/0/appeal/slugs",
                        "/crops/0/methods/0/rows",
                        "/crops/0/methods/0/emergence",
                        "/outlets/0/price"),
                List.of("words", "/caution", "/pests/0/takes/1", "/crops/0/clock/convention", "/crops/0/hazards/0"));
    }

    @ParameterizedTest
    @MethodSource("faults")
    void refuseWhatTheReaderRefusesAtTheSamePlaces(List<String> fileAndPaths) {
        byte[] bytes = Resources.bytes("faulty/" + fileAndPaths.get(0) + ".json");

        assertThat(validate(SEASON, bytes).stream()
                        .map(e -> e.getInstanceLocation().toString())
                        .toList())
                .containsAll(fileAndPaths.subList(1, fileAndPaths.size()));
    }

    private static List<Error> validate(com.networknt.schema.Schema schema, byte[] bytes) {
        return schema.validate(new String(bytes, StandardCharsets.UTF_8), InputFormat.JSON);
    }
}
