package bedwright.log;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import bedwright.file.SeasonFile;
import bedwright.season.KeptPlanting;
import bedwright.season.Plan;
import bedwright.season.Season;
import bedwright.season.Units;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What notes say, and why some are refused: a planting of 40 once-cut sunflowers, sown on 17 May in the open bed. */
class NotesReadTest {
    private static final Season SEASON = SeasonFile.read(Path.of("problems/first-bed.json"));
    private static final Plan PLAN = plan(SEASON);

    private static Plan plan(Season season) {
        return new Plan(
                1,
                season,
                new Plan.Making(1, null, 1L, false, false),
                new Plan.Score(0, 0, 0),
                List.of(
                        planting(14, "sunflower, once-cut", "sown"),
                        planting(15, "sunflower, once-cut", "tray"),
                        planting(16, "dill", "sown")));
    }

    private static KeptPlanting planting(int number, String crop, String method) {
        return new KeptPlanting(number, crop, method, "Open bed", LocalDate.of(2027, 5, 17), 1, null, 1, 40);
    }

    private static SeasonLog log(String... notes) {
        return SeasonLog.EMPTY.plus(PLAN, String.join("\n", notes) + "\n");
    }

    private static Note note(String text) {
        return log(text).entries().getFirst().note();
    }

    private static String understood(String text) {
        return Understood.sentence(PLAN, log(text).entries().getFirst());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {"2027-06-10 14 up", "10-Jun 14 up", "10 Jun 14 up", "10 June 2027 14 up", "10-jun 14 up"})
    void aDayIsUnderstoodWithAndWithoutItsYear(String text) {
        assertThat(log(text).entries().getFirst().on()).isEqualTo("2027-06-10");
    }

    @Test
    void aDayWithinANoteIsTooAndMayHaveBlanks() {
        assertThat(note("1 Jun 14 moved 24 May")).isEqualTo(new Note.Moved(14, LocalDate.of(2027, 5, 24)));
        assertThat(note("1-Jun week 31 May done except 14 15"))
                .isEqualTo(new Note.WeekDone(LocalDate.of(2027, 5, 31), List.of(14, 15)));
    }

    @Test
    void howMuchCameUpIsAShare() {
        assertThat(note("1-Jun 14 up 80%")).isEqualTo(new Note.CameUp(14, new Amount(0.8, true)));
    }

    @Test
    void whatWasReallyDoneHasItsBedAndAmount() {
        assertThat(note("17-May 14 in-bed Fence bed")).isEqualTo(new Note.InBed(14, "Fence bed"));
        assertThat(note("17-May 14 plants 55")).isEqualTo(new Note.OfPlants(14, 55));
    }

    @Test
    void anOrderHasLinesWithAPriceThatIsTheBestWhereNoneIsSaid() {
        assertThat(note("12-May order-new Inn, florist for 5 Jul: 12 focal at 0.80, 6 filler"))
                .isEqualTo(new Note.Ordered(
                        "Inn, florist",
                        Note.How.NEW,
                        new Period(LocalDate.of(2027, 7, 5), LocalDate.of(2027, 7, 5)),
                        List.of(new OrderLine("focal", 12, 0.8), new OrderLine("filler", 6, 0.4)),
                        0,
                        null,
                        null));
    }

    @Test
    void whatIsAskedForLapsesAndBouquetsHaveARecipe() {
        assertThat(note("12-May order-asked Inn until 1 Jun for 28 Jun to 12 Jul: 9 bouquets of Porch bouquet"))
                .isEqualTo(new Note.Ordered(
                        "Inn",
                        Note.How.ASKED,
                        new Period(LocalDate.of(2027, 6, 28), LocalDate.of(2027, 7, 12)),
                        List.of(),
                        9,
                        "Porch bouquet",
                        LocalDate.of(2027, 6, 1)));
    }

    @Test
    void anOrderIsGoneForSomeWeeksOrForGood() {
        assertThat(note("1-Jul order-gone Stall, focal")).isEqualTo(new Note.OrderGone("Stall, focal", null));
        assertThat(note("1-Jul order-gone Stall, focal for 5 Jul"))
                .isEqualTo(new Note.OrderGone(
                        "Stall, focal", new Period(LocalDate.of(2027, 7, 5), LocalDate.of(2027, 7, 5))));
    }

    @Test
    void aBedHandsAndStockAreGoneForAWhile() {
        Period july = new Period(LocalDate.of(2027, 7, 1), LocalDate.of(2027, 7, 10));
        assertThat(note("1-Jul bed-gone Fence bed for 1 Jul to 10 Jul")).isEqualTo(new Note.BedGone("Fence bed", july));
        assertThat(note("1-Jul stock-gone 4 of Net for 1-Jul to 10-Jul")).isEqualTo(new Note.StockGone("Net", 4, july));
        assertThat(note("1-Jul helper-gone 2 hours for 1 Jul to 10 Jul"))
                .isEqualTo(new Note.HelperGone(2, false, 0, july));
    }

    @Test
    void aDaysWeatherIsInTheUnitsOfTheSeasonFile() {
        assertThat(note("1-Jul weather min -2 max 15.5 gust 21 west"))
                .isEqualTo(new Note.Weather(-2.0, 15.5, 21.0, 270));

        Note inFeet = SeasonLog.EMPTY
                .plus(plan(SEASON.with(Units.FEET)), "1-Jul weather min 41 max 68\n")
                .entries()
                .getFirst()
                .note();
        assertThat(inFeet).isEqualTo(new Note.Weather(5.0, 20.0, null, 0));
    }

    @Test
    void whatWasUnderstoodIsSaidInFull() {
        assertThat(understood("12-May order-new Inn for 5 Jul to 12 Jul: 12 focal"))
                .isEqualTo("Note 1, 2027-05-12: a new order, \"Inn\", promised: each week, 2027-07-05 to 2027-07-12:"
                        + " 12 focal at €1.20.");
        assertThat(understood("1-Jul weather min 4 max 15.5 gust 21 north-west"))
                .isEqualTo("Note 1, 2027-07-01: weather: between 4 and 15.5 °C, a gust of 21 m/s from the north-west.");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "1-Jun 14 wilted|Write one of up, pinch-stage",
                "1-Jun 14 fist-stem|Did you mean \"first-stem\"?",
                "1-Jun 14 los half|Did you mean \"lost\"?",
                "1-Jun wether min 3 max 8|Did you mean \"weather\"?",
                "1-Jun 14 lost half widn|Did you mean \"wind\"?",
                "1-Jun weather gust 21 wset|Did you mean \"west\"?",
                "1-Jun 3 up|There is no planting 3. Write a number that the season sheet shows, up to 16.",
                "16-May 14 stands half|begun on 2027-05-17, so there is nothing to note of it on 2027-05-16",
                "16-May 14 plants 50|begun on 2027-05-17",
                "1-Jun 14 up 120%|more than all",
                "1-Jun 14 stands 41|can't stand. Write a number up to 40",
                "1-Jul 14 cut 41 all|41 stems can't have been there by 2027-07-01: 40 plants give 40 at the very most",
                "1-Jul 14 cut 30 left 11|41 stems can't have been there",
                "1-Jul 16 cut 601 all|40 plants give 600 at the very most",
                "17-May 14 in-bed Fense bed|Did you mean \"Fence bed\"?",
                "17-May 14 plants 0|Write: 14 not-done",
                "17-May 14 moved 1 Dec|outside the season. Write a day from",
                "31-Jun 14 up|\"31-Jun\" is not a day. Write it as 12 Sep, 12-Sep or",
                "1-Jun week 2 Jun done|is not the first day of a week. Write 2027-05-31.",
                "12-May order-new Stall, focal for 5 Jul: 9 focal|an order \"Stall, focal\" already. Write order-changed",
                "12-May order-changed Stall focal for 5 Jul: 9 focal|Did you mean \"Stall, focal\"?",
                "12-May order-gone Nobody|There is no order \"Nobody\". Write one of: Porch bouquets; Stall, filler; Stall, focal",
                "12-May order-new Inn for 5 Jul 9 focal|There is no colon behind the day",
                "12-May order-new Inn for 5 Jul: 9 roses|There is no kind \"roses\"",
                "12-May order-new Inn for 5 Jul: 9 focl|Did you mean \"focal\"?",
                "12-May order-new Inn for 5 Jul: 9 bouquets|The bouquets need a recipe",
                "12-May order-new Inn for 12 Jul to 5 Jul: 9 focal|Write the first day first: 2027-07-05 to 2027-07-12",
                "12-May order-new Inn for 5 Jul: 9000000 focal at 0.01|9000000 stems are too many: no more than 1000000 in a week",
                "12-May order-new Inn for 5 Jul: 1000 focal at 300|could come to 1200000 €; no more than 1000000",
                "12-May order-asked Inn until 6 Jul for 5 Jul: 9 focal|Write a day between them, not 2027-07-06",
                "12-May bed-gone Shed for 5 Jul|There is no bed \"Shed\"",
                "12-May stock-gone 7 of Net for 5 Jul|Of Net there is 6 then",
                "12-May stock-gone 7 of Nat for 5 Jul|Did you mean \"Net\"?",
                "12-May stock-gone -1 of Net for 5 Jul|Less than nothing",
                "12-May helper-gone 900 hours for 5 Jul|own hours, so 900 can't be gone",
                "12-May weather min 20 max 10|can't be above the greatest",
                "12-May weather min 20 max 90|No such temperature",
                "12-May weather|The note ends here. Write also min and max"
            })
    void aBadNoteIsRefusedWithTheReasonAndWhatToWriteInstead(String text, String told) {
        assertThatThrownBy(() -> log(text)).isInstanceOf(FaultyNotes.class).hasMessageContaining(told);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "1-Jun 14 pulled|2-Jun 14 up|was cleared on 2027-06-01 by note 1",
                "1-Jun 14 not-done|2-Jun 14 up|can't be left out: note 2 speaks of it|14 not-done",
                "1-Jun 14 up|2-Jun 14 moved 5-Jun|would be begun on 2027-06-05, but note 1 speaks of it on 2027-06-01",
                "1-Jul 14 cut 30 all|2-Jul 14 cut 11 all|41 stems can't have been there",
                "1-Jun 14 in-bed Fence bed|2-Jun 14 in-bed Open bed|note 1 says already which bed it is in",
                "1-Jun 14 plants 30|2-Jun 14 plants 20|note 1 says already how many plants",
                "1-Jun 14 stands 30|1-Jun 14 up 50%|is in note 1 already",
                "1-Jun weather min 4 max 8|1-Jun weather gust 20 west|Note 1 says already what the weather was",
                "12-May order-new Inn for 5 Jul: 9 focal|13-May order-new Inn for 6 Jul: 9 focal|already",
                "12-May order-asked Inn until 2-Jul for 5 Jul: 9 focal|13-May order-asked Inn until 2-Jul for 5 Jul: 9 focal|Note 1 says already",
                "12-May order-new Inn for 5 Jul: 900 focal at 200|13-May order-new Hall for 6 Jul: 900 focal at 200|could come to 1440000",
                "12-May order-gone Stall, focal|13-May order-changed Stall, focal for 5 Jul: 9 focal|There is no order",
                "12-May stock-gone 4 of Net for 1-Jul to 9-Jul|12-May stock-gone 3 of Net for 9-Jul to 16-Jul|Of Net there is 2 then"
            })
    void notesThatContradictOneAnotherAreRefusedWithTheOtherNamed(String first, String second, String told) {
        assertThatThrownBy(() -> log(first, second))
                .isInstanceOf(FaultyNotes.class)
                .hasMessageContaining(told);
    }

    @Test
    void aNoteThatOthersRestOnCannotBeTakenBackBeforeThem() {
        assertThatThrownBy(() -> log(
                        "12-May order-new Inn for 5 Jul: 9 focal",
                        "13-May order-changed Inn for 5 Jul: 8 focal",
                        "14-May take-back 1"))
                .hasMessageContaining("There is no order \"Inn\"");
    }
}
