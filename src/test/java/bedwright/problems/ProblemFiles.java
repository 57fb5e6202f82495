package bedwright.problems;

import bedwright.file.SeasonFile;
import bedwright.season.Season;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** The season files that come with the project. */
final class ProblemFiles {
    private static final Path FOLDER = Path.of("problems");

    private ProblemFiles() {}

    /** Names of all season files, in order. */
    static List<String> names() {
        try (Stream<Path> files = Files.list(FOLDER)) {
            return files.map(file -> file.getFileName().toString())
                    .filter(name -> name.endsWith(".json"))
                    .sorted()
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static Season season(String name) {
        return SeasonFile.read(FOLDER.resolve(name));
    }

    static String text(String name) {
        try {
            return Files.readString(FOLDER.resolve(name));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
