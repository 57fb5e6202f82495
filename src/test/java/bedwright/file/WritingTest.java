package bedwright.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import bedwright.season.Season;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

class WritingTest {
    @TempDir
    Path folder;

    @Test
    void savesANewFileAndNothingBesideIt() throws IOException {
        Writing.save(folder.resolve("a.json"), bytes("one"));

        assertThat(folder.resolve("a.json")).hasContent("one");
        assertThat(names()).containsExactly("a.json");
    }

    @Test
    void keepsTheFormerVersionBesideTheNew() throws IOException {
        Path file = folder.resolve("a.json");
        Writing.save(file, bytes("one"));
        Writing.save(file, bytes("two"));
        Writing.save(file, bytes("three"));

        assertThat(file).hasContent("three");
        assertThat(folder.resolve("a.json~")).hasContent("two");
        assertThat(names()).containsExactly("a.json", "a.json~");
    }

    @Test
    void savesSeveralFilesOfAFolderThatItMakes() {
        Map<String, byte[]> files = new LinkedHashMap<>();
        files.put("b.txt", bytes("b"));
        files.put("a.txt", bytes("a"));

        Writing.saveAll(folder.resolve("new/sheets"), files);

        assertThat(folder.resolve("new/sheets/a.txt")).hasContent("a");
        assertThat(folder.resolve("new/sheets/b.txt")).hasContent("b");
    }

    @Test
    void leavesAllAsItWasIfOneOfSeveralCannotBeWritten() throws IOException {
        Writing.save(folder.resolve("a.txt"), bytes("before"));
        Files.createDirectory(folder.resolve("b.txt"));
        Map<String, byte[]> files = new LinkedHashMap<>();
        files.put("a.txt", bytes("after"));
        files.put("b.txt", bytes("after"));

        assertThatExceptionOfType(FileTrouble.class).isThrownBy(() -> Writing.saveAll(folder, files));
        assertThat(folder.resolve("a.txt")).hasContent("before");
        assertThat(names()).containsExactly("a.txt", "b.txt");
    }

    @Test
    void saysThatThereIsNoFolder() {
        Path file = folder.resolve("none/a.json");

        assertThatExceptionOfType(FileTrouble.class)
                .isThrownBy(() -> Writing.save(file, bytes("one")))
                .withMessageContaining("none does not exist. Make it first.")
                .satisfies(e -> assertThat(e.path()).isEqualTo(file));
    }

    @Test
    void writesThroughALink() throws IOException {
        Path real = folder.resolve("real.json");
        Files.writeString(real, "before");
        Path link = folder.resolve("link.json");
        try {
            Files.createSymbolicLink(link, real);
        } catch (UnsupportedOperationException e) {
            assumeTrue(false, "no links here");
        }

        Writing.save(link, bytes("after"));

        assertThat(link).isSymbolicLink();
        assertThat(real).hasContent("after");
    }

    @Test
    void keepsTheRightsOfTheFile() throws IOException {
        assumeTrue(Files.getFileStore(folder).supportsFileAttributeView("posix"));
        Path file = folder.resolve("a.json");
        Files.writeString(file, "before");
        Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rw-rw----"));

        Writing.save(file, bytes("after"));

        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(file)))
                .isEqualTo("rw-rw----");
    }

    @Test
    void writesASeasonThatReadsBackAsItWas() {
        Season season = Resources.season("page.json");
        Path file = folder.resolve("page.json");

        SeasonFile.write(season, file);

        assertThat(SeasonFile.read(file)).isEqualTo(season);
    }

    @Test
    void saysThatThereIsNoSuchFileAndWhichMayBeMeant() throws IOException {
        Files.writeString(folder.resolve("season.json"), "{}");

        assertThatExceptionOfType(FileTrouble.class)
                .isThrownBy(() -> SeasonFile.read(folder.resolve("seasen.json")))
                .withMessageContaining("There is no such file. Did you mean \"season.json\"?");
    }

    @Test
    void saysThatAFolderIsNoFile() {
        assertThatExceptionOfType(FileTrouble.class)
                .isThrownBy(() -> PlanFile.read(folder))
                .withMessageContaining("This is a folder");
    }

    @Test
    void doesNotReplaceAFolder() throws IOException {
        Path file = Files.createDirectory(folder.resolve("a.json"));

        assertThatExceptionOfType(FileTrouble.class)
                .isThrownBy(() -> Writing.save(file, bytes("one")))
                .withMessageContaining("There is a folder of this name; choose another name.");
    }

    /** A copy that a command which was cut off left is not the former version of a file that is new. */
    @Test
    void whatACommandThatWasCutOffLeftIsTakenAway() throws IOException {
        Path file = folder.resolve("a.json");
        Files.writeString(Writing.fresh(file), "half");
        Files.writeString(Writing.former(file), "long ago");

        Writing.save(file, bytes("one"));

        assertThat(names()).containsExactly("a.json");
    }

    @Test
    void leavesNothingBehindWhereTheFormerVersionCannotTakeItsName() throws IOException {
        Path file = folder.resolve("a.json");
        Files.writeString(file, "before");
        Files.createDirectories(folder.resolve("a.json~/within"));

        assertThatExceptionOfType(FileTrouble.class)
                .isThrownBy(() -> Writing.save(file, bytes("after")))
                .withMessageContaining("The file can't be written: ");
        assertThat(file).hasContent("before");
        assertThat(names()).containsExactly("a.json", "a.json~");
    }

    @Test
    void keepsTheRightsOfTheFormerVersion() throws IOException {
        assumeTrue(Files.getFileStore(folder).supportsFileAttributeView("posix"));
        Path file = folder.resolve("a.json");
        Files.writeString(file, "before");
        Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rw-rw----"));

        Writing.save(file, bytes("after"));

        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(folder.resolve("a.json~"))))
                .isEqualTo("rw-rw----");
    }

    static Stream<Arguments> reasons() {
        return Stream.of(
                Arguments.of(new AccessDeniedException("a.json"), "you may not write there. Choose another folder."),
                Arguments.of(new FileAlreadyExistsException("a.json"), "there is a file of this name already."),
                Arguments.of(
                        new FileSystemException("a.json", null, "No space left on device"),
                        "the disk is full (No space left on device). Make room, or choose a folder on another disk."),
                Arguments.of(
                        new IOException("Disk quota exceeded"),
                        "the disk is full (Disk quota exceeded). Make room, or choose a folder on another disk."),
                Arguments.of(
                        new IOException("There is not enough space on the disk"),
                        "the disk is full (There is not enough space on the disk). Make room, or choose a folder on"
                                + " another disk."),
                Arguments.of(new FileSystemException("a.json", null, "Is a directory"), "Is a directory."),
                Arguments.of(new IOException("Input/output error"), "Input/output error."));
    }

    @ParameterizedTest
    @MethodSource("reasons")
    void saysWhyAFileCanNotBeWritten(IOException trouble, String said) {
        assertThat(Writing.reason(trouble)).isEqualTo(said);
    }

    private List<String> names() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(f -> f.getFileName().toString()).sorted().toList();
        }
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
