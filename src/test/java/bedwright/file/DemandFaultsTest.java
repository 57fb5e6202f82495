package bedwright.file;

import static bedwright.file.Expected.at;

import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Outlets and orders that don't hold together. */
class DemandFaultsTest {
    static Stream<Arguments> edits() {
        return Stream.of(
                Arguments.of(
                        "\"Stall, filler\"",
                        "\"Stall, focal\"",
                        at("›\"Stall, focal\", \"kind\": \"filler\"", "/outlets/1/name", "another outlet or order")),
                Arguments.of(
                        "\"Porch bouquets\"",
                        "\"Stall, foliage\"",
                        at("›\"Stall, foliage\",\n", "/orders/0/name", "another outlet or order \"Stall, foliage\"")),
                Arguments.of(
                        "\"2027-06-28\"",
                        "\"2027-06-29\"",
                        at("›\"2027-06-29\"", "/orders/0/asks/0/from", "a Tuesday", "2027-06-28 or 2027-07-05")),
                Arguments.of(
                        "{\"buyIn\": 1.6}",
                        "{\"buyIn\": 1.6, \"shortage\": 2}",
                        at("\"promise\": ›{", "/orders/0/promise", "\"buyIn\" and \"shortage\"", "Keep one of them")),
                Arguments.of(
                        "\"service\": 30",
                        "\"promise\": {\"must\": 2, \"shortage\": 2}",
                        at("\"promise\": ›{\"must\"", "/outlets/0/promise", "\"must\" and \"shortage\"")));
    }

    @ParameterizedTest(name = "{1}")
    @MethodSource("edits")
    void areToldWhereTheyStand(String from, String to, Expected expected) {
        Edited.firstBed(from, to).isToldOf(expected);
    }
}
