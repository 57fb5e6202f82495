package bedwright.file;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Plans that were changed during their season: what they keep of the season as it began is checked, too. */
class ThroughoutFaultsTest {
    /** A kept plan file with a sound season, from its "season" to the end of it. */
    private static String season() {
        String plan = new String(Resources.bytes("faulty-plans/references.json"), UTF_8);
        return plan.substring(plan.indexOf('{', plan.indexOf("\"season\"")), plan.indexOf("\"making\""))
                .strip();
    }

    private static byte[] plan(String began, String plantings) {
        String season = season();
        return ("{\"version\": 1, \"season\": " + season.substring(0, season.length() - 1)
                        + ", \"making\": {\"seed\": 1, \"moves\": 9}, \"score\": {\"hard\": 0, \"medium\": 0,"
                        + " \"soft\": 0}, \"plantings\": [], \"throughout\":"
                        + " {\"season\":"
                        + " " + began.substring(0, began.length() - 1)
                        + ", \"plantings\": [" + plantings + "], \"notes\": 0, \"log\": \"aa\", \"before\": \"bb\"}}")
                .getBytes(UTF_8);
    }

    private static String planting(int number, String of) {
        return "{\"number\": " + number + ", " + of + ", \"sown\": \"2027-04-19\", \"plants\": 100}";
    }

    private static final String SOUND =
            "\"crop\": \"sunflower\", \"method\": \"in the bed\", \"bed\": \"Long1\", \"pool\": 1, \"lots\": 1";

    private static List<String> faults(byte[] plan) {
        List<String> found = new ArrayList<>();
        assertThatExceptionOfType(FaultyFile.class)
                .isThrownBy(() -> PlanFile.parse("plan.json", plan))
                .satisfies(e -> e.faults().forEach(fault -> found.add(fault.path() + " " + fault.message())));
        return found;
    }

    @Test
    void aSoundOneIsRead() {
        assertThat(PlanFile.parse("plan.json", plan(season(), planting(1, SOUND) + ", " + planting(2, SOUND)))
                        .plantingsThroughout())
                .hasSize(2);
    }

    @Test
    void numbersNamesAndEntriesAreChecked() {
        String plantings = String.join(
                ", ",
                planting(1, SOUND),
                planting(1, SOUND.replace("Long1", "Long7")),
                planting(3, SOUND.replace("sunflower", "sunflowers")),
                planting(4, SOUND.replace("in the bed", "in trays")),
                planting(5, SOUND.replace("\"pool\": 1", "\"pool\": 4")),
                planting(6, SOUND.replace("\"pool\": 1, \"lots\": 1", "\"standing\": 3")));

        assertThat(faults(plan(season(), plantings)))
                .satisfiesExactlyInAnyOrder(
                        fault -> assertThat(fault)
                                .startsWith("/throughout/plantings/1/number There is another planting with the number"
                                        + " \"1\""),
                        fault -> assertThat(fault).startsWith("/throughout/plantings/1/bed There is no bed \"Long7\""),
                        fault -> assertThat(fault)
                                .startsWith("/throughout/plantings/2/crop There is no crop \"sunflowers\""),
                        fault -> assertThat(fault)
                                .startsWith("/throughout/plantings/3/method There is no method \"in trays\""),
                        fault -> assertThat(fault)
                                .startsWith("/throughout/plantings/4/pool There is no entry 4")
                                .contains("\"pool\", which has 1 entry"),
                        fault -> assertThat(fault)
                                .startsWith("/throughout/plantings/5/standing There is no entry 3")
                                .contains("\"standing\", which has 1 entry"));
    }

    @Test
    void theLastOfWhatStoodMayBeNamed() {
        assertThat(PlanFile.parse(
                                "plan.json",
                                plan(
                                        season(),
                                        planting(1, SOUND.replace("\"pool\": 1, \"lots\": 1", "\"standing\": 1"))))
                        .plantingsThroughout())
                .hasSize(1);
    }

    /** Of what rests on a value at fault nothing is concluded: nobody knows the beds. */
    @Test
    void aFaultOfTheSeasonAsItBeganIsToldAlone() {
        assertThat(faults(plan(season().replace("\"name\": \"Long\"", "\"name\": 7"), planting(1, SOUND))))
                .singleElement()
                .satisfies(fault -> assertThat(fault).startsWith("/throughout/season/beds/0/name"));
    }

    @Test
    void whatDoesNotRestOnItIsToldToo() {
        String began = season().replace("\"name\": \"Long\"", "\"name\": 7")
                .replace("\"kind\": \"focal\",", "\"kind\": \"foccal\",");

        assertThat(faults(plan(began, planting(1, SOUND.replace("in the bed", "in trays")))))
                .satisfiesExactlyInAnyOrder(
                        fault -> assertThat(fault).startsWith("/throughout/season/beds/0/name"),
                        fault -> assertThat(fault).startsWith("/throughout/season/outlets/0/kind"),
                        fault -> assertThat(fault).startsWith("/throughout/plantings/0/method"));
    }

    @Test
    void theSeasonAsItBeganIsCheckedAsAnyOther() {
        assertThat(faults(plan(season().replace("\"kind\": \"focal\",", "\"kind\": \"foccal\","), planting(1, SOUND))))
                .singleElement()
                .satisfies(fault ->
                        assertThat(fault).startsWith("/throughout/season/outlets/0/kind There is no kind of stems"));
    }
}
