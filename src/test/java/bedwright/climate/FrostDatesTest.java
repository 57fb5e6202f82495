package bedwright.climate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import bedwright.season.Season;
import bedwright.season.Site;
import java.time.LocalDate;
import java.time.MonthDay;
import java.util.SplittableRandom;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class FrostDatesTest {
    private static final NormalDistribution STANDARD = NormalDistribution.of(0, 1);
    /** Index of the year in which the farm's season starts. */
    private static final int THIS = 1;

    private static FrostDates of(Farm farm) {
        return FrostDates.of(farm.season()).orElseThrow();
    }

    private static FrostDates spring(String early, String usual, String late) {
        Farm farm = new Farm();
        farm.frost = Farm.frost(early, usual, late, "--09-20", "--10-02", "--10-15");
        return of(farm);
    }

    private static int day(int month, int day) {
        return new Farm().season().dayOf(LocalDate.of(2027, month, day));
    }

    /**
     * Kansas State University, Agronomy eUpdate 635 (after 2021): chance in per cent that a freeze comes on or after 5,
     * 10, 15, 20, 25, 30 April and 5, 10, 15 May; &gt;99 is left out. The three dates that a grower would give are read
     * off each row, to the whole day; then the curve in between must be the printed one. Normal distributions fitted to
     * these rows away from this code are up to 4.2 points off, so the two halves may be no worse.
     */
    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "Beloit, 99 95 84 66 45 27 14 6 2",
        "Washington, -1 99 95 84 64 41 23 11 5",
        "Holton, -1 98 93 80 62 42 26 14 6",
        "Phillipsburg, -1 -1 98 90 73 48 26 12 4",
        "Hill City, -1 -1 98 91 76 54 32 16 7",
        "Oberlin, -1 -1 -1 98 91 76 54 32 16",
        "Goodland, -1 -1 -1 99 94 80 57 33 15"
    })
    void threeDatesGiveBackThePublishedChances(String station, String row) {
        LocalDate first = LocalDate.of(2027, 4, 5);
        String[] printed = row.split(" ", -1);
        double[] chances = new double[printed.length];
        for (int i = 0; i < chances.length; i++) {
            chances[i] = Integer.parseInt(printed[i]) / 100.0;
        }
        LocalDate usual = dateWithChance(chances, first, 0.5);
        LocalDate early = dateWithChance(chances, first, 0.9);
        LocalDate late = dateWithChance(chances, first, 0.1);
        FrostDates dates = spring(
                MonthDay.from(early).toString(),
                MonthDay.from(usual).toString(),
                MonthDay.from(late).toString());
        Season season = new Farm().season();
        for (int i = 0; i < chances.length; i++) {
            if (chances[i] > 0) {
                int day = season.dayOf(first.plusDays(5L * i));
                assertThat(STANDARD.survivalProbability(dates.springDeviate(THIS, 0, day)))
                        .as("%s, %s", station, season.dateOf(day))
                        .isCloseTo(chances[i], within(0.042));
            }
        }
    }

    /** The whole day nearest to where a chance is passed, straight in deviates between the printed dates. */
    private static LocalDate dateWithChance(double[] chances, LocalDate first, double chance) {
        int right = 1;
        while (right < chances.length - 1 && (chances[right] > chance || chances[right - 1] < 0)) {
            right++;
        }
        double z0 = STANDARD.inverseSurvivalProbability(chances[right - 1]);
        double z1 = STANDARD.inverseSurvivalProbability(chances[right]);
        double z = STANDARD.inverseSurvivalProbability(chance);
        // "On or after" a day means from half a day before its middle on.
        double at = 5 * (right - 1 + (z - z0) / (z1 - z0)) - 0.5;
        return first.plusDays(Math.round(at));
    }

    /** Means of Fort Collins, Colorado, 1900 to 1999: days of the year of the last and first day at or below 32, 28, 36 °F. */
    private static FrostDates fortCollins() {
        Farm farm = new Farm();
        farm.frost = Farm.frost("--04-24", "--05-10", "--05-25", "--09-14", "--09-28", "--10-13");
        return of(farm);
    }

    /**
     * Computed from the daily series of Fort Collins 1900–1999 (data set FCwx of the package extRemes on CRAN, from the
     * Colorado Climate Center). The default days per degree are the line from 0 °C to 28 °F: day 129.6 to 116.9 in
     * spring. A day of rounding.
     */
    @Test
    void aHarderSpringFrostEndsEarlierAsAtFortCollins() {
        assertThat(fortCollins().spring(THIS, -20 / 9.0, 0)).isCloseTo(day(1, 1) - 1 + 117, within(1));
    }

    /** As above: 271.1 to 280.9 in autumn. */
    @Test
    void aHarderAutumnFrostStartsLaterAsAtFortCollins() {
        assertThat(fortCollins().autumn(THIS, -20 / 9.0, 0)).isCloseTo(day(1, 1) - 1 + 281, within(1));
    }

    /** As above, on the side that the line was not drawn through: 36 °F on day 140.2. Within a quarter of the SD of 12.9. */
    @Test
    void aLightSpringFrostEndsLaterAsAtFortCollins() {
        assertThat(fortCollins().spring(THIS, 20 / 9.0, 0)).isCloseTo(day(1, 1) - 1 + 140, within(3));
    }

    /** As above: 36 °F on day 263.4 in autumn. */
    @Test
    void aLightAutumnFrostStartsEarlierAsAtFortCollins() {
        assertThat(fortCollins().autumn(THIS, 20 / 9.0, 0)).isCloseTo(day(1, 1) - 1 + 263, within(3));
    }

    @ParameterizedTest
    @CsvSource({"0.1, 4, 24", "0.5, 5, 5", "0.9, 5, 17"})
    void quantilesAreTheGivenDates(double p, int month, int day) {
        assertThat(of(new Farm()).spring(THIS, 0, STANDARD.inverseCumulativeProbability(p)))
                .isEqualTo(day(month, day));
    }

    @Test
    void mediansLieInTheirYears() {
        FrostDates dates = of(new Farm());
        assertThat(new int[] {dates.springMedian(0), dates.springMedian(1), dates.autumnMedian(2)})
                .containsExactly(day(5, 5) - 365, day(5, 5), day(10, 2) + 366);
    }

    /** 1 March 2027 and 40 weeks end within the year: the years 2026 to 2028. */
    @Test
    void aSeasonWithinAYearKnowsTheOnesAround() {
        assertThat(of(new Farm()).years()).isEqualTo(3);
    }

    @Test
    void aSeasonOverTheNewYearKnowsOneMore() {
        Farm farm = new Farm();
        farm.weeks = 60;
        assertThat(of(farm).years()).isEqualTo(4);
    }

    @Test
    void aSeasonThatEndsOnTheLastOfDecemberStaysInItsYear() {
        Farm farm = new Farm();
        farm.starts = LocalDate.of(2027, 1, 1);
        farm.weeks = 52;
        assertThat(of(farm).years()).isEqualTo(3);
    }

    /** The deviate at and beyond which a frost falls on a day or after it is just that. */
    @Test
    void aDeviateIsTheEdgeOfItsDay() {
        FrostDates dates = of(new Farm());
        SplittableRandom random = new SplittableRandom(3);
        for (int i = 0; i < 2000; i++) {
            int year = random.nextInt(dates.years());
            double threshold = random.nextDouble(-6, 3);
            int spring = dates.springMedian(year) + random.nextInt(-60, 61);
            int autumn = dates.autumnMedian(year) + random.nextInt(-60, 61);
            double springEdge = dates.springDeviate(year, threshold, spring);
            double autumnEdge = dates.autumnDeviate(year, threshold, autumn);
            assertThat(new int[] {
                        dates.spring(year, threshold, springEdge),
                        dates.spring(year, threshold, springEdge - 1e-4),
                        dates.autumn(year, threshold, autumnEdge),
                        dates.autumn(year, threshold, autumnEdge - 1e-4)
                    })
                    .as("year %s, threshold %s, days %s and %s", year, threshold, spring, autumn)
                    .containsExactly(spring, spring - 1, autumn, autumn - 1);
        }
    }

    /** Shift first, then round: 5.7 × 0.3 = 1.71 days earlier than 5 May. */
    @Test
    void theDateIsShiftedThenRounded() {
        assertThat(of(new Farm()).spring(THIS, -0.3, 0)).isEqualTo(day(5, 3));
    }

    /** 12 days after the usual date at deviate 1.2816, so 6 half days at half of it; half days round up. */
    @Test
    void halfDaysRoundUp() {
        FrostDates dates = spring("--05-04", "--05-05", "--05-06");
        double half = STANDARD.inverseCumulativeProbability(0.9) / 2;
        assertThat(new int[] {dates.spring(THIS, 0, half), dates.spring(THIS, 0, -half)})
                .containsExactly(day(5, 6), day(5, 5));
    }

    @Test
    void nothingColderThanSixBelowIsAsked() {
        assertThat(of(new Farm()).autumn(THIS, -25, 0.7))
                .isEqualTo(of(new Farm()).autumn(THIS, -6, 0.7));
    }

    @Test
    void aWarmerThresholdThanTheLineHoldsForIsRefused() {
        assertThatThrownBy(() -> of(new Farm()).spring(THIS, 3.25, 0))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("3.25");
    }

    @ParameterizedTest
    @ValueSource(ints = {-1, 3})
    void anUnknownYearIsRefusedWithItsNumber(int year) {
        assertThatThrownBy(() -> of(new Farm()).springMedian(year))
                .isInstanceOf(IndexOutOfBoundsException.class)
                .hasMessageContaining("years 0 to 2, not for year " + year);
    }

    @Test
    void aDeviateThatIsNoNumberIsRefused() {
        assertThatThrownBy(() -> of(new Farm()).spring(THIS, 0, Double.NaN))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("NaN");
    }

    /** A usual date right after the new year, as a southern farm's might be: 14 days before it, 10 after it. */
    @Test
    void datesMayWrapTheNewYear() {
        FrostDates dates = spring("--12-20", "--01-03", "--01-13");
        double tenth = STANDARD.inverseCumulativeProbability(0.9);
        assertThat(new int[] {dates.spring(THIS, 0, -tenth), dates.spring(THIS, 0, tenth)})
                .containsExactly(day(1, 3) - 14, day(1, 13));
    }

    @Test
    void aHalfWithoutWidthAlwaysComesOnItsDay() {
        FrostDates dates = spring("--05-05", "--05-05", "--05-05");
        assertThat(new int[] {dates.spring(THIS, 0, -3), dates.spring(THIS, 0, 3)})
                .containsOnly(day(5, 5));
    }

    @Test
    void aHalfWithoutWidthIsNotDividedByNothing() {
        FrostDates dates = spring("--05-05", "--05-05", "--05-05");
        assertThat(new double[] {dates.springDeviateOn(day(5, 5)), dates.springDeviate(THIS, 0, day(5, 6))})
                .doesNotContain(Double.NaN, Double.POSITIVE_INFINITY);
    }

    @Test
    void aHalfWithoutWidthHasCertainDays() {
        FrostDates dates = spring("--05-05", "--05-05", "--05-05");
        assertThat(new double[] {
                    STANDARD.survivalProbability(dates.springDeviate(THIS, 0, day(5, 5))),
                    STANDARD.survivalProbability(dates.springDeviate(THIS, 0, day(5, 6)))
                })
                .containsExactly(1, 0);
    }

    @Test
    void aSiteWithoutFrostHasNoDates() {
        Farm farm = new Farm();
        farm.frost = null;
        assertThat(FrostDates.of(farm.season())).isEmpty();
    }

    @Test
    void datesOutOfOrderAreRefusedWithAllThree() {
        Farm farm = new Farm();
        Site.FrostDate wrong = new Site.FrostDate(MonthDay.of(5, 8), MonthDay.of(5, 5), MonthDay.of(5, 17));
        farm.frost = new Site.Frost(wrong, wrong, 5.7, 4.4);
        assertThatThrownBy(() -> of(farm))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("--05-08")
                .hasMessageContaining("--05-05")
                .hasMessageContaining("--05-17");
    }

    /** At 3 °C the line still holds: 5.7 × 3 = 17.1 days later than 5 May. */
    @Test
    void theWarmestThresholdIsThree() {
        assertThat(of(new Farm()).spring(THIS, 3, 0)).isEqualTo(day(5, 22));
    }

    /** From 5 May 2027 to 5 May 2028 it is 366 days, so 4 November lies midway: it is late for the earlier of the two. */
    @Test
    void aDayMidwayBetweenTwoSpringsBelongsToTheEarlier() {
        FrostDates dates = of(new Farm());

        assertThat(dates.springDeviateOn(day(5, 5) + 183)).isPositive();
        assertThat(dates.springDeviateOn(day(5, 5) + 184)).isNegative();
    }
}
