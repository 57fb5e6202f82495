package bedwright.file;

import static bedwright.file.Expected.at;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import bedwright.season.Crop;
import bedwright.season.Family;
import bedwright.season.Method;
import bedwright.season.Origin;
import bedwright.season.Season;
import bedwright.season.Sureness;
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

    private static Edited edited(String... replaced) {
        return new Edited(new String(Resources.bytes("book/own.json"), StandardCharsets.UTF_8)).with(replaced);
    }

    /** Its other values are checked as those of the crop that was probably meant. */
    @Test
    void ofACropMistypedTheNameAloneIsTold() {
        edited("\"book\": \"zinnia\"", "\"book\": \"zinia\"")
                .isToldOf(at("›\"zinia\"", "/crops/0/book", "Did you mean \"zinnia\"?"));
    }

    @Test
    void kindsOfOnesOwnStandInPlaceOfTheBooks() {
        Season season = edited(
                        "{ \"book\": \"dill\" }",
                        "{ \"book\": \"dill\" }, { \"book\": \"larkspur\", \"kinds\": [ { \"kind\": \"focal\" } ] }")
                .season();

        assertThat(season.crops().getLast().kinds()).containsExactly(new Crop.KindShare("focal", 1));
    }

    @Test
    void rolesAtFaultAreToldAlone() {
        String text = edited().text();
        String roles = text.substring(text.indexOf("\"roles\""), text.indexOf("\"crops\""));

        edited(roles, "\"roles\": 7, ").isToldOf(at("\"roles\": ›7", "/roles", "a list"));
    }

    @Test
    void whereARoleIsMissingThoseThatThereAreAreTold() {
        edited(
                        "\"cutting\": 30 }",
                        "\"cutting\": 30, \"kinds\": [ { \"name\": \"warm\" } ] }",
                        "{ \"book\": \"dill\" }",
                        "{ \"book\": \"dill\" }, { \"book\": \"larkspur\" }")
                .isToldOf(at("›\"larkspur\"", "/crops/2/kinds", "roles are \"focal\" and \"filler\". Add that role"));
    }

    /** All three ways of growing dahlias in the book are netted. */
    @Test
    void whereAllMethodsNeedANetItIsMissed() {
        assertThat(edited("{ \"book\": \"dill\" }", "{ \"book\": \"dill\" }, { \"book\": \"dahlia\" }")
                        .faults())
                .extracting(Fault::path)
                .containsExactly("/crops/2/methods/0/net", "/crops/2/methods/1/net", "/crops/2/methods/2/net");
    }

    /** What a pinched sunflower gives is less sure, but pinched ones are netted in the book, and here is no net. */
    @Test
    void aCropIsAsSureOfItsStemsAsTheMethodsThatAreLeft() {
        Season season = edited(
                        "{ \"book\": \"dill\" }", "{ \"book\": \"dill\" }, { \"book\": \"sunflower, once-cut\" }")
                .season();

        assertThat(season.crops().getLast().sureness("stems")).isEqualTo(Sureness.SURE);
    }

    @Test
    void aMethodOfOnesOwnStandsBesideTheBooks() {
        Season season = edited(
                        "\"sown\",",
                        "\"sown\", { \"name\": \"broadcast\", \"start\": \"sown\", \"rows\": 9, \"spacing\": 0.1,"
                                + " \"cutDays\": 20, \"stems\": 3 },")
                .season();

        assertThat(season.crops().getFirst().methods())
                .extracting(Method::name)
                .containsExactly("sown", "broadcast", "tray");
    }

    @Test
    void aMethodThatIsNeitherANameNorAGroupIsTold() {
        edited("\"sown\",", "7,").isToldOf(at("›7,", "/crops/0/methods/0", "a group of keys", "the number 7"));
    }

    @Test
    void whatAMethodSaysOtherwiseIsOnesOwn() {
        Crop zinnia = edited("\"sown\",", "{ \"book\": \"sown\", \"emergence\": 0.5 },")
                .season()
                .crops()
                .getFirst();

        assertThat(origin(method(zinnia, "sown"), "emergence")).isEqualTo(Origin.OWN);
        assertThat(origin(method(zinnia, "tray"), "stems"))
                .as("said of the crop")
                .isEqualTo(Origin.OWN);
    }

    private static Origin origin(Method method, String key) {
        return Objects.requireNonNull(
                Objects.requireNonNull(method.figures().get(key)).from());
    }

    @Test
    void ofAFileThatBreaksOffWithinItsMethodsNoMoreIsTold() {
        String text = edited().text();
        Edited cut = new Edited(text.substring(0, text.indexOf("\"sown\",")));

        assertThat(cut.faults())
                .extracting(Fault::message)
                .singleElement()
                .satisfies(message -> assertThat(message).contains("ends here"));
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
