package bedwright.file;

import bedwright.season.Season;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Objects;

/** Files kept for these tests. */
final class Resources {
    private Resources() {}

    static byte[] bytes(String name) {
        try (InputStream in = Objects.requireNonNull(Resources.class.getResourceAsStream(name), name)) {
            return in.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static Season season(String name) {
        return SeasonFile.parse(name, bytes(name));
    }
}
