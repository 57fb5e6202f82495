package bedwright.file;

import static org.assertj.core.api.Assertions.assertThat;

import bedwright.season.Method;
import bedwright.season.Plan;
import bedwright.season.Season;
import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Single values at the edge of what they may be. */
class ScalarsTest {
    private static Scalars.Read read(Class<? extends Record> type, String key, Node node) {
        Layout.Part part = Layout.of(type).part(key).orElseThrow();
        return Scalars.read(node, part.shape(), Asked.part(part, ""));
    }

    private static String wrong(Scalars.Read read) {
        assertThat(read).isInstanceOf(Scalars.Read.Wrong.class);
        return ((Scalars.Read.Wrong) read).message();
    }

    private static Scalars.Read date(String text) {
        return read(Season.class, "starts", Unbinder.text(text));
    }

    @ParameterizedTest
    @ValueSource(strings = {"1900-01-01", "2200-12-31"})
    void yearsFrom1900To2200AreRead(String date) {
        assertThat(date(date)).isEqualTo(new Scalars.Read.Value(LocalDate.parse(date)));
    }

    @ParameterizedTest
    @ValueSource(strings = {"1899-12-31", "2201-01-01", "0203-05-03"})
    void otherYearsAreMistyped(String date) {
        assertThat(wrong(date(date))).contains(date, "years from 1900 to 2200 are expected");
    }

    @ParameterizedTest
    @CsvSource({
        "2027-00-10, there are 12 months",
        "2027-13-10, there are 12 months",
        "2027-01-32, that month has 31 days",
        "2027-12-00, that month has 31 days",
        "2027-02-29, that month has 28 days",
        "2028-02-30, that month has 29 days"
    })
    void aDayThatIsNotInTheCalendarIsToldWithTheReason(String date, String why) {
        assertThat(wrong(date(date))).contains("there is no such day: " + why + ". Mend the date.");
    }

    @ParameterizedTest
    @CsvSource({
        "00-10, 'there are 12 months, and the month comes first'",
        "13-10, 'there are 12 months, and the month comes first'",
        "01-32, that month is shorter",
        "12-32, that month is shorter",
        "04-31, that month is shorter"
    })
    void aDayThatIsInNoYearIsToldWithTheReason(String day, String why) {
        assertThat(wrong(read(Method.class, "sowFrom", Unbinder.text(day))))
                .contains("there is no such day: " + why + ". Mend the date.");
    }

    /** Four hundred places behind the point are still looked at, five hundred are beyond reason. */
    @ParameterizedTest
    @CsvSource({
        "1e400, out of any range",
        "1e-500, out of any range",
        "1e-401, out of any range",
        "1e-400, Leave off what is behind the point",
        "1e3, but it must be"
    })
    void anAbsurdWholeNumberIsTold(String number, String told) {
        assertThat(wrong(read(Season.class, "weeks", Unbinder.number(number)))).contains(told);
    }

    @Test
    void ofANumberThatMayBeAnyNoRangeIsTold() {
        assertThat(wrong(read(Plan.Score.class, "soft", Unbinder.number("1e999"))))
                .isEqualTo("\"soft\" is 1e999, which is out of any range. Write a whole number.");
    }
}
