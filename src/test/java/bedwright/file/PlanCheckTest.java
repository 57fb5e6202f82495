package bedwright.file;

import static bedwright.file.Expected.at;
import static java.nio.charset.StandardCharsets.UTF_8;

import java.util.List;
import org.junit.jupiter.api.Test;

/** What the plantings of a plan say of the pool and of what stands, against what its season says. */
class PlanCheckTest {
    private static final String DILL = "{\"crop\": \"dill\", \"plants\": 50, \"bed\": \"Open bed\", ";
    private static final String SOWN = DILL + "\"method\": \"sown\", \"sown\": \"2027-05-10\"}";
    private static final String UNDER_WAY =
            DILL + "\"method\": \"sown\", \"sown\": \"2027-05-10\", \"past\": {\"sown\": \"2027-05-11\", \"pool\": 3}}";
    private static final String WRITTEN = DILL + "\"stems\": [{\"week\": \"2027-06-14\", \"stems\": 9}]}";

    /** The first bed's season with a planting of dill that stands; its pool's third entry has 3 lots of 75 dill. */
    private static Edited season(String standing) {
        return Edited.firstBed(
                "\"$schema\": \"../src/main/resources/bedwright/season.schema.json\",",
                "",
                "\"pool\": [",
                "\"standing\": [" + standing + "],\n\"pool\": [");
    }

    private static String planting(int number, String crop, String method, int plants, String from) {
        return "\n{\"number\": " + number + ", \"crop\": \"" + crop + "\", \"method\": \"" + method
                + "\", \"bed\": \"Open bed\", \"sown\": \"2027-05-10\", \"plants\": " + plants + ", " + from + "}";
    }

    private static String dill(int number, int plants, String from) {
        return planting(number, "dill", "sown", plants, from);
    }

    private static void isToldOf(Edited season, List<String> plantings, Expected... expected) {
        String plan = "{\"version\": 1, \"season\": " + season.text().strip()
                + ", \"making\": {\"seed\": 1, \"moves\": 9}, \"score\": {\"hard\": 0, \"medium\": 0, \"soft\": 0},"
                + " \"plantings\": [" + String.join(",", plantings) + "]}";
        Expected.assertAll("plan.json", plan, faults(plan), List.of(expected));
    }

    private static List<Fault> faults(String plan) {
        try {
            PlanFile.parse("plan.json", plan.getBytes(UTF_8));
            return List.of();
        } catch (FaultyFile e) {
            return e.faults();
        }
    }

    @Test
    void allLotsOfThePoolMayBeTaken() {
        isToldOf(
                season(SOWN),
                List.of(dill(1, 150, "\"pool\": 3, \"lots\": 2"), dill(2, 75, "\"pool\": 3, \"lots\": 1")));
    }

    @Test
    void lotsBeyondThePoolAreToldWhereTheyBegin() {
        isToldOf(
                season(SOWN),
                List.of(
                        dill(1, 225, "\"pool\": 3, \"lots\": 3"),
                        dill(2, 75, "\"pool\": 3, \"lots\": 1"),
                        dill(3, 75, "\"pool\": 3, \"lots\": 1")),
                at(
                        "{\"number\": 2, \"crop\": \"dill\", \"method\": \"sown\", \"bed\": \"Open bed\","
                                + " \"sown\": \"2027-05-10\", \"plants\": 75, \"pool\": 3, \"lots\": ›1",
                        "/plantings/1/lots",
                        "4 lots are taken from entry 3 of the pool, which has 3"));
    }

    @Test
    void whatStandsIsOfAMethodOfItsCrop() {
        isToldOf(
                season(SOWN),
                List.of(planting(1, "dill", "from cuttings", 50, "\"standing\": 1")),
                at("›\"from cuttings\"", "/plantings/0/method", "no method \"from cuttings\" of \"dill\""));
    }

    @Test
    void howWhatIsWrittenOutWasSownIsNotAsked() {
        isToldOf(season(WRITTEN), List.of(planting(1, "dill", "from cuttings", 50, "\"standing\": 1")));
    }

    @Test
    void whatStandsIsOfTheCropThatStandsThere() {
        isToldOf(
                season(SOWN),
                List.of(planting(1, "sunflower, once-cut", "sown", 50, "\"standing\": 1")),
                at(
                        "1, \"crop\": ›\"sunflower, once-cut\"",
                        "/plantings/0/crop",
                        "Entry 1 of the standing plantings is of \"dill\", but here stands \"sunflower, once-cut\""));
    }

    @Test
    void whatStandsOnlySinceTheSeasonBeganMayNameItsLotsToo() {
        isToldOf(season(UNDER_WAY), List.of(dill(1, 50, "\"pool\": 3, \"standing\": 1")));
    }

    @Test
    void suchAPlantingAgreesWithWhatStands() {
        isToldOf(
                season(UNDER_WAY),
                List.of(dill(1, 75, "\"pool\": 3, \"standing\": 1")),
                at("\"plants\": ›75, \"pool\": 3, \"st", "/plantings/0/plants", "has 50 plants, but here stand 75"));
    }

    @Test
    void whatStoodBeforeTheSeasonHasNoLots() {
        isToldOf(
                season(SOWN),
                List.of(dill(1, 50, "\"pool\": 3, \"standing\": 1")),
                at("›{\"number\": 1", "/plantings/0", "both are given"));
    }

    @Test
    void norHasWhatDoesNotStand() {
        isToldOf(
                season(UNDER_WAY),
                List.of(dill(1, 50, "\"pool\": 3, \"standing\": 2")),
                at("›{\"number\": 1", "/plantings/0", "both are given"));
    }

    @Test
    void anEntryOfThePoolAtFaultIsToldAlone() {
        isToldOf(
                season(SOWN).with("{\"crop\": \"dill\", \"plants\": 75", "{\"crop\": 7, \"plants\": 75"),
                List.of(dill(1, 75, "\"pool\": 3, \"lots\": 1")),
                at("›7, \"plants\": 75", "/season/pool/2/crop", "a text"));
    }

    @Test
    void aStandingPlantingAtFaultIsToldAlone() {
        isToldOf(
                season(SOWN.replace("\"dill\"", "7")),
                List.of(dill(1, 50, "\"standing\": 1")),
                at("›7, \"plants\": 50", "/season/standing/0/crop", "a text"));
    }
}
