package bedwright.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
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
}
