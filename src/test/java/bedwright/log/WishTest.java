package bedwright.log;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import bedwright.file.SeasonFile;
import bedwright.season.Season;
import bedwright.season.UnderWay;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What somebody would like to have, as they say it. The season goes from 7 September 2026 on for 60 weeks. */
class WishTest {
    private static final Season DEMO = SeasonFile.read(Path.of("problems/demo-farm.json"));

    @ParameterizedTest
    @ValueSource(
            strings = {
                "2027-07-12",
                "12 Jul",
                "12-Jul",
                "12 july 2027",
                "12 Jul. 2027",
                "12 JUL",
                " 12  Jul ",
                "12 july"
            })
    void aDayIsUnderstoodHoweverItIsWritten(String said) {
        assertThat(SaidDay.of(DEMO, said)).isEqualTo(LocalDate.of(2027, 7, 12));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "31 Jun | is not a day",
                "Monday | is not a day",
                "12 Ju | is not a day",
                "12 Jul 2031 | lies outside the season",
                "10 Oct | comes more than once in this season"
            })
    void aDayThatCannotBeMeantIsRefused(String said, String reason) {
        assertThatThrownBy(() -> SaidDay.of(DEMO, said))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining(reason);
    }

    @Test
    void inASeasonUnderWayTheDayThatIsStillToComeIsMeant() {
        UnderWay july = new UnderWay(LocalDate.of(2027, 7, 12), List.of(), List.of(), List.of(), List.of(), 1);

        assertThat(Wish.of(DEMO.with(july), "10 Oct: 120 focal").on()).isEqualTo(LocalDate.of(2027, 10, 10));
    }

    @Test
    void anOrderIsADayAndStemsOfKinds() {
        Wish wish = Wish.of(DEMO, "12 Jul: 120 focal warm, 60 Spike, 8 x large");

        assertThat(wish)
                .isEqualTo(new Wish(
                        LocalDate.of(2027, 7, 12),
                        List.of(
                                new Wish.Line("focal/warm", 120),
                                new Wish.Line("spike", 60),
                                new Wish.Line("focal/warm/sunflower/large", 8))));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "12 Jul 120 focal | no colon",
                "12 Jul: focal | is not stems of a kind",
                "12 Jul: 0 focal | is not stems of a kind",
                "12 Jul: | is not stems of a kind",
                "12 Jul: 12 roses | There is no kind \"roses\"",
                "12 Jul: 12 zinnia | may be more than one kind. Write focal warm zinnia or focal soft zinnia",
                "12 Jul: 12 focal, 3 focal | stands there twice",
                "12 Jul: 900000 focal, 200000 spike | 1100000 stems are too many"
            })
    void whatIsNotUnderstoodIsToldWithWhatToWriteInstead(String said, String reason) {
        assertThatThrownBy(() -> Wish.of(DEMO, said))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining(reason);
    }
}
