package bedwright.file;

import bedwright.season.Season;
import java.nio.file.Path;
import java.util.List;

/**
 * Season files: JSON, UTF-8, whose keys are the component names of the season's records. A crop may also be taken from
 * the crop book and given only where it differs; it is read, and written again, with all its figures.
 */
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
        return document(name, bytes).record();
    }

    /**
     * A season with what is no fault in its file but probably not meant.
     *
     * @param remarks in order of place
     */
    public record Checked(Season season, List<Fault> remarks) {}

    /**
     * Reads a season and looks for what is probably not meant.
     *
     * @throws FileTrouble if the file can't be read
     * @throws FaultyFile if it is at fault, with all faults
     */
    public static Checked check(Path file) {
        return check(file.toString(), Reading.bytes(file));
    }

    /** Likewise, of bytes. */
    public static Checked check(String name, byte[] bytes) {
        Document<Season> document = document(name, bytes);
        List<Fault> remarks = document
                .placed(Remarks.of(document.record()).stream()
                        .map(remark -> new Flaw(remark.path(), remark.message(), false, List.of()))
                        .toList())
                .stream()
                .sorted(Fault.BY_PLACE)
                .toList();
        return new Checked(document.record(), remarks);
    }

    /**
     * Writes a season, keeping the file's former version beside it as NAME~.
     *
     * @throws FileTrouble if the file can't be written
     * @throws IllegalArgumentException if a value is out of its range, so that it could not be read back
     */
    public static void write(Season season, Path file) {
        Writing.save(file, bytes(season));
    }

    /**
     * What stands in the file of a season: the same bytes for equal seasons, everywhere.
     *
     * @throws IllegalArgumentException if a value is out of its range, so that it could not be read back
     */
    public static byte[] bytes(Season season) {
        return Document.bytes(season);
    }

    private static Document<Season> document(String name, byte[] bytes) {
        return Document.read(name, bytes, Season.class, root -> FromBook.fill(name, root), SeasonCheck::of);
    }
}
