package bedwright.file;

import static org.assertj.core.api.Assertions.assertThat;

import bedwright.season.BookCrop;
import bedwright.season.Crop;
import bedwright.season.CropBook;
import bedwright.season.Method;
import bedwright.season.Origin;
import bedwright.season.Season;
import bedwright.season.Sureness;
import java.nio.charset.StandardCharsets;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every crop of the book in a season, with all checks that a season has to pass. */
class BookInSeasonsTest {
    private static final CropBook BOOK = CropBookFile.ours();

    /** The season of the other tests, with every role, a net and row cover, and these crops. */
    private static byte[] season(String crops, String roles) {
        String plain = new String(Resources.bytes("book/plain.json"), StandardCharsets.UTF_8);
        int from = plain.indexOf("\"roles\"");
        return (plain.substring(0, from)
                                .replaceFirst(
                                        "\"stock\": \\{[^}]*}",
                                        "\"stock\": { \"bench\": 2000, \"nets\": [{ \"name\": \"mesh\", \"metres\": 50 }],"
                                                + " \"cover\": { \"metres\": 50 } }")
                        + "\"roles\": [" + roles + "], \"crops\": [" + crops + "] }")
                .getBytes(StandardCharsets.UTF_8);
    }

    private static String allRoles() {
        return Stream.of("focal", "spike", "filler", "airy", "foliage")
                .map(role -> "{ \"name\": \"" + role + "\" }")
                .collect(Collectors.joining(", "));
    }

    static Stream<BookCrop> crops() {
        return BOOK.crops().stream();
    }

    @ParameterizedTest
    @MethodSource("crops")
    void eachStandsInASeasonWithAllItsMethods(BookCrop entry) {
        String name = entry.crop().name();
        Season season = SeasonFile.parse(name, season("{ \"book\": " + Words.json(name) + " }", allRoles()));

        assertThat(season.crops().getFirst().methods())
                .extracting(Method::name)
                .isEqualTo(entry.crop().methods().stream().map(Method::name).toList());
    }

    @Test
    void allOfThemStandInOneSeasonAndAreWrittenAndReadAgain() {
        String all = BOOK.names().stream()
                .map(name -> "{ \"book\": " + Words.json(name) + " }")
                .collect(Collectors.joining(", "));
        Season season = SeasonFile.parse("all", season(all, allRoles()));

        assertThat(SeasonFile.parse("again", SeasonFile.bytes(season))).isEqualTo(season);
    }

    @Test
    void kindsAreTheNearestThatTheSeasonHas() {
        String roles = "{ \"name\": \"focal\", \"kinds\": [ { \"name\": \"warm\" }, { \"name\": \"dahlia\" } ] }";
        Season season = SeasonFile.parse("kinds", season("{ \"book\": \"zinnia\" }, { \"book\": \"dahlia\" }", roles));

        assertThat(season.crops().get(0).kinds())
                .extracting(Crop.KindShare::kind)
                .containsExactly("focal/warm", "focal");
        assertThat(season.crops().get(1).kinds()).containsExactly(new Crop.KindShare("focal/dahlia", 1));
    }

    @Test
    void theSeasonsNetStandsInPlaceOfTheBooks() {
        Season season = SeasonFile.parse(
                "net", season("{ \"book\": \"zinnia\", \"methods\": [\"tray, pinched, netted\"] }", allRoles()));
        Method method = season.crops().getFirst().methods().getFirst();

        assertThat(Objects.requireNonNull(method.net()).net()).isEqualTo("mesh");
    }

    @Test
    void aMethodOfTheBooksMayGoWithoutItsNet() {
        Season season = SeasonFile.parse(
                "net",
                season(
                        "{ \"book\": \"zinnia\", \"methods\": [{ \"book\": \"tray, pinched, netted\", \"net\": null }] }",
                        allRoles()));

        assertThat(season.crops().getFirst().methods().getFirst().net()).isNull();
    }

    /** Of once-cut sunflowers one stem a plant is sure, but what a pinched one gives is not. */
    @Test
    void aCropIsAsSureOfItsStemsAsTheWeakestMethodThatIsTaken() {
        String sunflower = "{ \"book\": \"sunflower, once-cut\", \"methods\": [%s] }";
        Crop once = SeasonFile.parse("once", season(sunflower.formatted("\"sown, tight\""), allRoles()))
                .crops()
                .getFirst();
        Crop both = SeasonFile.parse(
                        "both",
                        season(sunflower.formatted("\"sown, tight\", \"sown wide and pinched, netted\""), allRoles()))
                .crops()
                .getFirst();

        assertThat(once.sureness("stems")).isEqualTo(Sureness.SURE);
        assertThat(both.sureness("stems")).isEqualTo(Sureness.FAIR);
    }

    @Test
    void stemsOfOnesOwnInEveryMethodAreOnesOwn() {
        Season season = SeasonFile.parse(
                "own stems",
                season(
                        "{ \"book\": \"larkspur\", \"methods\": [{ \"book\": \"autumn sown\", \"stems\": 5 }] }",
                        allRoles()));

        assertThat(Objects.requireNonNull(season.crops().getFirst().figures().get("stems"))
                        .from())
                .isEqualTo(Origin.OWN);
    }
}
