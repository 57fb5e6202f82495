package bedwright.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import bedwright.season.Crop;
import bedwright.season.Family;
import bedwright.season.Method;
import bedwright.season.Origin;
import bedwright.season.Season;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;

/** Crops of a season that are taken from the crop book. */
class FromBookTest {
    private final Season plain = Resources.season("book/plain.json");
    private final Season own = Resources.season("book/own.json");
    private final Crop book = BookFigures.find(CropBookFile.ours(), "zinnia").orElseThrow();

    private static Method method(Crop crop, String name) {
        return crop.methods().stream()
                .filter(method -> method.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void whatTheFileDoesNotSayIsTheBooks() {
        Crop zinnia = plain.crops().getFirst();

        assertThat(zinnia.clock()).isEqualTo(book.clock());
        assertThat(zinnia.killing()).isEqualTo(book.killing());
        assertThat(zinnia.figures()).isEqualTo(book.figures());
    }

    @Test
    void whatTheFileSaysStandsInPlaceOfTheBooks() {
        assertThat(plain.crops().get(1).height()).isEqualTo(0.9);
        assertThat(own.crops().getFirst().clock().firstCut()).isEqualTo(1000);
        assertThat(own.crops().getFirst().clock().base()).isEqualTo(book.clock().base());
    }

    @Test
    void aFigureOfOnesOwnIsCalledOnesOwn() {
        Crop zinnia = own.crops().getFirst();

        assertThat(Objects.requireNonNull(zinnia.figures().get("firstCut")).from())
                .isEqualTo(Origin.OWN);
        assertThat(zinnia.figures().get("base")).isEqualTo(book.figures().get("base"));
    }

    @Test
    void methodsArePickedAndChangedByName() {
        Crop zinnia = own.crops().getFirst();

        assertThat(zinnia.methods()).extracting(Method::name).containsExactly("sown", "tray");
        assertThat(method(zinnia, "tray").trayWeeks()).isEqualTo(3);
        assertThat(method(zinnia, "tray").spacing())
                .isEqualTo(method(book, "tray").spacing());
    }

    @Test
    void methodsThatNeedANetAreLeftOutWhereThereIsNone() {
        assertThat(plain.crops().getFirst().methods()).allMatch(method -> method.net() == null);
    }

    @Test
    void familiesComeAlong() {
        assertThat(plain.families()).extracting(Family::name).containsExactlyInAnyOrder("daisies", "carrots");
    }

    @Test
    void pestsAreThoseOfTheSeason() {
        assertThat(plain.crops().getFirst().appeal()).containsOnlyKeys("slugs");
    }

    @Test
    void aSeasonFromTheBookIsWrittenWholeAndReadAgainAsItIs() {
        byte[] written = SeasonFile.bytes(own);

        assertThat(SeasonFile.parse("again.json", written)).isEqualTo(own);
    }

    private static Season changed(String from, String to) {
        String text = new String(Resources.bytes("book/own.json"), StandardCharsets.UTF_8);
        assertThat(text).contains(from);
        return SeasonFile.parse("changed.json", text.replace(from, to).getBytes(StandardCharsets.UTF_8));
    }

    @Test
    void familiesOfTheSeasonStayAsTheyAre() {
        Season season =
                changed("\"crops\": [", "\"families\": [{\"name\": \"daisies\", \"restYears\": 7}], \"crops\": [");

        assertThat(season.families()).extracting(Family::name).containsExactly("daisies", "carrots");
        assertThat(season.families().getFirst().restYears()).isEqualTo(7);
    }

    @Test
    void whereAllFamiliesAreNamedNoneIsAdded() {
        Season season = changed(
                "\"crops\": [",
                "\"families\": [{\"name\": \"carrots\", \"restYears\": 1}, {\"name\": \"daisies\", \"restYears\": 7}],"
                        + " \"crops\": [");

        assertThat(season.families()).extracting(Family::name).containsExactly("carrots", "daisies");
    }

    @Test
    void appetitesOfOnesOwnStandBesideTheBooks() {
        Season season = changed(
                "\"book\": \"zinnia\",",
                "\"book\": \"zinnia\", \"appeal\": {\"slugs\": 0.7}, \"jobs\": {\"weed\": {\"minutes\": 3}},");

        assertThat(season.crops().getFirst().appeal()).containsExactly(Map.entry("slugs", 0.7));
    }

    @Test
    void aCropOfTheBookIsNamedOnce() {
        assertThatExceptionOfType(FaultyFile.class)
                .isThrownBy(() -> changed("\"book\": \"zinnia\",", "\"book\": \"zinnia\", \"book\": \"dill\","))
                .satisfies(e -> assertThat(e.faults()).singleElement().satisfies(fault -> {
                    assertThat(fault.path()).isEqualTo("/crops/0/book");
                    assertThat(fault.message()).contains("\"book\" stands a second time");
                }));
    }
}
