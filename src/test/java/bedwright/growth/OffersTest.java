package bedwright.growth;

import static org.assertj.core.api.Assertions.assertThat;

import bedwright.season.BedBlock;
import bedwright.season.Family;
import bedwright.season.Method;
import java.time.LocalDate;
import java.time.MonthDay;
import java.util.List;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** The places that a season offers: ten weeks from 1 March, in cut three weeks after sowing, so sown in weeks 0 to 6. */
class OffersTest {
    private final SmallSeason season = new SmallSeason();
    private final SmallCrop crop = season.crop;

    /** Weeks in which the crop is offered in the first bed. */
    private TreeSet<Integer> weeks() {
        ProspectTable table = season.table();
        TreeSet<Integer> weeks = new TreeSet<>();
        for (int p = table.firstPlace(0); p < table.firstPlace(1); p++) {
            weeks.add(table.sowWeek(p));
        }
        return weeks;
    }

    private void bed(@Nullable LocalDate workable, List<BedBlock.Taken> taken, List<BedBlock.Grown> history) {
        season.beds.set(0, SmallSeason.bed("Bed", 0, null, workable, taken, history));
    }

    private static BedBlock.Taken taken(int firstDay, int lastDay) {
        LocalDate start = new SmallSeason().starts;
        return new BedBlock.Taken(start.plusDays(firstDay), start.plusDays(lastDay), null);
    }

    @Test
    void weeksThatGiveNoStemAreNotOffered() {
        assertThat(weeks()).containsExactly(0, 1, 2, 3, 4, 5, 6);
    }

    @Test
    void aPlaceThatGivesAStemInOnePossibleSeasonOnlyIsOffered() {
        season.firstCutFactor = 0.5;

        assertThat(weeks()).as("110 °C·d: 11 days after sowing").contains(8);
    }

    @Test
    void aTakenWeekIsNotHeld() {
        bed(null, List.of(taken(56, 62)), List.of());

        assertThat(weeks())
                .as("week 8 is taken; sown in week 3 it would be held")
                .containsExactly(0, 1, 2);
    }

    @Test
    void aSingleTakenDayTakesItsWeek() {
        bed(null, List.of(taken(13, 13)), List.of());

        assertThat(weeks()).containsExactly(2, 3, 4, 5, 6);
    }

    @Test
    void aPlantingThatLeavesTheWeekBeforeIsOffered() {
        bed(null, List.of(taken(42, 48)), List.of());

        assertThat(weeks())
                .as("sown in week 0 it is held to week 5, week 6 is taken")
                .containsExactly(0);
    }

    @Test
    void aBedIsPlantedInWeeksThatStartWhenItCanBeWorked() {
        bed(season.starts.plusDays(14), List.of(), List.of());

        assertThat(weeks()).containsExactly(2, 3, 4, 5, 6);
    }

    @Test
    void aWeekThatStartsBeforeTheBedCanBeWorkedIsNotOffered() {
        bed(season.starts.plusDays(15), List.of(), List.of());

        assertThat(weeks()).containsExactly(3, 4, 5, 6);
    }

    @Test
    void traysMayBeSownBeforeTheirBedCanBeWorked() {
        crop.inTrays();
        bed(season.starts.plusDays(21), List.of(), List.of());

        assertThat(weeks()).contains(0);
    }

    @Test
    void sowDatesHoldForTheWeeksFirstDayBothEndsIncluded() {
        crop.sowFrom = MonthDay.of(3, 8);
        crop.sowTo = MonthDay.of(3, 22);

        assertThat(weeks()).containsExactly(1, 2, 3);
    }

    @Test
    void sowDatesMayWrapTheNewYear() {
        crop.sowFrom = MonthDay.of(11, 1);
        crop.sowTo = MonthDay.of(3, 9);

        assertThat(weeks()).containsExactly(0, 1);
    }

    @Test
    void aLoneFirstDateHoldsToTheYearsEnd() {
        crop.sowFrom = MonthDay.of(3, 29);

        assertThat(weeks()).containsExactly(4, 5, 6);
    }

    @Test
    void aLoneLastDateHoldsFromTheYearsStart() {
        crop.sowTo = MonthDay.of(3, 8);

        assertThat(weeks()).containsExactly(0, 1);
    }

    @Test
    void seedThatNeedsAWarmerWeekIsNotSown() {
        crop.seedTemperature = new Method.SeedTemperature(15.5, null);

        assertThat(weeks()).isEmpty();
    }

    @Test
    void seedThatNeedsAColderWeekIsNotSown() {
        crop.seedTemperature = new Method.SeedTemperature(null, 14.5);

        assertThat(weeks()).isEmpty();
    }

    @Test
    void aTunnelsWarmthLetsSeedBeSown() {
        crop.seedTemperature = new Method.SeedTemperature(15.5, null);
        season.beds.set(0, SmallSeason.bed("Bed", 0, new BedBlock.Tunnel(1, 0, 1), null, List.of(), List.of()));

        assertThat(weeks()).isNotEmpty();
    }

    @Test
    void theSeedOfTraysDoesNotAskForTheBedsTemperature() {
        crop.inTrays().seedTemperature = new Method.SeedTemperature(15.5, null);

        assertThat(weeks()).isNotEmpty();
    }

    @Test
    void aSampledSeasonDoesNotDecideWhetherSeedIsSown() {
        crop.seedTemperature = new Method.SeedTemperature(14.5, null);
        season.deviation = SmallSeason.warmWeek(2, -8);

        assertThat(weeks()).contains(2);
    }

    private void history(int restYears, boolean never, int lastYear) {
        season.families.add(new Family("daisies", restYears, never));
        crop.family = "daisies";
        bed(null, List.of(), List.of(new BedBlock.Grown("daisies", lastYear, null)));
    }

    @Test
    void aFamilyThatMayNeverComeBackSoonerIsNotOffered() {
        history(3, true, 2024);

        assertThat(weeks()).as("two whole years of rest in 2027").isEmpty();
    }

    @Test
    void afterItsRestItIsOffered() {
        history(3, true, 2023);

        assertThat(weeks()).isNotEmpty();
    }

    @Test
    void aFamilyThatCostsOnlyMoneyIsOffered() {
        history(3, false, 2026);

        assertThat(weeks()).isNotEmpty();
    }

    @Test
    void anotherFamilyInTheBedDoesNotMatter() {
        history(3, true, 2026);
        crop.family = "grasses";

        assertThat(weeks()).isNotEmpty();
    }

    @Test
    void whereFrostKillsAllNothingIsOffered() {
        season.frost = SmallSeason.frost(LocalDate.of(2027, 5, 20), LocalDate.of(2027, 10, 10), 5);

        assertThat(weeks()).isEmpty();
    }

    @Test
    void traysThatWouldBePlantedOutAfterTheEndAreNotOffered() {
        crop.inTrays().headStart = 300;

        assertThat(weeks())
                .as("planted out three weeks later, in week 9 at the latest")
                .containsExactly(0, 1, 2, 3, 4, 5, 6);
    }
}
