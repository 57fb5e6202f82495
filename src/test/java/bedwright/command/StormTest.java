package bedwright.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bedwright.climate.PossibleSeason;
import bedwright.climate.PossibleSeasons;
import bedwright.file.PlanFile;
import bedwright.growth.Prospect;
import bedwright.growth.Prospects;
import bedwright.season.Plan;
import bedwright.season.Sampling;
import bedwright.season.Season;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class StormTest {
    private static final String DAY = "5 Jul";

    @TempDir
    private Path folder;

    @BeforeEach
    void plan() {
        Ran.of("plan", Path.of("problems/tray-and-bed.json"), "--moves", 500, "--out", folder);
    }

    private Plan kept() {
        return PlanFile.read(folder.resolve("plan.json"));
    }

    private static PossibleSeason stormy(Season season, LocalDate day, double from, double speed) {
        return PossibleSeasons.usualWith(season, List.of(new Sampling.GivenGust(day, from, speed)));
    }

    private List<StormRound.Stop> round(double speed) {
        Plan plan = kept();
        LocalDate day = day(plan.season());
        PossibleSeason stormy = stormy(plan.season(), day, 270, speed);
        return StormRound.of(
                plan, stormy, StormRound.gustOf(stormy, plan.season().dayOf(day)));
    }

    private static LocalDate day(Season season) {
        return LocalDate.of(season.starts().getYear(), 7, 5);
    }

    @Test
    void safetyStandsBeforeEverythingElse() {
        // So strong that it is felt in the lee too.
        Ran ran = Ran.of("storm", folder, "--from", "west", "--on", DAY, "--gust", "90");

        assertThat(ran.code()).as(ran.err()).isEqualTo(Exit.DONE);
        assertThat(ran.out()).startsWith("First: this is no weather warning.");
        assertThat(ran.out()).contains("hanging limbs", "from the west", "Likely laid flat, the most exposed first:");
    }

    @Test
    void theMostExposedComeFirst() {
        assertThat(round(28))
                .isNotEmpty()
                .isSortedAccordingTo(Comparator.comparingDouble(
                                (StormRound.Stop stop) -> stop.blown().speed())
                        .reversed()
                        .thenComparing(Comparator.comparingDouble(
                                        (StormRound.Stop stop) -> stop.blown().flat())
                                .reversed()));
    }

    @Test
    void aStrongerGustLaysMoreFlat() {
        double mild =
                round(15).stream().mapToDouble(stop -> stop.blown().flat()).sum();
        double strong =
                round(30).stream().mapToDouble(stop -> stop.blown().flat()).sum();

        assertThat(strong).isGreaterThan(mild);
    }

    /** The stems that a season with the gust gives afterwards are those of one without, less what is lost for good. */
    @Test
    void whatIsLostIsWhatThePlanCountsAsLost() {
        Plan plan = kept();
        Season season = plan.season();
        LocalDate day = day(season);
        Prospects still = Prospects.of(season, List.of(PossibleSeasons.usualWith(season, List.of())));
        Prospects blown = Prospects.of(season, List.of(stormy(season, day, 270, 27)));
        int week = season.weekOf(day) + 1;
        int looked = 0;
        for (StormRound.Stop stop : round(27)) {
            Prospect before = still.expect(stop.planting());
            Prospect after = blown.expect(stop.planting());
            for (int k = 0; k < before.stems().length; k++) {
                for (int w = week; w < season.weeks(); w++) {
                    int was = before.stems()[k][w][0];
                    if (was > 500) {
                        assertThat(after.stems()[k][w][0] / (double) was)
                                .isCloseTo(1 - stop.blown().lost(), within(0.003));
                        looked++;
                    }
                }
            }
        }
        assertThat(looked).isPositive();
    }

    @Test
    void badIsTheStrongestGustOfAUsualYearAndVeryBadIsMore() {
        String bad = Ran.of("storm", folder, "--from", "west", "--on", DAY).out();
        String worse = Ran.of("storm", folder, "--from", "west", "--on", DAY, "--gust", "very-bad")
                .out();

        assertThat(speed(worse)).isGreaterThan(speed(bad));
    }

    private static double speed(String said) {
        return Double.parseDouble(said.replaceAll("(?s).*gusts up to ([0-9.]+) .*", "$1"));
    }

    @Test
    void programsAreToldTheSame() {
        assertThat(Ran.of("storm", folder, "--from", "270", "--on", DAY, "--gust", "30", "--format", "json")
                        .out())
                .contains("\"version\": 1", "\"flat\": ", "\"from\": 270", "\"safety\": [");
    }

    @Test
    void aSideThatTheSeasonKnowsNoStormsFromNeedsASpeed() {
        Ran ran = Ran.of("storm", folder, "--from", "east", "--on", DAY);

        assertThat(ran.code()).isEqualTo(Exit.USAGE);
        assertThat(ran.err()).contains("no storms from that side", "give --gust a speed");
    }

    @Test
    void aSideThatIsNoneIsTold() {
        assertThat(Ran.of("storm", folder, "--from", "windward", "--on", DAY).err())
                .contains("--from takes north, north-east");
    }

    /** A gust that was noted of an earlier day is none of this storm's. */
    @Test
    void aStormIsJudgedByTheGustOfItsOwnDay() {
        String before = Ran.of("storm", folder, "--from", "west", "--on", DAY, "--gust", "30")
                .out();
        Ran.of(
                "note",
                folder,
                "weather gust 5 west",
                "--on",
                kept().season().starts().plusDays(3),
                "--yes");

        assertThat(Ran.of("storm", folder, "--from", "west", "--on", DAY, "--gust", "30")
                        .out())
                .isEqualTo(before);
    }

    @Test
    void whatWasNotedOfTheDaysGustGoesBeforeWhatIsGuessed() {
        Ran.of("note", folder, "weather gust 60 west", "--on", DAY, "--yes");

        assertThat(Ran.of("storm", folder, "--from", "east", "--on", DAY, "--gust", "5")
                        .out())
                .contains("gusts up to 60 m/s from the west");
    }

    @Test
    void afterANotedGustWhatIsNotCountedIsNotCalledUnharmed() {
        Ran.of("note", folder, "weather gust 60 west", "--on", DAY, "--yes");

        assertThat(Ran.of("storm", folder, "--from", "west", "--on", DAY).out())
                .contains("what you don't note counts as likely harmed by the noted gust");
    }
}
