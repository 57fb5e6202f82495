package bedwright.file;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import bedwright.season.Season;
import bedwright.season.Units;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** How much more or less of something a strategy may have. */
class AmountCheckTest {
    /** Ten weeks from 10 May to 18 July; two open beds of 12 m and one by the fence. */
    private static final Season SEASON = Edited.firstBed(
                    "\"name\": \"Open bed\",", "\"name\": \"Open bed\", \"count\": 2,")
            .season();

    private static final String NET_AT =
            "{\"name\": \"NAME\", \"from\": {\"x\": 9, \"y\": 0}, \"to\": {\"x\": 9, \"y\": 9}, \"height\": 2,"
                    + " \"density\": \"medium\"}";

    private static byte[] file(String changes) {
        return ("{\"name\": \"test\", \"strategies\": [{\"name\": \"plain\"}, {\"name\": \"changed\", " + changes
                        + "}]}")
                .getBytes(UTF_8);
    }

    private static List<Fault> faults(Season season, String changes) {
        return catchThrowableOfType(FaultyFile.class, () -> StrategiesFile.parse("s.json", file(changes), season))
                .faults();
    }

    private static String windbreaks(String... names) {
        List<String> all = List.of(names).stream()
                .map(name -> NET_AT.replace("NAME", name))
                .toList();
        return "\"windbreaks\": [" + String.join(", ", all) + "]";
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "\"beds\": [{\"beds\": \"Open bed\", \"count\": -1}]",
                "\"beds\": [{\"beds\": \"Open bed\", \"count\": 498}]",
                "\"beds\": [{\"beds\": \"Open bed\", \"metres\": -11.5}]",
                "\"beds\": [{\"beds\": \"Open bed\", \"metres\": 1988}]",
                "\"ownHours\": [{\"more\": 1}]",
                "\"ownHours\": [{\"to\": \"2027-05-10\", \"more\": 1}]",
                "\"hiredHours\": [{\"from\": \"2027-07-12\", \"more\": 1}]",
                "\"hiredHours\": [{\"from\": \"2027-05-17\", \"to\": \"2027-05-17\", \"more\": 1}]",
                "\"outlets\": [{\"outlet\": \"Stall, focal\", \"amount\": 1.5}]",
            })
    void whatIsJustWithinBoundsIsAllowed(String changes) {
        assertThat(StrategiesFile.parse("s.json", file(changes), SEASON).strategies())
                .hasSize(2);
    }

    @ParameterizedTest
    @CsvSource(quoteCharacter = '`', delimiter = '|', textBlock = """
            "beds": [{"beds": "Open bed", "count": 499}]           | beds/0/count   | there would be 501 beds "Open bed", of which there are 2
            "beds": [{"beds": "Open bed", "metres": 1988.5}]       | beds/0/metres  | a bed "Open bed", now 12 m long, would have 2000.5 m
            "nets": [{"net": "Net", "metres": 1}, {"net": "Net", "metres": 2}] | nets/1/net | "Net" is changed twice
            "nets": [{"net": "Net", "metres": -7}]                 | nets/0/metres  | The season has 6 m of this net, so 7 m less
            "bench": -151                                          | bench          | The season has 150 cells on the bench, so 151 fewer
            "ownHours": [{"from": "2031-01-01", "more": 4}]        | ownHours/0     | No week of the season
            "cuttingHands": [{"from": "2031-01-01", "more": 4}]    | cuttingHands/0 | No week of the season
            "hiredHours": [{"from": "2027-07-19", "more": 4}]      | hiredHours/0   | from 2027-05-10 to 2027-07-18
            "hiredHours": [{"to": "2027-05-09", "more": 4}]        | hiredHours/0   | from 2027-05-10 to 2027-07-18
            "hiredHours": [{"from": "2027-05-11", "to": "2027-05-16", "more": 4}] | hiredHours/0 | begins in this time
            "outlets": [{"outlet": "Stall, focal", "times": 2}, {"outlet": "Stall, focal", "times": 3}] | outlets/1/outlet | changed twice
            """)
    void whatIsBeyondThemIsTold(String changes, String path, String says) {
        assertThat(faults(SEASON, changes)).singleElement().satisfies(fault -> {
            assertThat(fault.path()).isEqualTo("/strategies/1/" + path);
            assertThat(fault.message()).contains(says);
        });
    }

    @Test
    void windbreaksOfDifferentNamesAreAllowed() {
        assertThat(StrategiesFile.parse("s.json", file(windbreaks("Mesh", "Hedge")), SEASON)
                        .strategies())
                .hasSize(2);
    }

    @Test
    void twoNewWindbreaksOfOneNameAreTold() {
        assertThat(faults(SEASON, windbreaks("Mesh", "Mesh"))).singleElement().satisfies(fault -> {
            assertThat(fault.path()).isEqualTo("/strategies/1/windbreaks/1/name");
            assertThat(fault.message()).contains("There is a windbreak \"Mesh\" already");
        });
    }

    @Test
    void oneMetreIsSpokenOfAsOne() {
        Season season = Edited.firstBed("\"metres\": 6", "\"metres\": 1").season();

        assertThat(faults(season, "\"nets\": [{\"net\": \"Net\", \"metres\": -2}]"))
                .singleElement()
                .satisfies(fault -> assertThat(fault.message())
                        .contains("The season has 1 m of this net, so 2 m less can't be had"));
    }

    @Test
    void oneCellIsSpokenOfAsOne() {
        Season season = Edited.firstBed("\"bench\": 150", "\"bench\": 1").season();

        assertThat(faults(season, "\"bench\": -2"))
                .singleElement()
                .satisfies(fault -> assertThat(fault.message())
                        .contains("The season has 1 cell on the bench, so 2 fewer can't be had"));
    }

    /** 6 m of net are 19.69 ft, of which 20 ft, 6.096 m, can't be taken away. */
    @Test
    void ofASeasonInFeetFeetAreTold() {
        assertThat(faults(SEASON.with(Units.FEET), "\"nets\": [{\"net\": \"Net\", \"metres\": -6.096}]"))
                .singleElement()
                .satisfies(fault ->
                        assertThat(fault.message()).contains("The season has 19.685", "ft of this net, so 20 ft less"));
    }
}
