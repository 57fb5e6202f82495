package bedwright.station;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import bedwright.season.Site;
import bedwright.weather.InventedStation;
import bedwright.weather.StationRecord;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Climates of stations, invented ones whose true figures are known. Tolerances are four standard errors. */
class StationClimateTest {
    private static final int YEARS = 100;
    private static final InventedStation INVENTED = new InventedStation(1901, 1900 + YEARS, 21);
    private static final StationRecord RECORD = Stations.of(INVENTED);
    private static final StationClimate CLIMATE = StationClimate.of(RECORD, 270);

    /** January's mean of the cosine; standard error of its mean over the years, and the rounding to a tenth. */
    @Test
    void normalsAreTheMeansOfTheMonths() {
        double sum = 0;
        for (int day = 1; day <= 31; day++) {
            sum += INVENTED.mean - INVENTED.swing * Math.cos(2 * Math.PI * (day - 20) / 365.25);
        }
        double ofMonth = 0.9 * 0.9 + 9 * (1 + 2 * 0.7 / 0.3) / 31;
        double error = Math.sqrt(ofMonth / YEARS);

        assertThat((CLIMATE.meanMin().getFirst() + CLIMATE.meanMax().getFirst()) / 2)
                .isCloseTo(sum / 31, within(4 * error + 0.05));
    }

    /** The shift's variance comes from 100 years of some seven independent months: a tenth of it is a standard error. */
    @Test
    void theYearsShiftIsFoundAgain() {
        assertThat(CLIMATE.spread().year()).isCloseTo(INVENTED.year, within(4 * 0.08));
    }

    /** Some 21,000 growing days, of which one in (1 + 0.7²)/(1 − 0.7²) is independent: 3 × √(1/(2 × 7,000)) = 0.025. */
    @Test
    void theDaysSpreadIsFoundAgain() {
        assertThat(CLIMATE.spread().day()).isCloseTo(INVENTED.day, within(4 * 0.025 + 0.05));
    }

    /** √((1 − 0.7²)/21,000) = 0.005, and the shift's part in both moments. */
    @Test
    void theDaysMemoryIsFoundAgain() {
        assertThat(CLIMATE.spread().memory()).isCloseTo(INVENTED.memory, within(4 * 0.005 + 0.01));
    }

    /** Normals of four years are uncertain: the next year strays from them by more than it does from the truth. */
    @Test
    void ofFewYearsTheYearsShiftIsLarger() {
        double sum = 0;
        for (int seed = 0; seed < 12; seed++) {
            sum += StationClimate.of(Stations.of(new InventedStation(2001, 2004, seed)), 270)
                    .spread()
                    .year();
        }

        assertThat(sum / 12).isGreaterThan(INVENTED.year);
    }

    /** Of the days, 70 per cent of the gusts blow from 270 degrees: with Gumbel gusts over 15 m/s about 21 a year in all. */
    @Test
    void stormsAreToldBySide() {
        double over = 1 - Math.exp(-Math.exp(-(15 - 8) / 2.5));
        List<Site.StormSide> sides = CLIMATE.storms();

        assertThat(sides.stream().map(Site.StormSide::from)).containsExactly(180.0, 270.0);
        assertThat(aYear(sides.get(1)) / (aYear(sides.get(0)) + aYear(sides.get(1))))
                .isCloseTo(0.7, within(0.05));
        // Days on end are one storm: a few fewer than days with such gusts.
        assertThat(aYear(sides.get(0)) + aYear(sides.get(1)))
                .isBetween(0.9 * over * (1 - over) * 365, 1.02 * over * 365);
    }

    private static double aYear(Site.StormSide side) {
        return side.gustsAWeek().stream()
                        .mapToDouble(Double::doubleValue)
                        .average()
                        .orElseThrow()
                * 365
                / 7;
    }

    /** Over a high threshold a Gumbel tail is exponential: mean 15 + 2.5 and SD 2.5, so scale 1.95 and mode 16.4. */
    @Test
    void stormsHaveTheStrengthOfTheirTail() {
        Site.StormSide west = CLIMATE.storms().get(1);

        assertThat(west.scale()).isCloseTo(2.5 * Math.sqrt(6) / Math.PI, within(0.2));
        assertThat(west.mode()).isCloseTo(17.5 - 0.5772 * 1.95, within(0.3));
    }

    private static StationRecord withWind(StationRecord.Wind kind, double[] wind) {
        double[] none = new double[RECORD.days()];
        Arrays.fill(none, Double.NaN);
        return new StationRecord("", RECORD.first(), RECORD.min(), RECORD.max(), wind, none, kind, 0);
    }

    @Test
    void whereThereIsNoWindTheGustsAssumedAreSaid() {
        double[] none = new double[RECORD.days()];
        Arrays.fill(none, Double.NaN);
        StationClimate climate = StationClimate.of(withWind(StationRecord.Wind.NONE, none), 225);

        assertThat(climate.storms()).extracting(Site.StormSide::from).containsExactly(225.0);
        assertThat(climate.notes()).anyMatch(note -> note.contains("no wind") && note.contains("Assumed"));
    }

    @Test
    void whereGustsHaveNoSideTheSideAssumedIsSaid() {
        StationClimate climate = StationClimate.of(withWind(StationRecord.Wind.GUST, RECORD.wind()), 225);

        assertThat(climate.storms()).extracting(Site.StormSide::from).containsExactly(225.0);
        assertThat(climate.notes()).anyMatch(note -> note.contains("does not say where gusts come from"));
    }

    @Test
    void aMeanWindIsSaidToBeOne() {
        StationClimate climate = StationClimate.of(withWind(StationRecord.Wind.MEAN, RECORD.wind()), 270);

        assertThat(climate.notes()).anyMatch(note -> note.contains("mean winds, not gusts"));
    }

    @Test
    void whereStormsAreTooFewThereAreNone() {
        double[] calm = new double[RECORD.days()];
        StationClimate climate = StationClimate.of(withWind(StationRecord.Wind.GUST, calm), 270);

        assertThat(climate.storms()).isEmpty();
        assertThat(climate.notes()).anyMatch(note -> note.contains("too few to tell"));
    }

    @Test
    void twoYearsAreTooFew() {
        StationRecord two = Stations.of(new InventedStation(2001, 2002, 1));

        assertThatThrownBy(() -> StationClimate.of(two, 270))
                .isInstanceOf(TooLittleWeather.class)
                .hasMessageContaining("2 whole months of January")
                .hasMessageContaining("at least 3");
    }

    /** Weather services let a month count with ten days missing. */
    @ParameterizedTest
    @CsvSource({"10, true", "11, false"})
    void aMonthCountsWithTenDaysMissing(int missing, boolean counts) {
        StationRecord three = Stations.of(new InventedStation(2001, 2003, 1));
        Arrays.fill(three.min(), 0, missing, Double.NaN);
        if (counts) {
            assertThat(StationClimate.of(three, 270).basis().missing()).isEqualTo(missing);
        } else {
            assertThatThrownBy(() -> StationClimate.of(three, 270)).isInstanceOf(TooLittleWeather.class);
        }
    }

    @Test
    void whereFrostIsRareThereIsNoneAndItIsSaid() {
        InventedStation mild = new InventedStation(1981, 2000, 4);
        mild.mean = 17;
        mild.swing = 6;
        StationClimate climate = StationClimate.of(Stations.of(mild), 270);

        assertThat(climate.frost()).isNull();
    }

    @Test
    void fewYearsAreSaidToBeFew() {
        assertThat(StationClimate.of(Stations.newYork(), 270).notes())
                .anyMatch(note -> note.contains("rests on 4 years"));
    }

    @Test
    void aTrendIsSaid() {
        StationRecord record = Stations.of(new InventedStation(1941, 2000, 8));
        for (int day = 0; day < record.days(); day++) {
            if (record.dateOf(day).getYear() >= 1981) {
                record.min()[day] += 2;
                record.max()[day] += 2;
            }
        }

        assertThat(StationClimate.of(record, 270).notes())
                .anyMatch(note -> note.contains("warmer by") && note.contains("--from 1981"));
    }

    @Test
    void withoutATrendNoneIsSaid() {
        assertThat(CLIMATE.notes()).noneMatch(note -> note.contains("last 20 years"));
    }
}
