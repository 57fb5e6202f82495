package bedwright.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import bedwright.plan.Grains;
import org.junit.jupiter.api.Test;

/** Figures and dates as they are said. */
class WordsTest {
    private final Say say = new Say(SmallFarm.season());

    @Test
    void wholeNumbersHaveCommasAndAMinus() {
        assertThat(Say.whole(1234567.5)).isEqualTo("1,234,568");
        assertThat(Say.whole(999.4)).isEqualTo("999");
        assertThat(Say.whole(-1000)).isEqualTo("−1,000");
        assertThat(Say.whole(-0.2)).isEqualTo("0");
    }

    @Test
    void tenthsAreLeftOutWhereTheyAreNone() {
        assertThat(Say.tenth(12.04)).isEqualTo("12");
        assertThat(Say.tenth(12.05)).isEqualTo("12.1");
        assertThat(Say.tenth(-0.05)).isEqualTo("−0.1");
        assertThat(Say.tenth(1999.96)).isEqualTo("2,000");
    }

    @Test
    void unitsAreThoseOfPeople() {
        assertThat(Say.stems(12_340)).isEqualTo("123");
        assertThat(Say.hours(90 * 100_000)).isEqualTo("1.5");
        assertThat(say.length(12_345)).isEqualTo("12.3");
        assertThat(Say.percent(0.085)).isEqualTo("9 %");
    }

    @Test
    void moneyHasItsSignBeforeIt() {
        double main = 100.0 * Grains.A_SMALLEST_UNIT;
        assertThat(say.money(1234.5 * main)).isEqualTo("K 1,235");
        assertThat(say.money(-20 * main)).isEqualTo("−K 20");
        assertThat(say.money(-0.2 * main)).isEqualTo("K 0");
        assertThat(say.price(1.5)).isEqualTo("K 1.50");
    }

    @Test
    void weeksAreSaidByTheirFirstDays() {
        assertThat(say.week(0)).isEqualTo("10 May");
        assertThat(say.weeks(0, 0)).isEqualTo("week of 10 May");
        assertThat(say.weeks(2, 4)).isEqualTo("weeks of 24 May to 7 June");
        assertThat(say.shortWeek(13)).isEqualTo("9 Aug");
    }

    @Test
    void aSeasonOfMoreThanAYearSaysTheYear() {
        Say longer = new Say(SmallFarm.demo().season());
        assertThat(longer.week(0)).isEqualTo("7 September 2026");
        assertThat(longer.weeks(52, 53)).isEqualTo("weeks of 6 September to 13 September 2027");
        assertThat(longer.weeks(16, 17)).isEqualTo("weeks of 28 December 2026 to 4 January 2027");
    }

    @Test
    void runsAreWeeksOnEndThatAreAlike() {
        int[] sorts = {0, 1, 1, 2, 0, 2};
        assertThat(Run.of(sorts.length, w -> sorts[w]))
                .containsExactly(new Run(1, 2, 1), new Run(3, 3, 2), new Run(5, 5, 2));
        assertThat(Run.of(2, w -> 1)).containsExactly(new Run(0, 1, 1));
    }

    @Test
    void svgNumbersHaveAtMostTwoDecimals() {
        assertThat(Svg.number(1.005)).isEqualTo("1.01");
        assertThat(Svg.number(-3.10)).isEqualTo("-3.1");
        assertThat(Svg.number(0.001)).isEqualTo("0");
        assertThat(Svg.number(-0.004)).isEqualTo("0");
        assertThat(Svg.number(1200)).isEqualTo("1200");
        assertThat(Svg.number(7.05)).isEqualTo("7.05");
    }

    @Test
    void svgTextsAreEscapedAndHoldNoCharacterThatXmlLacks() {
        assertThat(Svg.escape("<a href=\"x\">'&\u0001")).isEqualTo("&lt;a href=&quot;x&quot;&gt;&#39;&amp;\uFFFD");
    }
}
