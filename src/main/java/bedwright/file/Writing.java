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
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Saves files so that a reader never sees half of one, and nobody loses what was there: a temporary file in the same
 * folder is written and forced to the disk, the former version goes to NAME~, and the new one takes its name in one
 * step.
 */
public final class Writing {
    private static final int TRIES = 1000;

    private Writing() {}

    /**
     * Saves one file.
     *
     * @throws FileTrouble if it can't be written; what was there then still is
     */
    public static void save(Path file, byte[] bytes) {
        save(List.of(new Job(file, bytes)));
    }

    /**
     * Saves several files of a folder, which is made if there is none: all are written beside their places before the
     * first takes its name.
     *
     * @param files contents by name in the folder, in the order in which they take their names
     * @throws FileTrouble if one can't be written
     */
    public static void saveAll(Path folder, Map<String, byte[]> files) {
        try {
            Files.createDirectories(folder);
        } catch (IOException e) {
            throw new FileTrouble(folder, "The folder can't be made: " + reason(e), e);
        }
        List<Job> jobs = new ArrayList<>();
        files.forEach((name, bytes) -> jobs.add(new Job(folder.resolve(name), bytes)));
        save(jobs);
    }

    /**
     * Gives a file that no longer belongs to what lies beside it the name of a former version, NAME~; does nothing if
     * there is none.
     *
     * @throws FileTrouble if it can't be renamed
     */
    public static void retire(Path file) {
        if (Files.exists(file)) {
            try {
                move(file, file.resolveSibling(file.getFileName() + "~"));
            } catch (IOException e) {
                throw new FileTrouble(file, "The file can't be renamed: " + reason(e), e);
            }
        }
    }

    private record Job(Path file, byte[] bytes) {}

    /** A file with its contents beside it. */
    private record Ready(Path asked, Path folder, Path file, Path fresh) {}

    private static void save(List<Job> jobs) {
        List<Ready> ready = new ArrayList<>();
        try {
            for (Job job : jobs) {
                ready.add(prepare(job));
            }
            for (Ready one : ready) {
                replace(one);
            }
        } finally {
            for (Ready one : ready) {
                deleteIfThere(one.fresh());
            }
        }
    }

    private static Ready prepare(Job job) {
        Path fresh = null;
        try {
            Path file = Files.exists(job.file())
                    ? job.file().toRealPath()
                    : job.file().toAbsolutePath();
            if (Files.isDirectory(file)) {
                throw new FileTrouble(job.file(), "There is a folder of this name; choose another name.", null);
            }
            Path folder = file.getParent();
            if (folder == null || !Files.isDirectory(folder)) {
                throw new FileTrouble(job.file(), "The folder " + folder + " does not exist. Make it first.", null);
            }
            if (Files.exists(file) && !Files.isWritable(file)) {
                throw new FileTrouble(job.file(), "This file is write-protected. Choose another name.", null);
            }
            fresh = beside(file);
            write(fresh, job.bytes());
            keepRights(file, fresh);
            return new Ready(job.file(), folder, file, fresh);
        } catch (IOException e) {
            if (fresh != null) {
                deleteIfThere(fresh);
            }
            throw new FileTrouble(job.file(), "The file can't be written: " + reason(e), e);
        }
    }

    /** A new empty file beside another, of a name that nothing else has. */
    private static Path beside(Path file) throws IOException {
        for (int i = 1; ; i++) {
            Path fresh = file.resolveSibling("." + file.getFileName() + ".new" + i);
            try {
                return Files.createFile(fresh);
            } catch (FileAlreadyExistsException e) {
                if (i == TRIES) {
                    throw e;
                }
            }
        }
    }

    private static void write(Path file, byte[] bytes) throws IOException {
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE)) {
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

    private static void replace(Ready ready) {
        try {
            if (Files.exists(ready.file())) {
                keepFormer(ready.file());
            }
            move(ready.fresh(), ready.file());
            forceFolder(ready.folder());
        } catch (IOException e) {
            throw new FileTrouble(ready.asked(), "The file can't be written: " + reason(e), e);
        }
    }

    /** By way of a copy, so that the file itself is never away. */
    private static void keepFormer(Path file) throws IOException {
        Path copy = beside(file);
        try {
            Files.copy(file, copy, StandardCopyOption.REPLACE_EXISTING, StandardCopyOption.COPY_ATTRIBUTES);
            move(copy, file.resolveSibling(file.getFileName() + "~"));
        } finally {
            deleteIfThere(copy);
        }
    }

    private static void move(Path from, Path to) throws IOException {
        try {
            Files.move(from, to, StandardCopyOption.ATOMIC_MOVE);
        } catch (AtomicMoveNotSupportedException e) {
            Files.move(from, to, StandardCopyOption.REPLACE_EXISTING);
        }
    }

    /** So that the new name, too, survives a power cut; not every system can do that. */
    private static void forceFolder(Path folder) {
        try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
            channel.force(true);
        } catch (IOException e) {
            return;
        }
    }

    private static void deleteIfThere(Path file) {
        try {
            Files.deleteIfExists(file);
        } catch (IOException e) {
            return;
        }
    }

    private static String reason(IOException e) {
        if (e instanceof AccessDeniedException) {
            return "you may not write there. Choose another folder.";
        }
        if (e instanceof FileAlreadyExistsException) {
            return "there is a file of this name already.";
        }
        return e instanceof FileSystemException system && system.getReason() != null
                ? system.getReason() + "."
                : String.valueOf(e.getMessage());
    }
}
