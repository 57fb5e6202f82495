package bedwright.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import bedwright.plan.DemandLine;
import bedwright.plan.Outcome;
import bedwright.plan.Rule;
import bedwright.season.Season;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What is said of a plan, against outcomes written by hand. */
class SummaryTest {
    private static final SheetFacts FACTS = SmallFarm.facts();
    private static final Season SEASON = FACTS.season();
    private static final Outcome OUTCOME = FACTS.outcome();
    private static final Say SAY = new Say(SEASON);

    /** Weeks of 28 June, 5 July and 12 July. */
    private static final int JUNE_28 = 7;

    private static final int JULY_5 = 8;

    @Test
    void allBouquetsAreWholeWhereEverythingIsServed() {
        List<Bouquets> bouquets = Bouquets.of(SEASON, SmallFarm.served(OUTCOME, SmallFarm.allServed(OUTCOME)));

        assertThat(Bouquets.lines(SAY, bouquets))
                .containsExactly(
                        "Porch, weeks of 28 June to 12 July: all 8 a week whole, in a bad year too.",
                        "Feast, week of 5 July: all 6 whole, in a bad year too.");
    }

    @Test
    void wholeBouquetsAreThoseForWhichEveryLineHasItsStems() {
        // A posy is 3 focal and 2 filler. Five seasons; of 24 focal and 16 filler asked for, in hundredths.
        int[][][] served = SmallFarm.allServed(OUTCOME);
        served[SmallFarm.line(OUTCOME, "Porch", 0).index()][JUNE_28] = new int[] {2400, 2400, 2399, 1500, 300};
        served[SmallFarm.line(OUTCOME, "Porch", 1).index()][JUNE_28] = new int[] {1600, 1000, 1600, 1600, 0};
        Bouquets first = Bouquets.of(SEASON, SmallFarm.served(OUTCOME, served)).getFirst();

        // Whole: min(8, 8) 8; min(8, 5) 5; min(7, 8) 7; min(5, 8) 5; min(1, 0) 0. In order 0, 5, 5, 7, 8.
        assertThat(first.week()).isEqualTo(JUNE_28);
        assertThat(first.ordered()).isEqualTo(8);
        assertThat(first.whole()).isEqualTo(new Spread(0, 5, 8, 5));
    }

    @Test
    void runsOfWeeksWithAShortageAreMergedAndPromisesCountByTheirKind() {
        int[][][] served = SmallFarm.allServed(OUTCOME);
        DemandLine cafe = SmallFarm.line(OUTCOME, "Cafe", -1);
        // Of 2,000 hundredths: usual year short by 5 and 8 stems, bad year (the worst of five) by 10 and 20.
        served[cafe.index()][JUNE_28] = new int[] {2000, 2000, 1500, 1500, 1000};
        served[cafe.index()][JULY_5] = new int[] {2000, 1500, 1200, 1200, 0};
        DemandLine feast = SmallFarm.line(OUTCOME, "Feast", 0);
        // Only the worst of the five is short, by 3 of 18.
        served[feast.index()][JULY_5] = new int[] {1800, 1800, 1800, 1800, 1500};

        assertThat(new Outlets(SEASON, SmallFarm.served(OUTCOME, served)).shortages())
                .containsExactly(
                        "Feast (focal), week of 5 July: enough in a usual year, short of 3 stems in a bad one (must be"
                                + " ours).",
                        "Cafe, weeks of 28 June to 5 July: short of 5 to 8 stems a week in a usual year, of 10 to 20 in a"
                                + " bad one.");
    }

    @Test
    void nothingPromisedIsShortWhereEverythingIsServed() {
        assertThat(new Outlets(SEASON, SmallFarm.served(OUTCOME, SmallFarm.allServed(OUTCOME))).shortages())
                .isEmpty();
    }

    @Test
    void brokenRulesAreMergedIntoRunsAndSayWhatMendsThem() {
        Outcome.Broken june = new Outcome.Broken(Rule.BENCH_ROOM.sentence(), "bench", 4, 30, "cells");
        Outcome.Broken later = new Outcome.Broken(Rule.BENCH_ROOM.sentence(), "bench", 5, 12, "cells");
        Outcome.Broken hours = new Outcome.Broken(Rule.HOURS.sentence(), "hours", 9, 2.25, "hours");
        Outcome broken = SmallFarm.broken(OUTCOME, List.of(june, later, hours));

        assertThat(new Mending(SEASON, broken, List.of()).sentences())
                .containsExactly(
                        "The bench holds no more tray cells than it has room for. Broken here: bench, weeks of 7 June to"
                                + " 14 June, by up to 30 cells. To mend it, make room for 30 cells more, or sow some of"
                                + " it in other weeks.",
                        "No week takes more hours than there are, own and hired, in the mean of the possible seasons."
                                + " Broken here: hours, week of 12 July, by 2.3 hours. To mend it, find 2.3 hours more a"
                                + " week, hired or own, or leave out work of these weeks.");
    }

    @Test
    void mendingNamesThePlantingsThatTakeMost() {
        List<Shown> plantings = Shown.of(FACTS);
        Shown first = plantings.stream().filter(p -> !p.isWritten()).findFirst().orElseThrow();
        Outcome.Broken full =
                new Outcome.Broken(Rule.BED_ROOM.sentence(), first.kept().bed(), first.heldFrom(), 1, "m");

        assertThat(new Mending(SEASON, SmallFarm.broken(OUTCOME, List.of(full)), plantings).sentences())
                .singleElement()
                .asString()
                .contains("most of it is No. ");
    }

    @Test
    void aPlanThatBreaksAHardRuleSaysSoFirst() {
        Outcome.Broken hours = new Outcome.Broken(Rule.HOURS.sentence(), "hours", 9, 2.25, "hours");
        SheetFacts facts = new SheetFacts(
                SEASON, SmallFarm.broken(OUTCOME, List.of(hours)), FACTS.seasons(), FACTS.prospects(), FACTS.making());

        assertThat(Summary.of(facts).getFirst().lines().getFirst())
                .isEqualTo("This plan can't be carried out as it stands; 1 thing is to be mended:");
    }

    @Test
    void theHazardsOfWhatIsGrownAreNamed() {
        List<Shown> plantings = Shown.of(FACTS);
        boolean dill = plantings.stream().anyMatch(p -> p.crop().name().equals("dill"));
        List<String> care = Care.sentences(SEASON, plantings);

        assertThat(care).anyMatch(line -> line.contains("treated") && line.endsWith("Here: sunflower."));
        assertThat(dill).isTrue();
        assertThat(care).anyMatch(line -> line.contains("burn in sunlight") && line.endsWith("Here: dill."));
        assertThat(care).anyMatch(line -> line.contains("licensed"));
    }

    @Test
    void cropsOnWeakFiguresAreNamedWithWhatHangsOnThem() {
        List<String> weak = new WeakFigures(SEASON, OUTCOME, Shown.of(FACTS)).sentences();

        assertThat(weak).anyMatch(line -> line.startsWith("dill: ") && line.contains("stems a plant"));
        assertThat(weak).noneMatch(line -> line.startsWith("sunflower: "));
    }

    @Test
    void saysHowItWasMadeAndThatItDoesNotReact() {
        List<String> made = Summary.of(FACTS).getLast().lines();

        assertThat(made).anyMatch(line -> line.startsWith("Caution: steady. 33 %"));
        assertThat(made)
                .anyMatch(line -> line.contains("5 possible seasons, drawn with seed 7")
                        && line.contains("In none of them does it react"));
        assertThat(made)
                .contains(
                        "Made with seed 42 and a limit of 1,000 moves for each search; interrupted before its end, the"
                                + " best plan so far is shown.");
    }

    @Test
    void linesOfTheTerminalAreNoWiderThanAsked() {
        assertThat(Summary.text(FACTS, 60).lines())
                .allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(60));
        assertThatThrownBy(() -> Summary.text(FACTS, 39))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("39");
    }

    @Test
    void plantingsAsValuesHaveALineEachUnderTheHeads() {
        List<String> lines = PlantingsCsv.of(FACTS).lines().toList();

        assertThat(lines).hasSize(OUTCOME.plantings().size() + 1);
        assertThat(lines.getFirst()).startsWith("number,crop,name,method,bed,sown,");
    }
}
