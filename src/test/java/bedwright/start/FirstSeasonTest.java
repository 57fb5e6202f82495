package bedwright.start;

import static org.assertj.core.api.Assertions.assertThat;

import bedwright.file.AnswersFile;
import bedwright.file.SeasonFile;
import bedwright.season.Answers;
import bedwright.season.Order;
import bedwright.season.Outlet;
import bedwright.season.Season;
import bedwright.season.Site;
import bedwright.season.Units;
import bedwright.station.RoughClimate;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The season that answers make. All of them are invented. */
class FirstSeasonTest {
    private static final String NEEDED =
            "\"starts\": \"2027-03-01\", \"latitude\": 45, \"beds\": [{\"name\": \"Hill\", \"count\": 3, \"length\": 10}]";
    private static final String FROSTS = ", \"lastFrost\": \"05-10\", \"firstFrost\": \"10-05\"";

    private static Answers answers(String more) {
        String text =
                "{" + NEEDED + more + (more.contains("crops") ? "" : ", \"crops\": [{\"crop\": \"zinnia\"}]") + "}";
        return AnswersFile.parse("answers", text.getBytes(StandardCharsets.UTF_8));
    }

    private static Season season(String more) {
        Answers answers = answers(more);
        Site site = RoughClimate.site(
                answers.latitude(),
                answers.warmest(),
                answers.coldest(),
                answers.lastFrost(),
                answers.firstFrost(),
                answers.stormsFrom());
        return SeasonFile.parse("first", new FirstSeason(answers, site).bytes("first"));
    }

    /** With another block of beds behind the one that all have. */
    private static Season season(String more, String block) {
        Answers one = answers(more);
        String text =
                new String(AnswersFile.bytes(one), StandardCharsets.UTF_8).replace("10 }]", "10 }, " + block + "]");
        Answers two = AnswersFile.parse("answers", text.getBytes(StandardCharsets.UTF_8));
        return SeasonFile.parse("first", new FirstSeason(two, season(more).site()).bytes("first"));
    }

    @Test
    void answersInFeetMakeASeasonInFeet() {
        Season season = season(FROSTS + ", \"units\": \"feet\", \"warmest\": 79, \"coldest\": 23, \"net\": 100");

        assertThat(season.units()).isEqualTo(Units.FEET);
        assertThat(season.beds().getFirst().width()).isEqualTo(1.2192);
        assertThat(season.stock().nets().getFirst().metres()).isEqualTo(30.48);
        assertThat(season.about()).contains("4 ft wide").doesNotContain(" m ");
        assertThat(season.site().meanMax()).allSatisfy(max -> assertThat(max).isBetween(-5.0, 27.0));
    }

    @Test
    void theLeastAnswersMakeASeason() {
        assertThat(season("").crops()).hasSize(1);
    }

    @Test
    void eachCropOfTheBookMakesASeason() {
        String all = bedwright.file.CropBookFile.ours().names().stream()
                .map(name -> "{\"crop\": \"" + name + "\"}")
                .collect(Collectors.joining(","));

        assertThat(season(FROSTS + ", \"bouquets\": 5, \"stems\": 100, \"crops\": [" + all + "]")
                        .crops())
                .hasSameSizeAs(bedwright.file.CropBookFile.ours().names());
    }

    @Test
    void plantsSaidAreThereInTheLots() {
        Season season = season(", \"crops\": [{\"crop\": \"zinnia\", \"plants\": 130}]");

        assertThat(season.pool())
                .singleElement()
                .satisfies(lots -> assertThat(lots.plants() * lots.lots()).isBetween(130, 130 + lots.lots() - 1));
    }

    @Test
    void blocksOfBedsDoNotLieOnOneAnother() {
        Season season = season(", \"name\": \"Two blocks\"", "{\"name\": \"Low\", \"count\": 2, \"length\": 8}");

        assertThat(season.beds().get(1).at().x()).isGreaterThan(3 * 1.2 + 2 * 0.5);
    }

    /** Eleven weeks after 10 May is 26 July, a Monday; two weeks before 5 October is 21 September, in the week of the 20th. */
    @Test
    void sellingGoesByTheFrostsWhereNothingIsSaid() {
        Order.Ask ask =
                season(FROSTS + ", \"bouquets\": 5").orders().getFirst().asks().getFirst();

        assertThat(ask.from()).isEqualTo(LocalDate.of(2027, 7, 26));
        assertThat(ask.to()).isEqualTo(LocalDate.of(2027, 9, 20));
    }

    @Test
    void whatIsSaidOfSellingHoldsInTheWeeksThatHoldItsDays() {
        Outlet.Ask ask = season(", \"stems\": 30, \"sellFrom\": \"2027-06-16\", \"sellTo\": \"2027-08-12\"")
                .outlets()
                .getFirst()
                .asks()
                .getFirst();

        assertThat(ask.from()).isEqualTo(LocalDate.of(2027, 6, 14));
        assertThat(ask.to()).isEqualTo(LocalDate.of(2027, 8, 9));
    }

    @Test
    void anEventIsAskedForInItsWeekAtItsPrice() {
        Season season = season(", \"events\": [{\"date\": \"2027-07-10\", \"bouquets\": 20, \"price\": 30}]");
        Order order = season.orders().getFirst();

        assertThat(order.event()).isTrue();
        assertThat(order.asks()).containsExactly(new Order.Ask(LocalDate.of(2027, 7, 5), null, 20));
        assertThat(season.recipes().getFirst().lines().getFirst().price()).isEqualTo(10);
    }

    @Test
    void bouquetsAreOfWhatIsGrown() {
        Season season = season(", \"bouquets\": 5, \"crops\": [{\"crop\": \"zinnia\"}, {\"crop\": \"ammi\"}]");
        Set<String> kinds = season.recipes().getFirst().lines().stream()
                .map(line -> line.kind())
                .collect(Collectors.toSet());

        assertThat(kinds).containsExactlyInAnyOrder("focal", "filler");
    }

    @Test
    void whatIsNotSoldIsNotAskedFor() {
        Season season = season("");

        assertThat(season.outlets()).isEmpty();
        assertThat(season.orders()).isEmpty();
    }

    @Test
    void noFrostIsSaidWhereNoneComes() {
        assertThat(season("").site().frost()).isNull();
    }

    @ParameterizedTest
    @ValueSource(strings = {"rough", "windbreak", "history", "crop book"})
    void whatIsAssumedIsSaid(String word) {
        Answers answers = answers("");
        Site site = season("").site();

        assertThat(String.join(" ", new FirstSeason(answers, site).assumed())).contains(word);
    }
}
