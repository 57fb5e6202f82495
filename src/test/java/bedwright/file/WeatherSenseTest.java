package bedwright.file;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Tables of weather whose lines can be read, but do not hold together. The weather is invented. */
class WeatherSenseTest {
    private static final LocalDate FIRST = LocalDate.of(2001, 1, 1);
    private static final LocalDate LAST = LocalDate.of(2001, 12, 31);

    /** A table with a line a day. */
    private static String table(String columns, LocalDate first, LocalDate last, Function<LocalDate, String> cells) {
        return first.datesUntil(last.plusDays(1))
                .map(date -> date + "," + cells.apply(date))
                .collect(Collectors.joining("\n", "date," + columns + "\n", "\n"));
    }

    private static String year(Function<LocalDate, String> temperatures) {
        return table("min (°C),max (°C)", FIRST, LAST, temperatures);
    }

    private static List<Fault> faults(String table) {
        try {
            WeatherFile.parse("station", table.getBytes(UTF_8), WeatherFile.NO_YEAR, WeatherFile.NO_YEAR);
            return List.of();
        } catch (FaultyFile e) {
            return e.faults();
        }
    }

    private static void assertOne(String table, String... words) {
        assertThat(faults(table))
                .singleElement()
                .satisfies(fault -> assertThat(fault.message()).contains(words));
    }

    @ParameterizedTest
    @ValueSource(strings = {"50", "6"})
    void aWarmestMonthThatCanJustBeIsRead(String max) {
        assertThat(faults(year(date -> "0," + max))).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"50.1, in °F", "100, in °F", "100.1, in tenths of a degree", "5.9, in °C"})
    void aWarmestMonthThatCanNotBeShowsAnotherUnit(String max, String unit) {
        assertOne(
                year(date -> "-10," + max),
                "Read in the heading's unit, the maxima of the warmest month would be " + max + " °C",
                "By the look of them the temperatures are " + unit,
                "name that unit in the first line");
    }

    /** Were days counted into other months, none would be so warm in the mean. */
    @Test
    void theWarmestMonthIsThatOfTheCalendar() {
        assertOne(year(date -> "10," + (date.getMonthValue() == 7 ? "50.5" : "20")), "would be 50.5 °C");
    }

    @Test
    void ofAYearWithoutTwentyDaysOfEachMonthNobodyKnowsTheWarmest() {
        assertThat(faults(year(date -> date.getMonthValue() == 2 && date.getDayOfMonth() > 19 ? "," : "0,5")))
                .isEmpty();
        assertThat(faults(year(date -> date.getMonthValue() == 2 && date.getDayOfMonth() > 20 ? "," : "0,5")))
                .hasSize(1);
    }

    private static String windy(String column, int days, String wind) {
        return table("min (°C),max (°C)," + column, FIRST, FIRST.plusDays(days - 1), date -> "10,20," + wind);
    }

    @ParameterizedTest
    @CsvSource({"gust (m/s), 60, 25", "gust (m/s), 59, 30", "wind (m/s), 60, 14", "wind (m/s), 59, 20"})
    void windsThatCanJustBeOrAreOfFewDaysAreRead(String column, int days, String wind) {
        assertThat(faults(windy(column, days, wind))).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"gust (m/s), 25.1, 25", "wind (m/s), 14.1, 14"})
    void windsThatCanNotBeShowAnotherUnit(String column, String wind, String most) {
        assertOne(
                windy(column, 60, wind),
                "would be " + wind + " m/s in the mean of all days; no more than " + most + " can be",
                "such as km/h: name it in the first line.");
    }

    @Test
    void ofWindsInAnotherUnitNoneIsToldByItself() {
        assertOne(
                windy("gust (m/s)", 60, "60").replace("2001-02-01,10,20,60", "2001-02-01,10,20,130"),
                "m/s in the mean");
    }

    @Test
    void aDayAsColdAsItIsWarmIsRead() {
        assertThat(faults("date,min (°C),max (°C)\n2020-07-01,15,15\n")).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "'60,20', over its maximum",
        "'-80,-90', over its maximum",
        "'61,20', 61 °C; nothing under -90 or over 60 °C can be",
        "'20,-91', -91 °C; nothing under -90 or over 60 °C can be"
    })
    void aMinimumOverItsMaximumIsToldUnlessOneOfThemCanNotBeAtAll(String day, String told) {
        assertOne("date,min (°C),max (°C)\n2020-07-01," + day + "\n", told);
    }

    @ParameterizedTest
    @ValueSource(strings = {",20", "10,", ","})
    void aYearOfWhichNoDayHasBothTemperaturesIsMissing(String cells) {
        String text = table(
                "min (°C),max (°C)",
                FIRST,
                LocalDate.of(2003, 12, 31),
                date -> date.getYear() == 2002 ? cells : "10,20");

        assertOne(text, "Between 2001-12-31 and 2003-01-01 no day has both", "the year 2002 is missing");
    }

    @Test
    void yearsMissingBehindTheVeryFirstDayAreTold() {
        assertOne(
                "date,min (°C),max (°C)\n2001-07-01,10,20\n2005-07-01,10,20\n",
                "2002 to 2004 are missing",
                "--from 2005 or --to 2001");
    }
}
