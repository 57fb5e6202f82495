package bedwright.station;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import bedwright.weather.InventedStation;
import bedwright.weather.StationRecord;
import org.apache.commons.statistics.distribution.BinomialDistribution;
import org.junit.jupiter.api.Test;

/**
 * Sampled seasons judged by years held back. No package within reach ships decades of daily minima and maxima, so the long
 * records are invented, by a generator that shares nothing with the product's; the real ones have four years.
 */
class JudgeTest {
    /** Forty years held back of a hundred: of each thing as many within the band as binomial chance lets, one in 1,000. */
    @Test
    void theBandHoldsEightOfTenYearsOfAHundredInventedOnes() {
        Judge.Judgement judgement = Judge.of(Stations.of(new InventedStation(1901, 2000, 7)), 1);
        BinomialDistribution counts = BinomialDistribution.of(40, 0.8);

        assertThat(judgement.isSplit()).isTrue();
        assertThat(judgement.from()).isEqualTo(1961);
        assertThat(judgement.figures()).hasSize(6).allSatisfy(judged -> {
            assertThat(judged.years()).isEqualTo(40);
            assertThat(judged.within())
                    .as(judged.name())
                    .isBetween(counts.inverseCumulativeProbability(0.0005), counts.inverseSurvivalProbability(0.0005));
        });
    }

    /** Years after the split that are three degrees warmer: a judge that could not find fault would be none. */
    @Test
    void aClimateThatHasChangedIsFoundOut() {
        StationRecord record = Stations.of(new InventedStation(1941, 2000, 7));
        for (int day = 0; day < record.days(); day++) {
            if (record.dateOf(day).getYear() >= 1977) {
                record.min()[day] += 3;
                record.max()[day] += 3;
            }
        }
        Judge.Judgement judgement = Judge.of(record, 1);

        assertThat(judgement.from()).isEqualTo(1977);
        assertThat(judgement.figures())
                .allSatisfy(
                        judged -> assertThat(judged.within()).as(judged.name()).isLessThan(judged.years() * 6 / 10));
    }

    @Test
    void fewYearsAreHeldBackInTurn() {
        Judge.Judgement judgement = Judge.of(Stations.newYork(), 1);

        assertThat(judgement.isSplit()).isFalse();
        assertThat(judgement.figures())
                .allSatisfy(judged -> assertThat(judged.years()).isEqualTo(4));
    }

    @Test
    void inTheSouthAYearRunsFromWinterToWinter() {
        InventedStation station = new InventedStation(1981, 2006, 3);
        station.swing = -station.swing;
        Judge.Judgement judgement = Judge.of(Stations.of(station), 1);

        assertThat(judgement.begins().getMonthValue()).isEqualTo(7);
        assertThat(judgement.figures())
                .hasSize(6)
                .allSatisfy(judged ->
                        assertThat(judged.within()).as(judged.name()).isGreaterThanOrEqualTo(judged.years() / 2));
    }

    @Test
    void threeYearsAreTooFewOnceOneIsHeldBack() {
        StationRecord three = Stations.of(new InventedStation(2001, 2003, 2));

        assertThatThrownBy(() -> Judge.of(three, 1)).isInstanceOf(TooLittleWeather.class);
    }
}
