package bedwright.file;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Arrays;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicLong;
import org.jspecify.annotations.Nullable;

/**
 * A lock on a file of its own, beside what it protects. The system frees it when its process ends, however that ends; the
 * file that then stays behind locks nothing, and whoever locks next takes it away again.
 */
final class Lock implements AutoCloseable {
    /** The lock lies beyond what the file holds, since on some systems nobody else can read what is locked. */
    private static final long BEYOND = 1L << 40;

    private static final int TRIES = 100;
    private static final AtomicLong NUMBER = new AtomicLong();

    private final Path file;
    private final FileChannel channel;
    private final @Nullable FileLock lock;

    private Lock(Path file, FileChannel channel, @Nullable FileLock lock) {
        this.file = file;
        this.channel = channel;
        this.lock = lock;
    }

    /**
     * Takes a lock.
     *
     * @return nothing if somebody else has it
     * @throws IOException if its file can't be made
     */
    static Optional<Lock> tried(Path file) throws IOException {
        for (int i = 0; i < TRIES; i++) {
            FileChannel channel = FileChannel.open(
                    file, StandardOpenOption.CREATE, StandardOpenOption.READ, StandardOpenOption.WRITE);
            try {
                FileLock lock = lock(channel);
                if (lock == null) {
                    channel.close();
                    return Optional.empty();
                }
                if (isStillThere(file, channel)) {
                    return Optional.of(new Lock(file, channel, lock));
                }
            } catch (UnsupportedLock e) {
                return Optional.of(new Lock(file, channel, null));
            } catch (IOException e) {
                channel.close();
                Files.deleteIfExists(file);
                throw e;
            }
            channel.close();
        }
        return Optional.empty();
    }

    /** On a disk that knows no locks one goes without. */
    private static final class UnsupportedLock extends Exception {
        private UnsupportedLock(IOException cause) {
            super(cause);
        }
    }

    private static @Nullable FileLock lock(FileChannel channel) throws UnsupportedLock {
        try {
            return channel.tryLock(BEYOND, 1, false);
        } catch (OverlappingFileLockException e) {
            return null;
        } catch (IOException e) {
            throw new UnsupportedLock(e);
        }
    }

    /** Whoever had the lock before may have taken its file away after we opened it; then we have locked nothing. */
    private static boolean isStillThere(Path file, FileChannel channel) throws IOException {
        byte[] mark = (ProcessHandle.current().pid() + " " + NUMBER.incrementAndGet() + "\n")
                .getBytes(StandardCharsets.UTF_8);
        channel.truncate(0);
        channel.write(ByteBuffer.wrap(mark), 0);
        try {
            return Arrays.equals(Files.readAllBytes(file), mark);
        } catch (NoSuchFileException e) {
            return false;
        }
    }

    /** Which process has a lock, as far as its file tells: {@code " (process 4711)"}, or nothing. */
    static String holder(Path file) {
        try {
            String mark = Files.readString(file);
            return mark.matches("(?s)\\d+ .*") ? " (process " + mark.substring(0, mark.indexOf(' ')) + ")" : "";
        } catch (IOException e) {
            return "";
        }
    }

    @Override
    public void close() {
        try {
            Files.deleteIfExists(file);
            if (lock != null) {
                lock.release();
            }
            channel.close();
        } catch (IOException e) {
            // The system frees the lock at the end of the process, and the next one takes the file away.
            return;
        }
    }
}
