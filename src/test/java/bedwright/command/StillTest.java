package bedwright.command;

import static org.assertj.core.api.Assertions.assertThat;

import bedwright.file.PlanFile;
import bedwright.season.Plan;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class StillTest {
    @TempDir
    private Path folder;

    @BeforeEach
    void plan() {
        Ran.of("plan", Path.of("problems/first-bed.json"), "--moves", 300, "--out", folder);
    }

    private Ran still(Object... more) {
        Object[] all = new Object[more.length + 2];
        all[0] = "still";
        all[1] = folder;
        System.arraycopy(more, 0, all, 2, more.length);
        return Ran.of(all);
    }

    @Test
    void waysAreListedWithTheirFirstCutAndWhatTheyBring() {
        Ran ran = still("--bed", "Fence bed", "--metres", "1", "--on", "24 May");

        assertThat(ran.code()).as(ran.err()).isEqualTo(Exit.DONE);
        assertThat(ran.out()).contains("Bed Fence bed, 1 m, started in the week of ", "first cut, 8 years of 10");
    }

    @Test
    void theStretchMayBeSaidInFeet() {
        assertThat(still("--bed", "Fence bed", "--feet", "10", "--on", "24 May").out())
                .contains("Bed Fence bed, 3 m, ");
    }

    @Test
    void programsAreToldTheRulesThatAWayWouldBreak() {
        Ran ran = still("--bed", "Open bed", "--metres", "500", "--on", "24 May", "--format", "json");

        assertThat(ran.out()).contains("\"version\": 1", "No bed holds more metres than it has.");
    }

    @Test
    void aBedThatIsNotThereIsTold() {
        Ran ran = still("--bed", "Nowhere", "--metres", "1", "--on", "24 May");

        assertThat(ran.code()).isEqualTo(Exit.USAGE);
        assertThat(ran.err()).contains("There is no bed \"Nowhere\". There are ", "Open bed");
    }

    @Test
    void aDayOutsideTheSeasonIsTold() {
        assertThat(still("--bed", "Open bed", "--metres", "1", "--on", "24 Dec").err())
                .contains("lies outside the season");
    }

    @Test
    void aBedThatIsGoneHasRoomForNothing() {
        Ran.of("note", folder, "bed-gone Open bed for 24 May to 18 Jul", "--on", "20 May", "--yes");

        Ran ran = still("--bed", "Open bed", "--metres", "1", "--on", "24 May");

        assertThat(ran.code()).as(ran.err()).isEqualTo(Exit.DONE);
        assertThat(ran.out()).contains("nothing of the season's pool can be started", "by 1 note.");
    }

    @Test
    void whatWasPulledMakesRoom() {
        Ran.of("plan", Path.of("problems/first-bed.json"), "--moves", 300, "--out", folder);
        String before =
                still("--bed", "Open bed", "--metres", "12", "--on", "31 May").out();
        Plan plan = PlanFile.read(folder.resolve("plan.json"));
        String notes = plan.plantings().stream()
                .filter(kept -> kept.bed().equals("Open bed") && kept.sown().isBefore(LocalDate.of(2027, 5, 25)))
                .map(kept -> kept.number() + " pulled")
                .collect(Collectors.joining(" / "));
        Ran.of(Stream.concat(
                        Stream.of("note", folder),
                        Stream.concat(Stream.of(notes.split(" ")), Stream.of("--on", "25 May", "--yes")))
                .toArray());

        Ran ran = still("--bed", "Open bed", "--metres", "12", "--on", "31 May");

        assertThat(notes).isNotEmpty();
        assertThat(plants(ran.out())).as(ran.out()).isGreaterThan(plants(before));
    }

    /** The most plants of any way in the list. */
    private static int plants(String out) {
        return Pattern.compile("\\) +(\\d+) ")
                .matcher(out)
                .results()
                .mapToInt(found -> Integer.parseInt(found.group(1)))
                .max()
                .orElse(0);
    }
}
