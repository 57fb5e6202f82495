package bedwright.plan;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** What is suspect of a plan that a search found. */
class SearchHealthTest {
    private static final Search.Found THUMB = plan(0, 0, 50);

    private static Search.Found plan(long hard, long medium, long soft) {
        return new Search.Found(new int[0], hard, medium, soft);
    }

    @Test
    void aPlanUpToTheBoundIsSound() {
        assertThat(SearchHealth.of(plan(0, 0, 100), true, 100.0, THUMB)).isEqualTo("sound");
    }

    @Test
    void aPlanBeyondTheBoundIsSuspect() {
        assertThat(SearchHealth.of(plan(0, 0, 101), true, 100.0, THUMB)).isEqualTo("better than the bound: suspect");
    }

    @Test
    void withoutABoundNothingIsBeyondIt() {
        assertThat(SearchHealth.of(plan(0, 0, 101), true, null, THUMB)).isEqualTo("sound");
    }

    @Test
    void aPlanThatBreaksAHardRuleIsToldThoughItScoresWell() {
        assertThat(SearchHealth.of(plan(-1, 0, 90), true, 100.0, THUMB)).isEqualTo("breaks a hard rule");
    }

    @Test
    void aPlanThatTheRecheckCountsDifferentlyIsSuspect() {
        assertThat(SearchHealth.of(plan(0, 0, 90), false, 100.0, THUMB))
                .isEqualTo("counted differently by the recheck: suspect");
    }

    @Test
    void aPlanAsGoodAsTheRuleOfThumbIsSound() {
        assertThat(SearchHealth.of(plan(0, 0, 50), true, 100.0, THUMB)).isEqualTo("sound");
    }

    @Test
    void aPlanThatMissesMoreThanTheRuleOfThumbIsSuspectThoughItBringsMore() {
        assertThat(SearchHealth.of(plan(0, -1, 90), true, 100.0, THUMB))
                .isEqualTo("worse than the rule of thumb: suspect");
    }
}
