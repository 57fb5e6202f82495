package bedwright.file;

import static bedwright.file.Expected.at;
import static bedwright.file.Expected.file;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Seasons whose values are right one by one but don't hold together. */
class SeasonCheckTest {
    @Test
    void findsNothingInASeasonThatHoldsTogether() {
        assertThat(SeasonCheck.of(Resources.season("page.json"))).isEmpty();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource({"names", "figures", "times"})
    void tellsAllFlawsAtTheirPlaces(String name, List<Expected> expected) {
        String file = "faulty/" + name + ".json";

        Expected.assertRefused(file, SeasonFile::parse, expected);
    }

    /** It is served by nobody, which is allowed: so it is told, but no fault. */
    @Test
    void anOutletThatPaysLessThanCuttingIsWorthALook() {
        String file = "odd/outlet-below-cutting.json";

        assertThat(SeasonFile.check(file, Resources.bytes(file)).remarks()).anySatisfy(remark -> {
            assertThat(remark.place()).isEqualTo(new Place(61, 16));
            assertThat(remark.path()).isEqualTo("/outlets/0/price");
            assertThat(remark.message()).contains("\"market\" pays 0.1", "no more than cutting", "never get");
        });
    }

    static Stream<Arguments> names() {
        return Stream.of(
                file(
                        "references",
                        at("›\"pea\"", "/beds/0/history/0/family", "no family \"pea\"", "\"daisy\""),
                        at("›\"dasies\"", "/crops/0/family", "no family \"dasies\""),
                        at("›\"focal/sunflowers\"", "/crops/0/kinds/0/kind", "Did you mean \"focal/sunflower\"?"),
                        at("›\"snails\"", "/crops/0/appeal/snails", "no pest \"snails\""),
                        at("›\"slug\"", "/crops/0/appeal/slug", "Did you mean \"slugs\"?"),
                        at("›\"narrow net\"", "/crops/0/methods/0/net/net", "no net \"narrow net\"", "\"wide net\""),
                        at("›\"firstcut\": {}", "/crops/0/methods/0/figures/firstcut", "Did you mean \"firstCut\"?"),
                        at("›\"sunflowers\", \"plants\": 100", "/pool/0/crop", "Did you mean \"sunflower\"?"),
                        at("\"recipe\": ›\"posy\"", "/orders/0/recipe", "no recipe \"posy\"", "\"big posy\""),
                        at("›\"filler/dill\"", "/recipes/0/lines/0/kind", "no kind of stems", "\"filler\""),
                        at(
                                "›\"in trays\"",
                                "/standing/0/method",
                                "method \"in trays\" of \"sunflower\"",
                                "\"in the bed\""),
                        at("›\"Long3\"", "/standing/0/bed", "no bed \"Long3\""),
                        at("›\"peony\"", "/standing/1/crop", "no crop \"peony\""),
                        at("›\"spike\"", "/outlets/0/kind", "no kind of stems \"spike\"", "\"focal\"")),
                file(
                        "given-seasons",
                        at("›\"hares\": 2", "/possible/given/0/pests/hares", "\"hares\""),
                        at("›\"wheat\": 1", "/possible/given/0/yields/wheat", "no crop \"wheat\""),
                        at("›\"oats\": 1", "/possible/given/0/firstCut/oats", "no crop \"oats\"")),
                file(
                        "names-twice",
                        at("›\"Long2\"", "/beds/1/name", "another bed \"Long2\""),
                        at("›\"slugs\", \"takes\": [\"seed\",", "/pests/1/name", "another pest"),
                        at("\"seed\", ›\"seed\"", "/pests/1/takes/1", "twice"),
                        at("›\"wide net\", \"metres\": 100", "/stock/nets/1/name", "another net"),
                        at("›\"sunflower\" }, { \"name\": \"warm", "/roles/0/kinds/2/name", "another kind"),
                        at("›\"warm/red\"", "/roles/0/kinds/3/name", "holds a slash"),
                        at("›\"focal\" },", "/roles/1/name", "another role"),
                        at("›\"daisy\" }", "/families/1/name", "another family"),
                        at("›\"a\", \"start\": \"sown\", \"rows\": 4", "/crops/0/methods/1/name", "another method"),
                        at("›\"market\", \"recipe\"", "/orders/0/name", "another outlet or order"),
                        at("›\"posy\", \"lines\": [ { \"kind\": \"focal\"", "/recipes/1/name", "another recipe")),
                file(
                        "held",
                        at("›\"sunflowers\", \"bed\"", "/held/0/crop", "no crop \"sunflowers\""),
                        at("›\"Long3\"", "/held/1/bed", "no bed \"Long3\""),
                        at("›\"2027-05-18\"", "/held/2/sown", "a Tuesday", "2027-05-17 or 2027-05-24"),
                        at("›\"2028-05-01\"", "/held/3/sown", "the season runs from 2027-03-01 to 2027-12-05"),
                        at("›\"in trays\"", "/held/4/method", "no method \"in trays\""),
                        at("\"pool\": ›2", "/held/5/pool", "no entry 2", "which has 1 entry"),
                        at("\"lots\": ›10", "/held/6/lots", "14 lots", "has 12"),
                        at(
                                "\"lots\": 1, \"bed\": ›\"Long2\"",
                                "/held/7/bed",
                                "3 m",
                                "beside 30 m",
                                "the bed has 30 m")),
                file(
                        "kinds-outside-the-tree",
                        at(
                                "›\"focal/sunflower/yellow\"",
                                "/crops/0/kinds/0/kind",
                                "no kind of stems \"focal/sunflower/yellow\"",
                                "\"focal/dahlia\""),
                        at("›\"focal/\"", "/crops/0/methods/0/kinds/0/kind", "Did you mean \"focal\"?"),
                        at("›\"/focal\"", "/crops/0/methods/0/kinds/1/kind", "Did you mean \"focal\"?"),
                        at("›\"foliage/basil\"", "/recipes/0/lines/0/kind", "no kind of stems", "\"filler\""),
                        at("›\"Focal\"", "/outlets/0/kind", "Did you mean \"focal\"?")),
                file(
                        "kinds-too-deep",
                        at(
                                "\"e\", \"kinds\": ›[",
                                "/roles/1/kinds/0/kinds/0/kinds/0/kinds/0/kinds",
                                "more than 5 deep")));
    }

    static Stream<Arguments> figures() {
        return Stream.of(
                file(
                        "shares",
                        at(
                                "\"kinds\": ›[ { \"kind\": \"focal/sunflower\"",
                                "/crops/0/kinds",
                                "add up to 0.9",
                                "by 0.1"),
                        at("\"cutShares\": ›[", "/crops/0/methods/0/cutShares", "add up to 0.999999"),
                        at(
                                "\"kinds\": ›[ { \"kind\": \"focal\",",
                                "/crops/0/methods/0/kinds",
                                "add up to 0.7",
                                "by 0.3")),
                file(
                        "weather",
                        at("-1.5, ›11,", "/site/meanMin/2", "month 3", "11 °C", "10 °C"),
                        at("›\"04-01\", \"late\"", "/site/frost/lastSpring/usual", "before the early one"),
                        at("›\"10-10\"", "/site/frost/firstAutumn/late", "before the usual one")),
                file(
                        "clocks",
                        at("\"upper\": ›6.7", "/crops/0/clock/upper", "not above the base temperature"),
                        at("›90", "/crops/0/clock/pinch", "pinching stage", "before emergence at 97"),
                        at(
                                "\"firstCut\": ›80",
                                "/crops/0/clock/firstCut",
                                "first cut",
                                "before the pinching stage at 90"),
                        at("\"longDay\": ›12", "/crops/0/clock/dayLength/longDay", "not longer than", "14 hours")),
                file(
                        "pinched-without-a-mark",
                        at("›96.5", "/crops/0/clock/firstCut", "before emergence at 97"),
                        at("\"pinched\": ›true", "/crops/0/methods/0/pinched", "no pinching stage")),
                file(
                        "trays",
                        at("›{ \"name\": \"a\"", "/crops/0/methods/0/trayWeeks", "for 0 weeks"),
                        at("\"hardeningWeeks\": ›5", "/crops/0/methods/1/hardeningWeeks", "more than the 4"),
                        at("\"plugs\", \"trayWeeks\": ›4", "/crops/0/methods/2/trayWeeks", "\"plugs\""),
                        at(
                                "\"hardeningWeeks\": ›1",
                                "/crops/0/methods/2/hardeningWeeks",
                                "only what is raised in trays"),
                        at("\"holds\": ›2", "/crops/0/methods/2/holds", "only what is raised in trays"),
                        // Its trayWeeks are only mistyped: nothing is said of 0 weeks.
                        at("›\"trayWeek\": 4", "/crops/0/methods/3/trayWeek", "Did you mean \"trayWeeks\"?"),
                        at("\"warmest\": ›10", "/crops/0/methods/4/seedTemperature/warmest", "below the coldest"),
                        at("\"cover\": ›{}", "/crops/0/methods/4/cover", "\"stock\" has no \"cover\"")),
                file("promises", at("\"promise\": ›{", "/outlets/0/promise", "\"must\" and \"buyIn\"", "Keep one")),
                file(
                        "nothing-to-come-from",
                        at("\"range\": ›15", "/pests/0/range", "no \"roughGrass\""),
                        at("\"cover\": ›{", "/crops/0/methods/0/cover", "no \"cover\"")));
    }

    static Stream<Arguments> times() {
        return Stream.of(
                file(
                        "weekdays",
                        at("›\"2027-05-02\"", "/standing/0/sown", "a Sunday", "2027-04-26 or 2027-05-03"),
                        at("›\"2027-06-23\"", "/standing/1/stems/0/week", "a Wednesday"),
                        at("›\"2027-04-13\"", "/possible/given/0/badSeedBeds/1", "a Tuesday"),
                        at("›\"2027-06-22\"", "/outlets/0/asks/0/from", "a Tuesday", "on a Monday"),
                        at("›\"2027-09-26\"", "/outlets/0/asks/0/to", "a Sunday", "2027-09-20 or 2027-09-27")),
                file(
                        "wrong-weekdays",
                        at("›\"2027-06-21\"", "/outlets/0/asks/0/from", "a Monday", "on a Tuesday", "2027-06-22"),
                        at("›\"2027-09-27\"", "/outlets/0/asks/0/to", "a Monday", "2027-09-21 or 2027-09-28")),
                // What is sown in May is not there yet, and the other bed is just full.
                file(
                        "standing-overlap",
                        at(
                                "›150",
                                "/standing/2/plants",
                                "4.5 m of this one",
                                "\"Long1\"",
                                "18 m of \"Autumn sown\" and 9 m of \"Old row\": together 31.5 m",
                                "the bed has 30 m",
                                "Give fewer plants")),
                file(
                        "outside-the-season",
                        at("›\"2028-06-19\"", "/standing/0/stems/0/week", "from 2027-03-01 to 2027-12-05"),
                        at("\"until\": ›\"2027-02-28\"", "/standing/0/until", "before the season starts"),
                        at("\"sown\": ›\"2027-12-06\"", "/standing/1/sown", "to 2027-12-05"),
                        at("›\"2025-09-01\"", "/standing/2/sown", "more than 400 days"),
                        at("›\"2027-05-01\"", "/labour/own/0/to", "before \"from\", 2027-06-01"),
                        at("\"on\": ›\"2027-02-28\"", "/possible/given/0/gusts/0/on", "from 2027-03-01"),
                        at("›\"2027-02-22\"", "/outlets/0/asks/0/from", "from 2027-03-01"),
                        at("\"to\": ›\"2027-12-06\"", "/outlets/0/asks/0/to", "to 2027-12-05"),
                        at("›\"2027-06-28\"", "/outlets/0/asks/1/to", "before \"from\", 2027-07-05")),
                file(
                        "beds",
                        at("›\"2027-05-01\"", "/beds/0/taken/0/to", "before \"from\""),
                        at("\"bed\": ›3", "/beds/0/taken/0/bed", "has 2 beds"),
                        at("\"bed\": ›4", "/beds/0/history/0/bed", "has 2 beds"),
                        at("›{ \"x\": 1.0", "/windbreaks/0/to", "windbreak has no length"),
                        at("\"to\": ›{ \"x\": 0,", "/roughGrass/0/to", "rough grass has no length")),
                file(
                        "standing",
                        at("›{ \"on\"", "/standing/0/clock", "no bed is given"),
                        at("›{ \"on\"", "/standing/0/clock", "method is not given"),
                        at("›\"2026-10-05\"", "/standing/1/sown", "before the season", "method"),
                        at("›\"2027-05-03\"", "/standing/2/sown", "written out", "Leave \"sown\" out"),
                        at("›[ { \"week\"", "/standing/2/stems", "no bed is given"),
                        at("›\"2027-08-01\"", "/standing/3/until", "no stems are written")));
    }
}
