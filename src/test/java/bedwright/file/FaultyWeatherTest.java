package bedwright.file;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import bedwright.weather.InventedStation;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Weather files that are at fault: every fault at its line, with what to do. The weather is invented. */
class FaultyWeatherTest {
    private static final List<InventedStation.Day> DAYS = new InventedStation(2001, 2003, 5).days();
    private static final String HEADING = "date,min (°C),max (°C),gust (m/s)\n";

    private static FaultyFile faults(byte[] bytes) {
        FaultyFile[] thrown = new FaultyFile[1];
        assertThatExceptionOfType(FaultyFile.class)
                .isThrownBy(() -> WeatherFile.parse("station", bytes, WeatherFile.NO_YEAR, WeatherFile.NO_YEAR))
                .satisfies(e -> thrown[0] = e);
        return thrown[0];
    }

    private static FaultyFile faults(String text) {
        return faults(text.getBytes(UTF_8));
    }

    /** Asserts that a file has one fault, at a line, that says some words. */
    private static void assertOne(String text, int line, String... words) {
        FaultyFile faulty = faults(text);
        assertThat(faulty.faults()).as("%s", faulty.faults()).hasSize(1);
        assertThat(faulty.faults().getFirst().line()).isEqualTo(line);
        assertThat(faulty.faults().getFirst().message()).contains(words);
    }

    /** The lines of a text, one of them changed. */
    private static String changed(String text, int line, UnaryOperator<String> change) {
        String[] lines = text.split("\n", -1);
        lines[line - 1] = change.apply(lines[line - 1]);
        return String.join("\n", lines);
    }

    @Test
    void aMonthThatIsCutIsTold() {
        String text = changed(InventedStation.dly(DAYS), 7, line -> line.substring(0, 143));

        assertOne(text, 7, "143 characters", "269", "fetch it anew");
    }

    @Test
    void twoMonthsOnOneLineAreTold() {
        String text = changed(InventedStation.dly(DAYS), 6, line -> line + line);

        assertOne(text, 6, "538 characters", "take the line away");
    }

    @Test
    void aMonthWhoseColumnsHaveShiftedIsTold() {
        String text = changed(InventedStation.dly(DAYS), 2, line -> line.substring(0, 21) + "x" + line.substring(22));

        assertOne(text, 2, "no whole number", "2001-01-01", "shifted");
    }

    @Test
    void aThirteenthMonthIsTold() {
        String text = changed(InventedStation.dly(DAYS), 1, line -> line.substring(0, 15) + "13" + line.substring(17));

        assertOne(text, 1, "no month 13");
    }

    @Test
    void aDayOfAStationThatIsCutIsTold() {
        String text = changed(InventedStation.byStation(DAYS), 12, line -> line.substring(0, 20));

        assertOne(text, 12, "station, day as yyyymmdd, element, value", "cut here");
    }

    @Test
    void aDayThatIsNotInTheCalendarIsTold() {
        String text = changed(InventedStation.byStation(DAYS), 6, line -> line.replace("20010102", "20010230"));

        assertOne(text, 6, "20010230", "no day of the calendar");
    }

    @Test
    void aDayOfATableThatIsCutIsTold() {
        assertOne(HEADING + "2020-07-01,10,20,5\n2020-07-02,10\n", 3, "2 cells", "4 columns", "cut here");
    }

    @Test
    void aDateInAnotherOrderIsTold() {
        assertOne(HEADING + "07/01/2020,10,20,5\n", 2, "07/01/2020", "1987-04-18");
    }

    @Test
    void aWordInPlaceOfANumberIsTold() {
        assertOne(HEADING + "2020-07-01,cold,20,5\n", 2, "\"cold\"", "no number", "leave it empty");
    }

    @Test
    void aDayThatIsHereTwiceIsTold() {
        assertOne(
                HEADING + "2020-07-01,10,20,5\n2020-07-01,10,20,5\n",
                3,
                "2020-07-01 is here twice",
                "Take one of the two away");
    }

    @Test
    void aDayOutOfOrderIsTold() {
        assertOne(
                HEADING + "2020-07-02,10,20,5\n2020-07-01,10,20,5\n",
                3,
                "2020-07-01 comes after 2020-07-02",
                "sort the lines");
    }

    /** Thirty-one days on one line are one fault. */
    @Test
    void aMonthThatIsHereTwiceIsToldOnce() {
        String text = InventedStation.dly(DAYS);
        String first = text.substring(0, text.indexOf('\n') + 1);

        assertOne(first + text, 2, "2001-01-01", "take away what is double");
    }

    @Test
    void aDayOfAStationThatIsHereTwiceIsTold() {
        String text = InventedStation.byStation(DAYS);
        String first = text.substring(0, text.indexOf('\n') + 1);

        assertOne(first + text, 2, "2001-01-01 is here twice (the maximum)");
    }

    @Test
    void aMinimumOverItsMaximumIsTold() {
        assertOne(HEADING + "2020-07-01,20,10,5\n", 2, "2020-07-01", "20 °C", "over its maximum, 10 °C");
    }

    @ParameterizedTest
    @CsvSource({
        "'2020-07-01,-95,20,5', -95 °C",
        "'2020-07-01,10,61,5', 61 °C",
        "'2020-07-01,10,20,130', 130 m/s",
        "'2020-07-01,10,20,-1', -1 m/s"
    })
    void whatCanNotBeIsTold(String day, String value) {
        assertOne(HEADING + day + "\n", 2, value, "can be", "leave it empty");
    }

    @Test
    void aDirectionBeyondTheCircleIsTold() {
        assertOne("date,min_c,max_c,gust_ms,direction\n2020-07-01,10,20,5,400\n", 2, "400 degrees", "360");
    }

    /** A year of a table, with its values as they are in another unit. */
    private static String inAnotherUnit(String heading, double factor, double plus) {
        StringBuilder text = new StringBuilder(heading);
        for (InventedStation.Day day : DAYS) {
            text.append(day.date())
                    .append(',')
                    .append(day.min() / 10.0 * factor + plus)
                    .append(',')
                    .append(day.max() / 10.0 * factor + plus)
                    .append(',')
                    .append(day.gust() / 10.0)
                    .append('\n');
        }
        return text.toString();
    }

    @Test
    void fahrenheitNamedCelsiusIsTold() {
        assertOne(inAnotherUnit(HEADING, 1.8, 32), 1, "look", "in °F", "first line");
    }

    @Test
    void celsiusNamedFahrenheitIsTold() {
        assertOne(inAnotherUnit(HEADING.replace("°C", "°F"), 1, 0), 1, "look", "in °C");
    }

    @Test
    void tenthsNamedDegreesAreTold() {
        assertOne(inAnotherUnit(HEADING, 10, 0), 1, "look", "tenths");
    }

    @Test
    void wholeDegreesInAFileOfTenthsAreTold() {
        String text = InventedStation.byStation(DAYS.stream()
                .map(day -> new InventedStation.Day(
                        day.date(), Math.floorDiv(day.min(), 10), Math.floorDiv(day.max(), 10), day.gust(), day.from()))
                .toList());

        assertOne(text, 1, "look", "whole degrees", "tenths");
    }

    @Test
    void kilometresAnHourNamedMetresASecondAreTold() {
        String text = InventedStation.byStation(DAYS.stream()
                .map(day ->
                        new InventedStation.Day(day.date(), day.min(), day.max(), (int) (day.gust() * 3.6), day.from()))
                .toList());

        assertOne(text, 1, "look", "km/h");
    }

    @Test
    void wholeDegreesInMonthsOfTenthsAreTold() {
        String text = InventedStation.dly(DAYS.stream()
                .map(day -> new InventedStation.Day(
                        day.date(), Math.floorDiv(day.min(), 10), Math.floorDiv(day.max(), 10), day.gust(), day.from()))
                .toList());

        assertOne(text, 1, "Read in tenths of a degree Celsius", "whole degrees", "turn them into tenths");
    }

    @Test
    void aYearMissingInTheMiddleIsToldWhereItGoesOn() {
        StringBuilder text = new StringBuilder(HEADING);
        DAYS.stream()
                .filter(day -> day.date().getYear() != 2002)
                .forEach(day -> text.append(day.date()).append(",1,2,3\n"));
        FaultyFile faulty = faults(text.toString().replace(",1,2,3", ",10,20,3"));

        assertThat(faulty.faults()).hasSize(1);
        assertThat(faulty.faults().getFirst().line()).isEqualTo(2 + 365);
        assertThat(faulty.faults().getFirst().message())
                .contains("the year 2002 is missing", "--from 2003", "--to 2001");
    }

    @Test
    void yearsBesideAMissingOneCanBeReadAlone() {
        String text = InventedStation.byStation(
                DAYS.stream().filter(day -> day.date().getYear() != 2002).toList());

        assertThat(WeatherFile.parse("station", text.getBytes(UTF_8), 2003, WeatherFile.NO_YEAR)
                        .days())
                .isEqualTo(365);
    }

    @ParameterizedTest
    @CsvSource({"''", "'\n\n'", "'date,min (°C),max (°C)\n'"})
    void anEmptyFileIsTold(String text) {
        assertOne(text, 1, "no day of weather");
    }

    @Test
    void aFileWithoutTemperaturesIsTold() {
        assertOne("XX000000001,20010101,WSFG,150,,,X,\n", 1, "No day has both a minimum and a maximum");
    }

    @Test
    void latin1IsToldAtItsByte() {
        FaultyFile faulty = faults((HEADING + "2020-07-01,10,20,5\n").getBytes(ISO_8859_1));

        assertThat(faulty.faults()).singleElement().satisfies(fault -> {
            assertThat(fault.line()).isEqualTo(1);
            assertThat(fault.column()).isEqualTo(HEADING.indexOf('°') + 1);
            assertThat(fault.message()).contains("byte B0", "Save the file as UTF-8");
        });
    }

    @Test
    void aSecondStationIsToldWhereItBegins() {
        String text = InventedStation.byStation(DAYS);
        int lines = (int) text.lines().count();

        assertOne(
                text + text.replace(InventedStation.NAME, "XX000000002"),
                lines + 1,
                "XX000000002",
                "keep the lines of one");
    }

    @Test
    void columnsWithoutUnitOrDateAreToldBeforeTheLinesBelow() {
        FaultyFile faulty = faults("temp_min,temp_max\n10,cold\n");

        assertThat(faulty.faults().stream().map(Fault::line)).containsExactly(1, 1);
    }

    @Test
    void aSecondColumnForTheSameIsToldInPlaceOfWhatStandsInIt() {
        FaultyFile faulty = faults("date,min (°C),low (°C),max (°C)\n2020-07-01,10,cold,20\n");

        assertThat(faulty.faults()).singleElement().satisfies(fault -> {
            assertThat(fault.place()).isEqualTo(new Place(1, 15));
            assertThat(fault.message()).contains("another column for the minimum before \"low (°C)\"", "Take one away");
        });
    }

    @ParameterizedTest
    @CsvSource({"'date,min (°C)', '\"max\"'", "'min (°C),max (°C)', '\"date\"'", "'date,rain', '\"min\" and \"max\"'"})
    void onlyTheColumnsThatAreLackingAreNamed(String heading, String lacking) {
        assertOne(heading + "\n1,2\n", 1, "It lacks " + lacking + ".");
    }

    /** Nobody knows whether it is a decimal comma or one between thousands. */
    @Test
    void aNumberWithACommaBetweenCommasIsTold() {
        assertOne("date,min (°C),max (°C)\n2020-07-01,\"10,5\",20\n", 2, "\"10,5\" is no number");
    }

    @Test
    void aLineThatIsNoMonthOfAStationIsTold() {
        String text = changed(InventedStation.dly(DAYS), 4, line -> "and so on");

        assertOne(text, 4, "no month of a station", "cut or joined here");
    }

    @Test
    void aMonthIsToldAtTheColumnWhereItIsCutOrGoesOnTooLong() {
        String text = InventedStation.dly(DAYS);

        assertThat(faults(changed(text, 7, line -> line.substring(0, 143)))
                        .faults()
                        .getFirst()
                        .column())
                .isEqualTo(144);
        assertThat(faults(changed(text, 6, line -> line + line))
                        .faults()
                        .getFirst()
                        .column())
                .isEqualTo(270);
    }

    /** Values begin in column 22 and take eight columns with their flags. */
    @ParameterizedTest
    @CsvSource({"x", "9999"})
    void aValueOfAMonthIsToldAtItsColumn(String value) {
        String wide = " ".repeat(5 - value.length()) + value;
        String text = changed(InventedStation.dly(DAYS), 1, line -> line.substring(0, 29) + wide + line.substring(34));

        assertThat(faults(text).faults()).extracting(Fault::place).containsExactly(new Place(1, 30));
    }

    /** Once, and not what follows from it: that the days after it are out of order. */
    @ParameterizedTest
    @ValueSource(ints = {1649, 2201})
    void aYearThatCanNotBeMeantIsTold(int year) {
        FaultyFile faulty = faults("date,min (°C),max (°C)\n" + year + "-06-30,10,20\n2020-07-01,10,20\n");

        assertThat(faulty.faults()).singleElement().satisfies(fault -> {
            assertThat(fault.place()).isEqualTo(new Place(2, 1));
            assertThat(fault.message()).contains("The year " + year + " can't be meant", "Mend the date");
        });
    }

    @Test
    void aMonthOfAYearThatCanNotBeMeantIsToldOnce() {
        String text =
                changed(InventedStation.dly(DAYS), 1, line -> line.substring(0, 11) + "2999" + line.substring(15));

        assertThat(faults(text).faults()).singleElement().satisfies(fault -> {
            assertThat(fault.line()).isEqualTo(1);
            assertThat(fault.message()).contains("The year 2999 can't be meant");
        });
    }

    @Test
    void aDayOutOfOrderIsToldAndNotWhatStandsInIt() {
        assertOne(HEADING + "2020-07-02,10,20,5\n2020-07-01,10,99,5\n", 3, "2020-07-01 comes after 2020-07-02");
    }

    /** 64 MB are more than the records of any station. */
    @Test
    void aFileThatIsTooLargeIsTold() {
        FaultyFile faulty = faults(new byte[64 * 1024 * 1024 + 1]);

        assertThat(faulty.faults())
                .singleElement()
                .satisfies(fault -> assertThat(fault.message())
                        .contains("The file has 64 MB or more; more than 64 MB is not read", "one station"));
    }

    @ParameterizedTest
    @CsvSource({"2010, -1", "-1, 1999", "2010, 2012"})
    void aFileWithoutTheYearsAskedForIsTold(int from, int to) {
        byte[] bytes = InventedStation.byStation(DAYS).getBytes(UTF_8);

        assertThatExceptionOfType(FaultyFile.class)
                .isThrownBy(() -> WeatherFile.parse("station", bytes, from, to))
                .satisfies(e -> assertThat(e.faults())
                        .extracting(Fault::message)
                        .containsExactly("The file holds no day of weather of the years asked for."));
    }

    @Test
    void aColumnWithoutUnitIsTold() {
        FaultyFile faulty = faults("date,temp_min,temp_max,wind\n2020-07-01,10,20,5\n");

        assertThat(faulty.faults().stream().map(Fault::column)).containsExactly(6, 15, 24);
        assertThat(faulty.faults().getFirst().message()).contains("\"temp_min\" names no unit", "(°C) or (°F)");
        assertThat(faulty.faults().getLast().message()).contains("(km/h)");
    }

    @Test
    void aTableWithoutAColumnThatIsNeededIsTold() {
        assertOne("date,min (°C)\n2020-07-01,10\n", 1, "\"max\"", "date, min (°C), max (°C)");
    }

    @Test
    void whatIsNoWeatherAtAllIsTold() {
        assertOne("{ \"name\": \"a season\" }", 1, "\"date\", \"min\" and \"max\"");
    }

    @Test
    void allFaultsAreToldAtOnceInOrder() {
        FaultyFile faulty =
                faults(HEADING + "2020-07-01,cold,20,5\n2020-07-02,10\n2020-07-03,20,10,5\n2020-07-04,10,20,300\n");

        assertThat(faulty.faults().stream().map(Fault::line)).containsExactly(2, 3, 4, 5);
    }

    @Test
    void aFaultOnEveryLineIsToldForTheFirstAndCounted() {
        StringBuilder text = new StringBuilder(HEADING);
        for (int day = 0; day < 1000; day++) {
            text.append("no,10,20,5\n");
        }
        FaultyFile faulty = faults(text.toString());

        assertThat(faulty.faults()).hasSize(50);
        assertThat(faulty.count()).isEqualTo(1000);
    }

    /** Bytes changed, lines cut, doubled or swapped, from seeds: a record or faults with their lines, and nothing else. */
    @ParameterizedTest
    @ValueSource(ints = {0, 1, 2})
    void whateverIsBrokenIsARecordOrAFault(int layout) {
        List<InventedStation.Day> days = DAYS.subList(0, 31 + 28 + 31);
        byte[] whole = List.of(InventedStation.dly(days), InventedStation.byStation(days), InventedStation.table(days))
                .get(layout)
                .getBytes(UTF_8);
        SplittableRandom random = new SplittableRandom(layout);
        int refused = 0;
        for (int i = 0; i < 400; i++) {
            byte[] broken = broken(whole, random);
            try {
                assertThat(WeatherFile.parse("station", broken, WeatherFile.NO_YEAR, WeatherFile.NO_YEAR)
                                .days())
                        .isPositive();
            } catch (FaultyFile e) {
                refused++;
                assertThat(e.faults()).isNotEmpty().allSatisfy(fault -> {
                    assertThat(fault.line()).isPositive();
                    assertThat(fault.message()).isNotBlank();
                });
            }
        }
        assertThat(refused).isBetween(50, 400);
    }

    private static byte[] broken(byte[] whole, SplittableRandom random) {
        byte[] bytes = whole.clone();
        int from = random.nextInt(bytes.length);
        int length = random.nextInt(200);
        int to = Math.min(bytes.length, from + length);
        return switch (random.nextInt(4)) {
            case 0 -> Arrays.copyOf(bytes, from);
            case 1 -> {
                bytes[from] = (byte) random.nextInt(256);
                yield bytes;
            }
            case 2 -> {
                System.arraycopy(whole, to, bytes, from, whole.length - to);
                yield Arrays.copyOf(bytes, whole.length - (to - from));
            }
            default -> {
                for (int i = 0; i < 5; i++) {
                    bytes[random.nextInt(bytes.length)] = (byte) (32 + random.nextInt(95));
                }
                yield bytes;
            }
        };
    }
}
