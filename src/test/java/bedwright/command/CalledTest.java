package bedwright.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;

class CalledTest {
    @Test
    void fromTheSourceItIsCalledThere() {
        assertThat(Called.name(Path.of("/a/target/bedwright.jar"), false)).isEqualTo("target/bedwright");
        assertThat(Called.name(Path.of("/a/target/classes"), false)).isEqualTo("target/bedwright");
    }

    @Test
    void unpackedItIsCalledByItsLauncher() {
        assertThat(Called.name(Path.of("/my farm/bedwright-1/bedwright.jar"), false))
                .isEqualTo("./bedwright");
        assertThat(Called.name(Path.of("/my farm/bedwright-1/bedwright.jar"), true))
                .isEqualTo("bedwright");
    }
}
