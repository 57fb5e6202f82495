package bedwright.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import bedwright.plan.Grains;
import bedwright.season.Method;
import java.util.List;
import java.util.Map;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The buying list and the tags add up to the plan. */
class BuyingTest {
    private static final Buying.Wishes NOTHING_MORE = new Buying.Wishes(0, Map.of(), Map.of(), 6, 16, 20, 40);

    private static SheetFacts facts(String problem) {
        return Problems.week(problem).facts();
    }

    @ParameterizedTest
    @MethodSource("bedwright.sheet.Problems#names")
    void whatIsBoughtAndWhatWearsOutCostWhatThePlanSays(String problem) {
        SheetFacts facts = facts(problem);
        BuyingNeeds needs = BuyingNeeds.of(WeekFacts.of(facts));
        long bought = needs.bought().stream().mapToLong(BuyingNeeds.Need::cost).sum();
        double grains = facts.outcome().money().material();
        double smallest = Grains.toMoney(facts.season(), grains)
                * facts.season().currency().smallest();
        assertThat((double) bought + needs.wear()).isCloseTo(smallest, Offset.offset(1e-6));
    }

    @ParameterizedTest
    @MethodSource("bedwright.sheet.Problems#names")
    void seedsAndCellsAreThoseOfThePlantings(String problem) {
        WeekFacts week = Problems.week(problem);
        long expected = 0;
        for (Shown planting : week.plantings()) {
            if (planting.kept().pool() != null) {
                expected += planting.method().start() == Method.Start.TRAY
                        ? planting.cells()
                        : (long) planting.kept().plants()
                                * (planting.method().start() == Method.Start.SOWN
                                        ? planting.method().seedsAPlace()
                                        : 1);
            }
        }
        assertThat(BuyingNeeds.of(week).bought().stream()
                        .mapToLong(BuyingNeeds.Need::amount)
                        .sum())
                .isEqualTo(expected);
    }

    @Test
    void whatIsInStockIsTakenOffAndPacketsAreWhole() {
        SheetFacts facts = facts("small");
        BuyingNeeds.Need need = BuyingNeeds.of(WeekFacts.of(facts)).bought().getFirst();
        int have = (int) need.amount() - 1;
        String text = new Buying(
                        facts, new Buying.Wishes(0, Map.of(need.crop(), have), Map.of(need.crop(), 50), 6, 16, 20, 40))
                .text(110);
        assertThat(text).containsPattern(need.crop() + ".* " + Say.whole(have) + " +50  1 of 50");
    }

    @Test
    void seedIsOrderedSoManyWeeksBeforeItIsSown() {
        SheetFacts facts = facts("first-bed");
        BuyingNeeds.Need need = BuyingNeeds.of(WeekFacts.of(facts)).bought().getFirst();
        String text = new Buying(facts, NOTHING_MORE).text(110);
        assertThat(text)
                .contains(new Say(facts.season()).shortDate(facts.season().weekStart(need.firstWeek() - 6)));
    }

    @Test
    void everyTrayAndEveryStretchHasATag() {
        SheetFacts facts = facts("demo-farm");
        Tags tags = new Tags(facts);
        List<Shown> plantings = Shown.of(facts);
        assertThat(tags.trays()).hasSize((int) plantings.stream()
                .filter(planting -> planting.trayFrom() < planting.trayTo())
                .count());
        Whereabouts where = Whereabouts.of(facts.season(), plantings);
        assertThat(tags.beds())
                .hasSize(plantings.stream()
                        .mapToInt(planting -> where.of(planting).size())
                        .sum());
        assertThat(tags.html()).contains("Tags for trays", "Tags for beds");
    }

    /** Corms that are woken in trays are corms: no margin for gaps, and ordered as early as others. */
    @Test
    void cormsInTraysAreNoSeed() {
        WeekFacts week = Problems.week("demo-farm");
        assertThat(week.plantings())
                .anyMatch(planting -> planting.method().name().startsWith("corms, started in trays"));

        assertThat(BuyingNeeds.of(week).bought())
                .filteredOn(need -> List.of("anemone", "ranunculus").contains(need.crop()))
                .isNotEmpty()
                .extracting(BuyingNeeds.Need::what)
                .containsOnly(BuyingNeeds.What.TUBERS);
    }
}
