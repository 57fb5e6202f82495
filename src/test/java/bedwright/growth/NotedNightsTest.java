package bedwright.growth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bedwright.season.BedBlock;
import bedwright.season.Crop;
import bedwright.season.Method;
import bedwright.season.Past;
import bedwright.season.Standing;
import bedwright.season.Stock;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What nights whose minimum was noted do: sown in week 0 the crop is up on day 4, grown on day 10 and in cut on the days 21
 * to 34, half of its ten stems in week 3 and half in week 4. It stands nothing at or below −2 °C young and −1 °C grown.
 */
class NotedNightsTest {
    private static final double[] ALL = {0, 0, 0, 5, 5, 0, 0, 0, 0, 0};
    private static final double[] NOTHING = new double[10];

    private final SmallSeason season = new SmallSeason();
    private final SmallCrop crop = season.crop;

    NotedNightsTest() {
        crop.killing = new Crop.Killing(-2, -1);
    }

    @ParameterizedTest
    @CsvSource({
        "3, −9, 10, seed stands any cold",
        "4, −1.9, 10, young it stands so much",
        "4, −2, 0, on its first day above ground",
        "9, −1.5, 10, still young",
        "10, −1, 0, grown it stands less",
        "20, −1, 0, the night before it is cut",
        "24, −1, 5, in the middle of a week that counts still",
        "23, −1, 0, before the middle of its first week in cut",
        "31, −1, 10, in the middle of its last week",
        "40, −9, 10, when it is over"
    })
    void aNightAsColdAsItDoesNotStandTakesWhatWasToCome(int day, String least, double stems, String why) {
        season.night(day, Double.parseDouble(least.replace('−', '-')));

        assertThat(sum(season.stems(0))).as(why).isCloseTo(stems, within(1e-9));
    }

    private static double sum(double[] weeks) {
        double sum = 0;
        for (double week : weeks) {
            sum += week;
        }
        return sum;
    }

    @Test
    void itKillsInTheNormalSeasonToo() {
        season.night(12, -3);
        Losses losses = season.losses(0);

        assertThat(losses.springOrWinter(season.normal(), season.development(0)))
                .isZero();
    }

    @Test
    void inCutItTakesTheWeeksWhoseMiddleComesAfterIt() {
        season.night(28, -1);

        assertThat(season.stems(0)).containsExactly(new double[] {0, 0, 0, 5, 0, 0, 0, 0, 0, 0}, within(1e-9));
    }

    @Test
    void aTunnelKeepsOffItsDegrees() {
        season.beds.set(0, SmallSeason.bed("Bed", 0, new BedBlock.Tunnel(0, 2, 1), null, List.of(), List.of()));
        season.night(12, -2.9);

        assertThat(season.stems(0)).containsExactly(ALL, within(1e-9));
    }

    @Test
    void aNightTooColdForTheTunnelKills() {
        season.beds.set(0, SmallSeason.bed("Bed", 0, new BedBlock.Tunnel(0, 2, 1), null, List.of(), List.of()));
        season.night(12, -3);

        assertThat(season.stems(0)).containsExactly(NOTHING);
    }

    /** The cover lies on the days 0 to 6. */
    @ParameterizedTest
    @CsvSource({"6, -4.9, 10", "6, -5, 0", "7, -2, 0"})
    void aCoverKeepsOffItsDegreesInTheNightsInWhichItLies(int day, double least, double stems) {
        season.cover = new Stock.Cover(100, null, 0, 3, 1);
        crop.cover = new Method.CoverUse(1);
        season.night(day, least);

        assertThat(sum(season.stems(0))).isCloseTo(stems, within(1e-9));
    }

    @Test
    void theNightOfADayIsOverWhenSomethingIsPlantedOutOnIt() {
        crop.asPlugs();
        season.night(0, -9);

        assertThat(sum(season.stems(0))).isPositive();
    }

    @Test
    void theNightAfterPlantingOutIsNot() {
        crop.asPlugs();
        season.night(1, -9);

        assertThat(sum(season.stems(0))).isZero();
    }

    @Test
    void itNeedsNoFrostDatesOfTheSiteButTheNoteAlone() {
        assertThat(season.frost).isNull();
        season.night(12, -1);

        assertThat(season.stems(0)).containsExactly(NOTHING);
    }

    // Sampled frosts beside what is known

    private void lastFrost(int day) {
        crop.killing = new Crop.Killing(0, 0);
        LocalDate start = season.starts;
        season.frost = SmallSeason.frost(start.plusDays(day), start.plusDays(200), 5);
    }

    private void mild(int from, int to) {
        for (int day = from; day <= to; day++) {
            season.night(day, 5);
        }
    }

    @Test
    void aLastFrostOnANightKnownAsMildFallsOnTheNightBefore() {
        lastFrost(6);
        mild(6, 6);

        assertThat(sum(season.stems(0))).as("on day 5, when it is up").isZero();
    }

    @Test
    void aLastFrostBeforeWhichAllNightsWereMildFallsBeforeItIsUp() {
        lastFrost(6);
        mild(4, 6);

        assertThat(season.stems(0)).containsExactly(ALL, within(1e-9));
    }

    @Test
    void aLastFrostAfterTheMildNightsKillsAsBefore() {
        lastFrost(7);
        mild(4, 6);

        assertThat(sum(season.stems(0))).isZero();
    }

    /** The last frost is as likely before as after day 7: half a day before it 1 − Φ(−½/3.9015) = 0.551 would kill. */
    @Test
    void inTheNormalSeasonTheChanceOfTheNightsNotKnownIsLeft() {
        lastFrost(7);
        mild(4, 6);
        Losses losses = season.losses(0);

        assertThat(losses.springOrWinter(season.normal(), season.development(0)))
                .as("Φ(−0.128), from a table")
                .isCloseTo(1 - 0.5510, within(0.0005));
    }

    private void firstFrost(int day) {
        crop.killing = new Crop.Killing(0, 0);
        LocalDate start = season.starts;
        season.frost = SmallSeason.frost(start.minusDays(60), start.plusDays(day), 5);
    }

    @Test
    void aFirstFrostOnNightsKnownAsMildComesOnTheNextOne() {
        firstFrost(22);
        mild(22, 23);

        assertThat(season.stems(0))
                .as("on day 24, the middle of week 3")
                .containsExactly(new double[] {0, 0, 0, 5, 0, 0, 0, 0, 0, 0}, within(1e-9));
    }

    @Test
    void aFirstFrostComesOnItsDayWhereNothingIsKnownOfIt() {
        firstFrost(22);
        mild(23, 30);

        assertThat(sum(season.stems(0))).isZero();
    }

    /** P(day ≥ 22) of a first frost about day 22: 1 − Φ(−½/3.9015). */
    @Test
    void inTheNormalSeasonAWeekIsTakenFromTheFirstNightNotKnownOn() {
        firstFrost(22);
        mild(22, 23);

        assertThat(season.losses(0).autumn(season.normal(), season.development(0), 3))
                .isCloseTo(0.5510, within(0.0005));
    }

    // Seen since

    private double[] stemsOf(@Nullable LocalDate counted, @Nullable LocalDate alive, double left) {
        Past past =
                new Past(season.starts, null, List.of(), List.of(), counted, left, null, null, alive, 1, null, null, 1);
        Standing standing =
                new Standing(null, "zinnia", 10, "plain", "Bed", season.starts, null, List.of(), null, past);
        World world = new World(season.build(), List.of(season.possible()));
        Grown grown =
                Grown.of(world, 0, world.season.crops().getFirst().methods().getFirst(), 0, standing, 0);
        return Row.stemsByWeek(grown, world.ground.classes().getFirst(), 10, 0);
    }

    @Test
    void whatWasSeenAliveAfterTheNightWasNotKilledByIt() {
        season.night(12, -9);

        assertThat(stemsOf(null, season.starts.plusDays(12), 1)).containsExactly(ALL, within(1e-9));
    }

    @Test
    void whatWasCountedAfterTheNightIsWhatIsLeft() {
        season.night(12, -9);
        LocalDate counted = season.starts.plusDays(13);

        assertThat(sum(stemsOf(counted, counted, 0.3))).isCloseTo(3, within(1e-9));
    }

    @Test
    void whatWasCountedBeforeTheNightIsKilledByIt() {
        season.night(12, -9);
        LocalDate counted = season.starts.plusDays(11);

        assertThat(sum(stemsOf(counted, counted, 0.3))).isZero();
    }

    // Winter

    /** Sown on 1 November, in cut from day 96 on; of equally cold days 1 January counts as the coldest: day 61. */
    private void overWinter() {
        season.starts = LocalDate.of(2027, 11, 1);
        season.weeks = 40;
        crop.firstCut = 970;
        crop.cutDays = 182;
        crop.winterShare = 0.7;
        season.frost = SmallSeason.frost(season.starts.plusDays(170), season.starts.plusDays(340), 5);
    }

    @ParameterizedTest
    @CsvSource({"30, 7", "61, 7", "95, 7", "150, 7", "243, 7"})
    void aNightOfTheWinterItStandsThroughIsInItsWinterShare(int day, double stems) {
        overWinter();
        season.night(day, -12);

        assertThat(sum(season.stems(0)))
                .as("up to half a year after the coldest day")
                .isCloseTo(stems, within(1e-9));
    }

    @Test
    void aNightAfterThatSummerTakesWhatIsStillToBeCut() {
        overWinter();
        season.night(244, -12);

        assertThat(sum(season.stems(0)))
                .as("the weeks up to day 244 hold 149 of the 182 days of cutting")
                .isCloseTo(0.7 * 10 * 149 / 182, within(1e-9));
    }

    @Test
    void ofAWinterNightOnlyThatItWasIsTold() {
        overWinter();
        season.night(30, -4);
        season.night(61, -12);
        season.night(80, -1);
        Grown grown = season.grown(0);
        List<Weathered> all =
                new WeatherTaken(grown, grown.world.ground.classes().getFirst()).all();

        assertThat(all).containsExactly(new Weathered(Weathered.Cause.WINTER, 61, -12, 1, 0));
    }

    @Test
    void aNightThatKilledIsToldWithItsShareOfThePossibleSeasons() {
        season.night(12, -3);
        Grown grown = season.grown(0);

        assertThat(new WeatherTaken(grown, grown.world.ground.classes().getFirst()).all())
                .containsExactly(new Weathered(Weathered.Cause.NIGHT, 12, -3, 1, 1));
    }
}
