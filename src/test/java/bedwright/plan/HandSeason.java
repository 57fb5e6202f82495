package bedwright.plan;

import static org.assertj.core.api.Assertions.assertThat;

import bedwright.file.SeasonFile;
import bedwright.season.Season;
import java.nio.charset.StandardCharsets;

/**
 * A season to reckon by hand: ten weeks of 20 °C from Monday 1 March 2027, a bed of 100 m and jobs that take no time. A
 * lot is ten plants on ten metres; at base 10 °C each day adds 10 °C·d, so a lot sown in week w is up in week w, gives
 * five stems in each of the weeks w + 3 and w + 4, and with its week of grace holds its bed in the weeks w to w + 5.
 */
final class HandSeason {
    private String text = """
            {
              "name": "By hand (invented)",
              "starts": "2027-03-01",
              "weeks": 10,
              "site": {
                "latitude": 45,
                "meanMin": [20, 20, 20, 20, 20, 20, 20, 20, 20, 20, 20, 20],
                "meanMax": [20, 20, 20, 20, 20, 20, 20, 20, 20, 20, 20, 20]
              },
              "beds": [{"name": "Bed", "length": 100}],
              "stock": {},
              "labour": {
                "jobs": {
                  "prepare": {"minutes": 0}, "sow": {"minutes": 0}, "fill-trays": {"minutes": 0},
                  "plant-out": {"minutes": 0}, "net-up": {"minutes": 0}, "net-down": {"minutes": 0},
                  "cover-on": {"minutes": 0}, "cover-off": {"minutes": 0}, "pinch": {"minutes": 0},
                  "weed": {"minutes": 0}, "clear": {"minutes": 0}
                }
              },
              "roles": [{"name": "focal", "cutting": 0}],
              "crops": [
                {
                  "name": "zinnia",
                  "kinds": [{"kind": "focal"}],
                  "clock": {"base": 10, "emergence": 50, "firstCut": 220, "leastDayLength": 0},
                  "height": 1,
                  "methods": [
                    {"name": "plain", "start": "sown", "rows": 1, "spacing": 1, "cutDays": 14, "stems": 1}
                  ]
                }
              ],
              "pool": [{"crop": "zinnia", "plants": 10, "lots": 9}],
              "outlets": [],
              "caution": "bold",
              "possible": {"given": [{"name": "still"}]}
            }
            """;

    /** The same with a text of its file, which has to be there, put differently. */
    HandSeason with(String from, String to) {
        assertThat(text).contains(from);
        text = text.replace(from, to);
        return this;
    }

    /** With one outlet that asks for so many stems in week 3 alone, at a price and perhaps with a promise. */
    HandSeason outlet(double price, int stems, String promise) {
        String more = promise.isEmpty() ? "" : ", \"promise\": " + promise;
        return with(
                "\"outlets\": []",
                "\"outlets\": [{\"name\": \"shop\", \"kind\": \"focal\", \"price\": " + price
                        + ", \"asks\": [{\"from\": \"2027-03-22\", \"stems\": " + stems + "}]" + more + "}]");
    }

    Season build() {
        return SeasonFile.parse("by-hand.json", text.getBytes(StandardCharsets.UTF_8));
    }

    PlanFacts facts() {
        return Seasons.facts(build());
    }

    /** The plan with a lot sown in each of these weeks, in the first bed by the first method. */
    static int[] sown(PlanFacts facts, int... weeks) {
        int[] places = Search.nothingPlaced(facts);
        for (int i = 0; i < weeks.length; i++) {
            places[i] = facts.table().find(0, 0, weeks[i], 0);
            assertThat(places[i]).as("place in week " + weeks[i]).isNotNegative();
        }
        return places;
    }
}
