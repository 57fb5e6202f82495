package bedwright.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import bedwright.season.BedBlock;
import bedwright.season.Family;
import bedwright.season.Job;
import bedwright.season.Labour;
import bedwright.season.Plan;
import bedwright.season.Point;
import bedwright.season.Season;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class RoundTripTest {
    static IntStream seeds() {
        return IntStream.range(0, 60);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void aSeasonComesBackAsItWas(int seed) {
        Season season = new RandomRecords(seed).make(Season.class);

        assertThat(back(season, Season.class)).isEqualTo(season);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void aPlanComesBackAsItWas(int seed) {
        Plan plan = new RandomRecords(seed).make(Plan.class);

        assertThat(back(plan, Plan.class)).isEqualTo(plan);
    }

    private static <T extends Record> T back(T record, Class<T> type) {
        byte[] bytes = JsonText.of(Unbinder.group(record)).getBytes(StandardCharsets.UTF_8);
        Document<T> document = Document.read("back", bytes, type, nothing -> List.of());
        return document.record();
    }

    @Test
    void writesTheSameBytesUnderEveryLocale() {
        Season season = new RandomRecords(7).make(Season.class);
        byte[] bytes = SeasonFile.bytes(season);
        Locale before = Locale.getDefault();
        try {
            for (String tag : List.of("tr-TR", "ar-EG-u-nu-arab", "de-DE", "hi-IN-u-nu-deva")) {
                Locale.setDefault(Locale.forLanguageTag(tag));
                assertThat(SeasonFile.bytes(season)).as(tag).isEqualTo(bytes);
            }
        } finally {
            Locale.setDefault(before);
        }
    }

    @Test
    void keepsTheOrderOfNames() {
        Map<Job, Labour.JobRate> jobs = new LinkedHashMap<>();
        jobs.put(Job.WEED, new Labour.JobRate(0, 1));
        jobs.put(Job.FILL_TRAYS, new Labour.JobRate(5, 0.25));
        Labour labour = new Labour(0, 0, List.of(), List.of(), List.of(), List.of(), jobs);

        assertThat(text(labour)).isEqualTo("""
                { "jobs": { "weed": { "minutes": 1 }, "fill-trays": { "setUp": 5, "minutes": 0.25 } } }
                """);
    }

    @Test
    void leavesOutWhatEqualsItsDefault() {
        assertThat(text(new Family("daisy", 0, false))).isEqualTo("{ \"name\": \"daisy\" }\n");
        assertThat(text(new Family("daisy", 2, true)))
                .isEqualTo("{ \"name\": \"daisy\", \"restYears\": 2, \"never\": true }\n");
        assertThat(text(new BedBlock("A", 1, new Point(0, 0), 0, 30, 1.2, 0.5, null, null, List.of(), List.of())))
                .isEqualTo("{ \"name\": \"A\", \"length\": 30 }\n");
    }

    @Test
    void givesALineOfItsOwnToWhatDoesNotFitOnOne() {
        Family longName =
                new Family("a family whose name is so long that it needs two lines with its years of rest", 3, true);

        assertThat(text(longName)).isEqualTo("""
                {
                  "name": "a family whose name is so long that it needs two lines with its years of rest",
                  "restYears": 3,
                  "never": true
                }
                """);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -0.0, 1, 0.1, 1e-7, 9.99e-8, 1e15, 123456789.125, 1e300, -4.9e-324, 100, 1e14})
    void writesNumbersThatReadBackTheSame(double value) {
        assertThat(Double.parseDouble(Words.number(value))).isEqualTo(value);
    }

    @Test
    void writesNumbersWithoutNeedlessFigures() {
        assertThat(Words.number(100)).isEqualTo("100");
        assertThat(Words.number(0.10)).isEqualTo("0.1");
        assertThat(Words.number(1200.50)).isEqualTo("1200.5");
        assertThat(Words.number(0)).isEqualTo("0");
        assertThat(Words.number(1e-7)).isEqualTo("0.0000001");
    }

    @Test
    void doesNotWriteWhatCouldNotBeReadBack() {
        Season page = Resources.season("page.json");
        Season without = new Season(
                page.name(),
                page.about(),
                page.starts(),
                page.weeks(),
                page.currency(),
                page.site(),
                List.of(),
                page.windbreaks(),
                page.roughGrass(),
                page.pests(),
                page.stock(),
                page.labour(),
                page.roles(),
                page.families(),
                page.rotation(),
                page.crops(),
                page.pool(),
                page.standing(),
                page.outlets(),
                page.recipes(),
                page.orders(),
                page.caution(),
                page.possible());

        assertThatThrownBy(() -> SeasonFile.bytes(without))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("\"beds\" has none");
    }

    private static String text(Record record) {
        return new String(Document.bytes(record), StandardCharsets.UTF_8);
    }
}
