package bedwright.growth;

import static org.assertj.core.api.Assertions.assertThat;

import bedwright.season.BedBlock;
import bedwright.season.Family;
import bedwright.season.Method;
import bedwright.season.Standing;
import java.time.MonthDay;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** The first reason for which a spot is not offered: ten weeks from 1 March, in cut three weeks after sowing. */
class BarringTest {
    private final SmallSeason season = new SmallSeason();
    private final SmallCrop crop = season.crop;

    private @Nullable Barred why(int stock, int bed, int week) {
        return Barring.of(season.build(), List.of(season.possible()))
                .why(new Spot(stock, bed, week, 0))
                .orElse(null);
    }

    private @Nullable Barred why(int week) {
        return why(0, 0, week);
    }

    @Test
    void aSpotThatIsOfferedIsNotBarred() {
        assertThat(why(0)).isNull();
        assertThat(why(6)).isNull();
    }

    @Test
    void aWeekOutsideTheSeasonIsBarredForThat() {
        assertThat(why(-1)).isEqualTo(Barred.OUTSIDE_SEASON);
        assertThat(why(10)).isEqualTo(Barred.OUTSIDE_SEASON);
    }

    @Test
    void aWeekOutsideTheSowDatesIsBarredForThat() {
        crop.sowFrom = MonthDay.of(3, 8);

        assertThat(why(0)).isEqualTo(Barred.SOW_DATES);
        assertThat(why(1)).isNull();
    }

    @Test
    void soilTooColdForTheSeedIsNamed() {
        crop.seedTemperature = new Method.SeedTemperature(15.5, null);

        assertThat(why(1)).isEqualTo(Barred.SEED_TEMPERATURE);
    }

    @Test
    void traysThatWouldBePlantedOutAfterTheEndAreTooLate() {
        crop.inTrays();

        assertThat(why(7)).isEqualTo(Barred.TOO_LATE);
    }

    @Test
    void aBedThatCannotBeWorkedYetIsNamed() {
        season.beds.set(0, SmallSeason.bed("Bed", 0, null, season.starts.plusDays(8), List.of(), List.of()));

        assertThat(why(1)).isEqualTo(Barred.NOT_WORKABLE);
        assertThat(why(2)).isNull();
    }

    @Test
    void aBedThatIsTakenIsNamed() {
        BedBlock.Taken taken = new BedBlock.Taken(season.starts.plusDays(20), season.starts.plusDays(21), null);
        season.beds.set(0, SmallSeason.bed("Bed", 0, null, null, List.of(taken), List.of()));

        assertThat(why(0)).isEqualTo(Barred.TAKEN);
        assertThat(why(4)).isNull();
    }

    private void history() {
        season.families.add(new Family("daisies", 3, true));
        crop.family = "daisies";
        season.beds.set(
                0,
                SmallSeason.bed("Bed", 0, null, null, List.of(), List.of(new BedBlock.Grown("daisies", 2026, null))));
    }

    @Test
    void aFamilyThatIsBackTooSoonIsNamed() {
        history();

        assertThat(why(0)).isEqualTo(Barred.REST_YEARS);
    }

    @Test
    void whatIsLateInTheSeasonGivesNothing() {
        assertThat(why(7)).isEqualTo(Barred.GIVES_NOTHING);
    }

    private void stands(@Nullable String method, @Nullable String bed, int week) {
        season.standing.add(
                new Standing(null, "zinnia", 10, method, bed, season.starts.plusWeeks(week), null, List.of(), null));
    }

    @Test
    void whatStandsIsBarredFromAnotherBedOrWeek() {
        season.beds.add(SmallSeason.bed("Other", 3));
        stands("plain", "Bed", 1);

        assertThat(why(1, 0, 1)).isNull();
        assertThat(why(1, 1, 1)).isEqualTo(Barred.DECIDED);
        assertThat(why(1, 0, 2)).isEqualTo(Barred.DECIDED);
    }

    @Test
    void whatStandsByAnotherMethodIsDecided() {
        stands("fancy", "Bed", 1);

        assertThat(why(1, 0, 1)).isEqualTo(Barred.DECIDED);
    }

    @Test
    void aPlantingWhoseBedIsOpenAsksForItsRestYears() {
        history();
        stands("plain", null, 1);

        assertThat(why(1, 0, 1)).isEqualTo(Barred.REST_YEARS);
    }

    @Test
    void whereTheBedIsGivenNobodyAsksForTheRestYears() {
        history();
        stands(null, "Bed", 1);

        assertThat(why(1, 0, 1)).isNull();
    }
}
