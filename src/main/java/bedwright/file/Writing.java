package bedwright.file;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.AccessDeniedException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFilePermission;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/**
 * Saves files so that a reader never sees half of one, and nobody loses what was there: a temporary file in the same
 * folder is written and forced to the disk, the former version goes to NAME~, and the new one takes its name in one
 * step.
 */
public final class Writing {
    private static final String LOCK = ".bedwright-lock";
    private static final String FRESH = ".bedwright-new";
    private static final String FORMER = ".bedwright-former";
    private static final Set<PosixFilePermission> WRITE =
            Set.of(PosixFilePermission.OWNER_WRITE, PosixFilePermission.GROUP_WRITE, PosixFilePermission.OTHERS_WRITE);

    private Writing() {}

    /**
     * Saves one file.
     *
     * @throws FileTrouble if it can't be written, or another command writes it just then; what was there then still is
     */
    public static void save(Path asked, byte[] bytes) {
        try {
            Path file = Files.exists(asked) ? asked.toRealPath() : asked.toAbsolutePath();
            mustBeReplaceable(asked, file);
            Path folder = file.getParent();
            if (folder == null || !Files.isDirectory(folder)) {
                throw new FileTrouble(asked, "The folder " + folder + " does not exist. Make it first.", null);
            }
            Path place = file.resolveSibling("." + file.getFileName() + LOCK);
            try (Lock lock = Lock.tried(place)
                    .orElseThrow(() -> new FileTrouble(
                            asked,
                            "Another command of Bedwright" + Lock.holder(place)
                                    + " is writing this file. Wait until it has ended.",
                            null))) {
                save(file, folder, bytes, lock);
            }
        } catch (IOException e) {
            throw new FileTrouble(asked, "The file can't be written: " + reason(e), e);
        }
    }

    @SuppressWarnings("unused") // the lock is named to say that it has to be held
    private static void save(Path file, Path folder, byte[] bytes, Lock lock) throws IOException {
        try {
            // Whatever a command that was cut off left is of no use to anybody.
            deleteIfThere(fresh(file));
            deleteIfThere(former(file));
            prepare(file, bytes);
            forceFolder(folder);
            take(file);
            forceFolder(folder);
        } finally {
            deleteIfThere(fresh(file));
            deleteIfThere(former(file));
        }
    }

    /**
     * Saves several files of a folder, which is made if there is none, as one.
     *
     * @param files contents by name in the folder, in the order in which they take their names
     * @throws FileTrouble if one can't be written; then all are as they were
     */
    public static void saveAll(Path folder, Map<String, byte[]> files) {
        try (HeldFolder held = HeldFolder.of(folder)) {
            held.save(files, List.of());
        }
    }

    /** Refuses what can't be replaced: a folder, and a file that somebody protected, even from who may write all. */
    static void mustBeReplaceable(Path asked, Path file) throws IOException {
        if (Files.isDirectory(file)) {
            throw new FileTrouble(asked, "There is a folder of this name; choose another name.", null);
        }
        if (Files.exists(file) && !(Files.isWritable(file) && mayBeWritten(file))) {
            throw new FileTrouble(
                    asked, "This file is write-protected. Choose another name, or take the protection away.", null);
        }
    }

    private static boolean mayBeWritten(Path file) throws IOException {
        return !Files.getFileStore(file).supportsFileAttributeView("posix")
                || Files.getPosixFilePermissions(file).stream().anyMatch(WRITE::contains);
    }

    /** Where the new version lies until it takes its name. */
    static Path fresh(Path file) {
        return file.resolveSibling("." + file.getFileName() + FRESH);
    }

    /** Where a copy of the version that is there lies until it becomes the former one. */
    static Path former(Path file) {
        return file.resolveSibling("." + file.getFileName() + FORMER);
    }

    /** Where the former version lies. */
    static Path beside(Path file) {
        return file.resolveSibling(file.getFileName() + "~");
    }

    /** Whether a file is one that a command which was cut off left behind. */
    static boolean isLeftOver(Path file) {
        String name = String.valueOf(file.getFileName());
        return name.startsWith(".") && (name.endsWith(FRESH) || name.endsWith(FORMER));
    }

    /** Lays the new version, and a copy of the one that is there, beside a file; both are on the disk then. */
    static void prepare(Path file, byte[] bytes) throws IOException {
        write(fresh(file), bytes);
        keepRights(file, fresh(file));
        if (Files.exists(file)) {
            // By way of a copy, so that the file itself is never away.
            write(former(file), Files.readAllBytes(file));
            keepRights(file, former(file));
            Files.setLastModifiedTime(former(file), Files.getLastModifiedTime(file));
        }
    }

    /** Gives both their names; does the rest if some of it is done already. */
    static void take(Path file) throws IOException {
        if (Files.exists(fresh(file))) {
            if (Files.exists(former(file))) {
                move(former(file), beside(file));
            }
            move(fresh(file), file);
        }
    }

    static void write(Path file, byte[] bytes) throws IOException {
        try (FileChannel channel = FileChannel.open(
                file, StandardOpenOption.CREATE, StandardOpenOption.TRUNCATE_EXISTING, StandardOpenOption.WRITE)) {
            ByteBuffer left = ByteBuffer.wrap(bytes);
            while (left.hasRemaining()) {
                channel.write(left);
            }
            channel.force(true);
        }
    }

    private static void keepRights(Path from, Path to) throws IOException {
        if (Files.exists(from) && Files.getFileStore(to).supportsFileAttributeView("posix")) {
            Set<PosixFilePermission> rights = Files.getPosixFilePermissions(from);
            Files.setPosixFilePermissions(to, rights);
        }
    }

    static void move(Path from, Path to) throws IOException {
        try {
            Files.move(from, to, StandardCopyOption.ATOMIC_MOVE);
        } catch (AtomicMoveNotSupportedException e) {
            Files.move(from, to, StandardCopyOption.REPLACE_EXISTING);
        }
    }

    /** So that the new name, too, survives a power cut; not every system can do that. */
    static void forceFolder(Path folder) {
        try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
            channel.force(true);
        } catch (IOException e) {
            return;
        }
    }

    static void deleteIfThere(Path file) {
        try {
            Files.deleteIfExists(file);
        } catch (IOException e) {
            return;
        }
    }

    static String reason(IOException e) {
        if (e instanceof AccessDeniedException) {
            return "you may not write there. Choose another folder.";
        }
        if (e instanceof FileAlreadyExistsException) {
            return "there is a file of this name already.";
        }
        String said = e instanceof FileSystemException system && system.getReason() != null
                ? system.getReason()
                : String.valueOf(e.getMessage());
        return isFull(said)
                ? "the disk is full (" + said + "). Make room, or choose a folder on another disk."
                : said + ".";
    }

    /** The system's own words are all that it tells. */
    private static boolean isFull(String said) {
        String words = said.toLowerCase(Locale.ROOT);
        return words.contains("no space left")
                || words.contains("not enough space")
                || words.contains("quota exceeded");
    }
}
