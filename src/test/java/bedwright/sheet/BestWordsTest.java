package bedwright.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import bedwright.season.Plan;
import bedwright.season.Season;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** What is claimed of how close a plan comes to the best possible, and what is not. */
class BestWordsTest {
    private static final Season SEASON = SmallFarm.season();
    /** A main unit of money in one season, grains. */
    private static final long ONE = 6_000_000L * SEASON.currency().smallest();

    private static String said(@Nullable Double within, long hard, long medium, long soft, long bound, long nothing) {
        Plan.Closeness closeness = new Plan.Closeness(within, bound * ONE, nothing * ONE, 500, null, List.of());
        return String.join(" ", BestWords.sentences(SEASON, new Plan.Score(hard, medium, soft * ONE), closeness, 1));
    }

    @Test
    void theClaimNamesTheThreeFiguresThatItRestsOn() {
        assertThat(said(12.5, 0, 0, 700, 800, 0))
                .startsWith("Within 12.5 % of the best possible")
                .contains("brings more than K 800")
                .contains("this one brings K 700")
                .contains("nothing planted K 0")
                .doesNotContain("must be ours");
    }

    @Test
    void withStemsMissingThatMustBeOursItIsOfPlansThatMissNoMore() {
        assertThat(said(12.5, 0, -3, 700, 800, 0))
                .contains("and misses no more of the stems that must be ours")
                .contains("Whether fewer of these need be missing is not said");
    }

    @Test
    void ofAPlanThatBreaksAHardRuleItSaysWhyNothingIsClaimed() {
        assertThat(said(null, -5, 0, 700, 800, 0)).contains("can't be claimed: it breaks a hard rule");
    }

    @Test
    void wherePlantingBringsNothingNoShareIsClaimed() {
        assertThat(said(null, 0, 0, -10, -5, 0)).contains("can't be claimed as a share");
    }

    @Test
    void aPlanBeyondTheBoundIsAFaultOfOurs() {
        assertThat(said(null, 0, 0, 900, 800, 0)).contains("fault of Bedwright's own");
    }

    @Test
    void theSheetShowsWhatOneMoreWouldBeWorthByWeek() {
        Page page = Page.parse(Sheet.html(SmallFarm.facts()));

        assertThat(page.text())
                .contains("What one more would be worth: an estimate")
                .contains("An hour of your own, beyond its pay: up to about K 120")
                .contains("if you had it all season");
    }
}
