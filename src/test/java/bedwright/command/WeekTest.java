package bedwright.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class WeekTest {
    @TempDir
    private Path folder;

    @BeforeEach
    void plan() {
        Ran.of("plan", Path.of("problems/first-bed.json"), "--moves", 500, "--out", folder);
    }

    @Test
    void aWeekIsToldOnTheScreenAndAsAPage() throws Exception {
        Ran ran = Ran.of("week", folder, "2027-05-19");

        assertThat(ran.code()).isEqualTo(Exit.DONE);
        assertThat(ran.out()).contains("Week of 17 May 2027 to 23 May 2027", "Hours: ");
        assertThat(Files.readString(folder.resolve("week-2027-05-17.html")))
                .contains("Week of 17 May 2027 to 23 May 2027");
    }

    @Test
    void withoutADateAllWeeksAreMade() throws Exception {
        Ran ran = Ran.of("week", folder);

        assertThat(ran.code()).isEqualTo(Exit.DONE);
        String pages = Files.readString(folder.resolve("weeks.html"));
        long weeks = pages.lines().filter(line -> line.startsWith("<article")).count();
        assertThat(weeks).isGreaterThan(5);
        assertThat(ran.out()).contains("The sheets of " + weeks + " weeks");
    }

    @Test
    void aDayOutsideTheSeasonIsToldWithTheSeasonsDays() {
        Ran ran = Ran.of("week", folder, "2031-05-19");

        assertThat(ran.code()).isEqualTo(Exit.USAGE);
        assertThat(ran.err()).contains("2031-05-19", "lies outside the season, which runs from");
    }

    /** Rows under "Cut": one each kind of stems' crop, with its plantings below. */
    private String cut(String day) {
        String page = Ran.of("week", folder, day).out();
        int from = page.indexOf("\nCut  ");
        return from < 0 ? "" : page.substring(from, page.indexOf("\n\n", from));
    }

    @Test
    void whatWasLostIsNotOnTheListToCut() throws Exception {
        String before = cut("2027-07-12");
        Matcher first = Pattern.compile("(\\d+)\u00a0(?:Fence|Open) bed: ").matcher(before);
        assertThat(first.find()).as(before).isTrue();
        String number = first.group(1);

        Ran noted = Ran.of("note", folder, number, "lost", "all", "wind", "--on", "2027-07-11", "--yes");

        assertThat(noted.code()).as(noted.err()).isEqualTo(Exit.DONE);
        assertThat(cut("2027-07-12"))
                .isNotEqualTo(before)
                .doesNotContainPattern("\\b" + number + "\u00a0(?:Fence|Open) bed: ");
    }
}
