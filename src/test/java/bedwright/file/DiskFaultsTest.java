package bedwright.file;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** Disks that are full and folders that may not be written in: what was there still is, and nothing is left over. */
@EnabledOnOs({OS.LINUX, OS.MAC})
class DiskFaultsTest {
    private static final int LARGE = 1 << 20;

    @TempDir
    private Path temporary;

    private Path folder;

    @BeforeEach
    void fill() throws IOException {
        folder = Files.createDirectory(temporary.resolve("plan"));
        Files.writeString(folder.resolve("small.txt"), "before");
        Files.writeString(folder.resolve("large.txt"), "before");
    }

    /** Saves a small file and a large one into the folder that is named; prints what is said if that can't be done. */
    static final class SaveApart {
        private SaveApart() {}

        public static void main(String[] args) {
            Map<String, byte[]> files = new LinkedHashMap<>();
            files.put("small.txt", "after".getBytes(UTF_8));
            files.put("large.txt", new byte[LARGE]);
            try {
                Writing.saveAll(Path.of(args[0]), files);
            } catch (FileTrouble e) {
                System.out.println(e.getMessage());
            }
        }
    }

    /** What a process of its own says. */
    private String apart(String script) throws Exception {
        String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
        String classes = System.getProperty("surefire.test.class.path", System.getProperty("java.class.path"));
        List<String> line = new ArrayList<>(List.of("bash", "-c", script, "bash", folder.toString()));
        line.addAll(List.of(java, "-Xmx64m", "-XX:+UseSerialGC", "-XX:-UsePerfData", "-cp", String.valueOf(classes)));
        line.addAll(List.of(SaveApart.class.getName(), folder.toString()));
        Process process = new ProcessBuilder(line).redirectErrorStream(true).start();
        String said = new String(process.getInputStream().readAllBytes(), UTF_8);
        process.waitFor();
        return said;
    }

    private static boolean can(String script) throws Exception {
        return new ProcessBuilder("bash", "-c", script).start().waitFor() == 0;
    }

    private void assertAllIsAsItWas() throws IOException {
        assertThat(folder.resolve("small.txt")).hasContent("before");
        assertThat(folder.resolve("large.txt")).hasContent("before");
        try (Stream<Path> files = Files.list(folder)) {
            assertThat(files.map(file -> file.getFileName().toString()))
                    .containsExactlyInAnyOrder("small.txt", "large.txt");
        }
    }

    /** A disk of 256 kB in memory, seen by that process alone. */
    @Test
    void onAFullDiskAllIsAsItWas() throws Exception {
        assumeTrue(can("unshare -rm mount -t tmpfs none '" + folder + "'"), "no right to a disk of one's own");

        String said = apart(
                "exec unshare -rm bash -c 'mount -t tmpfs -o size=256k none \"$1\"; echo -n before > \"$1\"/small.txt;"
                        + " echo -n before > \"$1\"/large.txt; \"${@:2}\"; ls -A \"$1\"; cat \"$1\"/small.txt' inner \"$@\"");

        assertThat(said.lines())
                .satisfiesExactly(
                        trouble -> assertThat(trouble)
                                .contains("all are as they were: the disk is full", "Make room, or choose a folder"),
                        left -> assertThat(left).isEqualTo("large.txt"),
                        left -> assertThat(left).isEqualTo("small.txt"),
                        contents -> assertThat(contents).isEqualTo("before"));
    }

    @Test
    void whereAWriteBreaksOffAllIsAsItWas() throws Exception {
        String said = apart("shift; ulimit -f 64; trap '' XFSZ; exec \"$@\"");

        assertThat(said).contains("The files can't be written, and all are as they were: ");
        assertAllIsAsItWas();
    }

    @Test
    void inAFolderThatMayNotBeWrittenInAllIsAsItWas() throws Exception {
        boolean isRoot = can("test $(id -u) = 0");
        assumeTrue(!isRoot || can("setpriv --reuid 65534 --clear-groups true"), "root may write everywhere");
        assumeTrue(!isRoot || can("chmod a+x " + temporary + " && setpriv --reuid 65534 --clear-groups ls " + folder));
        Files.setPosixFilePermissions(folder, PosixFilePermissions.fromString("r-xr-xr-x"));

        String said = apart("shift; exec " + (isRoot ? "setpriv --reuid 65534 --clear-groups " : "") + "\"$@\"");

        assertThat(said).contains("Nothing can be written in this folder: you may not write there.");
        Files.setPosixFilePermissions(folder, PosixFilePermissions.fromString("rwxr-xr-x"));
        assertAllIsAsItWas();
    }

    @Test
    void aReadOnlyFileIsNotReplacedEvenByWhoMayWriteAll() throws IOException {
        Path file = folder.resolve("small.txt");
        Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("r--r--r--"));

        assertThatExceptionOfType(FileTrouble.class)
                .isThrownBy(() -> Writing.save(file, "after".getBytes(UTF_8)))
                .withMessageContaining("write-protected. Choose another name, or take the protection away.");
        assertAllIsAsItWas();
    }

    @Test
    void aFolderThatCannotBeMadeIsSaid() throws IOException {
        assertThatExceptionOfType(FileTrouble.class)
                .isThrownBy(() -> Writing.saveAll(folder.resolve("small.txt/below"), Map.of("a", new byte[1])))
                .withMessageContaining("Nothing can be written in this folder");
        assertAllIsAsItWas();
    }
}
