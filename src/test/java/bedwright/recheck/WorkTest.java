package bedwright.recheck;

import static org.assertj.core.api.Assertions.assertThat;

import bedwright.season.Job;
import bedwright.season.Labour;
import bedwright.season.Method;
import bedwright.season.Standing;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A hundred plants on 100 m of bed, sown in week 1: held in weeks 1 to 6, in cut in weeks 4 and 5. */
class WorkTest {
    private final TestCrop crop = new TestCrop();
    private final TestSeason season = new TestSeason();

    private Work work(int plants, int sowWeek) {
        season.crops.add(crop.build());
        Facts facts = season.facts();
        Placed placed = season.placed(plants, sowWeek);
        return new Work(facts, placed, new Calendar(facts, placed));
    }

    private Work standing() {
        season.crops.add(crop.build());
        season.standing.add(
                new Standing(null, "zinnia", 100, "plain", "Bed", TestSeason.week(-2), null, List.of(), null));
        Facts facts = season.facts();
        Placed placed = season.standing();
        return new Work(facts, placed, new Calendar(facts, placed));
    }

    /** Two minutes a unit and seven to set up, for one job alone. */
    private void only(Job job) {
        season.jobs.put(job, new Labour.JobRate(7, 2));
    }

    /** Week and minutes of each week with work. */
    private static List<String> minutes(Work work) {
        List<String> minutes = new ArrayList<>();
        for (int week = 0; week < 10; week++) {
            if (work.ofALot(week) > 0) {
                minutes.add(week + ": " + work.ofALot(week) / Units.TICKS_A_MINUTE);
            }
        }
        return minutes;
    }

    private void tray() {
        crop.start = Method.Start.TRAY;
        crop.trayWeeks = 2;
        crop.headStart = 50;
    }

    @Test
    void bedIsPreparedInTheFirstHeldWeek() {
        only(Job.PREPARE);
        tray();
        assertThat(minutes(work(100, 1))).containsExactly("3: 200");
    }

    @Test
    void seedIsSownByTheMetre() {
        only(Job.SOW);
        assertThat(minutes(work(100, 1))).containsExactly("1: 200");
    }

    @Test
    void traysAreFilledByTheHundredCells() {
        only(Job.FILL_TRAYS);
        tray();
        crop.emergenceShare = 0.5;
        assertThat(minutes(work(100, 1))).containsExactly("1: 4");
    }

    @Test
    void plantsArePlantedOutByTheHundred() {
        only(Job.PLANT_OUT);
        tray();
        assertThat(minutes(work(100, 1))).containsExactly("3: 2");
    }

    @Test
    void netGoesUpByMetreAndLayer() {
        only(Job.NET_UP);
        crop.net = new Method.NetUse("net", 2);
        crop.emergence = 80;
        assertThat(minutes(work(100, 1))).containsExactly("2: 400");
    }

    @Test
    void netComesDownInTheLastGraceWeek() {
        only(Job.NET_DOWN);
        crop.net = new Method.NetUse("net", 2);
        crop.clearing = 1;
        assertThat(minutes(work(100, 1))).containsExactly("6: 400");
    }

    @Test
    void coverGoesOnInTheFirstHeldWeek() {
        only(Job.COVER_ON);
        crop.cover = new Method.CoverUse(2);
        assertThat(minutes(work(100, 1))).containsExactly("1: 200");
    }

    @Test
    void coverComesOffInTheWeekAfterItsLast() {
        only(Job.COVER_OFF);
        crop.cover = new Method.CoverUse(2);
        assertThat(minutes(work(100, 1))).containsExactly("3: 200");
    }

    @Test
    void pinchingIsDoneInTheWeekOfItsStage() {
        only(Job.PINCH);
        crop.pinched = true;
        crop.pinch = 100.0;
        assertThat(minutes(work(100, 1))).containsExactly("2: 2");
    }

    @Test
    void whatIsNotPinchedTakesNoPinching() {
        only(Job.PINCH);
        crop.pinch = 100.0;
        assertThat(minutes(work(100, 1))).isEmpty();
    }

    @Test
    void weedingIsWeeklyForSoManyPasses() {
        only(Job.WEED);
        crop.weedings = 3;
        assertThat(minutes(work(100, 1))).containsExactly("1: 200", "2: 200", "3: 200");
    }

    @Test
    void weedingEndsWithTheHold() {
        only(Job.WEED);
        crop.weedings = 30;
        assertThat(minutes(work(100, 1))).hasSize(6);
    }

    @Test
    void everyPassIsSetUp() {
        only(Job.WEED);
        crop.weedings = 2;
        Work work = work(100, 1);
        assertThat(List.of(work.settingUp(1), work.settingUp(2), work.settingUp(3)))
                .containsExactly(7 * Units.TICKS_A_MINUTE, 7 * Units.TICKS_A_MINUTE, 0L);
    }

    @Test
    void bedIsClearedInTheLastHeldWeek() {
        only(Job.CLEAR);
        crop.clearing = 1;
        assertThat(minutes(work(100, 1))).containsExactly("7: 200");
    }

    @Test
    void clearingPastTheSeasonsEndIsDropped() {
        only(Job.CLEAR);
        crop.clearing = 3;
        assertThat(minutes(work(100, 4))).isEmpty();
    }

    @Test
    void workOfAWeekIsRoundedOnceToTheMinute() {
        season.jobs.put(Job.PREPARE, new Labour.JobRate(0, 0.3));
        season.jobs.put(Job.SOW, new Labour.JobRate(0, 0.3));
        assertThat(minutes(work(1, 1))).containsExactly("1: 1");
    }

    @Test
    void methodsRateCountsBeforeTheCropsAndTheFarms() {
        only(Job.SOW);
        crop.cropJobs.put(Job.SOW, new Labour.JobRate(0, 3));
        crop.methodJobs.put(Job.SOW, new Labour.JobRate(0, 4));
        assertThat(minutes(work(100, 1))).containsExactly("1: 400");
    }

    @Test
    void cropsRateCountsBeforeTheFarms() {
        only(Job.SOW);
        crop.cropJobs.put(Job.SOW, new Labour.JobRate(0, 3));
        assertThat(minutes(work(100, 1))).containsExactly("1: 300");
    }

    @Test
    void usualRateCountsWhereNobodySaysOtherwise() {
        season.jobs.remove(Job.SOW);
        assertThat(minutes(work(100, 1))).containsExactly("1: 60");
    }

    @Test
    void workOfAStandingPlantingBeforeTheSeasonIsDone() {
        only(Job.SOW);
        assertThat(minutes(standing())).isEmpty();
    }

    @Test
    void standingPlantingIsWeededForThePassesThatAreLeft() {
        only(Job.WEED);
        crop.weedings = 4;
        assertThat(minutes(standing())).containsExactly("0: 200", "1: 200");
    }
}
