package bedwright.recheck;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bedwright.climate.Gust;
import bedwright.season.BedBlock;
import bedwright.season.Crop;
import bedwright.season.Method;
import bedwright.season.Sampling;
import bedwright.season.Site;
import bedwright.season.Stock;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Full grown (from day 21 on) a gust of 24 m/s lays half of the crop flat, of which three tenths stand up: 0.65 is left. */
class StormsTest {
    private final TestCrop crop = new TestCrop();
    private final TestSeason season = new TestSeason();

    private double[] after(Gust... gusts) {
        season.crops.add(crop.build());
        Facts facts = season.facts();
        Placed placed = season.placed(1, 0);
        var possible = season.still(List.of(gusts));
        return new Storms(facts, placed, possible, new Course(facts, placed, possible)).standing();
    }

    private static Gust gust(int day, double speed) {
        return new Gust(day, 0, 270, speed);
    }

    @Test
    void gustAtHalfLeavesWhatStandsUpAgain() {
        assertThat(after(gust(22, 24))[4]).isCloseTo(0.65, within(1e-12));
    }

    @Test
    void gustOnTheFourthDayCountsForItsWeek() {
        assertThat(after(gust(24, 24))[3]).isCloseTo(0.65, within(1e-12));
    }

    @Test
    void gustOnTheFifthDayCountsFromTheNextWeek() {
        assertThat(after(gust(25, 24))[3]).isEqualTo(1);
    }

    @Test
    void gustsMultiply() {
        assertThat(after(gust(22, 24), gust(23, 24))[4]).isCloseTo(0.65 * 0.65, within(1e-12));
    }

    @Test
    void halfGrownStandsTwiceTheGust() {
        crop.firstCut = 250;
        // 150 °C·d on day 14, half way from 50 to 250.
        assertThat(after(gust(14, 48))[4]).isCloseTo(0.65, within(1e-12));
    }

    @Test
    void gustIsMeantAtItsReferenceHeight() {
        crop.stand = new Crop.Stand(24, 0.5, 3, 0.3);
        assertThat(after(gust(22, 12))[4]).isCloseTo(0.65, within(1e-12));
    }

    @Test
    void netStrengthens() {
        season.nets.add(new Stock.Net("net", 100, null, 0, 1.5));
        crop.net = new Method.NetUse("net", 1);
        assertThat(after(gust(22, 36))[4]).isCloseTo(0.65, within(1e-12));
    }

    @Test
    void tunnelSlowsTheGust() {
        BedBlock.Tunnel tunnel = new BedBlock.Tunnel(0, 0, 0.5);
        season.beds = List.of(TestSeason.bed("Bed", 100, tunnel, null, List.of(), List.of()));
        assertThat(after(gust(22, 48))[4]).isCloseTo(0.65, within(1e-12));
    }

    @Test
    void gustBeforeEmergenceFindsNothing() {
        assertThat(after(gust(3, 150))[4]).isEqualTo(1);
    }

    /**
     * Seven gusts in ten weeks, all of about 24 m/s. In week 2 (180 °C·d on day 17, 0.765 of full height, half at 31.4
     * m/s) one lays 0.079 flat, in week 3 half: 0.7 × 0.7 × (0.079 + 4/7 × 0.505) is lost by the middle of week 3.
     */
    @Test
    void normalSeasonTakesStormsByExpectation() {
        season.storms.add(new Site.StormSide(270, Collections.nCopies(12, 0.7), 24, 0.1));
        season.crops.add(crop.build());
        Facts facts = season.facts();
        Placed placed = season.placed(1, 0);
        var normal = facts.normal();
        double[] standing = new Storms(facts, placed, normal, new Course(facts, placed, normal)).standing();
        assertThat(standing[3]).isCloseTo(0.835, within(0.003));
    }

    /** As above, but on day 23 a gust of 24 m/s was noted: 0.65 is left, and in week 3 three of the four days are usual. */
    @Test
    void normalSeasonTakesANotedGustInsteadOfItsDaysExpectation() {
        season.storms.add(new Site.StormSide(270, Collections.nCopies(12, 0.7), 24, 0.1));
        season.notedGusts.add(new Sampling.GivenGust(TestSeason.START.plusDays(23), 270, 24));
        season.crops.add(crop.build());
        Facts facts = season.facts();
        Placed placed = season.placed(1, 0);
        var normal = facts.normal();
        double[] standing = new Storms(facts, placed, normal, new Course(facts, placed, normal)).standing();
        // exp(−0.7 × 0.7 × (0.079 + 3/7 × 0.505)) = 0.8652
        assertThat(standing[3]).isCloseTo(0.65 * 0.8652, within(0.003));
    }
}
