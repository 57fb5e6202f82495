package bedwright.file;

import static org.assertj.core.api.Assertions.assertThat;

import bedwright.season.Crop;
import bedwright.season.CropBook;
import bedwright.season.Figure;
import bedwright.season.Sureness;
import bedwright.season.Units;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The figures of a small crop book, one by one. */
class BookFiguresTest {
    private final CropBook book = CropBookFile.parse("small.json", Resources.bytes("book/small.json"));

    private Crop crop(String name) {
        return BookFigures.find(book, name).orElseThrow();
    }

    private static Stream<String> told(List<BookFigures.Given> figures) {
        return figures.stream()
                .map(given -> String.join(
                        " ",
                        given.method() == null ? "-" : "(" + given.method() + ")",
                        given.key(),
                        given.value(),
                        given.unit()))
                .map(String::strip);
    }

    /** Also the usual values of what matters with every crop, and each figure of a group by itself. */
    @Test
    void aCropHasWhatItsFileSaysAndTheUsualOfWhatMattersAlways() {
        assertThat(told(BookFigures.of(crop("marigold"))))
                .containsExactly(
                        "- tender 150 °C·d",
                        "- height 0.6 m",
                        "- stand 24 m/s",
                        "- stand 3 m/s",
                        "- stand 0.3",
                        "- base 5 °C",
                        "- emergence 80 °C·d",
                        "- pinch 200 °C·d",
                        "- firstCut 700 °C·d",
                        "- leastDayLength 10 hours",
                        "- young 0 °C",
                        "- grown 0 °C",
                        "- stage half open",
                        "- vase 5 days",
                        "- vase 8 days",
                        "(sown) emergence 1",
                        "(sown) rows 4",
                        "(sown) spacing 0.2 m",
                        "(sown) cutDays 20 days",
                        "(sown) stems 6 stems",
                        "(sown) saleable 1",
                        "(tray, pinched) trayWeeks 4 weeks",
                        "(tray, pinched) headStart 0 °C·d",
                        "(tray, pinched) check 0 °C·d",
                        "(tray, pinched) pinchDelay 0 °C·d",
                        "(tray, pinched) emergence 0.9",
                        "(tray, pinched) rows 3",
                        "(tray, pinched) spacing 0.25 m",
                        "(tray, pinched) cover { }",
                        "(tray, pinched) cutDays 30 days",
                        "(tray, pinched) stems 9 stems",
                        "(tray, pinched) saleable 1");
    }

    @Test
    void sharesOfTwoKindsAreAFigure() {
        assertThat(told(BookFigures.of(crop("sweet william"))).findFirst())
                .hasValueSatisfying(
                        kinds -> assertThat(kinds).startsWith("- kinds ").contains("\"filler/red\"", "0.75"));
    }

    @Test
    void boughtPlantsAreSetBackAndWhatIsSetIsNot() {
        assertThat(told(BookFigures.of(crop("sweet william"))).filter(said -> said.contains("check")))
                .containsExactly("(plugs) check 0 °C·d");
    }

    /** 0.6 m are 23.622 in; 5 °C are 41 °F; 24 m/s are 53.687 mph. Four digits are told. */
    @Test
    void inFeetFiguresAreToldWithFourDigits() {
        assertThat(told(BookFigures.of(crop("marigold"), Units.FEET)))
                .contains("- height 23.62 in", "- base 41 °F", "- stand 53.69 mph", "(sown) rows 4");
    }

    @Test
    void aFigureRestsOnTheEvidenceOfItsMethodBeforeThatOfAllMethods() {
        assertThat(BookFigures.of(crop("sweet william")).stream()
                        .filter(given -> given.method() != null
                                && List.of("emergence", "rows", "stems").contains(given.key()))
                        .filter(given -> "plugs".equals(given.method()))
                        .map(given -> given.key() + ": "
                                + (given.figure() == null ? "" : given.figure().source())))
                .containsExactly("emergence: counted roughly", "rows: counted roughly", "stems: counted roughly");
    }

    /** By method the evidence of its stems is weak and fair. */
    @Test
    void aCropIsAsSureOfItsStemsAsOfTheWeakestOfItsMethods() {
        assertThat(crop("marigold").figures().get("stems"))
                .isNotNull()
                .extracting(Figure::source)
                .isEqualTo("Talk of one grower");
    }

    @Test
    void whatIsSaidOfAllStemsOfACropIsTheCropsOwn() {
        assertThat(crop("sweet william").figures().get("stems"))
                .isNotNull()
                .extracting(Figure::source)
                .isEqualTo("everybody's");
    }

    @ParameterizedTest
    @CsvSource({"WEAK, FAIR, first", "FAIR, WEAK, second", "SURE, FAIR, second", "FAIR, FAIR, first"})
    void theWeakestIsTheLeastSureAndTheFirstOfEquallySureOnes(Sureness first, Sureness second, String weakest) {
        Figure found = BookFigures.weakest(List.of(new Figure(first, "first"), new Figure(second, "second")));

        assertThat(found.source()).isEqualTo(weakest);
    }

    @Test
    void aCropThatTheBookDoesNotHaveIsNotFound() {
        assertThat(BookFigures.find(book, "gold")).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "Gold, marigold",
        "' marigold, tall ', marigold",
        "mairgold, marigold",
        "w, sweet william",
        "xxxxxxxxxx, ''"
    })
    void namesLikeAMistypedOneHoldItOrStandInItOrAreNearInSpelling(String typed, String like) {
        assertThat(String.join(" ", BookFigures.like(book, typed))).isEqualTo(like);
    }
}
