package bedwright.file;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

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
}
