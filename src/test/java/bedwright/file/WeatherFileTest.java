package bedwright.file;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bedwright.weather.InventedStation;
import bedwright.weather.StationRecord;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The layouts of weather files. Those of GHCN-Daily are as its readme.txt (section III) and readme-by_station.txt say: the
 * columns of a month's line; units of a tenth of a degree Celsius and of a tenth of m/s; −9999 for a missing value; a
 * letter as quality flag for one that failed a check.
 */
class WeatherFileTest {
    private static final List<InventedStation.Day> DAYS = new InventedStation(2001, 2003, 5).days();

    private static StationRecord read(String text) {
        return WeatherFile.parse("station", text.getBytes(UTF_8), WeatherFile.NO_YEAR, WeatherFile.NO_YEAR);
    }

    private static void assertHolds(StationRecord record, List<InventedStation.Day> days) {
        assertThat(record.first()).isEqualTo(days.getFirst().date());
        assertThat(record.days()).isEqualTo(days.size());
        assertThat(record.kind()).isEqualTo(StationRecord.Wind.GUST);
        for (int day = 0; day < days.size(); day++) {
            InventedStation.Day was = days.get(day);
            assertThat(new double[] {record.min()[day], record.max()[day], record.wind()[day], record.from()[day]})
                    .as("%s", was.date())
                    .containsExactly(
                            new double[] {was.min() / 10.0, was.max() / 10.0, was.gust() / 10.0, was.from()},
                            within(1e-9));
        }
    }

    @Test
    void monthsInFixedColumnsAreRead() {
        assertHolds(read(InventedStation.dly(DAYS)), DAYS);
    }

    @Test
    void daysOfAStationAreRead() {
        assertHolds(read(InventedStation.byStation(DAYS)), DAYS);
    }

    @Test
    void daysOfAStationUnderHeadingsAreRead() {
        String heading = "ID,DATE,ELEMENT,DATA_VALUE,M_FLAG,Q_FLAG,S_FLAG,OBS_TIME\n";

        assertHolds(read(heading + InventedStation.byStation(DAYS)), DAYS);
    }

    @Test
    void aTableOfOnesOwnIsRead() {
        assertHolds(read(InventedStation.table(DAYS)), DAYS);
    }

    @ParameterizedTest
    @ValueSource(strings = {"\r\n", "\r"})
    void linesMayEndAsOnAnySystem(String end) {
        assertHolds(read(InventedStation.table(DAYS).replace("\n", end)), DAYS);
    }

    @Test
    void aByteOrderMarkIsPassedOver() {
        assertHolds(read("\uFEFF" + InventedStation.byStation(DAYS)), DAYS);
    }

    /** A programme that saves tables on a continental system writes them so. */
    @Test
    void cellsMayStandBetweenSemicolonsWithDecimalCommas() {
        String table = InventedStation.table(DAYS).replace(",", ";").replace('.', ',');

        assertHolds(read(table), DAYS);
    }

    @Test
    void theStationIsNamed() {
        assertThat(read(InventedStation.dly(DAYS)).station()).isEqualTo(InventedStation.NAME);
    }

    /** A month written by hand from the columns of the readme: each value takes 5 columns, then M-, Q- and S-flag. */
    private static String month(String element, String... values) {
        StringBuilder line = new StringBuilder("USC00042319").append("191307").append(element);
        for (int day = 0; day < 31; day++) {
            line.append(day < values.length ? values[day] : "-9999   ");
        }
        assertThat(line).hasSize(269);
        return line + "\n";
    }

    @Test
    void missingValuesOfAMonthAreGaps() {
        StationRecord record = read(month("TMAX", "  567  0", "-9999   ", "  544  0") + month("TMIN", "  300  0"));

        assertThat(record.first()).isEqualTo(LocalDate.of(1913, 7, 1));
        assertThat(record.max()).containsExactly(new double[] {56.7, Double.NaN, 54.4}, within(1e-9));
        assertThat(record.daysWithTemperatures()).isEqualTo(1);
    }

    @Test
    void flaggedValuesOfAMonthAreDroppedAndCounted() {
        StationRecord record = read(month("TMAX", "  567  0", "  561 I0") + month("TMIN", "  300  0", "  290B 0"));

        assertThat(record.flagged()).isEqualTo(1);
        assertThat(record.max()[1]).isNaN();
        assertThat(record.min()[1]).isEqualTo(29.0);
    }

    @Test
    void flaggedValuesOfADayAreDroppedAndCounted() {
        StationRecord record = read("""
                USC00042319,19130710,TMAX,567,,,0,
                USC00042319,19130710,TMIN,300,,,0,
                USC00042319,19130711,TMAX,561,,X,0,
                USC00042319,19130711,TMIN,290,,,0,1700
                """);

        assertThat(record.flagged()).isEqualTo(1);
        assertThat(record.hasTemperatures(1)).isFalse();
    }

    /** Blank flags at a line's end are cut off by many an editor. */
    @Test
    void aMonthWhoseLastBlanksWereCutOffIsRead() {
        String line = month("TMAX", "  567   ").stripTrailing() + "\n"
                + month("TMIN", "  300   ").stripTrailing();

        assertThat(read(line).max()[0]).isEqualTo(56.7);
    }

    @Test
    void aMonthThatIsCutOffBehindTheLastMeasurementFlagIsRead() {
        String[] warm = new String[31];
        Arrays.fill(warm, "  300   ");
        warm[30] = "  310B  ";
        String max = month("TMAX", warm).stripTrailing();
        assertThat(max).endsWith("  310B");

        assertThat(read(max + "\n" + month("TMIN", "  200   ")).max()[30]).isEqualTo(31.0);
    }

    @Test
    void blankLinesAmongMonthsArePassedOver() {
        String text = month("TMAX", "  567   ") + "\n   \n" + month("TMIN", "  300   ");

        assertThat(read(text).daysWithTemperatures()).isEqualTo(1);
    }

    @ParameterizedTest
    @CsvSource({
        "'date\tmin_c\tmax_c', '2020-07-01\t10\t20'",
        "'\tdate\tmin_c\tmax_c', '1\t2020-07-01\t10\t20'",
        "';date;min_c;max_c', '1;2020-07-01;10;20'",
        "'date\tmin; c\tmax c', '2020-07-01\t10\t20'",
        "'date,min_c,max_c', '2020-07-01T06:00,10,20'",
        "'date,min_c,max_c', '2020-07-01 06:00,10,20'",
        "'date,min_c,max_c', '20200701,10,20'",
        "'date,day,min_c,max_c', '2020-07-01,183,10,20'"
    })
    void aTableMayBeSetOutInManyWays(String heading, String line) {
        StationRecord record = read(heading + "\n" + line);

        assertThat(record.first()).isEqualTo(LocalDate.of(2020, 7, 1));
        assertThat(record.mean(0)).isEqualTo(15);
    }

    @Test
    void onlyTheYearsAskedForAreReadFromATable() {
        byte[] bytes = "date,min_c,max_c\n2001-12-31,1,2\n2002-01-01,3,4\n2003-01-01,5,6\n".getBytes(UTF_8);
        StationRecord record = WeatherFile.parse("station", bytes, 2002, 2002);

        assertThat(record.max()).containsExactly(4);
    }

    @ParameterizedTest
    @ValueSource(strings = {"-90,60,115,360", "60,60,0,0", "-90,-90,0,0"})
    void whatWasNearlyMeasuredSomewhereIsRead(String extreme) {
        StationRecord record = read("date,min_c,max_c,gust_ms,direction\n2020-07-01," + extreme);

        assertThat(record.hasTemperatures(0)).isTrue();
    }

    @ParameterizedTest
    @ValueSource(ints = {1650, 2200})
    void yearsFrom1650To2200AreRead(int year) {
        assertThat(read("date,min_c,max_c\n" + year + "-07-01,10,20").first().getYear())
                .isEqualTo(year);
    }

    @Test
    void aDayWithoutAGustHasNoDirectionEither() {
        StationRecord record = read(
                "date,min_c,max_c,gust_ms,direction\n2020-07-01,10,20,5,0\n2020-07-02,10,20,,90\n2020-07-03,10,20,5,0");

        assertThat(record.from()).containsExactly(0, Double.NaN, 0);
    }

    /** As many gusts as means: it is the gusts that lay flowers flat. */
    @Test
    void gustsAreTakenBeforeAsManyMeanWinds() {
        assertThat(read("date,min_c,max_c,gust_ms,wind_ms\n2020-07-01,10,20,9,4")
                        .kind())
                .isEqualTo(StationRecord.Wind.GUST);
    }

    @ParameterizedTest
    @CsvSource({
        "min (°F); max (°F), 50; 86, 10; 30",
        "tmin_f; tmax_f, 14; 32, -10; 0",
        "low °C; high °C, -3.5; 8, -3.5; 8",
        "Temp min [C]; Temp max [C], 1; 2, 1; 2"
    })
    void temperaturesAreTakenInTheUnitOfTheHeading(String headings, String values, String celsius) {
        StationRecord record = read("date;" + headings + "\n2020-07-01;" + values);

        assertThat(record.min()[0] + "; " + record.max()[0])
                .isEqualTo(Double.parseDouble(celsius.split("; ", -1)[0]) + "; "
                        + Double.parseDouble(celsius.split("; ", -1)[1]));
    }

    /** A knot is 1,852 m an hour and a mile 1,609.344 m, by definition. */
    @ParameterizedTest
    @CsvSource({"gust (m/s), 20, 20", "gust km/h, 72, 20", "peak gust (mph), 50, 22.352", "gust_kn, 50, 25.7222"})
    void gustsAreTakenInTheUnitOfTheHeading(String heading, String value, double expected) {
        StationRecord record = read("date,min_c,max_c," + heading + "\n2020-07-01,10,20," + value);

        assertThat(record.wind()[0]).isCloseTo(expected, within(1e-4));
    }

    @Test
    void aMeanWindIsToldFromAGust() {
        assertThat(read("date,min_c,max_c,wind (m/s)\n2020-07-01,10,20,4.5").kind())
                .isEqualTo(StationRecord.Wind.MEAN);
    }

    @Test
    void aTableWithoutWindSaysSo() {
        assertThat(read("date,min_c,max_c\n2020-07-01,10,20").kind()).isEqualTo(StationRecord.Wind.NONE);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "NA", "-", "-9999", "null"})
    void whatIsNotKnownMayBeLeftEmptyOrSaidSo(String missing) {
        StationRecord record = read("date,min_c,max_c\n2020-07-01,10,20\n2020-07-02," + missing + ",20");

        assertThat(record.hasTemperatures(1)).isFalse();
    }

    @Test
    void daysThatAreLeftOutAreGaps() {
        StationRecord record = read("date,min_c,max_c\n2020-07-01,10,20\n2020-07-04,11,21");

        assertThat(record.days()).isEqualTo(4);
        assertThat(record.daysWithTemperatures()).isEqualTo(2);
    }

    @Test
    void onlyTheYearsAskedForAreRead() {
        byte[] bytes = InventedStation.byStation(DAYS).getBytes(UTF_8);
        StationRecord record = WeatherFile.parse("station", bytes, 2002, 2002);

        assertThat(record.first()).isEqualTo(LocalDate.of(2002, 1, 1));
        assertThat(record.last()).isEqualTo(LocalDate.of(2002, 12, 31));
    }

    @Test
    void columnsOfOtherThingsAreLeftAlone() {
        StationRecord record = read("location,date,rain (mm),max_c,min_c\nHere,2020-07-01,3,20,10");

        assertThat(record.mean(0)).isEqualTo(15);
    }
}
