package bedwright.growth;

import static org.assertj.core.api.Assertions.assertThat;

import bedwright.season.Crop;
import bedwright.season.Role;
import bedwright.season.Standing;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** Plantings that already stand, or are bought: ten plants that give a stem each. */
class StandingTest {
    private static final int STOCK = 1;

    private final SmallSeason season = new SmallSeason();
    private final SmallCrop crop = season.crop;

    private void stands(@Nullable String bed, int sowWeek, Standing.@Nullable ClockReading clock) {
        season.standing.add(new Standing(null, "zinnia", 10, "plain", bed, week(sowWeek), clock, List.of(), null));
    }

    private void written(@Nullable LocalDate until, Standing.WrittenStems... stems) {
        season.standing.add(new Standing(null, "zinnia", 10, "plain", "Bed", null, null, List.of(stems), until));
    }

    private LocalDate week(int week) {
        return season.starts.plusWeeks(week);
    }

    private LocalDate day(int day) {
        return season.starts.plusDays(day);
    }

    private static int row(ProspectTable table) {
        assertThat(table.firstPlace(STOCK + 1) - table.firstPlace(STOCK)).isEqualTo(1);
        return table.row(table.firstPlace(STOCK));
    }

    /** Stems of each week in hundredths, all kinds together. */
    private int[] stems() {
        ProspectTable table = season.table();
        int row = row(table);
        int[] byWeek = new int[season.weeks];
        for (int b = 0; b < table.blocks(row); b++) {
            byWeek[table.blockWeek(row, b)] += table.stems(row)[b];
        }
        return byWeek;
    }

    @Test
    void onePlantedBeforeTheSeasonHasComeAsFarAsItsDays() {
        stands("Bed", -2, null);

        assertThat(stems()).as("in cut from day 7").containsExactly(0, 500, 500, 0, 0, 0, 0, 0, 0, 0);
    }

    @Test
    void aClockCountsFromTheDayAfterIt() {
        stands("Bed", -8, new Standing.ClockReading(day(-1), 80));

        assertThat(stems()).as("14 days from 80 to 220: day 13").containsExactly(0, 71, 500, 429, 0, 0, 0, 0, 0, 0);
    }

    @Test
    void aClockReadInTheSeasonHoldsItsBedFromTheFirstWeek() {
        stands("Bed", -8, new Standing.ClockReading(day(6), 80));
        ProspectTable table = season.table();

        assertThat(table.heldFrom(row(table))).isZero();
    }

    @Test
    void itHoldsItsBedFromTheFirstWeekToItsOwnEnd() {
        stands("Bed", -2, null);
        ProspectTable table = season.table();

        assertThat(table.heldTo(row(table)))
                .as("cut in weeks 1 and 2, grace in week 3")
                .isEqualTo(4);
    }

    @Test
    void itCostsNoMaterial() {
        crop.cropPrice = 1;
        stands("Bed", 1, null);
        ProspectTable table = season.table();

        assertThat(table.material(row(table))).isZero();
    }

    @Test
    void onlyWorkStillToComeIsCounted() {
        stands("Bed", -2, null);
        ProspectTable table = season.table();

        assertThat(table.work(row(table)))
                .as("10 m cleared at 0.7 minutes in week 3, nothing prepared or sown")
                .containsExactly(7);
    }

    @Test
    void oneWithoutABedIsOfferedInAllBeds() {
        season.beds.add(SmallSeason.bed("Other", 3));
        stands(null, 1, null);
        ProspectTable table = season.table();

        assertThat(table.firstPlace(STOCK + 1) - table.firstPlace(STOCK)).isEqualTo(2);
    }

    @Test
    void oneWithoutASowDayIsOfferedInAllWeeksThatGiveStems() {
        season.standing.add(new Standing(null, "zinnia", 10, "plain", "Bed", null, null, List.of(), null));
        ProspectTable table = season.table();

        assertThat(table.firstPlace(STOCK + 1) - table.firstPlace(STOCK)).isEqualTo(7);
    }

    @Test
    void oneGivenWholeHasItsPlaceEvenIfItGivesNothing() {
        stands("Bed", 9, null);

        assertThat(stems()).containsOnly(0);
    }

    @Test
    void writtenStemsAreTakenAsTheyAre() {
        season.stemsFactor = 3;
        written(
                null,
                new Standing.WrittenStems(week(2), "focal", 12.5),
                new Standing.WrittenStems(week(7), "focal", 3));

        assertThat(stems()).containsExactly(0, 0, 1250, 0, 0, 0, 0, 300, 0, 0);
    }

    @Test
    void writtenStemsWithoutAKindAreOfTheCropsKindsInTheirShares() {
        season.roles.add(new Role("filler", 0, 0, null, List.of()));
        crop.kinds = List.of(new Crop.KindShare("focal", 0.75), new Crop.KindShare("filler", 0.25));
        written(null, new Standing.WrittenStems(week(2), null, 10));
        ProspectTable table = season.table();

        assertThat(table.stems(row(table))).containsExactly(750, 250);
    }

    @Test
    void aWrittenPlantingHoldsToTheWeekOfItsLastDay() {
        written(day(30), new Standing.WrittenStems(week(2), "focal", 1));
        ProspectTable table = season.table();

        assertThat(table.heldTo(row(table))).as("day 30 lies in week 4").isEqualTo(5);
    }

    @Test
    void aWrittenPlantingWithoutLastDayHoldsToTheEnd() {
        written(null, new Standing.WrittenStems(week(2), "focal", 1));
        ProspectTable table = season.table();

        assertThat(table.heldTo(row(table))).isEqualTo(10);
    }

    @Test
    void aWrittenPlantingHasNoWorkButCutting() {
        crop.weedings = 5;
        written(null, new Standing.WrittenStems(week(2), "focal", 1));
        ProspectTable table = season.table();

        assertThat(Arrays.stream(table.work(row(table))).sum()).isZero();
    }

    @Test
    void oneWhoseCutIsOverBeforeTheSeasonIsOutOfItsBedAfterItsGrace() {
        crop.grace = 2;
        stands("Bed", -6, null);
        ProspectTable table = season.table();

        assertThat(table.heldTo(row(table)))
                .as("cut in weeks −3 and −2, grace to week 0")
                .isEqualTo(1);
    }

    @Test
    void heatLooksAtNoWeekBeforeTheSeason() {
        crop.cutDays = 28;
        crop.heat = new Crop.Heat(14, Crop.Heat.Answer.ENDS);
        stands("Bed", -6, null);

        assertThat(stems())
                .as("in cut from week −3 to week 0, which is hot and the last")
                .startsWith(250, 0);
    }
}
