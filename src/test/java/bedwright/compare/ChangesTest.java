package bedwright.compare;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import bedwright.climate.PossibleSeason;
import bedwright.climate.PossibleSeasons;
import bedwright.file.SeasonFile;
import bedwright.file.StrategiesFile;
import bedwright.season.BedBlock;
import bedwright.season.Changes;
import bedwright.season.Labour;
import bedwright.season.Lots;
import bedwright.season.Method;
import bedwright.season.Order;
import bedwright.season.Season;
import bedwright.season.Stock;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The season that a strategy's changes make. */
class ChangesTest {
    private static final Season FARM = SeasonFile.read(Path.of("problems/demo-farm.json"));

    private static Season changed(String changes) {
        String text = "{\"name\": \"t\", \"strategies\": [{\"name\": \"a\"}, {\"name\": \"b\", " + changes + "}]}";
        return Changes.of(
                FARM,
                StrategiesFile.parse("s.json", text.getBytes(UTF_8), FARM)
                        .strategies()
                        .get(1));
    }

    private static List<String> ways(Season season, String crop) {
        return season.crops().stream()
                .filter(c -> c.name().equals(crop))
                .flatMap(c -> c.methods().stream().map(Method::name))
                .toList();
    }

    @Test
    void barredWaysAreGoneAndCropsLeftWithoutOneHaveNoPlantings() {
        Season season =
                changed("\"barred\": [{\"crops\": [\"cosmos\"], \"start\": \"tray\"}, {\"crops\": [\"dill\"]}]");

        assertThat(ways(season, "cosmos")).containsExactly("sown, pinched");
        assertThat(season.pool()).extracting(Lots::crop).contains("cosmos").doesNotContain("dill");
        assertThat(season.pool()).hasSize(FARM.pool().size() - 1);
    }

    @Test
    void onlyLeavesOfTheCropsNamedWhatIsLikeIt() {
        Season season = changed("\"only\": [{\"crops\": [\"zinnia\"], \"netted\": true},"
                + " {\"crops\": [\"zinnia\"], \"start\": \"sown\"}]");

        assertThat(ways(season, "zinnia")).containsExactly("sown, pinched", "tray, pinched and netted");
        assertThat(ways(season, "cosmos")).isEqualTo(ways(FARM, "cosmos"));
    }

    @Test
    void bedsNetsAndCellsAreMoreOrFewer() {
        Season season = changed(
                "\"beds\": [{\"beds\": \"Ridge\", \"count\": 1, \"metres\": -5}],"
                        + " \"nets\": [{\"net\": \"fine mesh\", \"metres\": 20}], \"bench\": -200, \"trays\": 72, \"cover\": 5");

        assertThat(season.beds())
                .filteredOn(b -> b.name().equals("Ridge"))
                .singleElement()
                .satisfies(b -> {
                    assertThat(b.count()).isEqualTo(6);
                    assertThat(b.length()).isEqualTo(25);
                });
        assertThat(season.stock().nets()).extracting(Stock.Net::metres).containsExactly(150.0, 130.0);
        assertThat(season.stock().bench()).isEqualTo(4000);
        assertThat(season.stock().trays()).extracting(Stock.Trays::cells).isEqualTo(9072);
        assertThat(season.stock().cover()).extracting(Stock.Cover::metres).isEqualTo(115.0);
        assertThat(season.beds())
                .extracting(BedBlock::name)
                .containsExactly("Hedge", "Middle", "Ridge", "Meadow", "Tunnel");
    }

    @Test
    void hoursAreMoreInTheirWeeksAloneAndNeverBelowNone() {
        Season season = changed(
                "\"hiredHours\": [{\"from\": \"2027-06-07\", \"to\": \"2027-06-27\", \"more\": 30}, {\"more\": -12}]");

        assertThat(hired(season, LocalDate.of(2027, 6, 14))).isEqualTo(15 + 30 - 12);
        assertThat(hired(season, LocalDate.of(2027, 7, 5))).isEqualTo(15 - 12);
        assertThat(hired(season, LocalDate.of(2027, 5, 3))).isEqualTo(0);
    }

    private static double hired(Season season, LocalDate week) {
        return season.labour().hired().stream()
                .filter(h -> week.equals(h.from()))
                .mapToDouble(Labour.Hours::hours)
                .sum();
    }

    @Test
    void ordersTakeSoManyTimesAsMuchOrAnAmount() {
        Season season = changed("\"outlets\": [{\"outlet\": \"Weekly bouquets, early\", \"times\": 0.5},"
                + " {\"outlet\": \"Village fair\", \"amount\": 20}]");

        assertThat(season.orders())
                .filteredOn(o -> o.name().equals("Weekly bouquets, early"))
                .flatExtracting(Order::asks)
                .extracting(Order.Ask::bouquets)
                .containsExactly(20, 28);
        assertThat(season.orders())
                .filteredOn(o -> o.name().equals("Village fair"))
                .flatExtracting(Order::asks)
                .extracting(Order.Ask::bouquets)
                .containsExactly(20);
    }

    @Test
    void chanceBringsTheSameToAllStrategies() {
        Season season =
                changed("\"barred\": [{\"crops\": [\"dill\"]}], \"beds\": [{\"beds\": \"Ridge\", \"count\": -2}],"
                        + " \"caution\": \"bold\", \"planned\": 64");

        List<PossibleSeason> theirs = PossibleSeasons.of(season).subList(0, 16);

        assertThat(theirs).usingRecursiveComparison().isEqualTo(PossibleSeasons.of(FARM));
    }

    @Test
    void withoutDoubtTheFiguresOfCropsAreSure() {
        Season season = changed("\"doubt\": false");

        assertThat(PossibleSeasons.of(season)).allSatisfy(s -> {
            assertThat(s.stemsFactor()).containsOnly(1);
            assertThat(s.firstCutFactor()).containsOnly(1);
        });
    }
}
