package bedwright.recheck;

import static org.assertj.core.api.Assertions.assertThat;

import bedwright.season.BedBlock;
import bedwright.season.Family;
import bedwright.season.KeptPlanting;
import bedwright.season.Lots;
import bedwright.season.Method;
import bedwright.season.Standing;
import java.time.MonthDay;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** A lot sown in week 1 holds its bed in weeks 1 to 6. */
class OfferTest {
    private final TestCrop crop = new TestCrop();
    private final TestSeason season = new TestSeason();

    private TestSeason ready() {
        season.crops.add(crop.build());
        season.pool.add(new Lots("zinnia", 10, 3));
        return season;
    }

    private List<String> faults(KeptPlanting... plantings) {
        return Recheck.of(season.build(), List.of(season.still()), List.of(plantings))
                .faults();
    }

    private List<String> faultsOfOneLot() {
        return faults(ready().lots(7, 1, 1));
    }

    private KeptPlanting altered(String crop, String method, String bed, int day, int lots, int plants) {
        return new KeptPlanting(7, crop, method, bed, TestSeason.START.plusDays(day), 1, null, lots, plants);
    }

    @Test
    void plainLotIsOffered() {
        assertThat(faultsOfOneLot()).isEmpty();
    }

    @Test
    void placeThatGivesNoStemsIsOffered() {
        crop.firstCut = 10_000;
        assertThat(faultsOfOneLot()).isEmpty();
    }

    @Test
    void refusedPlantingIsNotScored() {
        crop.price = 1;
        ready();
        Tally tally = Recheck.of(
                season.build(), List.of(season.still()), List.of(altered("zinnia", "plain", "Shed", 7, 1, 10)));
        assertThat(tally.soft()).isZero();
    }

    @Test
    void refusedPlantingIsCounted() {
        ready();
        Tally tally = Recheck.of(
                season.build(), List.of(season.still()), List.of(altered("zinnia", "plain", "Shed", 7, 1, 10)));
        assertThat(tally.over().notOffered()).isEqualTo(1);
    }

    @Test
    void cropMustBeKnown() {
        ready();
        assertThat(faults(altered("rose", "plain", "Bed", 7, 1, 10)))
                .containsExactly("Planting 7 (rose): the season has no such crop");
    }

    @Test
    void methodMustBeTheCrops() {
        ready();
        assertThat(faults(altered("zinnia", "fancy", "Bed", 7, 1, 10)))
                .containsExactly("Planting 7 (zinnia): the crop has no method fancy");
    }

    @Test
    void bedMustBeKnown() {
        ready();
        assertThat(faults(altered("zinnia", "plain", "Shed", 7, 1, 10)))
                .containsExactly("Planting 7 (zinnia): the season has no bed Shed");
    }

    @Test
    void sowingDayMustBeginAWeek() {
        ready();
        assertThat(faults(altered("zinnia", "plain", "Bed", 8, 1, 10)))
                .containsExactly("Planting 7 (zinnia): 2027-03-09 is not the first day of a week of the season");
    }

    @Test
    void sowingDayMustLieInTheSeason() {
        ready();
        assertThat(faults(altered("zinnia", "plain", "Bed", 70, 1, 10))).hasSize(1);
    }

    @Test
    void lotsMustHaveThePlantsOfTheirEntry() {
        ready();
        assertThat(faults(altered("zinnia", "plain", "Bed", 7, 2, 30)))
                .containsExactly("Planting 7 (zinnia): 2 lots of entry 1 are 20 plants of zinnia, not 30");
    }

    @Test
    void lotsMustBeEqual() {
        ready();
        assertThat(faults(altered("zinnia", "plain", "Bed", 7, 3, 31)))
                .contains("Planting 7 (zinnia): 31 plants are not 3 equal lots");
    }

    @Test
    void poolHasOnlySoManyLots() {
        ready();
        assertThat(faults(season.lots(1, 2, 1), season.lots(2, 2, 2)))
                .containsExactly("Planting 2 (zinnia): entry 1 has only 3 lots");
    }

    @Test
    void bedTakenInAHeldWeekIsRefused() {
        taken(34, 34);
        assertThat(faultsOfOneLot()).containsExactly("Planting 7 (zinnia): bed Bed is taken in the week of 2027-03-29");
    }

    @Test
    void bedTakenAfterTheHoldIsOffered() {
        taken(49, 60);
        assertThat(faultsOfOneLot()).isEmpty();
    }

    private void taken(int from, int to) {
        BedBlock.Taken taken = new BedBlock.Taken(TestSeason.START.plusDays(from), TestSeason.START.plusDays(to), null);
        season.beds = List.of(TestSeason.bed("Bed", 100, null, null, List.of(taken), List.of()));
    }

    @Test
    void bedIsRefusedBeforeItCanBeWorked() {
        season.beds =
                List.of(TestSeason.bed("Bed", 100, null, TestSeason.week(1).plusDays(1), List.of(), List.of()));
        assertThat(faultsOfOneLot()).containsExactly("Planting 7 (zinnia): bed Bed can be worked from 2027-03-09 only");
    }

    @Test
    void bedIsOfferedFromTheDayItCanBeWorked() {
        season.beds = List.of(TestSeason.bed("Bed", 100, null, TestSeason.week(1), List.of(), List.of()));
        assertThat(faultsOfOneLot()).isEmpty();
    }

    @Test
    void traysMayBeSownBeforeTheBedCanBeWorked() {
        season.beds = List.of(TestSeason.bed("Bed", 100, null, TestSeason.week(3), List.of(), List.of()));
        crop.start = Method.Start.TRAY;
        crop.trayWeeks = 2;
        assertThat(faultsOfOneLot()).isEmpty();
    }

    @Test
    void sowingBeforeItsFirstDayIsRefused() {
        crop.sowFrom = MonthDay.of(3, 9);
        assertThat(faultsOfOneLot())
                .containsExactly("Planting 7 (zinnia): it is not started on 2027-03-08 by method plain");
    }

    @Test
    void sowingOnItsLastDayIsOffered() {
        crop.sowTo = MonthDay.of(3, 8);
        assertThat(faultsOfOneLot()).isEmpty();
    }

    @Test
    void sowingTimesMayWrapTheNewYear() {
        crop.sowFrom = MonthDay.of(10, 1);
        crop.sowTo = MonthDay.of(3, 31);
        assertThat(faultsOfOneLot()).isEmpty();
    }

    @Test
    void weekTooColdForTheSeedIsRefused() {
        crop.seedTemperature = new Method.SeedTemperature(20.5, null);
        assertThat(faultsOfOneLot())
                .containsExactly("Planting 7 (zinnia): its seed does not bear the 20.0 °C of the week of 2027-03-08");
    }

    @Test
    void warmthOfATunnelCountsForTheSeed() {
        crop.seedTemperature = new Method.SeedTemperature(20.5, null);
        BedBlock.Tunnel tunnel = new BedBlock.Tunnel(2, 0, 1);
        season.beds = List.of(TestSeason.bed("Bed", 100, tunnel, null, List.of(), List.of()));
        assertThat(faultsOfOneLot()).isEmpty();
    }

    @Test
    void seedInTraysBearsAnyWeek() {
        crop.seedTemperature = new Method.SeedTemperature(null, 15.0);
        crop.start = Method.Start.TRAY;
        assertThat(faultsOfOneLot()).isEmpty();
    }

    @Test
    void familyThatMustNeverComeBackSoonerIsRefused() {
        family(true);
        assertThat(faultsOfOneLot())
                .containsExactly("Planting 7 (zinnia): daisies must not come back into bed Bed so soon");
    }

    @Test
    void familyThatMayComeBackSoonerIsOffered() {
        family(false);
        assertThat(faultsOfOneLot()).isEmpty();
    }

    /** Whoever says the bed of what they planted knows what grew there before; where the bed is ours to choose it is not. */
    @Test
    void familyThatMustNeverComeBackSoonerIsRefusedForAStandingPlantingOnlyWhereItsBedIsOpen() {
        family(true);
        ready();
        standsFromWeekOne("Bed");
        standsFromWeekOne(null);

        assertThat(faults(season.stands(1, 1), season.stands(2, 2)))
                .containsExactly("Planting 2 (zinnia): daisies must not come back into bed Bed so soon");
    }

    private void standsFromWeekOne(@Nullable String bed) {
        season.standing.add(new Standing(null, "zinnia", 5, null, bed, TestSeason.week(1), null, List.of(), null));
    }

    /** Nobody asks for the method of written-out stems, nor whether their bed would have been free for them. */
    @Test
    void writtenStemsWithoutAMethodStandWhereTheyStand() {
        taken(0, 60);
        ready();
        season.standing.add(new Standing(
                null,
                "zinnia",
                5,
                null,
                "Bed",
                null,
                null,
                List.of(new Standing.WrittenStems(TestSeason.week(3), null, 6)),
                null));

        assertThat(faults(season.stands(1, 1))).isEmpty();
    }

    private void family(boolean never) {
        crop.family = "daisies";
        season.families.add(new Family("daisies", 3, never));
        BedBlock.Grown grown = new BedBlock.Grown("daisies", 2024, null);
        season.beds = List.of(TestSeason.bed("Bed", 100, null, null, List.of(), List.of(grown)));
    }

    private void standing(@Nullable String bed) {
        ready();
        season.standing.add(new Standing(null, "zinnia", 5, "plain", bed, TestSeason.week(-2), null, List.of(), null));
    }

    @Test
    void whatStandsInTheGroundAsksForNoPlace() {
        taken(0, 20);
        standing("Bed");
        assertThat(faults(season.stands(1, 1))).isEmpty();
    }

    @Test
    void whatStandsInTheGroundMustBeInThePlan() {
        standing("Bed");
        assertThat(faults()).containsExactly("Standing planting 1 (zinnia) is in the ground, but the plan lacks it");
    }

    @Test
    void whatHasNoBedYetMayBeLeftOut() {
        standing(null);
        assertThat(faults()).isEmpty();
    }

    @Test
    void whatHasNoBedYetAsksForAPlace() {
        taken(0, 20);
        standing(null);
        assertThat(faults(season.stands(1, 1))).hasSize(1);
    }

    @Test
    void planMustAgreeWithWhatIsDecided() {
        standing("Bed");
        KeptPlanting kept = season.stands(1, 1);
        KeptPlanting other = new KeptPlanting(
                1, kept.crop(), kept.method(), kept.bed(), TestSeason.week(-1), null, 1, 1, kept.plants());
        assertThat(faults(other)).containsExactly("Planting 1 (zinnia): it is sown on 2027-02-15, not on 2027-02-22");
    }

    @Test
    void standingPlantingIsInThePlanOnce() {
        standing("Bed");
        assertThat(faults(season.stands(1, 1), season.stands(2, 1)))
                .containsExactly("Planting 2 (zinnia): standing planting 1 is in the plan already");
    }
}
