package bedwright.file;

import java.util.Comparator;

/**
 * One fault in a file: what stands there, what was expected, how to mend it.
 *
 * @param file name of the file as the grower gave it
 * @param line from 1
 * @param column from 1, in characters
 * @param path JSON pointer to the value at fault, empty for the whole file
 * @param message one or a few sentences in a grower's words
 */
public record Fault(String file, int line, int column, String path, String message) {
    static final Comparator<Fault> BY_PLACE = Comparator.comparing(Fault::place);

    Fault(String file, Place place, String path, String message) {
        this(file, place.line(), place.column(), path, Words.sentence(message));
    }

    Place place() {
        return new Place(line, column);
    }

    /** As in {@code season.json:12:7: message}. */
    @Override
    public String toString() {
        return file + ":" + line + ":" + column + ": " + message;
    }
}
