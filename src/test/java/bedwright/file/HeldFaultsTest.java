package bedwright.file;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Lots held in place that the pool does not have, or that have no room beside what stands there. */
class HeldFaultsTest {
    private static List<Fault> faults(String more, String... replaced) throws IOException {
        String text = Files.readString(Path.of("problems/first-bed.json"))
                .replace("\"outlets\": [", more + ", \"outlets\": [");
        for (int i = 0; i < replaced.length; i += 2) {
            assertThat(text).contains(replaced[i]);
            text = text.replace(replaced[i], replaced[i + 1]);
        }
        try {
            SeasonFile.parse("file", text.getBytes(UTF_8));
            return List.of();
        } catch (FaultyFile e) {
            return e.faults();
        }
    }

    private static String held(String crop, String more) {
        return "\"held\": [{\"crop\": \"" + crop
                + "\", \"bed\": \"Open bed\", \"sown\": \"2027-05-10\", \"method\": \"sown\"" + more + "}]";
    }

    @Test
    void aCropWithoutLotsCannotBeHeld() throws IOException {
        assertThat(faults(held("dill", ""), "{\"crop\": \"dill\", \"plants\": 75, \"lots\": 3},", ""))
                .singleElement()
                .satisfies(fault -> {
                    assertThat(fault.path()).isEqualTo("/held/0/crop");
                    assertThat(fault.message()).contains("no lots of \"dill\"", "belongs under \"standing\"");
                });
    }

    @Test
    void theEntryOfThePoolMustBeOfTheSameCrop() throws IOException {
        assertThat(faults(held("dill", ", \"pool\": 1"))).singleElement().satisfies(fault -> {
            assertThat(fault.path()).isEqualTo("/held/0/pool");
            assertThat(fault.message()).contains("of \"sunflower, once-cut\", but here \"dill\" is held", "must agree");
        });
        assertThat(faults(held("dill", ", \"pool\": 3"))).isEmpty();
    }

    /** 75 dill in five rows 0.18 m apart take 2.7 m, 300 that stand there 10.8 of the bed's 12. */
    @Test
    void whatIsWrittenOutKeepsItsRoomUntilItsLastDay() throws IOException {
        String standing =
                "\"standing\": [{\"name\": \"Old row\", \"crop\": \"dill\", \"plants\": 300, \"bed\": \"Open bed\","
                        + " \"until\": \"UNTIL\", \"stems\": [{\"week\": \"2027-05-17\", \"stems\": 5}]}], ";

        assertThat(faults(standing.replace("UNTIL", "2027-06-30") + held("dill", "")))
                .singleElement()
                .satisfies(fault -> {
                    assertThat(fault.path()).isEqualTo("/held/0/bed");
                    assertThat(fault.message())
                            .contains("2.7 m of \"dill\"", "beside 10.8 m that are held or stand there", "has 12 m");
                });
        assertThat(faults(standing.replace("300", "250").replace("UNTIL", "2027-06-30") + held("dill", "")))
                .isEmpty();
        assertThat(faults(standing.replace("UNTIL", "2027-05-23")
                        + held("dill", "").replace("2027-05-10", "2027-05-24")))
                .isEmpty();
    }

    private static void assertOne(List<Fault> faults, String path, String... words) {
        assertThat(faults).singleElement().satisfies(fault -> {
            assertThat(fault.path()).isEqualTo(path);
            assertThat(fault.message()).contains(words);
        });
    }

    private static String dill(int... lots) {
        return Arrays.stream(lots)
                .mapToObj(number -> "{\"crop\": \"dill\", \"lots\": " + number
                        + ", \"bed\": \"Open bed\", \"sown\": \"2027-05-10\", \"method\": \"sown\"}")
                .collect(Collectors.joining(", ", "\"held\": [", "]"));
    }

    /** The pool has 3 lots of dill, which take 8.1 m. */
    @Test
    void lotsBeyondThoseOfThePoolAreToldOnce() throws IOException {
        assertThat(faults(dill(2, 1))).isEmpty();
        assertOne(faults(dill(3, 1)), "/held/1/lots", "4 lots of \"dill\"", "entry 3 of the pool has 3", "Hold fewer");
        assertOne(faults(dill(4, 1), "\"plants\": 75", "\"plants\": 10"), "/held/0/lots", "4 lots of \"dill\"");
    }

    @Test
    void theLastEntryOfThePoolIsOfAnotherCrop() throws IOException {
        assertOne(
                faults(held("dill", ", \"pool\": 4")),
                "/held/0/pool",
                "Entry 4 of the pool is of \"basil for foliage\"");
        assertOne(faults(held("dill", ", \"pool\": 5")), "/held/0/pool", "There is no entry 5", "which has 4 entries");
    }

    private static final String OPEN = "\"Open bed\", \"at\": {\"x\": 20, \"y\": 0}, \"heading\": 0, \"length\": ";

    /** The other bed has 12 m. */
    @Test
    void theRoomIsThatOfItsOwnBed() throws IOException {
        assertThat(faults(held("dill", ""), OPEN + "12", OPEN + "2.7")).isEmpty();
        List<Fault> faults = faults(held("dill", ""), OPEN + "12", OPEN + "2");

        assertOne(faults, "/held/0/bed", "2.7 m of \"dill\" come into \"Open bed\" on 2027-05-10, but the bed has 2 m");
    }

    /** 60 sunflowers in four rows 0.2 m apart, two weeks in the tray. */
    @Test
    void whatIsRaisedComesIntoItsBedWhenItIsPlantedOut() throws IOException {
        assertOne(
                faults(
                        held("sunflower, once-cut", "").replace("\"method\": \"sown\"", "\"method\": \"tray\""),
                        OPEN + "12",
                        OPEN + "2"),
                "/held/0/bed",
                "3 m of \"sunflower, once-cut\" come into \"Open bed\" on 2027-05-24,");
    }

    @Test
    void whatThePoolDoesNotHaveTakesNoRoomFromTheNext() throws IOException {
        String two = held("dill", "")
                .replace(
                        "[{",
                        "[{\"crop\": \"basil for foliage\", \"bed\": \"Open bed\","
                                + " \"sown\": \"2027-05-10\", \"method\": \"bought plugs, pinched\"}, {");

        assertOne(
                faults(two, ",\n    {\"crop\": \"basil for foliage\", \"plants\": 36, \"lots\": 2}", ""),
                "/held/0/crop",
                "no lots of \"basil for foliage\"");
    }

    /** 100 sunflowers in four rows take 5 m at 0.2 m, sown, and 10 m at 0.4 m, raised; 2.7 m of dill come to them. */
    @ParameterizedTest
    @CsvSource({"'', 0", "'\"method\": \"sown\", ', 0", "'\"method\": \"tray\", ', 1"})
    void whatStandsTakesTheRoomOfItsMethodOrElseOfItsCropsFirst(String method, int told) throws IOException {
        String standing = "\"standing\": [{\"crop\": \"sunflower, once-cut\", \"plants\": 100, \"bed\": \"Open bed\", "
                + method + "\"stems\": [{\"week\": \"2027-05-17\", \"stems\": 5}]}], ";

        assertThat(faults(
                        standing + held("dill", ""),
                        "\"emergence\": 0.9, \"rows\": 4, \"spacing\": 0.2",
                        "\"emergence\": 0.9, \"rows\": 4, \"spacing\": 0.4"))
                .hasSize(told);
    }

    /** 200 sunflowers at 0.2 m take 10 m, at 0.4 m the whole bed twice over: the first method is meant. */
    @Test
    void whatStandsByNoMethodIsNotLeftOut() throws IOException {
        String standing = "\"standing\": [{\"crop\": \"sunflower, once-cut\", \"plants\": 200, \"bed\": \"Open bed\", "
                + "\"stems\": [{\"week\": \"2027-05-17\", \"stems\": 5}]}], ";

        assertOne(faults(standing + held("dill", "")), "/held/0/bed", "beside 10 m that are held or stand there then");
    }
}
