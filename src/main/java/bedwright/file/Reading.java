package bedwright.file;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** Takes the bytes of a file, or says why that can't be done. */
final class Reading {
    private Reading() {}

    /**
     * The bytes of a file; of one that is too large, no more than shows it.
     *
     * @throws FileTrouble if it can't be read
     */
    static byte[] bytes(Path file) {
        try {
            if (Files.isDirectory(file)) {
                throw new FileTrouble(file, "This is a folder; name a file in it.", null);
            }
            try (InputStream in = Files.newInputStream(file)) {
                return in.readNBytes(JsonTree.LARGEST + 1);
            }
        } catch (NoSuchFileException e) {
            throw new FileTrouble(file, "There is no such file." + near(file), e);
        } catch (AccessDeniedException e) {
            throw new FileTrouble(file, "You may not read this file. Ask for the right to, or copy it.", e);
        } catch (IOException e) {
            throw new FileTrouble(file, "The file can't be read: " + e.getMessage(), e);
        }
    }

    private static String near(Path file) {
        Path folder = file.toAbsolutePath().getParent();
        if (folder == null || file.getFileName() == null) {
            return "";
        }
        if (!Files.isDirectory(folder)) {
            return " Nor is there a folder " + folder + ".";
        }
        try (Stream<Path> beside = Files.list(folder)) {
            List<String> names =
                    beside.map(p -> String.valueOf(p.getFileName())).sorted().toList();
            return Words.didYouMean(file.getFileName().toString(), names);
        } catch (IOException e) {
            return "";
        }
    }
}
