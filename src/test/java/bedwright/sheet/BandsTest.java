package bedwright.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bedwright.plan.Grains;
import bedwright.plan.Outcome;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;

/** Each band shows what the outcome says, as marks and as a table. */
class BandsTest {
    private static final SheetFacts FACTS = SmallFarm.facts();
    private static final Outcome OUTCOME = FACTS.outcome();
    private static final int WEEKS = FACTS.season().weeks();
    private static final Page PAGE = Page.parse(Sheet.html(FACTS));

    private static double number(String text) {
        return Double.parseDouble(text.replace(",", "").replace("−", "-"));
    }

    @Test
    void stemsHaveAMarkForEachWeekAndRoleInWhichThereAreAnyOrAreAsked() {
        long expected = 0;
        for (RoleWeeks role : RoleWeeks.of(FACTS.season(), OUTCOME)) {
            for (int w = 0; w < WEEKS; w++) {
                expected += role.asked()[w] > 0 || role.ready()[w].high() > 0 || role.ready()[w].mean() > 0 ? 1 : 0;
            }
        }
        assertThat(expected).isPositive();
        assertThat(Page.marks(PAGE.byId("band-stems"), "mark")).isEqualTo(expected);
        assertThat(PAGE.rows("stems-table", "tbody")).hasSize(Math.toIntExact(expected));
    }

    @Test
    void stemsAddUpToTheOutcomes() {
        List<List<String>> totals = PAGE.rows("stems-table", "tfoot");
        assertThat(totals).hasSize(FACTS.season().roles().size());
        for (int r = 0; r < totals.size(); r++) {
            int role = r;
            // Roles are nodes without a parent; each holds what comes from all kinds within it.
            int node = r == 0 ? 0 : 2;
            double ready = sum(OUTCOME.stems()[node]) / 100.0 / OUTCOME.seasons();
            double left = sum(OUTCOME.leftOver()[r]) / 100.0 / OUTCOME.seasons();
            double asked = OUTCOME.demand().stream()
                            .filter(line -> line.role() == role)
                            .mapToLong(line -> Arrays.stream(line.asked()).sum())
                            .sum()
                    / 100.0;
            assertThat(number(totals.get(r).get(2))).isCloseTo(asked, within(0.5));
            assertThat(number(totals.get(r).get(7))).isCloseTo(ready, within(0.5));
            assertThat(number(totals.get(r).get(9))).isCloseTo(left, within(0.5));
        }
    }

    private static double sum(int[][] byWeek) {
        return Arrays.stream(byWeek).flatMapToInt(Arrays::stream).asLongStream().sum();
    }

    @Test
    void bedsHaveABarForEachPlantingAndTraysOneForEachRaised() {
        Element beds = PAGE.byId("band-beds");
        long raised =
                Shown.of(FACTS).stream().filter(p -> p.trayFrom() < p.trayTo()).count();

        assertThat(Page.marks(beds, "mark planting"))
                .isEqualTo(OUTCOME.plantings().size());
        assertThat(raised).isPositive();
        assertThat(Page.marks(beds, "mark raising")).isEqualTo(raised);
    }

    @Test
    void everyPlantingsNumberStandsInTheBedsOfASmallFarm() {
        List<String> texts = Page.within(PAGE.byId("band-beds"), "text").stream()
                .map(Element::getTextContent)
                .toList();
        for (Shown planting : Shown.of(FACTS)) {
            assertThat(texts).anyMatch(text -> (text + " ").startsWith(planting.number() + " "));
        }
        assertThat(PAGE.all("section").stream().map(s -> s.getAttribute("id"))).doesNotContain("closely");
    }

    @Test
    void metresOfTheBedTableAddUpToTheOutcomesUse() {
        double expected = sum(OUTCOME.bedUse()) / 1000;
        assertThat(number(PAGE.rows("beds-table", "tfoot").getFirst().get(5))).isCloseTo(expected, within(0.06));
    }

    @Test
    void hoursHaveAMarkAndARowAWeek() {
        assertThat(Page.marks(PAGE.byId("band-hours"), "mark")).isEqualTo(WEEKS);
        assertThat(PAGE.rows("hours-table", "tbody")).hasSize(WEEKS);
    }

    @Test
    void hoursAddUpToTheOutcomes() {
        double all = 0;
        double cutting = 0;
        double beyond = 0;
        for (int w = 0; w < WEEKS; w++) {
            for (int k = 0; k < OUTCOME.seasons(); k++) {
                all += OUTCOME.work().all(w, k);
                cutting += OUTCOME.work().cutting()[w][k];
                beyond += Math.max(0, OUTCOME.work().all(w, k) - OUTCOME.work().own()[w]);
            }
        }
        double hours = (double) Grains.TICKS_AN_HOUR * OUTCOME.seasons();
        List<String> totals = PAGE.rows("hours-table", "tfoot").getFirst();
        assertThat(number(totals.get(4))).isCloseTo(cutting / hours, within(0.06));
        assertThat(number(totals.get(6))).isCloseTo(all / hours, within(0.06));
        assertThat(number(totals.get(11))).isCloseTo(beyond / hours, within(0.06));
    }

    @Test
    void stocksHaveAMarkForEachWeekInUse() {
        long expected = OUTCOME.stocks().stream()
                .flatMapToInt(stock -> Arrays.stream(stock.use()))
                .filter(use -> use > 0)
                .count();
        assertThat(expected).isPositive();
        assertThat(Page.marks(PAGE.byId("band-stocks"), "mark")).isEqualTo(expected);
    }

    @Test
    void stocksTableShowsPeaksAndWhatIsOwned() {
        List<List<String>> totals = PAGE.rows("stocks-table", "tfoot");
        for (int s = 0; s < OUTCOME.stocks().size(); s++) {
            Outcome.StockUse stock = OUTCOME.stocks().get(s);
            boolean cells = stock.kind() == Outcome.StockKind.BENCH || stock.kind() == Outcome.StockKind.TRAYS;
            double unit = cells ? 1 : 1000;
            double peak = Arrays.stream(stock.use()).max().orElseThrow() / unit;
            assertThat(number(totals.get(0).get(s + 1))).isCloseTo(peak, within(0.051));
            assertThat(number(totals.get(1).get(s + 1))).isCloseTo(stock.owned() / unit, within(0.051));
        }
    }

    @Test
    void plantingsTableHoldsWhatIsKeptOfEach() {
        List<List<String>> rows = PAGE.rows("plantings-table", "tbody");
        assertThat(rows).hasSize(OUTCOME.plantings().size());
        for (int i = 0; i < rows.size(); i++) {
            var kept = OUTCOME.plantings().get(i);
            assertThat(rows.get(i).get(0)).isEqualTo(Integer.toString(kept.number()));
            assertThat(rows.get(i).get(2)).isEqualTo(kept.method());
            assertThat(rows.get(i).get(3)).isEqualTo(kept.bed());
            assertThat(number(rows.get(i).get(8))).isEqualTo(kept.plants());
        }
    }

    @Test
    void allBandsStandOverTheSameWeeks() {
        List<String> axes = PAGE.all("svg").stream()
                .filter(svg -> svg.getAttribute("id").startsWith("band-"))
                .map(svg -> Page.within(svg, "g").stream()
                        .filter(g -> g.getAttribute("class").equals("axis"))
                        .flatMap(g -> Page.within(g, "line").stream())
                        .map(line -> line.getAttribute("x1"))
                        .toList()
                        .toString())
                .toList();
        assertThat(axes).hasSize(7);
        assertThat(axes.stream().distinct()).hasSize(1);
    }

    @Test
    void theStemsPictureStandsAloneAsAFile() {
        String svg = StemsPicture.svg(FACTS);
        Page picture = Page.parse(svg);

        assertThat(svg).startsWith("<svg xmlns=\"http://www.w3.org/2000/svg\"");
        assertThat(picture.attributes())
                .noneMatch(a -> a.name().equals("href") || a.name().equals("src"));
        assertThat(picture.all("style")).hasSize(1);
        assertThat(picture.text()).contains("focal", "filler");
    }
}
