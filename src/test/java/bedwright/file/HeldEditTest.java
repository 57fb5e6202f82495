package bedwright.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import bedwright.problems.Planned;
import bedwright.season.Held;
import bedwright.season.Lots;
import bedwright.season.Season;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What is held is written into a season file; all else in it stays as the grower wrote it. */
class HeldEditTest {
    private static final String PAGE = "page.json";
    private static final Held ONE = held("Long1", "2027-05-03");
    private static final Held TWO = held("Long2", "2027-05-10").with(3);

    private static Held held(String bed, String sown) {
        return new Held("sunflower, once-cut", 1, bed, LocalDate.parse(sown), "sown", null);
    }

    static List<String> names() {
        return Planned.names();
    }

    private static String edited(String text, Held... held) {
        HeldEdit.Edited edit = HeldEdit.of("edited", text.getBytes(StandardCharsets.UTF_8), List.of(held));
        assertThat(edit.season().held()).containsExactly(held);
        return new String(edit.bytes(), StandardCharsets.UTF_8);
    }

    private static String page() {
        return new String(Resources.bytes(PAGE), StandardCharsets.UTF_8);
    }

    @ParameterizedTest
    @MethodSource("names")
    void onlyOnePieceIsPutIn(String name) throws IOException {
        String before = Files.readString(Path.of("problems", name));
        Season season = SeasonFile.parse(name, before.getBytes(StandardCharsets.UTF_8));
        Lots lots = season.pool().getFirst();
        Held held = new Held(
                lots.crop(),
                1,
                season.allBeds().getFirst().name(),
                season.starts(),
                season.crops().stream()
                        .filter(crop -> crop.name().equals(lots.crop()))
                        .findFirst()
                        .orElseThrow()
                        .methods()
                        .getFirst()
                        .name(),
                null);

        String after = edited(before, held);

        int same = 0;
        while (before.charAt(same) == after.charAt(same)) {
            same++;
        }
        assertThat(after).endsWith(before.substring(same));
    }

    @Test
    void whatWasHeldBeforeIsPutInItsPlace() {
        String one = edited(page(), ONE);

        assertThat(edited(one, TWO)).contains("\"lots\": 3").doesNotContain("2027-05-03");
        assertThat(edited(edited(one, ONE, TWO), ONE)).isEqualTo(one);
    }

    @Test
    void nothingHeldLeavesAnEmptyList() {
        assertThat(edited(edited(page(), ONE, TWO))).contains("\"held\": []");
    }

    @Test
    void eachHasALineOfItsOwnWithTheFilesIndentAndLineEnds() {
        String text = edited(page().replace("\n", "\r\n").replace("\r\n  \"", "\r\n\t\""), ONE, TWO);

        assertThat(text)
                .contains(",\r\n\t\"held\": [\r\n\t\t{ \"crop\"")
                .contains("},\r\n\t\t{")
                .contains("}\r\n\t]");
        assertThat(text.replace("\r\n", "")).doesNotContain("\n");
    }

    @Test
    void anIndentOfBlanksIsTakenUp() {
        assertThat(edited(page(), ONE, TWO)).contains(",\n  \"held\": [\n    { \"crop\"", " },\n    { ", " }\n  ]\n}");
    }

    @Test
    void aFileOnOneLineStaysOnOneLine() {
        assertThat(edited(page().replaceAll("\\n\\s*", " "), ONE, TWO))
                .doesNotContain("\n")
                .contains(", \"held\": [{ \"crop\"", " }, { ", " }] }");
    }

    @ParameterizedTest
    @ValueSource(strings = {"a } b", "a \\\" ] b", "\\\\", "\\\"held\\\": [", "{[,"})
    void bracketsInTextsAreText(String name) {
        String text = page().replace("A season on a page", name);

        assertThat(edited(text, ONE)).contains(name);
    }

    @Test
    void whatCanNotBeHeldIsAFaultOfTheFile() {
        assertThatExceptionOfType(FaultyFile.class)
                .isThrownBy(() -> edited(page(), ONE.with(13)))
                .satisfies(e -> assertThat(e.faults()).extracting(Fault::path).containsExactly("/held/0/lots"));
    }
}
