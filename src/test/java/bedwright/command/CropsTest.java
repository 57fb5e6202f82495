package bedwright.command;

import static org.assertj.core.api.Assertions.assertThat;

import bedwright.file.BookFigures;
import bedwright.file.CropBookFile;
import bedwright.season.Crop;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** What is shown of the crop book. */
class CropsTest {
    private static final JsonMapper JSON = JsonMapper.builder().build();

    static Stream<String> names() {
        return CropBookFile.ours().names().stream();
    }

    private static double sharesOf(String line) {
        double sum = 0;
        Matcher share = Pattern.compile("([0-9.]+) %").matcher(line);
        while (share.find()) {
            sum += Double.parseDouble(share.group(1));
        }
        return sum;
    }

    private static String lineWith(String text, String words) {
        return text.lines().filter(line -> line.contains(words)).findFirst().orElseThrow();
    }

    @Test
    void theListNamesEveryCrop() {
        assertThat(Ran.of("crops").out()).contains(names().toList());
    }

    @Test
    void sharesOfSureFairAndWeakFiguresAddUp() {
        String line = lineWith(Ran.of("crops").out(), "are sure");

        // Three shares, each rounded to a tenth.
        assertThat(sharesOf(line)).isBetween(99.8, 100.2);
    }

    @Test
    void sharesByWhatFiguresRestOnAddUp() {
        String line = lineWith(Ran.of("crops").out(), "What they rest on");

        assertThat(sharesOf(line)).isBetween(99.7, 100.3);
    }

    @ParameterizedTest
    @MethodSource("names")
    void aCropIsShownWithAllItsMethods(String name) {
        Crop crop = BookFigures.find(CropBookFile.ours(), name).orElseThrow();
        String shown = Ran.of("crops", name).out();

        assertThat(crop.methods()).allSatisfy(method -> assertThat(shown).contains("\n" + method.name() + " ("));
    }

    @ParameterizedTest
    @MethodSource("names")
    void everyFigureShownHasAMarkOfHowSureItIs(String name) {
        Crop crop = BookFigures.find(CropBookFile.ours(), name).orElseThrow();
        long marks = Ran.of("crops", name)
                .out()
                .lines()
                .filter(line -> line.matches("  (sure|fair|weak)  .*"))
                .count();

        assertThat(marks).isEqualTo(BookFigures.of(crop).size());
    }

    @Test
    void dangersAreToldInUsualWords() {
        assertThat(Ran.of("crops", "ammi").out())
                .contains("makes it burn in sunlight")
                .contains("local rules and licensed practice come first");
    }

    @Test
    void whatWasSettledBetweenPublicationsIsTold() {
        assertThat(Ran.of("crops", "zinnia").out())
                .contains("Settled, zinnia, stems a plant")
                .contains("Taken:");
    }

    @Test
    void theListAsJsonHasItsVersion() {
        JsonNode answer = JSON.readTree(Ran.of("crops", "--format", "json").out());

        assertThat(answer.get("version").intValue()).isEqualTo(1);
        assertThat(answer.get("crops").size()).isEqualTo((int) names().count());
    }

    @Test
    void aCropAsJsonHasAllItsFigures() {
        JsonNode answer =
                JSON.readTree(Ran.of("crops", "zinnia", "--format", "json").out());
        Crop zinnia = BookFigures.find(CropBookFile.ours(), "zinnia").orElseThrow();

        assertThat(answer.get("figures").size())
                .isEqualTo(BookFigures.of(zinnia).size());
    }
}
