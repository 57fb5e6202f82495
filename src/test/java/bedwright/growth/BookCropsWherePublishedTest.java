package bedwright.growth;

import static org.assertj.core.api.Assertions.assertThat;

import bedwright.climate.PossibleSeasons;
import bedwright.file.SeasonFile;
import bedwright.season.Season;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Crops of the book grown, by the whole model, where a publication says when they are cut.
 *
 * <p>Larkspur sown in late October is cut from late March, bachelor's button sown in October blooms in February and
 * March: Louisiana State University AgCenter, Field-grown Cut Flowers for Louisiana, Annuals. The book's answers of
 * these two to day length were set by these dates, so here only the model's part is tested. Celosia planted in the field
 * after the last frost is cut from July to September: Utah State University Extension, celosia; its sum comes from
 * elsewhere.
 *
 * <p>Normals in °F: Baton Rouge, a page of monthly mean temperatures (chaseday.com), November and December from memory,
 * near the daily normals of the National Weather Service (65/44 °F on 8 December); Logan, a travel guide's table of mean
 * maxima (utahtravelcenter.com), with minima such that the means are those of the Western Regional Climate Center's
 * degree-days above 40 °F for Logan, Utah State University, 1893–2006.
 */
class BookCropsWherePublishedTest {
    private static final String BATON_ROUGE =
            place(30.5, new double[] {43, 47, 53, 60, 67, 73, 75, 75, 71, 59, 50, 44}, new double[] {
                61, 65, 72, 79, 85, 90, 91, 91, 87, 80, 71, 64
            });
    private static final String LOGAN =
            place(41.7, new double[] {11, 16, 25, 35, 42.4, 48.5, 56.8, 55.2, 46.6, 33, 24, 15}, new double[] {
                31, 38, 48, 59, 69, 80, 89, 88, 77, 64, 46, 34
            });

    private static String place(double latitude, double[] min, double[] max) {
        return "\"site\": {\"latitude\": " + latitude + ", \"meanMin\": " + celsius(min) + ", \"meanMax\": "
                + celsius(max) + "}";
    }

    private static String celsius(double[] fahrenheit) {
        StringBuilder list = new StringBuilder("[");
        for (double f : fahrenheit) {
            list.append(list.length() == 1 ? "" : ", ").append((f - 32) / 1.8);
        }
        return list.append("]").toString();
    }

    /** The day of the first cut in the normal season, in a season that starts on the day of sowing. */
    private static LocalDate firstCut(String place, String crop, String method, LocalDate sown) {
        String file = """
                {"name": "A place of publication", "starts": "%s", "weeks": 40, %s,
                 "beds": [{"name": "bed", "length": 10}],
                 "stock": {"bench": 500, "nets": [{"name": "net", "metres": 10}]},
                 "roles": [{"name": "spike"}, {"name": "filler"}, {"name": "focal"}],
                 "crops": [{"book": "%s", "methods": ["%s"]}]}
                """.formatted(sown, place, crop, method);
        Season season = SeasonFile.parse(crop, file.getBytes(StandardCharsets.UTF_8));
        Prospect prospect = Prospects.of(season, PossibleSeasons.of(season)).expect(0, 0, 10, 0, 0);
        return season.dateOf(prospect.firstCut());
    }

    @ParameterizedTest
    @CsvSource({
        "larkspur, autumn sown, 2026-10-25, 2027-03-20, 2027-04-10",
        "bachelor's button, autumn sown, 2026-10-12, 2027-02-01, 2027-03-31"
    })
    void autumnSowingsInLouisianaComeIntoCutWhenItSays(
            String crop, String method, LocalDate sown, LocalDate from, LocalDate to) {
        assertThat(firstCut(BATON_ROUGE, crop, method, sown)).isBetween(from, to);
    }

    @ParameterizedTest
    @CsvSource({"'celosia, plume', 'tray, netted', 2027-04-19", "'celosia, crested', 'tray, netted', 2027-04-19"})
    void celosiaPlantedAfterTheLastFrostInUtahIsCutFromJuly(String crop, String method, LocalDate sown) {
        assertThat(firstCut(LOGAN, crop, method, sown)).isBetween(LocalDate.of(2027, 7, 1), LocalDate.of(2027, 7, 31));
    }
}
