package bedwright.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import bedwright.season.Season;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

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

    private List<String> names() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(f -> f.getFileName().toString()).sorted().toList();
        }
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
