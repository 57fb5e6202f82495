package bedwright.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bedwright.climate.Gusts;
import bedwright.season.Compass;
import bedwright.season.Season;
import bedwright.season.Site;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.Collections;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Frost, gusts and pests by week. */
class RisksTest {
    private static final Season SEASON = SmallFarm.season();
    private final Risks risks = new Risks(SEASON);

    @ParameterizedTest
    @CsvSource({
        // The season's own dates: 1 year in 10, 5 in 10, 9 in 10; a day late or early is a few per cent.
        "2027-05-20, 0.5",
        "2027-06-01, 0.1",
        "2027-09-25, 0.1",
        "2027-10-08, 0.5",
        "2027-10-22, 0.9"
    })
    void frostFollowsItsDates(LocalDate date, double chance) {
        assertThat(risks.frost(SEASON.dayOf(date))).isCloseTo(chance, within(0.05));
    }

    @Test
    void frostIsNoneInHighSummerAndSureInMidwinter() {
        assertThat(risks.frost(SEASON.dayOf(LocalDate.of(2027, 7, 20)))).isLessThan(1e-6);
        assertThat(risks.frost(SEASON.dayOf(LocalDate.of(2027, 12, 20)))).isGreaterThan(0.999);
    }

    @Test
    void strongestGustsOfYearsAgreeWithYearsDrawnOneByOne() {
        Site.StormSide side = new Site.StormSide(270, Collections.nCopies(12, 0.1), 17, 2.5);
        Random random = new Random(11);
        int years = 40_000;
        double[] strongest = new double[years];
        for (int y = 0; y < years; y++) {
            // A day has a gust with the chance that follows from a tenth of a gust a week.
            for (int day = 0; day < 365; day++) {
                if (random.nextDouble() < 0.1 / 7) {
                    double speed = 17 - 2.5 * Math.log(-Math.log(random.nextDouble()));
                    strongest[y] = Math.max(strongest[y], speed);
                }
            }
        }
        Arrays.sort(strongest);

        assertThat(Gusts.strongestOfAYear(side, 0.5).orElseThrow()).isCloseTo(strongest[years / 2], within(0.1));
        assertThat(Gusts.strongestOfAYear(side, 0.9).orElseThrow()).isCloseTo(strongest[years * 9 / 10], within(0.15));
    }

    @Test
    void aSideWithHardlyAnyGustHasNoneInAUsualYear() {
        Site.StormSide rare = SEASON.site().storms().get(1);
        assertThat(Gusts.strongestOfAYear(rare, 0.5)).isEmpty();
        assertThat(Gusts.strongestOfAYear(rare, 0.9)).isPresent();
    }

    @Test
    void chanceOfAGustInAWeekOfJuneIsThatOfNoneMissing() {
        // 0.2 gusts a week: 1 − exp(−0.2) = 0.1813.
        assertThat(risks.gust(SEASON.site().storms().getFirst(), 5)).isCloseTo(0.1813, within(1e-4));
    }

    @Test
    void pestsTakeTheirShareInAWeek() {
        // 0.02 a day for seven days: 1 − exp(−0.14) = 0.1306; none in August.
        assertThat(risks.pest(SEASON.pests().getFirst(), 3)).isCloseTo(0.1306, within(1e-4));
        assertThat(risks.pest(SEASON.pests().getFirst(), 13)).isZero();
    }

    @ParameterizedTest
    @CsvSource({
        "0, north",
        "44, north-east",
        "135, south-east",
        "270, west",
        "337.4, north-west",
        "337.6, north",
        "360, north"
    })
    void sidesHaveTheNameOfTheNearestOfEight(double degrees, String name) {
        assertThat(Compass.name(degrees)).isEqualTo(name);
    }
}
