package bedwright.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import bedwright.plan.OtherWayResults;
import bedwright.plan.SearchResults;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.assertj.core.api.InstanceOfAssertFactories;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Element;

/** The page of how close the search comes, from a file written by hand. */
class HowClosePageTest {
    private static final String HEADS = "problem,seconds,seed,money,must missing,bound,gap %,"
            + "rule of thumb money,rule of thumb must missing,rule of thumb gap %,"
            + "moves a second,took s,MB,peak MB,limit MB,health,date,commit,machine,JDK\n";

    private static final String WAY_HEADS =
            "problem,way,seconds,took s,money,must missing,gap %,what came of it,beside,date,commit,machine,JDK\n";

    @TempDir
    private Path folder;

    private static String row(String task, String gap, String health, String commit, String machine) {
        return task + ",23000,0,25000," + gap + ",15000,0,40.5,70000,11,200,300,4096," + health + ",2026-11-29,"
                + commit + "," + machine + ",25\n";
    }

    private static String here(String task, String gap) {
        return row(task, gap, "sound", "abcdef0", "here");
    }

    private String html(String... rows) throws IOException {
        Path file = folder.resolve(SearchResults.FILE);
        Files.writeString(file, HEADS + String.join("", rows));
        return HowClosePage.html(SearchResults.at(file).rows(), List.of());
    }

    private Page pageWithWays(String rows, String ways) throws IOException {
        Path file = folder.resolve(SearchResults.FILE);
        Files.writeString(file, HEADS + rows);
        Path others = folder.resolve(OtherWayResults.FILE);
        Files.writeString(others, WAY_HEADS + ways);
        return Page.parse(HowClosePage.html(
                        SearchResults.at(file).rows(),
                        OtherWayResults.at(others).rows())
                .replace("<!DOCTYPE html>", ""));
    }

    @Test
    void otherWaysStandBelowTheMiddlePlanOfTheSearch() throws IOException {
        Page page = pageWithWays(
                here("demo,60,1", "3.5") + here("demo,60,2", "3.1"),
                "demo,SCIP,600,728,,,,no plan,other work,2026-11-30,abcdef0,elsewhere,25\n");
        assertThat(page.rows("ways-table", "tbody"))
                .containsExactly(
                        List.of(
                                "demo",
                                "the search",
                                "60",
                                "11",
                                "23,000",
                                "nothing",
                                "3.30\u00a0%",
                                "the middle one of 2 plans",
                                "nothing",
                                "2026-11-29",
                                "abcdef0",
                                "here"),
                        List.of(
                                "demo",
                                "SCIP",
                                "600",
                                "728",
                                "–",
                                "–",
                                "–",
                                "no plan",
                                "other work",
                                "2026-11-30",
                                "abcdef0",
                                "elsewhere"));
    }

    private Page page(String... rows) throws IOException {
        return Page.parse(html(rows).replace("<!DOCTYPE html>", ""));
    }

    private static List<String> titles(Page page, String picture) {
        return Page.within(page.byId(picture), "title").stream()
                .map(Element::getTextContent)
                .toList();
    }

    @Test
    void medianBestAndWorstAreTold() throws IOException {
        Page page = page(
                here("demo,10,1", "4.5"), here("demo,10,2", "4.1"), here("demo,10,3", "5"), here("demo,10,4", "4.3"));
        assertThat(page.rows("demo-table", "tbody").getFirst())
                .startsWith("10", "abcdef0", "4", "4.40\u00a0%", "4.10\u00a0%", "5.00\u00a0%");
    }

    @Test
    void aGapThatIsAllButNothingIsNotToldAsNothing() throws IOException {
        Page page = page(here("small,10,1", "0.004"));
        assertThat(page.rows("small-table", "tbody").getFirst()).startsWith("10", "abcdef0", "1", "0.004\u00a0%");
    }

    @Test
    void everySeedIsAMarkWithItsFigures() throws IOException {
        Page page = page(here("demo,10,1", "4.5"), here("demo,10,2", "4.1"));
        assertThat(titles(page, "gaps-demo"))
                .contains(
                        "Commit abcdef0, 10 s, seed 1: gap 4.50\u00a0%, money 23,000, 70,000 moves a second, sound",
                        "Commit abcdef0, 10 s, seed 2: gap 4.10\u00a0%, money 23,000, 70,000 moves a second, sound");
    }

    @Test
    void aSuspectSearchIsToldInWords() throws IOException {
        Page page = page(
                here("demo,10,1", "4.5"),
                row("demo,10,2", "-0.2", "better than the bound: suspect", "abcdef0", "here"));
        assertThat(page.byId("health-heading").getParentNode().getTextContent())
                .contains("demo, 10 s, seed 2: better than the bound: suspect.");
    }

    @Test
    void aSuspectSearchIsToldInTheTable() throws IOException {
        Page page = page(
                here("demo,10,1", "4.5"),
                row("demo,10,2", "-0.2", "better than the bound: suspect", "abcdef0", "here"));
        assertThat(page.rows("demo-table", "tbody").getFirst()).contains("1 of 2: better than the bound: suspect");
    }

    @Test
    void whatAnotherMachineCameToIsNotMixedIn() throws IOException {
        Page page = page(row("demo,10,1", "9", "sound", "abcdef0", "elsewhere"), here("demo,10,1", "4.5"));
        assertThat(page.rows("demo-table", "tbody").getFirst()).startsWith("10", "abcdef0", "1", "4.50\u00a0%");
    }

    @Test
    void whatAnotherMachineCameToHasATableOfItsOwn() throws IOException {
        Page page = page(row("demo,10,1", "9", "sound", "abcdef0", "elsewhere"), here("demo,10,1", "4.5"));
        assertThat(page.rows("others-table", "tbody"))
                .singleElement()
                .asInstanceOf(InstanceOfAssertFactories.list(String.class))
                .contains("elsewhere", "9.00\u00a0%");
    }

    @Test
    void anEarlierCommitStandsFaintlyBesideTheLast() throws IOException {
        Page page = page(row("demo,10,1", "6", "sound", "before0", "here"), here("demo,10,1", "4.5"));
        long faint = Page.within(page.byId("gaps-demo"), "path").stream()
                .filter(path -> path.getAttribute("class").equals("before"))
                .count();
        // One seed, and the sample in the key.
        assertThat(faint).isEqualTo(2);
    }

    @Test
    void aTimeThatWasNotMeasuredIsSaidToBe() throws IOException {
        Page page = page(here("demo,10,1", "4.5"));
        assertThat(page.rows("demo-table", "tbody").get(2)).startsWith("300", "abcdef0", "0", "not measured");
    }

    @Test
    void aFamilyThatWasNotMeasuredIsSaidToBe() throws IOException {
        Page page = page(here("demo,10,1", "4.5"));
        assertThat(page.byId("of-tight-beds").getTextContent()).contains("Not measured on this machine.");
    }

    @Test
    void aMissedBarIsTold() throws IOException {
        Page page = page(here("demo,60,1", "4.5"), here("demo,60,2", "5.1"));
        assertThat(page.byId("wanted-heading").getParentNode().getTextContent())
                .contains("demo, 60 s: median 3.5 %: missed, worst 5 %: missed.");
    }

    @Test
    void dateMachineJdkAndCommitStandAtTheTop() throws IOException {
        Page page = page(row("demo,10,1", "4.5", "sound", "abcdef0", "\"here, <2> processors\""));
        assertThat(page.all("p").getFirst().getTextContent())
                .isEqualTo("29 November 2026. Commit abcdef0. here, <2> processors. JDK 25.");
    }

    @Test
    void aSeedWithoutAGapIsStillToldInThePicture() throws IOException {
        Page page = page(here("demo,10,1", "4.5"), here("demo,10,2", ""));
        assertThat(titles(page, "gaps-demo"))
                .contains("Commit abcdef0, 10 s, seed 2: gap not known, money 23,000, 70,000 moves a second, sound");
    }
}
