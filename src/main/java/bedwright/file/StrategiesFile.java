package bedwright.file;

import bedwright.season.Season;
import bedwright.season.Strategies;
import java.nio.file.Path;

/** Files of ways of growing to be compared: JSON, UTF-8. They speak of the crops, beds and outlets of a season. */
public final class StrategiesFile {
    private StrategiesFile() {}

    /**
     * Reads strategies.
     *
     * @param season the season that they change
     * @throws FileTrouble if the file can't be read
     * @throws FaultyFile if it is at fault, with all faults
     */
    public static Strategies read(Path file, Season season) {
        return parse(file.toString(), Reading.bytes(file), season);
    }

    /**
     * The strategies that these bytes hold.
     *
     * @param name what faults call the file
     * @throws FaultyFile if they are at fault, with all faults
     */
    public static Strategies parse(String name, byte[] bytes, Season season) {
        return Document.read(name, bytes, Strategies.class, read -> StrategyCheck.of(read, season))
                .record();
    }

    /** What stands in the file of these strategies: the same bytes for equal ones, everywhere. */
    public static byte[] bytes(Strategies strategies) {
        return Document.bytes(strategies);
    }
}
