package bedwright.file;

import java.nio.file.Path;
import org.jspecify.annotations.Nullable;

/** A file that cannot be read or written, whatever its contents. */
public final class FileTrouble extends RuntimeException {
    private final transient Path path;

    FileTrouble(Path path, String message, @Nullable Throwable cause) {
        super(path + ": " + message, cause);
        this.path = path;
    }

    /** The file. */
    public Path path() {
        return path;
    }
}
