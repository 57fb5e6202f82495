package bedwright.log;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import bedwright.file.SeasonFile;
import bedwright.season.KeptPlanting;
import bedwright.season.Plan;
import bedwright.season.Season;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SeasonLogTest {
    private static final Season SEASON = SeasonFile.read(Path.of("problems/first-bed.json"));
    private static final LocalDate START = SEASON.starts();
    private static final Plan PLAN = new Plan(
            1,
            SEASON,
            new Plan.Making(1, null, 1L, false, false),
            new Plan.Score(0, 0, 0),
            List.of(planting(1), planting(2)));

    private static KeptPlanting planting(int number) {
        return new KeptPlanting(number, "any", "any", "any", START, 1, null, 1, 100);
    }

    private static String day(int after) {
        return START.plusDays(after).toString();
    }

    private static SeasonLog log(String... notes) {
        return SeasonLog.EMPTY.plus(PLAN, String.join("\n", notes) + "\n");
    }

    @Test
    void anAmountIsAShareAFractionAWordOrPlants() {
        assertThat(log(
                                day(9) + " 1 lost half wind",
                                day(9) + " 1 lost 50%",
                                day(9) + " 1 lost 1/2",
                                day(9) + " 1 lost 7")
                        .entries())
                .extracting(Entry::note)
                .extracting(note -> ((Note.Lost) note).lost())
                .containsExactly(
                        new Amount(0.5, true), new Amount(0.5, true), new Amount(0.5, true), new Amount(7, false));
    }

    @Test
    void whatWasLeftAtACutIsKnownOnlyIfSaid() {
        assertThat(log(day(60) + " 1 cut 140 all", day(61) + " 1 cut 90 left 40", day(62) + " 1 cut 20")
                        .entries())
                .extracting(Entry::note)
                .containsExactly(new Note.Cut(1, 140, 0), new Note.Cut(1, 90, 40), new Note.Cut(1, 20, null));
    }

    @Test
    void aNoteTakenBackNoLongerCounts() {
        assertThat(log(day(9) + " 1 pulled", day(10) + " take-back 1").inForce())
                .extracting(Entry::number)
                .containsExactly(2);
    }

    @Test
    void takingBackATakingBackLetsTheFirstNoteCountAgain() {
        assertThat(log(day(9) + " 1 pulled", day(10) + " take-back 1", day(11) + " take-back 2")
                        .inForce())
                .extracting(Entry::number)
                .containsExactly(1, 3);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "3 up|no planting 3",
                "1 lost 150%|more than all",
                "1 lost 101|no more than 100 plants",
                "1 stands 101|Write a number up to 100",
                "1 moved 1999-01-01|outside the season",
                "1 wilted|not understood",
                "1 colour today|over before",
                "1 lost|Write also plants",
                "1 lost half rain|wind, frost, pest, disease or other",
                "week 1999-01-01 done|outside the season",
                "take-back 7|no earlier note 7"
            })
    void aBadNoteIsRefusedWithWhatToWriteInstead(String note, String told) {
        assertThatThrownBy(() -> log(day(9) + " " + note)).hasMessageContaining(told);
    }

    @ParameterizedTest
    @CsvSource({
        "1 pulled,1 up",
        "1 first-stem,1 up",
        "1 up,1 up",
        "1 stands 40,1 lost 41",
        "1 lost all,1 cut 5 all",
        "1 up,1 not-done",
        "take-back 1,1 up"
    })
    void notesThatContradictOneAnotherAreRefused(String first, String second) {
        assertThatThrownBy(() -> log(day(20) + " " + first, day(21) + " " + second))
                .isInstanceOf(FaultyNotes.class);
    }

    @Test
    void allFaultsAreToldAtOnceWithTheirPlaces() {
        String bad = day(9) + " 1 wilted";
        assertThatThrownBy(() -> log(bad, day(9) + " 1 up", day(9) + " 3 up"))
                .isInstanceOfSatisfying(
                        FaultyNotes.class,
                        faulty -> assertThat(faulty.faults())
                                .extracting(fault -> fault.line() + ":" + fault.column())
                                .containsExactly("1:14", "3:1"));
    }

    @Test
    void aLogReadInTwoPiecesIsTheLogReadAtOnce() {
        for (int seed = 0; seed < 200; seed++) {
            Random random = new Random(seed);
            StringBuilder text = new StringBuilder();
            int lines = 2 + random.nextInt(12);
            for (int line = 1; line <= lines; line++) {
                String note = switch (random.nextInt(4)) {
                    case 0 -> "1 lost " + random.nextInt(101) + "%";
                    case 1 -> "say " + random.nextInt();
                    case 2 -> "2 moved " + day(random.nextInt(30));
                    default -> line == 1 ? "say first" : "say of " + line;
                };
                text.append(day(random.nextInt(60))).append(' ').append(note).append('\n');
            }
            text.append(day(61))
                    .append(" take-back ")
                    .append(1 + random.nextInt(lines))
                    .append('\n');
            String all = text.toString();
            int cut = all.indexOf('\n', random.nextInt(all.length() - 1)) + 1;

            assertThat(SeasonLog.EMPTY.plus(PLAN, all.substring(0, cut)).plus(PLAN, all.substring(cut)))
                    .as("seed %d", seed)
                    .isEqualTo(SeasonLog.EMPTY.plus(PLAN, all));
        }
    }

    @Test
    void aLogCutOffAnywhereLosesOnlyTheLineThatItWasCutOffIn(@TempDir Path folder) throws IOException {
        Path file = folder.resolve("season.log");
        String first = day(9) + " 1 up\n";
        String all = first + day(10) + " 1 lost half wind\n";
        for (int length = first.length(); length < all.length(); length++) {
            Files.writeString(file, all.substring(0, length));
            SeasonLog cut = LogFile.read(file, PLAN);
            assertThat(cut.entries()).hasSize(1);
            assertThat(cut.cutOff()).isEqualTo(all.substring(first.length(), length));
        }
    }

    @Test
    void aNoteAfterACutOffLineStandsOnALineOfItsOwn(@TempDir Path folder) throws IOException {
        Path file = folder.resolve("season.log");
        Files.writeString(file, day(9) + " 1 up\n" + day(10) + " 1 lo");

        LogFile.append(file, PLAN, LogFile.read(file, PLAN), List.of(day(11) + " 2 up"));

        assertThat(file).hasContent(day(9) + " 1 up\n" + day(11) + " 2 up\n");
    }

    @Test
    void whatSomebodyElseWroteMeanwhileIsNotWrittenOver(@TempDir Path folder) throws IOException {
        Path file = folder.resolve("season.log");
        LogFile.append(file, PLAN, SeasonLog.EMPTY, List.of(day(9) + " 1 up"));

        assertThat(LogFile.append(file, PLAN, SeasonLog.EMPTY, List.of(day(9) + " 2 up")))
                .isFalse();
    }

    @Test
    void notesThatAreSavedTogetherStandBehindThoseBefore(@TempDir Path folder) throws IOException {
        Path file = folder.resolve("season.log");
        LogFile.append(file, PLAN, SeasonLog.EMPTY, List.of(day(9) + " 1 up"));

        byte[] all = LogFile.joined(
                        file, PLAN, LogFile.read(file, PLAN), List.of(day(10) + " 2 up", day(11) + " 1 lost half"))
                .orElseThrow();

        assertThat(new String(all, StandardCharsets.UTF_8))
                .isEqualTo(day(9) + " 1 up\n" + day(10) + " 2 up\n" + day(11) + " 1 lost half\n");
    }

    @Test
    void notesThatAreSavedTogetherAreNotWrittenOverWhatSomebodyElseWrote(@TempDir Path folder) throws IOException {
        Path file = folder.resolve("season.log");
        LogFile.append(file, PLAN, SeasonLog.EMPTY, List.of(day(9) + " 1 up"));

        assertThat(LogFile.joined(file, PLAN, SeasonLog.EMPTY, List.of(day(9) + " 2 up", day(9) + " 1 lost half")))
                .isEmpty();
    }
}
