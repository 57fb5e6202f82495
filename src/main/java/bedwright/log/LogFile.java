package bedwright.log;

import bedwright.season.Plan;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** The log as a file: only ever added to, and on the disk before anybody is told that it is. */
public final class LogFile {
    private static final byte END = '\n';

    private LogFile() {}

    /**
     * Reads a log; one that is not there has nothing in it.
     *
     * @throws FaultyNotes if lines can't be understood or can't be true, with all of them
     * @throws IOException if it can't be read
     */
    public static SeasonLog read(Path file, Plan plan) throws IOException {
        return Files.exists(file)
                ? SeasonLog.EMPTY.plus(plan, new String(Files.readAllBytes(file), StandardCharsets.UTF_8))
                : SeasonLog.EMPTY;
    }

    /**
     * Adds notes at the end. What stands after the last whole line is dropped: nobody was told that it was written. When
     * this returns, the notes are on the disk.
     *
     * @param before the log as it was when the notes were checked
     * @param lines the notes' lines, without ends
     * @return whether they were written; not if somebody else wrote into the log since it was read
     * @throws FaultyNotes if the log is at fault or the notes don't go with it; the file stays as it was
     * @throws IOException if it can't be written
     */
    public static boolean append(Path file, Plan plan, SeasonLog before, List<String> lines) throws IOException {
        boolean isNew = Files.notExists(file);
        try (FileChannel channel = FileChannel.open(
                        file, StandardOpenOption.CREATE, StandardOpenOption.READ, StandardOpenOption.WRITE);
                FileLock lock = channel.lock()) {
            byte[] bytes = bytes(channel);
            SeasonLog now = SeasonLog.EMPTY.plus(plan, new String(bytes, StandardCharsets.UTF_8));
            if (!lock.isValid() || !now.entries().equals(before.entries())) {
                return false;
            }
            String text = String.join("\n", lines) + "\n";
            now.plus(plan, text);
            int end = end(bytes);
            channel.truncate(end);
            ByteBuffer buffer = ByteBuffer.wrap(text.getBytes(StandardCharsets.UTF_8));
            channel.position(end);
            while (buffer.hasRemaining()) {
                channel.write(buffer);
            }
            channel.force(true);
        }
        if (isNew) {
            forceFolder(file);
        }
        return true;
    }

    /**
     * The whole log with notes at its end, for who saves it as one: so that all of them are there after a loss of power, or
     * none.
     *
     * @return nothing if somebody else wrote into the log since it was read
     * @throws FaultyNotes if the log is at fault or the notes don't go with it
     * @throws IOException if it can't be read
     */
    public static Optional<byte[]> joined(Path file, Plan plan, SeasonLog before, List<String> lines)
            throws IOException {
        byte[] bytes = Files.exists(file) ? Files.readAllBytes(file) : new byte[0];
        SeasonLog now = SeasonLog.EMPTY.plus(plan, new String(bytes, StandardCharsets.UTF_8));
        if (!now.entries().equals(before.entries())) {
            return Optional.empty();
        }
        String text = String.join("\n", lines) + "\n";
        now.plus(plan, text);
        byte[] added = text.getBytes(StandardCharsets.UTF_8);
        int end = end(bytes);
        byte[] all = Arrays.copyOf(bytes, end + added.length);
        System.arraycopy(added, 0, all, end, added.length);
        return Optional.of(all);
    }

    /** Where the last whole line ends. */
    private static int end(byte[] bytes) {
        int end = bytes.length;
        while (end > 0 && bytes[end - 1] != END) {
            end--;
        }
        return end;
    }

    private static byte[] bytes(FileChannel channel) throws IOException {
        ByteBuffer buffer = ByteBuffer.allocate(Math.toIntExact(channel.size()));
        while (buffer.hasRemaining() && channel.read(buffer) >= 0) {
            // Reads on until the buffer is full or the file is over.
        }
        return Arrays.copyOf(buffer.array(), buffer.position());
    }

    /** A new file's name is only safe once its folder is on the disk; some systems don't let a folder be forced. */
    private static void forceFolder(Path file) throws IOException {
        Path folder = file.toAbsolutePath().getParent();
        if (folder == null || System.getProperty("os.name", "").startsWith("Windows")) {
            return;
        }
        try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
            channel.force(true);
        }
    }
}
