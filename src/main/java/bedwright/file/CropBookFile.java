package bedwright.file;

import bedwright.season.CropBook;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;

/** Crop books: JSON, UTF-8, whose crops and methods have the keys that they have in a season file. */
public final class CropBookFile {
    private static final String OURS = "/bedwright/crop-book.json";

    private CropBookFile() {}

    /** Read when it is first asked for, and only once. */
    private static final class Ours {
        static final CropBook BOOK = parse("crop-book.json", bytes());

        private static byte[] bytes() {
            try (InputStream in = CropBookFile.class.getResourceAsStream(OURS)) {
                if (in == null) {
                    throw new IllegalStateException("The crop book is missing from the program: " + OURS);
                }
                return in.readAllBytes();
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
    }

    /** The crop book that comes with the program. */
    public static CropBook ours() {
        return Ours.BOOK;
    }

    /**
     * The crop book that these bytes hold.
     *
     * @param name what faults call the file
     * @throws FaultyFile if they are at fault, with all faults: among them each figure of which nobody says where it
     *     comes from, and what is called published without a publication
     */
    public static CropBook parse(String name, byte[] bytes) {
        return Document.read(name, bytes, CropBook.class, BookCheck::of).record();
    }

    /** What stands in the file of a crop book: the same bytes for equal books, everywhere. */
    public static byte[] bytes(CropBook book) {
        return Document.bytes(book);
    }
}
