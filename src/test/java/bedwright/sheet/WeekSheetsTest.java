package bedwright.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import bedwright.climate.PossibleSeason;
import bedwright.climate.PossibleSeasons;
import bedwright.growth.Late;
import bedwright.plan.Delays;
import bedwright.plan.Grains;
import bedwright.plan.Outcome;
import bedwright.plan.Outcomes;
import bedwright.plan.PlanFacts;
import bedwright.plan.Search;
import bedwright.season.Job;
import bedwright.season.KeptPlanting;
import bedwright.season.Plan;
import bedwright.season.Sampling;
import bedwright.season.Season;
import bedwright.season.Units;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What stands on the week sheets adds up to the plan, and what a delay costs is what it changes. */
class WeekSheetsTest {
    private static WeekFacts week(String problem) {
        return Problems.week(problem);
    }

    private static PlanFacts plan(SheetFacts facts) {
        return PlanFacts.of(facts.season(), facts.seasons(), facts.prospects());
    }

    private static Delays delays(SheetFacts facts) {
        PlanFacts plan =
                Delays.facts(facts.season(), facts.seasons(), facts.outcome().plantings(), -1);
        return Delays.of(plan, Outcomes.places(plan, facts.outcome().plantings()));
    }

    @ParameterizedTest
    @MethodSource("bedwright.sheet.Problems#names")
    void theMinutesOfAllJobsAreThoseOfThePlan(String problem) {
        WeekFacts week = week(problem);
        long[] minutes = new long[week.season().weeks()];
        week.work().forEach(line -> minutes[line.week()] += line.minutes());
        for (int w = 0; w < minutes.length; w++) {
            assertThat(minutes[w] * Grains.TICKS_A_MINUTE)
                    .as("%s, week %d", problem, w)
                    .isEqualTo(week.facts().outcome().work().plantings()[w]);
        }
    }

    @ParameterizedTest
    @MethodSource("bedwright.sheet.Problems#names")
    void noTwoPlantingsShareAStretchAndTheMetresAreThoseOfThePlan(String problem) {
        WeekFacts week = week(problem);
        Outcome outcome = week.facts().outcome();
        for (int b = 0; b < outcome.bedUse().length; b++) {
            for (int w = 0; w < week.season().weeks(); w++) {
                List<Stretches.Stretch> there = new ArrayList<>();
                for (Shown planting : week.plantings()) {
                    if (planting.bed() == b && planting.isHeldIn(w)) {
                        there.addAll(week.where().of(planting));
                    }
                }
                assertThat(there.stream().mapToLong(Stretches.Stretch::length).sum())
                        .as("%s, bed %d, week %d", problem, b, w)
                        .isEqualTo(outcome.bedUse()[b][w]);
                assertThat(StretchesTest.overlaps(there)).isEmpty();
            }
        }
    }

    @ParameterizedTest
    @MethodSource("bedwright.sheet.Problems#names")
    void plantsAndCellsAreThoseOfThePlan(String problem) {
        WeekFacts week = week(problem);
        Season season = week.season();
        for (Shown planting : week.plantings()) {
            Integer pool = planting.kept().pool();
            if (pool != null) {
                assertThat(planting.kept().plants())
                        .isEqualTo(planting.kept().lots()
                                * season.pool().get(pool - 1).plants());
            }
        }
        for (Outcome.StockUse stock : week.facts().outcome().stocks()) {
            for (int w = 0; stock.kind() == Outcome.StockKind.TRAYS && w < season.weeks(); w++) {
                int at = w;
                assertThat(week.plantings().stream()
                                .filter(planting -> planting.isInTraysIn(at))
                                .mapToLong(Shown::cells)
                                .sum())
                        .isEqualTo(stock.use()[w]);
            }
        }
    }

    @ParameterizedTest
    @MethodSource("bedwright.sheet.Problems#names")
    void theHoursShownTogetherAreThoseOfThePlan(String problem) {
        WeekFacts week = week(problem);
        WeekSheets sheets = new WeekSheets(week.facts(), delays(week.facts()));
        for (int w = 0; w < week.season().weeks(); w += 7) {
            long minutes = week.facts().outcome().work().plantings()[w] / Grains.TICKS_A_MINUTE;
            List<WeekPage.Part> parts = sheets.page(w).parts().stream()
                    .filter(part -> part.id().equals("do"))
                    .toList();
            for (WeekPage.Part part : parts) {
                assertThat(part.table().totals().getFirst()).contains(Say.clock(minutes));
            }
            assertThat(parts.isEmpty() && minutes > 0).isFalse();
        }
    }

    @Test
    void whatADelayCostsIsTheDifferenceOfTheTwoPlans() {
        SheetFacts facts = week("small").facts();
        PlanFacts plan = plan(facts);
        Delays delays = delays(facts);
        List<KeptPlanting> kept = facts.outcome().plantings();
        int tried = 0;
        for (KeptPlanting planting :
                kept.stream().filter(one -> one.pool() != null).toList()) {
            Delays.Delay delay = delays.later(List.of(planting));
            List<KeptPlanting> other = new ArrayList<>(kept);
            other.remove(planting);
            if (!delay.isLeftOut()) {
                other.add(aWeekLater(planting));
                tried++;
            }
            Outcome changed = Outcomes.of(plan, Outcomes.places(plan, other));
            double before = facts.outcome().score().soft();
            assertThat(delay.grains())
                    .isEqualTo(
                            (before - changed.score().soft()) / facts.seasons().size());
        }
        assertThat(tried).isPositive();
    }

    private static KeptPlanting aWeekLater(KeptPlanting planting) {
        return new KeptPlanting(
                planting.number(),
                planting.crop(),
                planting.method(),
                planting.bed(),
                planting.sown().plusWeeks(1),
                planting.pool(),
                planting.standing(),
                planting.lots(),
                planting.plants());
    }

    @Test
    void whatLosesMoreStandsBeforeWhatLosesLess() {
        SheetFacts facts = week("demo-farm").facts();
        WeekJobs jobs = new WeekJobs(week("demo-farm"), delays(facts));
        int pairs = 0;
        for (int w = 0; w < facts.season().weeks(); w++) {
            List<WeekJobs.Entry> entries = jobs.of(w).stream()
                    .filter(entry -> entry.delay() != null
                            && entry.delay().mustStems() == 0
                            && entry.delay().grains() > 0)
                    .toList();
            for (int i = 1; i < entries.size(); i++) {
                Delays.Delay one = entries.get(i - 1).delay();
                Delays.Delay next = entries.get(i).delay();
                assertThat(one != null && next != null && one.grains() >= next.grains())
                        .isTrue();
                pairs++;
            }
        }
        assertThat(pairs).isPositive();
    }

    @Test
    void onlyWeedingHasNoFigure() {
        SheetFacts facts = week("demo-farm").facts();
        WeekJobs jobs = new WeekJobs(week("demo-farm"), delays(facts));
        Set<Set<Job>> without = new HashSet<>();
        Set<Job> tried = EnumSet.noneOf(Job.class);
        for (int w = 0; w < facts.season().weeks(); w++) {
            for (WeekJobs.Entry entry : jobs.of(w)) {
                if (entry.delay() == null) {
                    without.add(entry.jobs());
                } else {
                    tried.addAll(entry.jobs());
                }
            }
        }
        assertThat(without).containsExactly(Set.of(Job.WEED));
        assertThat(tried).containsAll(Late.JOBS);
    }

    @Test
    void whatHasNoFigureStandsBehindWhatLosesAndWhatHasALastDay() {
        SheetFacts facts = week("demo-farm").facts();
        WeekJobs jobs = new WeekJobs(week("demo-farm"), delays(facts));
        int seen = 0;
        for (int w = 0; w < facts.season().weeks(); w++) {
            List<WeekJobs.Entry> entries = jobs.of(w);
            for (int i = 1; i < entries.size(); i++) {
                WeekJobs.Entry before = entries.get(i - 1);
                WeekJobs.Entry next = entries.get(i);
                boolean weighs = next.delay() != null && (next.delay().grains() > 0 || next.by() != null);
                assertThat(before.delay() == null && weighs)
                        .as("week %d, entry %d", w, i)
                        .isFalse();
                seen += before.delay() == null ? 1 : 0;
            }
        }
        assertThat(seen).isPositive();
    }

    @Test
    void cautionsStandOnTheLineThatTheyBelongTo() {
        WeekFacts week = week("demo-farm");
        WeekSheets sheets = new WeekSheets(week.facts(), delays(week.facts()));
        boolean isSeen = false;
        for (int w = 0; w < week.season().weeks(); w++) {
            for (WeekPage.Part part : sheets.page(w).parts()) {
                for (List<String> row : part.table().rows()) {
                    boolean net = part.id().equals("do") && row.getLast().contains("et up");
                    assertThat(net && !row.getLast().contains("wind")).isFalse();
                    isSeen |= net;
                    assertThat(net && !sheets.page(w).last().getFirst().contains("wind = no nets and covers"))
                            .isFalse();
                }
            }
        }
        assertThat(isSeen).isTrue();
    }

    @Test
    void namesCanDoNoHarmOnThePage() {
        SheetFacts facts = SmallFarm.facts(SmallFarm.hostileSeason());
        WeekSheets sheets = new WeekSheets(facts, delays(facts));
        String html = sheets.html(sheets.weeks());
        assertThat(html).doesNotContain("<script>alert").doesNotContain("<img ");
    }

    /** Readable in the field: common practice, no source. */
    @Test
    void nothingIsPrintedSmallerThanSevenPoints() {
        SheetFacts facts = week("demo-farm").facts();
        String html = new WeekSheets(facts, delays(facts)).html(List.of(0));
        Matcher sizes = Pattern.compile("font-size:([0-9.]+)pt").matcher(html);

        List<Double> points = new ArrayList<>();
        while (sizes.find()) {
            points.add(Double.valueOf(sizes.group(1)));
        }

        assertThat(points).hasSizeGreaterThan(4).allMatch(size -> size >= 7);
    }

    /** The demo farm with a plan that could be grown, over four possible seasons; the others with plans of no merit. */
    private static SheetFacts grown(String problem) {
        if (!problem.equals("demo-farm")) {
            return week(problem).facts();
        }
        Season farm = week(problem).season();
        Season season = farm.with(
                new Sampling(4, farm.possible().seed(), farm.possible().doubt(), List.of()));
        List<PossibleSeason> seasons = PossibleSeasons.of(season);
        PlanFacts plan = PlanFacts.of(season, seasons);
        Search.Found found = new Search(plan, new Search.Limits(1, null, 500L)).run(Search.nothingPlaced(plan));
        return new SheetFacts(
                season,
                Outcomes.of(plan, found.places()),
                seasons,
                plan.table(),
                new Plan.Making(1, null, 500L, true, false));
    }

    @ParameterizedTest
    @MethodSource("bedwright.sheet.Problems#names")
    void everyWeekIsPrintedOnOnePage(String problem) {
        SheetFacts facts = grown(problem);
        WeekSheets sheets = new WeekSheets(facts, delays(facts));
        for (int week : sheets.weeks()) {
            assertThat(sheets.page(week).isOnTwoPages()).as("week %d", week).isFalse();
        }
    }

    @Test
    void whatDoesNotFitAPageSaysSo() {
        List<String> row = List.of("zinnia", "", "", "", "3 Bed: 40 _____; ".repeat(2000));
        Table table = new Table("cut-1", "Cut", Collections.nCopies(5, Table.Column.text("")), List.of(row));
        List<WeekPage.Part> parts = List.of(new WeekPage.Part("cut", "Cut", "", table));

        assertThat(new WeekPage(1, "", "", List.of(), parts, List.of(), PrintRoom.density(List.of(), parts, List.of()))
                        .isOnTwoPages())
                .isTrue();
    }

    /** The widths of letters: 13 of 556 and a space of 278 thousandths (Helvetica's font metrics). */
    @Test
    void linesAreReckonedByTheWidthsOfTheirLetters() {
        assertThat(LetterWidths.of("0123456789 000", 10, false)).isEqualTo((13 * 556 + 278) / 100.0);
        assertThat(LetterWidths.lines("00000 00000 00000", 10, 59, false)).isEqualTo(2);
        assertThat(LetterWidths.lines("00000 00000 00000", 10, 58, false)).isEqualTo(3);
    }

    private static String sown(Season season, String crop) {
        WeekFacts week = week("demo-farm");
        Shown planting = week.plantings().stream()
                .filter(one -> one.name().equals(crop) && one.kept().standing() == null)
                .findFirst()
                .orElseThrow();
        Job job = switch (planting.method().start()) {
            case SOWN -> Job.SOW;
            case TRAY -> Job.FILL_TRAYS;
            case PLUGS, SET -> Job.PLANT_OUT;
        };
        return new JobWords(season).of(planting, job);
    }

    /** 6 mm of soil over a zinnia's seed is about a quarter of an inch: common practice, no source. */
    @Test
    void sowingLinesSayHowDeepInTheUnitsOfTheSeason() {
        Season farm = week("demo-farm").season();

        assertThat(sown(farm, "zinnia")).contains("0.6 cm deep");
        assertThat(sown(farm.with(Units.FEET), "zinnia")).contains("1/4 in deep");
        assertThat(sown(farm, "strawflower")).contains("pressed on and not covered");
    }
}
