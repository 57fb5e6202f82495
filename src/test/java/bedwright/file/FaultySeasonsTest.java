package bedwright.file;

import static bedwright.file.Expected.at;
import static bedwright.file.Expected.file;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Season files whose values are at fault: every fault at its place. Faults are invented, like the farm. */
class FaultySeasonsTest {
    @ParameterizedTest(name = "{0}")
    @MethodSource({"shapes", "keys", "sorts", "values", "numbers", "fromTheBook"})
    void tellsAllFaultsAtTheirPlaces(String name, List<Expected> expected) {
        String file = "faulty/" + name + ".json";

        Expected.assertRefused(file, SeasonFile::parse, expected);
    }

    static Stream<Arguments> shapes() {
        return Stream.of(
                file(
                        "unknown-keys",
                        at("›\"cuont\"", "/beds/0/cuont", "no key \"cuont\"", "\"Long\"", "Did you mean \"count\"?"),
                        at("›\"lenght\"", "/beds/0/lenght", "Did you mean \"length\"?"),
                        at("›\"famly\"", "/crops/0/famly", "\"sunflower\"", "Did you mean \"family\"?"),
                        at("›\"colour\"", "/outlets/0/colour", "Take it away", "promise, service")),
                file(
                        "missing-keys",
                        at("›{\n  \"name\": \"Faulty", "/starts", "\"starts\" is missing", "First day", "2027-05-03"),
                        at("\"lastSpring\": ›{", "/site/frost/lastSpring/usual", "\"usual\" is missing"),
                        at("›{ \"name\": \"Long\"", "/beds/0/length", "\"length\" is missing", "a number"),
                        at(
                                "›{\n      \"name\": \"sunflower\"",
                                "/crops/0/clock",
                                "\"clock\" is missing",
                                "group of keys"),
                        at(
                                "›{\n          \"name\": \"in the bed\"",
                                "/crops/0/methods/0/stems",
                                "\"stems\" is missing")),
                file(
                        "repeated-keys",
                        at("›\"weeks\": 41", "/weeks", "a second time", "line 5, column 3"),
                        at("›\"slugs\": 0.3", "/crops/0/appeal/slugs", "a second time"),
                        at("\"lots\": 12, ›\"crop\"", "/pool/0/crop", "a second time")),
                file(
                        "wrong-types",
                        at("›\"40\"", "/weeks", "whole number", "the text \"40\"", "Take off the quotation marks"),
                        at("›\"5\"", "/site/meanMax/1", "2 of \"meanMax\"", "the text \"5\""),
                        at("›true", "/site/meanMax/3", "needs a number", "here stands true"),
                        at("›2.5", "/beds/0/count", "whole number", "2.5"),
                        at("›[ \"wide net\" ]", "/stock", "group of keys", "bench, trays, nets, cover"),
                        at("›\"yes\"", "/families/0/never", "true or false"),
                        at("›[\"daisy\"]", "/crops/0/family", "a text", "a list"),
                        at("\"pool\": ›{", "/pool", "a list", "Put [ ] around it"),
                        at("\"name\": ›7", "/outlets/0/name", "the number 7", "Write \"7\""),
                        at("›\"0,90\"", "/outlets/0/price", "without quotation marks: 0.90")),
                file(
                        "wrong-counts",
                        at("\"meanMin\": ›[", "/site/meanMin", "has 11 entries", "needs 12 entries"),
                        at("\"meanMax\": ›[", "/site/meanMax", "has 13 entries", "needs 12 entries"),
                        at("\"takes\": ›[]", "/pests/0/takes", "has none", "at least 1 entry"),
                        at("›\" \"", "/roles/1/name", "is empty", "Name of the role"),
                        at("\"asks\": ›[]", "/outlets/0/asks", "has none")),
                file(
                        "nulls",
                        at("\"weeks\": ›null", "/weeks", "whole number", "null"),
                        at("25, ›null", "/site/meanMax/7", "\"meanMax\"", "null"),
                        at("\"count\": ›null", "/beds/0/count", "Leave the key out for the usual, 1."),
                        at("\"orders\": ›null", "/orders", "Leave the key out."),
                        at("›\"start2\"", "/crops/0/methods/0/start2", "no key \"start2\"")),
                file("list", at("›[ 1, 2 ]", "", "one group of keys", "here stands a list")));
    }

    static Stream<Arguments> keys() {
        return Stream.of(
                file(
                        "mistyped-keys",
                        at("›\"start\": \"2027", "/start", "Did you mean \"starts\"?"),
                        at("›\"meanmin\"", "/site/meanmin", "Did you mean \"meanMin\"?"),
                        at("›\"last_spring\"", "/site/frost/last_spring", "Did you mean \"lastSpring\"?"),
                        at("›\"latest\"", "/site/frost/firstAutumn/latest", "Did you mean \"late\"?"),
                        at("›\"presure\"", "/pests/0/presure", "Did you mean \"pressure\"?"),
                        at("›\"rest years\"", "/families/0/rest years", "Did you mean \"restYears\"?"),
                        at("›\"fristCut\"", "/crops/0/clock/fristCut", "Did you mean \"firstCut\"?"),
                        at("›\"sowfrom\"", "/crops/0/methods/0/sowfrom", "Did you mean \"sowFrom\"?"),
                        at("›\"ask\"", "/outlets/0/ask", "Did you mean \"asks\"?")),
                file(
                        "keys-of-elsewhere",
                        at("\"Long\", ›\"metres\"", "/beds/0/metres", "no key \"metres\"", "heading, width"),
                        at("\"wide net\", ›\"length\"", "/stock/nets/0/length", "no key \"length\"", "buy, wear"),
                        at("\"daisy\", ›\"crop\"", "/families/0/crop", "no key \"crop\"", "never"),
                        at("›\"bed\"", "/pool/0/bed", "All keys that belong there are given"),
                        at("›\"must\"", "/outlets/0/must", "no key \"must\"", "promise")),
                file(
                        "repeated-thrice",
                        at("›\"weeks\": 41", "/weeks", "stands at line 5, column 3"),
                        at("›\"weeks\": 42", "/weeks", "stands at line 5, column 3"),
                        at("30, ›\"length\"", "/beds/0/length", "stands at line 18, column 35"),
                        at("›\"b\\u0061se\"", "/crops/0/clock/base", "\"base\"", "stands at line 39, column 18")));
    }

    static Stream<Arguments> sorts() {
        return Stream.of(
                file(
                        "numbers-for-texts",
                        at("›4, \"count\"", "/beds/0/name", "the number 4", "Write \"4\""),
                        at("›false", "/crops/0/family", "a text", "false"),
                        at("\"name\": ›null", "/crops/0/methods/0/name", "a text", "null"),
                        at("\"start\": ›{}", "/crops/0/methods/0/start", "\"sown\", \"tray\"", "an empty group"),
                        at("\"kind\": ›[\"focal\"]", "/outlets/0/kind", "a text", "a list")),
                file(
                        "groups-for-lists",
                        at("\"frost\": ›[]", "/site/frost", "an empty list", "lastSpring, firstAutumn"),
                        at("›\"wind\"", "/site/wind", "no key \"wind\"", "storms"),
                        at("\"takes\": ›\"seedlings\"", "/pests/0/takes", "Put [ ] around it"),
                        at("\"kinds\": ›\"focal/sunflower\"", "/crops/0/kinds", "Put [ ] around it"),
                        at("\"appeal\": ›[", "/crops/0/appeal", "a group { } of names with their values"),
                        at("\"asks\": ›{", "/outlets/0/asks", "Put [ ] around it")),
                file(
                        "numbers-in-words",
                        at("›\"forty\"", "/weeks", "a whole number", "the text \"forty\""),
                        at("›\"48.5 N\"", "/site/latitude", "without unit and quotation marks"),
                        at("›\"30 m\"", "/beds/0/length", "without unit and quotation marks"),
                        at("›\"1,4\"", "/crops/0/height", "1.4"),
                        at("›\"\"", "/pool/0/plants", "a whole number", "the text \"\""),
                        at("›\"NaN\"", "/outlets/0/price", "a number", "the text \"NaN\"")),
                file(
                        "farm-in-the-air",
                        at("\"beds\": ›[]", "/beds", "has none", "at least 1 entry"),
                        at("\"methods\": ›[]", "/crops/0/methods", "has none", "The ways it is grown")));
    }

    static Stream<Arguments> numbers() {
        return Stream.of(
                file(
                        "beyond-any-double",
                        at("›4000000", "/weeks", "between 1 and 80"),
                        at("›-1e999", "/site/latitude", "larger than any number can be", "-65 and 65"),
                        at("›1e-400", "/beds/0/length", "1e-400", "between 0.5 and 2000 m"),
                        at("›9223372036854775808", "/pool/0/plants", "between 1 and 1000000"),
                        at("›12.00000000", "/pool/0/lots", "whole number", "behind the point"),
                        at("›1e309", "/outlets/0/price", "larger than any number can be")),
                file(
                        "whole-numbers",
                        at("›40.5", "/weeks", "whole number", "behind the point"),
                        at("›-2, \"length\"", "/beds/0/count", "between 1 and 500"),
                        at("›1e30", "/families/0/restYears", "between 0 and 20 years"),
                        at("\"rows\": ›0", "/crops/0/methods/0/rows", "between 1 and 100"),
                        at("›99.9", "/pool/0/plants", "whole number")),
                file(
                        "days-not-in-the-calendar",
                        at("›\"2027-02-30\"", "/starts", "28 days"),
                        at("›\"04-31\"", "/site/frost/lastSpring/early", "no such day"),
                        at("›\"00-01\"", "/site/frost/lastSpring/usual", "12 months"),
                        at("›\"13-01\"", "/site/frost/lastSpring/late", "12 months"),
                        at("›\"15 April\"", "/crops/0/methods/0/sowFrom", "month, then day", "05-03"),
                        at("›\"2027-6-21\"", "/outlets/0/asks/0/from", "with all their digits"),
                        at("›\"27-09-2027\"", "/outlets/0/asks/0/to", "year, month and day")));
    }

    static Stream<Arguments> values() {
        return Stream.of(
                file(
                        "out-of-range",
                        at("›81", "/weeks", "\"weeks\" is 81", "between 1 and 80"),
                        at("›75", "/site/latitude", "between -65 and 65 degrees"),
                        at("›88", "/site/meanMin/4", "5 of \"meanMin\"", "between -60 and 45 °C"),
                        at("\"length\": ›0", "/beds/0/length", "between 0.5 and 2000 m"),
                        at("›5000.5", "/crops/0/clock/emergence", "between 0 and 5000 °C·d"),
                        at("›-1 }", "/crops/0/appeal/slugs", "\"slugs\" in \"appeal\"", "between 0 and 10"),
                        at("›99999999999", "/crops/0/methods/0/rows", "between 1 and 100"),
                        at("\"emergence\": ›0\n", "/crops/0/methods/0/emergence", "above 0 and at most 1"),
                        at("›-0.9", "/outlets/0/price", "at least 0")),
                file(
                        "absurd-numbers",
                        at("›1e999999999", "/weeks", "out of any range", "between 1 and 80"),
                        at("›1e400", "/site/latitude", "larger than any number", "between -65 and 65"),
                        at("\"plants\": ›9", "/pool/0/plants", "300 characters", "Round it")),
                file("half-character", at("›\"An invented", "/about", "half a character", "\\ud83c")),
                file(
                        "words",
                        at("›\"steddy\"", "/caution", "\"careful\"", "0 to 100", "Did you mean \"steady\"?"),
                        at("›\"seedling\"", "/pests/0/takes/1", "\"blooms\"", "Did you mean \"seedlings\"?"),
                        at("›\"leaves\"", "/pests/0/takes/2", "must be one of \"seed\", \"seedlings\" or \"blooms\""),
                        at("\"convention\": ›1", "/crops/0/clock/convention", "\"clamped\"", "the number 1"),
                        at("›\"sun_and_sap\"", "/crops/0/hazards/0", "Did you mean \"sun-and-sap\"?"),
                        at("›\"Sown\"", "/crops/0/methods/0/start", "Did you mean \"sown\"?"),
                        at("›\"plant_out\"", "/crops/0/methods/0/jobs/plant_out", "Did you mean \"plant-out\"?")),
                file(
                        "dates",
                        at("›\"2027-02-29\"", "/starts", "no such day", "28 days"),
                        at("›\"5-15\"", "/site/frost/lastSpring/late", "two digits each"),
                        at("›\"09-31\"", "/site/frost/firstAutumn/early", "no such day"),
                        at("›20270401", "/beds/0/workableFrom", "a date as in \"2027-05-03\""),
                        at("›\"2027-04-15\"", "/crops/0/methods/0/sowFrom", "leave the year off", "\"04-15\""),
                        at("›\"31-07\"", "/crops/0/methods/0/sowTo", "12 months", "month comes first"),
                        at("›\"21.06.2027\"", "/outlets/0/asks/0/from", "as in 2027-05-03"),
                        at("›\"1027-09-27\"", "/outlets/0/asks/0/to", "1900 to 2200")),
                file(
                        "of-both-sorts",
                        at("›400", "/weeks", "between 1 and 80"),
                        at("\"count\": ›0", "/beds/0/count", "between 1 and 500"),
                        at("›\"nam\"", "/crops/0/nam", "Did you mean \"name\"?"),
                        at("›\"rose\"", "/crops/0/family", "no family \"rose\""),
                        at("›\"fokal\"", "/outlets/0/kind", "Did you mean \"focal\"?"),
                        at("›\"2027-06-22\"", "/outlets/0/asks/0/from", "a Tuesday")));
    }

    static Stream<Arguments> fromTheBook() {
        return Stream.of(
                file("book-unknown-crop", at("›\"zinia\"", "/crops/0/book", "\"zinia\"", "Did you mean \"zinnia\"?")),
                file("book-no-such-crop", at("›\"triffid\"", "/crops/0/book", "no crop", "\"crops\" lists them")),
                file("book-not-a-name", at("›7 }", "/crops/0/book", "a text", "the number 7")),
                file("book-unknown-method", at("›\"swon\"", "/crops/0/methods/0/book", "Did you mean \"sown\"?")),
                file(
                        "book-unknown-method-group",
                        at("›\"balloon\"", "/crops/0/methods/0/book", "\"dill\"", "\"sown, netted\"")),
                file(
                        "book-unknown-key",
                        at(
                                "›\"hieght\"",
                                "/crops/0/hieght",
                                "in entry 1 of \"crops\" (\"dill\")",
                                "Did you mean \"height\"?")),
                file(
                        "book-unknown-key-of-method",
                        at(
                                "›\"stms\"",
                                "/crops/0/methods/0/stms",
                                "in entry 1 of \"methods\" (\"sown\")",
                                "Did you mean \"stems\"?")),
                file("book-unknown-key-of-clock", at("›\"frstCut\"", "/crops/0/clock/frstCut", "\"firstCut\"")),
                file("book-wrong-type", at("›\"tall\"", "/crops/0/height", "needs a number", "the text \"tall\"")),
                file("book-out-of-range", at("›1.5 }", "/crops/0/methods/0/saleable", "between 0 and 1")),
                file("book-no-role", at("›\"larkspur\"", "/crops/1/kinds", "\"spike\"", "Add that role")),
                file(
                        "book-no-net",
                        at("›\"tray, pinched", "/crops/1/methods/0/net", "has no \"nets\"", "Add one there")));
    }
}
