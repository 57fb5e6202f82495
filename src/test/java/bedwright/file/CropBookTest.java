package bedwright.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import bedwright.season.Crop;
import bedwright.season.CropBook;
import bedwright.season.Figure;
import bedwright.season.Origin;
import bedwright.season.Sureness;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;

/** The crop book that comes with the program: how much it holds, and that every figure says where it comes from. */
class CropBookTest {
    private final CropBook book = CropBookFile.ours();
    private final List<Crop> crops = BookFigures.crops(book);
    private final List<BookFigures.Given> figures =
            crops.stream().flatMap(crop -> BookFigures.of(crop).stream()).toList();

    @Test
    void holdsFortyCropsAndNinetyMethods() {
        assertThat(crops).hasSizeGreaterThanOrEqualTo(40);
        assertThat(crops.stream().mapToInt(crop -> crop.methods().size()).sum()).isGreaterThanOrEqualTo(90);
    }

    @Test
    void everyFigureSaysWhereItComesFromAndHowSureItIs() {
        assertThat(figures).isNotEmpty().allSatisfy(given -> {
            Figure figure = Objects.requireNonNull(given.figure(), given.toString());
            assertThat(figure.source()).isNotBlank();
            assertThat(figure.from()).isNotNull().isNotEqualTo(Origin.OWN);
        });
    }

    @Test
    void everyCropCanBeCutAndSaysWhen() {
        assertThat(crops).allSatisfy(crop -> {
            assertThat(crop.harvest()).isNotNull();
            assertThat(crop.methods()).isNotEmpty();
        });
    }

    @Test
    void everyCropIsAsSureOfItsFirstCutAndStemsAsItsEvidence() {
        assertThat(crops).allSatisfy(crop -> assertThat(crop.figures()).containsKeys("firstCut", "stems"));
    }

    @Test
    void theFileStandsAsTheProgramWouldWriteIt() {
        assertThat(new String(CropBookFile.bytes(book), StandardCharsets.UTF_8)).isEqualTo(text());
    }

    @Test
    void aFigureOfWhichNobodySaysWhereItComesFromIsRefused() {
        // The usual evidence of what pests like is all that speaks of "appeal".
        String without = text().replace("\"appeal\"\n      ],", "\"weedings\"\n      ],")
                .replace("\"of\": [\"appeal\"]", "\"of\": [\"weedings\"]");

        assertThat(without).isNotEqualTo(text());
        assertThatExceptionOfType(FaultyFile.class)
                .isThrownBy(() -> CropBookFile.parse("book.json", without.getBytes(StandardCharsets.UTF_8)))
                .satisfies(e -> assertThat(e.faults().toString()).contains("Nothing says where \"appeal\""));
    }

    @Test
    void whatIsCalledPublishedWithoutASourceThatWasSeenIsRefused() {
        String hearsay = text().replaceFirst("\"from\": \"assumed\"", "\"from\": \"published\"");

        assertThatExceptionOfType(FaultyFile.class)
                .isThrownBy(() -> CropBookFile.parse("book.json", hearsay.getBytes(StandardCharsets.UTF_8)))
                .satisfies(e -> assertThat(e.faults().toString()).contains("This is called published"));
    }

    @Test
    void figuresAreSureFairOrWeakAndNoneIsLeftOut() {
        long told = 0;
        for (Sureness sure : Sureness.values()) {
            told += figures.stream()
                    .filter(given -> Objects.requireNonNull(given.figure()).sure() == sure)
                    .count();
        }

        assertThat(told).isEqualTo(figures.size());
    }

    private static String text() {
        return new String(Resources.bytes("/bedwright/crop-book.json"), StandardCharsets.UTF_8);
    }
}
