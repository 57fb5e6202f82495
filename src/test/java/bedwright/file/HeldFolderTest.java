package bedwright.file;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class HeldFolderTest {
    @TempDir
    private Path temporary;

    private Path folder() {
        return temporary.resolve("plans/first");
    }

    private static Map<String, byte[]> files(String contents) {
        Map<String, byte[]> files = new LinkedHashMap<>();
        files.put("sheet.html", contents.getBytes(UTF_8));
        files.put("plan.json", contents.getBytes(UTF_8));
        return files;
    }

    private void save(String contents, String... retired) {
        try (HeldFolder held = HeldFolder.of(folder())) {
            held.save(files(contents), List.of(retired));
        }
    }

    private List<String> names() throws IOException {
        try (Stream<Path> files = Files.list(folder())) {
            return files.map(f -> f.getFileName().toString()).sorted().toList();
        }
    }

    @Test
    void filesAreSavedWithTheirFormerVersionsAndNothingElseIsLeft() throws IOException {
        save("one");
        save("two");

        assertThat(names()).containsExactly("plan.json", "plan.json~", "sheet.html", "sheet.html~");
        assertThat(folder().resolve("plan.json")).hasContent("two");
        assertThat(folder().resolve("sheet.html~")).hasContent("one");
    }

    @Test
    void whatNoLongerBelongsThereBecomesAFormerVersion() throws IOException {
        save("one");
        Files.writeString(folder().resolve("prices.json"), "old");

        save("two", "prices.json", "nothing.json");

        assertThat(folder().resolve("prices.json")).doesNotExist();
        assertThat(folder().resolve("prices.json~")).hasContent("old");
        assertThat(folder().resolve("nothing.json~")).doesNotExist();
    }

    @Test
    void onlyOneAtATimeWritesThere() {
        try (HeldFolder held = HeldFolder.of(folder())) {
            assertThatExceptionOfType(FileTrouble.class)
                    .isThrownBy(() -> HeldFolder.of(folder()))
                    .withMessageContaining("(process " + ProcessHandle.current().pid() + ")")
                    .withMessageContaining("Wait until it has ended");
            held.save(files("one"), List.of());
        }

        save("two");
        assertThat(folder().resolve("plan.json")).hasContent("two");
    }

    @Test
    void aFolderThatNothingWasWrittenInIsTakenAwayAgain() {
        HeldFolder.of(folder()).close();

        assertThat(temporary).isEmptyDirectory();
    }

    @Test
    void aLockThatADeadProcessLeftLocksNothing() throws IOException {
        save("one");
        Files.writeString(folder().resolve(HeldFolder.LOCK), "4711 1\n");

        save("two");

        assertThat(names()).doesNotContain(HeldFolder.LOCK);
    }

    @Test
    void halfWrittenFilesOfADeadProcessAreTakenAway() throws IOException {
        save("one");
        Files.writeString(Writing.fresh(folder().resolve("plan.json")), "half");
        Files.writeString(Writing.former(folder().resolve("plan.json")), "half");
        Files.writeString(folder().resolve(".somebody-elses"), "kept");

        HeldFolder.of(folder()).close();

        assertThat(names()).containsExactly(".somebody-elses", "plan.json", "sheet.html");
        assertThat(folder().resolve("plan.json")).hasContent("one");
    }

    /** As if the process had been killed after the first of the files took its name. */
    @Test
    void whatWasOnlyNotNamedYetIsFinished() throws IOException {
        save("one");
        Files.writeString(folder().resolve("sheet.html"), "two");
        Files.writeString(folder().resolve("sheet.html~"), "one");
        Files.writeString(Writing.fresh(folder().resolve("plan.json")), "two");
        Files.writeString(Writing.former(folder().resolve("plan.json")), "one");
        Files.writeString(folder().resolve("prices.json"), "old");
        Files.writeString(folder().resolve(HeldFolder.LIST), "take sheet.html\ntake plan.json\nretire prices.json");

        HeldFolder.settle(folder());

        assertThat(names()).containsExactly("plan.json", "plan.json~", "prices.json~", "sheet.html", "sheet.html~");
        assertThat(folder().resolve("plan.json")).hasContent("two");
        assertThat(folder().resolve("plan.json~")).hasContent("one");
        assertThat(folder().resolve("sheet.html")).hasContent("two");
    }

    @Test
    void whereNothingIsUnfinishedNothingIsTouched() throws IOException {
        save("one");
        Files.writeString(Writing.fresh(folder().resolve("plan.json")), "being written");

        HeldFolder.settle(folder());

        assertThat(Writing.fresh(folder().resolve("plan.json"))).hasContent("being written");
    }

    @Test
    void ofFilesThatBelongTogetherAllAreAsTheyWereIfOneIsProtected() throws IOException {
        save("one");
        folder().resolve("plan.json").toFile().setWritable(false);

        assertThatExceptionOfType(FileTrouble.class)
                .isThrownBy(() -> save("two"))
                .withMessageContaining("write-protected");
        assertThat(folder().resolve("sheet.html")).hasContent("one");
        assertThat(names()).containsExactly("plan.json", "sheet.html");
    }
}
