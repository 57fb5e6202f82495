package bedwright.compare;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import bedwright.file.SeasonFile;
import bedwright.file.StrategiesFile;
import bedwright.season.Changes;
import bedwright.season.Method;
import bedwright.season.Season;
import bedwright.season.Strategies;
import bedwright.season.Strategies.Strategy;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The usual questions as strategies. */
class QuestionTest {
    private static final Season DEMO = season("demo-farm");
    private static final Season FIRST = season("first-bed");

    private static Season season(String name) {
        return SeasonFile.read(Path.of("problems", name + ".json"));
    }

    @ParameterizedTest
    @EnumSource(Question.class)
    void itsStrategiesPassTheCheckOfStrategyFiles(Question question) {
        Strategies asked = question.of(DEMO);

        assertThat(asked.strategies()).hasSizeGreaterThan(1);
        assertThat(StrategiesFile.parse("asked", StrategiesFile.bytes(asked), DEMO))
                .isEqualTo(asked);
    }

    private static List<Method> ways(Question question, String strategy, String crop) {
        Strategy one = question.of(DEMO).strategies().stream()
                .filter(each -> each.name().equals(strategy))
                .findFirst()
                .orElseThrow();
        return Changes.of(DEMO, one).crops().stream()
                .filter(each -> each.name().equals(crop))
                .findFirst()
                .orElseThrow()
                .methods();
    }

    @Test
    void raisedInTraysLeavesNoSowingOfWhatCanBeBoth() {
        assertThat(ways(Question.RAISING, "all raised in trays", "zinnia"))
                .isNotEmpty()
                .allMatch(way -> way.start() == Method.Start.TRAY);
    }

    @Test
    void raisedInTraysLeavesWhatIsOnlySownAsItIs() {
        assertThat(ways(Question.RAISING, "all raised in trays", "dill"))
                .isEqualTo(ways(Question.RAISING, "both", "dill"))
                .isNotEmpty();
    }

    @Test
    void unpinchedLeavesNoPinching() {
        assertThat(ways(Question.PINCHING, "none pinched", "sunflower, branching"))
                .isNotEmpty()
                .noneMatch(Method::pinched);
    }

    @Test
    void whatStandsInANetAlreadyIsNotBarred() {
        assertThat(ways(Question.NETS, "nothing netted", "larkspur"))
                .isEqualTo(ways(Question.NETS, "as it stands", "larkspur"));
    }

    @Test
    void aSeasonWithoutWeeklyBouquetsCannotBeAskedHowMany() {
        Season without = season("farmers-problem");

        assertThatIllegalArgumentException()
                .isThrownBy(() -> Question.BOUQUETS.of(without))
                .withMessageContaining("nobody takes weekly bouquets");
    }

    @Test
    void eachCropNamedIsLeftOutOnce() {
        assertThat(Question.without(List.of("dill", "dill"), FIRST).strategies())
                .extracting(Strategy::name)
                .containsExactly("as it stands", "without dill");
    }

    @Test
    void aCropThatIsNotGrownCannotBeLeftOut() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Question.without(List.of("rose"), FIRST))
                .withMessageContaining("\"rose\"")
                .withMessageContaining("\"dill\"");
    }
}
