package bedwright.start;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import bedwright.file.AnswersFile;
import bedwright.season.Answers;
import bedwright.season.Units;
import java.time.LocalDate;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** The questions and what is made of what is typed. What is typed is invented. */
class InterviewTest {
    private static final LocalDate TODAY = LocalDate.of(2026, 11, 25);
    private static final String LATITUDE = "40.8";

    private final StringBuilder said = new StringBuilder();

    private static Questions questions() {
        return new Questions(
                TODAY, file -> file.equals("bad.csv") ? Optional.of("Line 3 is cut off.") : Optional.empty());
    }

    private Optional<Answers> typed(List<String> lines) {
        Iterator<String> typing = lines.iterator();
        return new Interview(
                        TODAY,
                        file -> file.equals("bad.csv") ? Optional.of("Line 3 is cut off.") : Optional.empty(),
                        () -> typing.hasNext() ? typing.next() : null,
                        said::append)
                .answers();
    }

    private Answers answered(String... lines) {
        List<String> all = new ArrayList<>(Arrays.asList(lines));
        all.addAll(Collections.nCopies(40, ""));
        return typed(all).orElseThrow();
    }

    /** Only Enter typed: all that stands in brackets. */
    private Answers usual() {
        return answered();
    }

    @Test
    void enterAloneMakesAnswersWithoutFault() {
        Answers usual = usual();

        assertThat(AnswersFile.parse("answers", AnswersFile.bytes(usual))).isEqualTo(usual);
    }

    @Test
    void enterTakesWhatStandsInBrackets() {
        assertThat(usual().lastFrost()).isEqualTo(MonthDay.of(5, 10));
        assertThat(said).contains("[10 May and 5 October]");
    }

    static Stream<String> names() {
        return questions().all().stream().map(Question::name);
    }

    /** What is offered has to be understood. */
    @ParameterizedTest
    @MethodSource("names")
    void theUsualAnswerIsTaken(String name) {
        Question question = question(name);
        Map<String, Object> before = Map.of("latitude", -35);

        assertThat(question.taking().apply(question.usual().apply(before), before))
                .isNotNull();
    }

    private static Question question(String name) {
        return questions().all().stream()
                .filter(question -> question.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void backAsksTheQuestionBeforeAgainAndOffersWhatWasTyped() {
        Answers answers = answered("Rill", Interview.BACK, "Hill");

        assertThat(answers.name()).isEqualTo("Hill");
        assertThat(said).contains("[Rill]");
    }

    @Test
    void backFromTheFirstQuestionAsksItAgain() {
        assertThat(answered(Interview.BACK, "Rill").name()).isEqualTo("Rill");
    }

    @Test
    void backPassesOverWhatWasNotAsked() {
        Answers answers = answered("Rill", LATITUDE, "", "good.csv", Interview.BACK, "none", "none");

        assertThat(answers.station()).isNull();
        assertThat(answers.lastFrost()).isNull();
    }

    @Test
    void whatIsGoneBackOnIsForgotten() {
        Answers answers = answered(
                "Rill", LATITUDE, "", "none", "1 May and 1 October", Interview.BACK, Interview.BACK, "good.csv");

        assertThat(answers.station()).isEqualTo("good.csv");
        assertThat(answers.lastFrost()).isNull();
    }

    @Test
    void whyIsToldAndTheQuestionAskedAgain() {
        Answers answers = answered(Interview.WHY, "Rill");

        assertThat(answers.name()).isEqualTo("Rill");
        assertThat(said).contains(question("name").why());
    }

    @Test
    void ofAStationNothingIsAskedThatItTells() {
        answered("Rill", LATITUDE, "", "good.csv");

        assertThat(said)
                .doesNotContain(question("frosts").text())
                .doesNotContain(question("temperatures").text());
    }

    @Test
    void theTroubleOfAStationsFileIsToldAndTheFileAskedForAgain() {
        Answers answers = answered("Rill", LATITUDE, "", "bad.csv", "good.csv");

        assertThat(answers.station()).isEqualTo("good.csv");
        assertThat(said).contains("Line 3 is cut off.");
    }

    @Test
    void whoMeasuresInFeetIsAskedAndAnswersInFeetAndFahrenheit() {
        Answers answers = answered("Rill", LATITUDE, "feet", "none", "", "86 and 14", "", "Field 2 x 40");

        assertThat(answers.units()).isEqualTo(Units.FEET);
        assertThat(answers.warmest()).isEqualTo(30);
        assertThat(answers.coldest()).isEqualTo(-10);
        assertThat(answers.beds().getFirst().length()).isEqualTo(12.192);
        assertThat(said).contains("in °F", "length in feet", "[100 and 1000]").doesNotContain("in °C,");
    }

    @Test
    void feetThatAreTakenBackAreForgotten() {
        Answers answers = answered("Rill", LATITUDE, "feet", Interview.BACK, "metres", "none", "", "30 and -10");

        assertThat(answers.units()).isEqualTo(Units.METRES);
        assertThat(answers.warmest()).isEqualTo(30);
    }

    @Test
    void theUsualAnswersInFeetAreTakenToo() {
        assertThat(answered("", LATITUDE, "ft").beds().getFirst().length()).isEqualTo(15.24);
    }

    @Test
    void neitherMetresNorFeetIsAskedAgain() {
        answered("Rill", LATITUDE, "cubits");

        assertThat(said).contains("\"cubits\" is neither metres nor feet.");
    }

    @Test
    void inTheSouthTheSeasonBeginsInSeptember() {
        assertThat(answered("Rill", "-37").starts()).isEqualTo(LocalDate.of(2027, 9, 6));
    }

    @Test
    void inputThatEndsMakesNoAnswers() {
        int asked = (int) names().count();

        assertThat(IntStream.range(0, asked)
                        .mapToObj(i -> typed(Collections.nCopies(i, "")).isPresent()))
                .containsOnly(false);
    }

    @Test
    void answersThatContradictOneAnotherAreToldAndCanBeMended() {
        List<String> lines = new ArrayList<>(Collections.nCopies((int) names().count(), ""));
        int events = names().toList().indexOf("events");
        lines.set(events, "2031-05-01: 5");
        // Back over what comes after the events, then no event, then all again.
        lines.addAll(Collections.nCopies(lines.size() - 1 - events - 1 + 1, Interview.BACK));
        lines.add("none");
        lines.addAll(Collections.nCopies(5, ""));
        Answers answers = typed(lines).orElseThrow();

        assertThat(answers.events()).isEmpty();
        assertThat(said).contains("do not go together", "lies outside the season");
    }

    static Stream<Arguments> taken() {
        return Stream.of(
                Arguments.of("latitude", "-33.5", Map.of("latitude", -33.5)),
                Arguments.of("station", "none", Map.of()),
                Arguments.of("frosts", "May 4 and 11 Oct", Map.of("lastFrost", "05-04", "firstFrost", "10-11")),
                Arguments.of("frosts", "none", Map.of()),
                Arguments.of("temperatures", "30.5 and -12", Map.of("warmest", 30.5, "coldest", -12.0)),
                Arguments.of("season", "1 March 2027 for 30 weeks", Map.of("starts", "2027-03-01", "weeks", 30)),
                Arguments.of("storms", "South-West", Map.of("stormsFrom", 225.0)),
                Arguments.of("storms", "300", Map.of("stormsFrom", 300.0)),
                Arguments.of("storms", "none", Map.of()),
                Arguments.of(
                        "beds",
                        "Hill 2 x 8.5 m; Tunnel 1x12 tunnel",
                        Map.of(
                                "beds",
                                List.of(
                                        Map.of("name", "Hill", "count", 2, "length", 8.5),
                                        Map.of("name", "Tunnel", "count", 1, "length", 12.0, "tunnel", true)))),
                Arguments.of(
                        "crops",
                        "Zinnia 200; sunflower, once-cut",
                        Map.of(
                                "crops",
                                List.of(
                                        Map.of("crop", "zinnia", "plants", 200),
                                        Map.of("crop", "sunflower, once-cut")))),
                Arguments.of("bouquets", "15 at 12.50", Map.of("bouquets", 15, "bouquetPrice", 12.5)),
                Arguments.of("bouquets", "none", Map.of("bouquets", 0)),
                Arguments.of(
                        "selling",
                        "14 June 2027 to 2027-09-27",
                        Map.of("sellFrom", "2027-06-14", "sellTo", "2027-09-27")),
                Arguments.of(
                        "events",
                        "2027-07-10: 20 at 15; 21 Aug 2027: 12",
                        Map.of(
                                "events",
                                List.of(
                                        Map.of("date", "2027-07-10", "bouquets", 20, "price", 15.0),
                                        Map.of("date", "2027-08-21", "bouquets", 12)))),
                Arguments.of("hours", "25 + 10 at 14", Map.of("ownHours", 25.0, "hiredHours", 10.0, "rate", 14.0)));
    }

    @ParameterizedTest(name = "{0}: {1}")
    @MethodSource("taken")
    void whatIsTypedIsUnderstood(String name, String typed, Map<String, Object> values) {
        assertThat(question(name).taking().apply(typed, Map.of())).isEqualTo(values);
    }

    static Stream<Arguments> refused() {
        return Stream.of(
                Arguments.of("latitude", "far north", "is not a number"),
                Arguments.of("latitude", "89", "from -65 to 65"),
                Arguments.of("latitude", "NaN", "from -65 to 65"),
                Arguments.of("frosts", "10 May", "10 May and 5 October"),
                Arguments.of("frosts", "31 June and 5 October", "not a day of the year"),
                Arguments.of("temperatures", "10 and 12", "can't be as warm"),
                Arguments.of("temperatures", "26", "26 and -4"),
                Arguments.of("season", "2027-02-30 for 40 weeks", "not a day of the calendar"),
                Arguments.of("season", "2027-03-01 for 3", "from 4 to 104"),
                Arguments.of("beds", "Field of dreams", "Field 6 x 15"),
                Arguments.of("beds", "Field 0 x 15", "from 1 to 500"),
                Arguments.of("storms", "uphill", "is no side"),
                Arguments.of("storms", "400", "from 0 to 360"),
                Arguments.of("stock", "30", "30 and 1000"),
                Arguments.of("stock", "30 and 10.5", "a whole number"),
                Arguments.of("crops", "zinna", "Did you mean \"zinnia\"?"),
                Arguments.of("crops", "sunflower", "\"sunflower, once-cut\""),
                Arguments.of("crops", "zinnia; zinnia 20", "twice"),
                Arguments.of("seed", "-1", "from 0"),
                Arguments.of("bouquets", "many", "is not a number"),
                Arguments.of("bouquets", "15 for 12", "10 at 12"),
                Arguments.of("selling", "2027-09-27 to 2027-06-14", "before it begins"),
                Arguments.of("events", "July: 20", "not a day of the calendar"),
                Arguments.of("events", "2027-07-10: 0", "from 1"),
                Arguments.of("hours", "20", "20 + 0 at 15"),
                Arguments.of("cutting", "", "is not a number"));
    }

    /** Each refusal says what was expected. */
    @ParameterizedTest(name = "{0}: {1}")
    @MethodSource("refused")
    void whatIsNotUnderstoodIsRefusedWithWhatWasExpected(String name, String typed, String words) {
        assertThatExceptionOfType(BadAnswer.class)
                .isThrownBy(() -> question(name).taking().apply(typed, Map.of()))
                .withMessageContaining(words);
    }

    @Test
    void aBadAnswerIsAskedForAgainAndNothingIsLost() {
        Answers answers = answered("Rill", "north", LATITUDE);

        assertThat(answers.name()).isEqualTo("Rill");
        assertThat(answers.latitude()).isEqualTo(40.8);
    }
}
