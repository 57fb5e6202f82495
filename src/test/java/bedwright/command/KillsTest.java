package bedwright.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class KillsTest {
    @TempDir
    private Path temporary;

    /** A thousand are killed by the benchmark {@link Kills}. */
    @Test
    void killedAtAnyMomentAWriterLosesNothing() throws Exception {
        Killed kills = Kills.run(temporary, 6, 0, 11);

        assertThat(kills.lost()).isEmpty();
        assertThat(kills.found().values().stream().mapToInt(Integer::intValue).sum())
                .isEqualTo(6);
    }

    /** A thousand are killed by the benchmark {@link NoteKills}. */
    @Test
    void killedAtAnyMomentNothingIsLostThatWasAcknowledgedAsNoted() throws Exception {
        Killed kills = NoteKills.run(temporary, 1, 5, 12);

        assertThat(kills.lost()).isEmpty();
        assertThat(kills.found().values().stream().mapToInt(Integer::intValue).sum())
                .isEqualTo(5);
    }
}
