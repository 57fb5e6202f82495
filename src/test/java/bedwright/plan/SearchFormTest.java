package bedwright.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Which searches the forms of the benchmark consist of. */
class SearchFormTest {

    private static List<Long> seeds(SearchForm form, String problem, int seconds) {
        return form.tasks().stream()
                .filter(task -> task.problem().equals(problem) && task.seconds() == seconds)
                .map(SearchTask::seed)
                .toList();
    }

    @Test
    void theShortFormTakesUnderEightMinutesThoughNoPricesAreKept() {
        assertThat(SearchForm.shortForm().seconds()).isLessThan(SearchForm.SHORT_LIMIT);
    }

    @Test
    void aFormTakesItsSearchesAndForEachProblemItsPrices() {
        SearchForm form = new SearchForm(List.of(new SearchTask("demo", 10, 1), new SearchTask("demo", 10, 2)), 20, 40);
        double withoutPrices = new SearchForm(form.tasks(), 0, 0).seconds();
        assertThat(form.seconds() - withoutPrices).isEqualTo(20);
    }

    @Test
    void theShortFormSearchesTheDemoFarmForAMinuteWithTwoSeeds() {
        assertThat(seeds(SearchForm.shortForm(), "demo", 60)).containsExactly(1L, 2L);
    }

    @ParameterizedTest
    @EnumSource(names = "DEMO_X16", mode = EnumSource.Mode.EXCLUDE)
    void theShortFormHasEveryFamilyButTheLargest(ProblemFamily family) {
        assertThat(seeds(SearchForm.shortForm(), family.label(), 10)).isNotEmpty();
    }

    @ParameterizedTest
    @EnumSource
    void theLongFormHasTenSeedsOfEveryFamilyAtEachTime(ProblemFamily family) {
        List<Long> ten = LongStream.rangeClosed(1, 10).boxed().toList();
        assertThat(List.of(10, 60, 300))
                .allSatisfy(time -> assertThat(seeds(SearchForm.longForm(), family.label(), time))
                        .isEqualTo(ten));
    }

    @Test
    void theLargestFamilyComesLastInTheLongForm() {
        assertThat(SearchForm.longForm().tasks().getLast().problem()).isEqualTo("demo-x16");
    }

    @Test
    void pricesOfLargeFarmsAreLookedForLongerUpToALimit() {
        SearchForm form = new SearchForm(List.of(), 20, 100);
        assertThat(List.of(form.priceSeconds("demo:7"), form.priceSeconds("demo-x4"), form.priceSeconds("demo-x16")))
                .containsExactly(20, 80, 100);
    }

    @ParameterizedTest
    @ValueSource(strings = {"problems=demo", "seeds=2", "first=3", "seconds=10"})
    void aFormDecidesItselfWhatItConsistsOf(String argument) {
        BenchArgs given =
                new BenchArgs(new String[] {"form=short", argument}, "form", "problems", "seeds", "first", "seconds");
        assertThatThrownBy(() -> SearchForm.of(given))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("form=short decides about " + argument.split("=", 2)[0] + " itself");
    }
}
