package bedwright.plan;

import static org.assertj.core.api.Assertions.assertThat;

import bedwright.growth.ProspectTable;
import java.util.Arrays;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** How lots by place, as a model gives them, become a plan. */
class LotsToPlanTest {
    private final PlanFacts facts = Seasons.facts(Seasons.of(Seasons.FIRST_BED));
    private final ProspectTable table = facts.table();
    private final double[] lots = new double[table.places()];

    private static long count(LotsToPlan.Made made, int place) {
        return Arrays.stream(made.places()).filter(at -> at == place).count();
    }

    /** The first two places of the first stock in weeks that follow one another. */
    private int[] twoWeeks() {
        int first = table.firstPlace(0);
        int next = IntStream.range(first, table.firstPlace(1))
                .filter(place -> facts.holds.from(place) > facts.holds.from(first))
                .findFirst()
                .orElseThrow();
        return new int[] {first, next};
    }

    @Test
    void wholeLotsStandWhereTheyAre() {
        int place = table.firstPlace(0);
        lots[place] = 2;
        LotsToPlan.Made made = LotsToPlan.whole(facts, lots);

        assertThat(count(made, place)).isEqualTo(2);
        assertThat(made.leftOut()).isZero();
    }

    @Test
    void whatASolverLacksOfAWholeLotByRoundingIsNotMissed() {
        int place = table.firstPlace(0);
        lots[place] = 1 - 1e-6;

        assertThat(count(LotsToPlan.whole(facts, lots), place)).isEqualTo(1);
    }

    @Test
    void moreLotsThanThereAreAreLeftOut() {
        int all = facts.firstPlanting(1) - facts.firstPlanting(0);
        lots[table.firstPlace(0)] = all;
        lots[twoWeeks()[1]] = 1;

        assertThat(LotsToPlan.whole(facts, lots).leftOut()).isPositive();
    }

    @Test
    void noHardRuleIsBrokenHoweverManyLotsThereAre() {
        Arrays.fill(lots, 1);
        LotsToPlan.Made made = LotsToPlan.whole(facts, lots);

        assertThat(Search.Found.of(facts, made.places()).hard()).isZero();
        assertThat(made.leftOut()).isPositive();
    }

    @Test
    void partsThatAreALotTogetherBecomeOneWhereTheyPassAHalf() {
        int[] weeks = twoWeeks();
        lots[weeks[0]] = 0.4;
        lots[weeks[1]] = 0.6;
        LotsToPlan.Made made = LotsToPlan.parts(facts, lots);

        assertThat(count(made, weeks[0])).isZero();
        assertThat(count(made, weeks[1])).isEqualTo(1);
    }

    @Test
    void partsOfLessThanHalfALotBecomeNone() {
        lots[table.firstPlace(0)] = 0.49;

        assertThat(LotsToPlan.parts(facts, lots).places()).containsExactly(Search.nothingPlaced(facts));
    }
}
