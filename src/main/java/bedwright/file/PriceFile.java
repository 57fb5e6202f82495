package bedwright.file;

import bedwright.season.PriceList;
import bedwright.season.Season;
import java.nio.file.Path;

/** Price files: prices of what a season has too little of, from which follows what is the best possible. */
public final class PriceFile {
    private PriceFile() {}

    /**
     * Reads the prices of a season.
     *
     * @param season the season that they have to fit
     * @param possible number of its possible seasons
     * @throws FileTrouble if the file can't be read
     * @throws FaultyFile if it is at fault, with all faults
     */
    public static PriceList read(Path file, Season season, int possible) {
        return parse(file.toString(), Reading.bytes(file), season, possible);
    }

    /**
     * The prices that these bytes hold.
     *
     * @param name what faults call the file
     * @throws FaultyFile if they are at fault, with all faults
     */
    public static PriceList parse(String name, byte[] bytes, Season season, int possible) {
        return Document.read(name, bytes, PriceList.class, list -> PriceCheck.of(list, season, possible))
                .record();
    }

    /** What stands in the file of these prices: the same bytes for equal prices, everywhere. */
    public static byte[] bytes(PriceList prices) {
        return Document.bytes(prices);
    }
}
