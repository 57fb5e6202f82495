package bedwright;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Holds what lives where. */
class ArchitectureTest {

    @Test
    void everyPackageIsNullMarked() throws IOException {
        try (Stream<Path> files = Files.walk(Path.of("src/main/java"))) {
            assertThat(files.filter(f -> f.toString().endsWith(".java"))
                            .map(Path::getParent)
                            .distinct()
                            .map(folder -> folder.resolve("package-info.java")))
                    .isNotEmpty()
                    .allSatisfy(info -> assertThat(info).content().contains("@NullMarked"));
        }
    }
}
