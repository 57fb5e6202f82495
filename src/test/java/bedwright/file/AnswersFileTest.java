package bedwright.file;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Answers for a season of 20 weeks from 1 March to 18 July 2027, and what is told of those that contradict each other. */
class AnswersFileTest {
    private static final String BEDS =
            "\"beds\": [{\"name\": \"Hill\", \"length\": 9}, {\"name\": \"Yard\", \"length\": 8}]";
    private static final String CROPS = "\"crops\": [{\"crop\": \"zinnia\"}, {\"crop\": \"dill\"}]";

    private static List<Fault> faults(String beds, String crops, String more) {
        String text =
                "{\"starts\": \"2027-03-01\", \"weeks\": 20, \"latitude\": 45, " + beds + ", " + crops + more + "}";
        try {
            AnswersFile.parse("answers.json", text.getBytes(UTF_8));
            return List.of();
        } catch (FaultyFile e) {
            return e.faults();
        }
    }

    private static List<Fault> faults(String more) {
        return faults(BEDS, CROPS, more);
    }

    @Test
    void answersThatContradictNothingAreTaken() {
        assertThat(faults(", \"lastFrost\": \"05-10\", \"firstFrost\": \"10-05\""))
                .isEmpty();
    }

    @Test
    void aCropThatTheBookHasNotIsToldWithTheNearest() {
        assertThat(faults(BEDS, CROPS.replace("dill", "dil"), ""))
                .singleElement()
                .satisfies(fault -> {
                    assertThat(fault.path()).isEqualTo("/crops/1/crop");
                    assertThat(fault.message()).contains("no crop \"dil\"", "Did you mean \"dill\"?");
                });
    }

    @Test
    void aCropNamedTwiceIsToldWhereItStandsAgain() {
        assertThat(faults(BEDS, CROPS.replace("dill", "zinnia"), ""))
                .extracting(Fault::path)
                .containsExactly("/crops/1/crop");
    }

    @Test
    void twoBlocksOfOneNameAreToldAtTheSecondName() {
        assertThat(faults(BEDS.replace("Yard", "Hill"), CROPS, ""))
                .extracting(Fault::path)
                .containsExactly("/beds/1/name");
    }

    @ParameterizedTest
    @CsvSource({"2027-03-01, true", "2027-02-28, false", "2027-07-18, true", "2027-07-19, false"})
    void anEventLiesWithinTheSeason(String date, boolean isWithin) {
        String events = ", \"events\": [{\"date\": \"2027-05-01\", \"bouquets\": 5}, {\"date\": \"" + date
                + "\", \"bouquets\": 5}]";

        assertThat(faults(events)).extracting(Fault::path).isEqualTo(isWithin ? List.of() : List.of("/events/1/date"));
    }

    @ParameterizedTest
    @CsvSource({"2027-06-02, true", "2027-06-01, true", "2027-05-31, false"})
    void sellingEndsNoSoonerThanItBegins(String to, boolean isInOrder) {
        assertThat(faults(", \"stems\": 30, \"sellFrom\": \"2027-06-01\", \"sellTo\": \"" + to + "\""))
                .extracting(Fault::path)
                .isEqualTo(isInOrder ? List.of() : List.of("/sellTo"));
    }

    @Test
    void oneDayOfSellingAloneContradictsNothing() {
        assertThat(faults(", \"stems\": 30, \"sellFrom\": \"2027-06-01\"")).isEmpty();
        assertThat(faults(", \"stems\": 30, \"sellTo\": \"2027-06-01\"")).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"lastFrost", "firstFrost"})
    void oneFrostWithoutTheOtherIsToldWhereItStands(String said) {
        assertThat(faults(", \"" + said + "\": \"06-10\"")).hasSize(1).allSatisfy(fault -> {
            assertThat(fault.path()).isEqualTo("/" + said);
            assertThat(fault.message()).contains("only one is said");
        });
    }

    @Test
    void allFaultsAreToldAtOnceInTheOrderOfTheirPlaces() {
        assertThat(faults(BEDS.replace("Yard", "Hill"), CROPS.replace("dill", "dil"), ", \"lastFrost\": \"05-10\""))
                .extracting(Fault::file, Fault::line, Fault::path)
                .containsExactly(
                        tuple("answers.json", 1, "/beds/1/name"),
                        tuple("answers.json", 1, "/crops/1/crop"),
                        tuple("answers.json", 1, "/lastFrost"));
    }
}
