package bedwright.growth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import bedwright.season.Job;
import bedwright.season.Labour;
import bedwright.season.Method;
import bedwright.season.Stock;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** What a planting takes (season model, section 5): sown in week 1, cut in the weeks 4 and 5, grace in week 6. */
class NeedsTest {
    private static final int SOW_WEEK = 1;

    private final SmallSeason season = new SmallSeason();
    private final SmallCrop crop = season.crop;

    NeedsTest() {
        crop.spacing = 0.25;
        season.plants = 40;
    }

    private Needs needs() {
        return season.needs(SOW_WEEK);
    }

    /** The weeks in which a job is done. */
    private List<Integer> weeks(Job job) {
        return tasks(job).stream().map(Prospect.Task::week).toList();
    }

    private List<Prospect.Task> tasks(Job job) {
        return needs().tasks().stream().filter(task -> task.job() == job).toList();
    }

    /** What a job takes to begin, and for each of its units. */
    private Labour.JobRate rate(Job job) {
        Prospect.Task task = tasks(job).getFirst();
        return new Labour.JobRate(task.setUp(), task.minutes() / task.units());
    }

    private double units(Job job) {
        return tasks(job).getFirst().units();
    }

    private void net(int layers) {
        season.nets.add(new Stock.Net("other", 100, null, 7, 1.35));
        season.nets.add(new Stock.Net("mesh", 100, null, 0.5, 1.35));
        crop.net = new Method.NetUse("mesh", layers);
    }

    private void cover() {
        season.cover = new Stock.Cover(100, null, 0.3, 2, 0.1);
        crop.cover = new Method.CoverUse(2);
    }

    @Test
    void metresArePlantsTimesSpacingByRows() {
        season.plants = 63;
        crop.rows = 4;

        assertThat(needs().millimetres())
                .as("63 × 0.25 / 4 = 3.9375 m, half up")
                .isEqualTo(3938);
    }

    @Test
    void sixtyThreePlantsAtSevenTenthsTakeNinetyCells() {
        season.plants = 63;
        crop.inTrays().emergenceShare = 0.7;

        assertThat(needs().cells()).isEqualTo(90);
    }

    @Test
    void aPartOfACellIsAWholeOne() {
        season.plants = 64;
        crop.inTrays().emergenceShare = 0.7;

        assertThat(needs().cells()).as("91.43").isEqualTo(92);
    }

    @Test
    void sownPlantsTakeNoCells() {
        assertThat(needs().cells()).isZero();
    }

    @Test
    void theBedIsPreparedInTheFirstHeldWeek() {
        crop.inTrays();

        assertThat(weeks(Job.PREPARE)).containsExactly(4);
    }

    @Test
    void seedIsSownInTheSowWeekByTheMetre() {
        assertThat(tasks(Job.SOW))
                .extracting(Prospect.Task::week, Prospect.Task::units)
                .containsExactly(tuple(1, 10.0));
    }

    @Test
    void sownSeedNeedsNoPlantingOut() {
        assertThat(weeks(Job.PLANT_OUT)).isEmpty();
    }

    @Test
    void traysAreFilledInTheSowWeekByTheHundredCells() {
        crop.inTrays().emergenceShare = 0.5;

        assertThat(tasks(Job.FILL_TRAYS))
                .extracting(Prospect.Task::week, Prospect.Task::units)
                .containsExactly(tuple(1, 0.8));
    }

    @Test
    void raisedPlantsArePlantedOutByTheHundredInTheFirstHeldWeek() {
        crop.inTrays();

        assertThat(tasks(Job.PLANT_OUT))
                .extracting(Prospect.Task::week, Prospect.Task::units)
                .containsExactly(tuple(4, 0.4));
    }

    @Test
    void tubersAreSetInTheirWeek() {
        crop.start = Method.Start.SET;

        assertThat(weeks(Job.PLANT_OUT)).containsExactly(1);
    }

    @Test
    void netGoesUpByMetreAndLayer() {
        net(2);

        assertThat(units(Job.NET_UP)).isEqualTo(20);
    }

    @Test
    void netComesDownInTheLastGraceWeek() {
        net(1);
        crop.clearing = 2;

        assertThat(weeks(Job.NET_DOWN)).containsExactly(6);
    }

    @Test
    void coverIsLaidInTheFirstHeldWeek() {
        cover();

        assertThat(weeks(Job.COVER_ON)).containsExactly(1);
    }

    @Test
    void coverIsTakenOffAfterItsWeeks() {
        cover();

        assertThat(weeks(Job.COVER_OFF)).containsExactly(3);
    }

    @Test
    void pinchingIsDoneByTheHundredInTheWeekOfItsStage() {
        crop.pinch = 150.0;
        crop.pinched = true;

        assertThat(tasks(Job.PINCH))
                .extracting(Prospect.Task::week, Prospect.Task::units)
                .containsExactly(tuple(3, 0.4));
    }

    @Test
    void weedingIsWeeklyFromTheFirstHeldWeek() {
        crop.weedings = 3;

        assertThat(weeks(Job.WEED)).containsExactly(1, 2, 3);
    }

    @Test
    void weedingStopsWithTheHold() {
        crop.weedings = 20;

        assertThat(weeks(Job.WEED))
                .containsExactlyElementsOf(IntStream.rangeClosed(1, 6).boxed().toList());
    }

    @Test
    void theBedIsClearedInTheLastHeldWeek() {
        crop.clearing = 2;

        assertThat(weeks(Job.CLEAR)).containsExactly(8);
    }

    @Test
    void clearingPastTheSeasonsEndIsDropped() {
        crop.clearing = 5;

        assertThat(weeks(Job.CLEAR)).isEmpty();
    }

    @Test
    void aPlantingThatIsNeverCutIsNotCleared() {
        crop.firstCut = 5000;

        assertThat(weeks(Job.CLEAR)).isEmpty();
    }

    @Test
    void minutesAreUnitsTimesTheRate() {
        season.jobs.put(Job.SOW, new Labour.JobRate(7, 0.35));

        assertThat(tasks(Job.SOW).getFirst().minutes()).isEqualTo(3.5);
    }

    @Test
    void aCropsRateGoesBeforeTheFarms() {
        season.jobs.put(Job.SOW, new Labour.JobRate(7, 0.35));
        crop.cropJobs.put(Job.SOW, new Labour.JobRate(2, 0.5));

        assertThat(rate(Job.SOW)).isEqualTo(new Labour.JobRate(2, 0.5));
    }

    @Test
    void aMethodsRateGoesBeforeTheCrops() {
        crop.cropJobs.put(Job.SOW, new Labour.JobRate(2, 0.5));
        crop.methodJobs.put(Job.SOW, new Labour.JobRate(1, 0.4));

        assertThat(rate(Job.SOW)).isEqualTo(new Labour.JobRate(1, 0.4));
    }

    @Test
    void withoutAnyRateTheUsualOneCounts() {
        assertThat(rate(Job.SOW)).isEqualTo(Job.SOW.usual());
    }

    @Test
    void workOfAWeekIsAddedUpBeforeItIsRounded() {
        for (Job job : List.of(Job.PREPARE, Job.SOW)) {
            season.jobs.put(job, new Labour.JobRate(3, 0.13));
        }
        ProspectTable table = season.table();
        int row = table.row(table.find(0, 0, SOW_WEEK, 0));

        assertThat(table.work(row)[SOW_WEEK - table.workFrom(row)])
                .as("1.3 + 1.3 minutes")
                .isEqualTo(3);
    }

    @Test
    void setUpIsAddedUpByWeek() {
        for (Job job : List.of(Job.PREPARE, Job.SOW)) {
            season.jobs.put(job, new Labour.JobRate(3, 0.13));
        }
        ProspectTable table = season.table();
        int row = table.row(table.find(0, 0, SOW_WEEK, 0));

        assertThat(table.setUp(row)[SOW_WEEK - table.workFrom(row)]).isEqualTo(6);
    }

    @Test
    void sownSeedIsPaidByPlaceAndSeedsAPlace() {
        crop.cropPrice = 0.035;
        crop.seedsAPlace = 3;

        assertThat(needs().material()).as("120 seeds, in cents").isEqualTo(420);
    }

    @Test
    void traysArePaidByTheCell() {
        crop.inTrays().emergenceShare = 0.7;
        season.plants = 63;
        crop.cropPrice = 0.1;

        assertThat(needs().material()).isEqualTo(900);
    }

    @Test
    void plugsArePaidByThePlant() {
        crop.asPlugs().emergenceShare = 0.5;
        crop.cropPrice = 0.4;

        assertThat(needs().material()).isEqualTo(1600);
    }

    @Test
    void theMethodsPriceGoesBeforeTheCrops() {
        crop.cropPrice = 0.4;
        crop.price = 0.0;

        assertThat(needs().material()).isZero();
    }

    @Test
    void netWearsByMetreAndLayer() {
        net(2);

        assertThat(needs().material()).as("20 m at 0.50").isEqualTo(1000);
    }

    @Test
    void coverWearsByTheMetre() {
        cover();

        assertThat(needs().material()).as("10 m at 0.30").isEqualTo(300);
    }

    @Test
    void materialIsRoundedHalfUp() {
        season.plants = 1;
        crop.cropPrice = 0.145;

        assertThat(needs().material()).isEqualTo(15);
    }
}
