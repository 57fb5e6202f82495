package bedwright.file;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * A folder of files that belong together, in which this command alone writes until it is closed.
 *
 * <p>Several files are saved as one: all new ones are on the disk, and a list of what is to be done, before the first
 * takes its name. If the process ends before that list is there all is as it was; if it ends after it, the next command
 * does the rest. Either way nobody finds half a file, and the former version of each lies beside it as NAME~.
 */
public final class HeldFolder implements AutoCloseable {
    static final String LOCK = ".bedwright-lock";
    /** What is to be done; its being there says that all new files are whole. */
    static final String LIST = ".bedwright-list";

    private static final String TAKE = "take ";
    private static final String RETIRE = "retire ";

    private final Path folder;
    private final Lock lock;
    /** Folders that were made for this one, the innermost first. */
    private final List<Path> made;

    private HeldFolder(Path folder, Lock lock, List<Path> made) {
        this.folder = folder;
        this.lock = lock;
        this.made = made;
    }

    /**
     * Holds a folder, which is made if there is none, and brings to an end what a command that was cut off left there.
     *
     * @throws FileTrouble if another command holds it, or it can't be written in
     */
    public static HeldFolder of(Path folder) {
        List<Path> made = new ArrayList<>();
        try {
            for (Path at = folder.toAbsolutePath(); at != null && Files.notExists(at); at = at.getParent()) {
                made.add(at);
            }
            Files.createDirectories(folder);
            Path file = folder.resolve(LOCK);
            Lock lock = Lock.tried(file)
                    .orElseThrow(() -> new FileTrouble(
                            folder,
                            "Another command of Bedwright" + Lock.holder(file)
                                    + " is at work in this folder. Wait until it has ended, or name another folder.",
                            null));
            HeldFolder held = new HeldFolder(folder, lock, made);
            held.finish();
            return held;
        } catch (IOException e) {
            unmake(made);
            throw new FileTrouble(folder, "Nothing can be written in this folder: " + Writing.reason(e), e);
        }
    }

    /** Brings to an end what a command that was cut off left in a folder, if it had come far enough to be finished. */
    public static void settle(Path folder) {
        if (Files.exists(folder.resolve(LIST))) {
            of(folder).close();
        }
    }

    /**
     * Saves files as one.
     *
     * @param files contents by name, in the order in which they take their names
     * @param retired names of files that no longer belong to them and get the name of a former version, where they are
     * @throws FileTrouble if one can't be written; then all are as they were
     */
    public void save(Map<String, byte[]> files, List<String> retired) {
        List<Path> fresh = new ArrayList<>();
        boolean listed = false;
        try {
            List<String> list = new ArrayList<>();
            for (Map.Entry<String, byte[]> file : files.entrySet()) {
                Path place = folder.resolve(file.getKey());
                Writing.mustBeReplaceable(place, place);
                fresh.add(Writing.fresh(place));
                fresh.add(Writing.former(place));
                Writing.prepare(place, file.getValue());
                list.add(TAKE + file.getKey());
            }
            retired.forEach(name -> list.add(RETIRE + name));
            fresh.add(Writing.fresh(folder.resolve(LIST)));
            Writing.write(
                    Writing.fresh(folder.resolve(LIST)), String.join("\n", list).getBytes(StandardCharsets.UTF_8));
            Writing.forceFolder(folder);
            Writing.move(Writing.fresh(folder.resolve(LIST)), folder.resolve(LIST));
            Writing.forceFolder(folder);
            listed = true;
            finish();
        } catch (IOException e) {
            throw new FileTrouble(
                    folder,
                    listed
                            ? "The new files are on the disk, but could not take their names: " + Writing.reason(e)
                                    + " The next command on this folder does it."
                            : "The files can't be written, and all are as they were: " + Writing.reason(e),
                    e);
        } finally {
            if (!listed) {
                fresh.forEach(Writing::deleteIfThere);
            }
        }
    }

    /** Does what a list says that is there, however much of it was done before; without a list takes away what is left. */
    private void finish() throws IOException {
        Path list = folder.resolve(LIST);
        if (Files.exists(list)) {
            for (String line : Files.readAllLines(list)) {
                if (line.startsWith(TAKE)) {
                    Writing.take(folder.resolve(line.substring(TAKE.length())));
                } else if (line.startsWith(RETIRE)) {
                    Path place = folder.resolve(line.substring(RETIRE.length()));
                    if (Files.exists(place)) {
                        Writing.move(place, Writing.beside(place));
                    }
                }
            }
            Writing.forceFolder(folder);
            Files.delete(list);
        }
        try (Stream<Path> files = Files.list(folder)) {
            files.filter(Writing::isLeftOver).forEach(Writing::deleteIfThere);
        }
    }

    private static void unmake(List<Path> made) {
        for (Path each : made) {
            try {
                Files.deleteIfExists(each);
            } catch (IOException e) {
                // Something lies in it, which somebody will want to keep.
                return;
            }
        }
    }

    /** Lets others write in it; if nothing was written, folders that were made for it are taken away. */
    @Override
    public void close() {
        lock.close();
        unmake(made);
    }
}
