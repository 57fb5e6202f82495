package bedwright.file;

import bedwright.season.Season;
import java.nio.file.Path;

/** Season files: JSON, UTF-8, whose keys are the component names of the season's records. */
public final class SeasonFile {
    private SeasonFile() {}

    /**
     * Reads a season.
     *
     * @throws FileTrouble if the file can't be read
     * @throws FaultyFile if it is at fault, with all faults
     */
    public static Season read(Path file) {
        return parse(file.toString(), Reading.bytes(file));
    }

    /**
     * The season that these bytes hold.
     *
     * @param name what faults call the file
     * @throws FaultyFile if they are at fault, with all faults
     */
    public static Season parse(String name, byte[] bytes) {
        return Document.read(name, bytes, Season.class);
    }
}
