package bedwright.recheck;

import static org.assertj.core.api.Assertions.assertThat;

import bedwright.season.Crop;
import bedwright.season.Method;
import bedwright.season.Standing;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Sown in week w, the test crop is in cut in weeks w + 3 and w + 4 of ten. */
class CalendarTest {
    private final TestCrop crop = new TestCrop();

    private Calendar calendar(int sowWeek) {
        TestSeason season = new TestSeason(crop.build(), 1);
        return new Calendar(season.facts(), season.placed(1, sowWeek));
    }

    private Calendar standing(Standing standing) {
        TestSeason season = new TestSeason(crop.build(), 1);
        season.standing.add(standing);
        return new Calendar(season.facts(), season.standing());
    }

    @Test
    void bedIsHeldFromSowing() {
        assertThat(calendar(1).firstHeld).isEqualTo(1);
    }

    @Test
    void bedIsHeldFromPlantingOutOfTrays() {
        crop.start = Method.Start.TRAY;
        crop.trayWeeks = 2;
        assertThat(calendar(1).firstHeld).isEqualTo(3);
    }

    @Test
    void bedIsHeldForGraceAndClearingAfterTheLastCut() {
        crop.clearing = 2;
        assertThat(calendar(1).lastHeld).isEqualTo(5 + 1 + 2);
    }

    @Test
    void holdIsCutOffAtTheSeasonsEnd() {
        crop.clearing = 2;
        assertThat(calendar(4).lastHeld).isEqualTo(9);
    }

    @Test
    void clearingPastTheSeasonsEndKeepsItsWeek() {
        crop.clearing = 2;
        assertThat(calendar(4).clearing).isEqualTo(8 + 1 + 2);
    }

    @Test
    void whatIsNeverInCutHoldsToTheEnd() {
        crop.firstCut = 10_000;
        assertThat(calendar(1).lastHeld).isEqualTo(9);
    }

    @Test
    void whatIsNeverInCutIsNeverCleared() {
        crop.firstCut = 10_000;
        assertThat(calendar(1).clearing).isEqualTo(Facts.NEVER);
    }

    @Test
    void heatEndsTheCuttingInItsFirstWeek() {
        crop.heat = new Crop.Heat(19.9, Crop.Heat.Answer.ENDS);
        assertThat(calendar(1).lastCut).isEqualTo(4);
    }

    @Test
    void heatAtTheLimitEndsNothing() {
        crop.heat = new Crop.Heat(20, Crop.Heat.Answer.ENDS);
        assertThat(calendar(1).lastCut).isEqualTo(5);
    }

    @Test
    void heatThatPausesKeepsTheCalendar() {
        crop.heat = new Crop.Heat(19.9, Crop.Heat.Answer.PAUSES);
        assertThat(calendar(1).lastCut).isEqualTo(5);
    }

    @Test
    void netGoesUpInTheWeekOfEmergence() {
        crop.net = new Method.NetUse("net", 1);
        crop.emergence = 80;
        assertThat(calendar(1).netFrom).isEqualTo(2);
    }

    @Test
    void netIsInUseToTheLastGraceWeek() {
        crop.net = new Method.NetUse("net", 1);
        crop.clearing = 2;
        assertThat(calendar(1).netTo).isEqualTo(6);
    }

    @Test
    void netOfWhatIsNeverInCutStaysToTheEnd() {
        crop.net = new Method.NetUse("net", 1);
        crop.firstCut = 10_000;
        assertThat(calendar(1).netTo).isEqualTo(9);
    }

    @Test
    void netOfWhatIsNeverInCutIsNotTakenDown() {
        crop.net = new Method.NetUse("net", 1);
        crop.firstCut = 10_000;
        assertThat(calendar(1).netDown).isEqualTo(Facts.NEVER);
    }

    @Test
    void whatNeverComesUpNeedsNoNet() {
        crop.net = new Method.NetUse("net", 1);
        crop.emergence = 5_000;
        crop.firstCut = 10_000;
        assertThat(calendar(1).netFrom).isEqualTo(Facts.NEVER);
    }

    @Test
    void coverLiesForItsWeeks() {
        crop.cover = new Method.CoverUse(3);
        assertThat(calendar(1).coverTo).isEqualTo(1 + 3);
    }

    @Test
    void coverLiesUntilTheWeekThatIsNoLongerTender() {
        crop.cover = new Method.CoverUse(null);
        crop.tender = 100;
        assertThat(calendar(1).coverTo).isEqualTo(1 + 2);
    }

    @Test
    void coverLiesAtLeastAWeek() {
        crop.cover = new Method.CoverUse(null);
        crop.start = Method.Start.PLUGS;
        crop.headStart = 60;
        assertThat(calendar(1).coverTo).isEqualTo(2);
    }

    @Test
    void standingHoldsItsBedFromTheFirstWeek() {
        Calendar calendar =
                standing(new Standing(null, "zinnia", 1, "plain", "Bed", TestSeason.week(-2), null, List.of(), null));
        assertThat(List.of(calendar.groundWeek, calendar.firstHeld, calendar.lastHeld))
                .containsExactly(-2, 0, 3);
    }

    @Test
    void standingInTraysHoldsItsBedFromPlantingOut() {
        crop.start = Method.Start.TRAY;
        crop.trayWeeks = 4;
        Calendar calendar =
                standing(new Standing(null, "zinnia", 1, "plain", "Bed", TestSeason.week(-2), null, List.of(), null));
        assertThat(calendar.firstHeld).isEqualTo(2);
    }

    @Test
    void ofAClockReadTheBedIsHeldFromTheFirstWeek() {
        Standing.ClockReading reading = new Standing.ClockReading(TestSeason.START.minusDays(3), 100);
        Calendar calendar = standing(new Standing(null, "zinnia", 1, "plain", "Bed", null, reading, List.of(), null));
        assertThat(calendar.firstHeld).isZero();
    }

    @Test
    void writtenStemsHoldTheBedUntilTheirDay() {
        Standing.WrittenStems stems = new Standing.WrittenStems(TestSeason.week(1), null, 5);
        Calendar calendar = standing(new Standing(
                null,
                "zinnia",
                1,
                "plain",
                "Bed",
                null,
                null,
                List.of(stems),
                TestSeason.week(4).plusDays(6)));
        assertThat(List.of(calendar.firstHeld, calendar.lastHeld)).containsExactly(0, 4);
    }
}
