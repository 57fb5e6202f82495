package bedwright.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The file of other ways to a plan. */
class OtherWayResultsTest {
    @TempDir
    private Path folder;

    private Path file() {
        return folder.resolve(OtherWayResults.FILE);
    }

    private static OtherWay withoutAPlan() {
        return new OtherWay(
                "demo",
                OtherWay.Way.SCIP,
                600,
                728,
                null,
                null,
                null,
                "no plan",
                "nothing",
                LocalDate.of(2026, 11, 30),
                "abcdef0",
                SearchRows.HERE);
    }

    @Test
    void whatWasAddedIsReadBackAsItWas() {
        OtherWay dived = new OtherWay(
                "demo-x4",
                OtherWay.Way.DIVE,
                300,
                301,
                90_000.25,
                12L,
                3.125,
                "a plan, polished",
                "other work",
                LocalDate.of(2026, 11, 30),
                "abcdef0",
                SearchRows.HERE);
        OtherWayResults results = OtherWayResults.at(file());
        results.add(withoutAPlan());
        results.add(dived);
        assertThat(OtherWayResults.at(file()).rows()).containsExactly(withoutAPlan(), dived);
    }

    @Test
    void aWayThatIsNoneIsNamedWithItsRow() throws IOException {
        OtherWayResults.at(file()).add(withoutAPlan());
        Files.writeString(file(), Files.readString(file()).replace("SCIP", "guessing"));
        assertThatThrownBy(() -> OtherWayResults.at(file()))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage(file() + ", row 2: \"guessing\" is no way to a plan");
    }
}
