package bedwright.calendar;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import bedwright.problems.Planned;
import bedwright.season.KeptPlanting;
import bedwright.season.Plan;
import bedwright.season.Units;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.SplittableRandom;
import java.util.function.UnaryOperator;
import java.util.random.RandomGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class SeasonCalendarTest {
    /** Letters of two, three and four octets, marks of the format's own, and more than a line of them. */
    private static final String ODD = "Häcke; 花床, \\n ‹🌻🌼› ".repeat(6).strip();

    private static final Plan FIRST = Planned.of("first-bed.json", 4).plan();

    static List<String> names() {
        return Planned.names();
    }

    private static Planned oddly() {
        return Planned.of(
                "first-bed.json",
                1,
                text -> text.replace("\"Fence bed\"", "\"" + ODD.replace("\\", "\\\\") + "\"")
                        .replace("\"dill\"", "\"Dill, gefüllt 🌸\"")
                        .replace(
                                "\"Porch bouquets\"",
                                "\"Ærøskøbing 花祭り 🎉 dinner of many guests, with a name that fills a line\", \"event\": true"));
    }

    private static SeasonCalendar calendar(Plan plan, SeasonCalendar... former) {
        Map<String, String> before = former.length == 0 ? Map.of() : Map.of("", former[0].text());
        return Objects.requireNonNull(
                SeasonCalendar.of(plan, SeasonCalendar.Split.NONE, before).get(""));
    }

    private static Plan with(Plan plan, UnaryOperator<List<KeptPlanting>> change) {
        List<KeptPlanting> plantings = change.apply(new ArrayList<>(plan.plantings()));
        return new Plan(1, plan.season(), plan.making(), plan.score(), plantings);
    }

    private static KeptPlanting moved(KeptPlanting p, int weeks, String bed) {
        return new KeptPlanting(
                p.number(),
                p.crop(),
                p.method(),
                bed,
                p.sown().plusWeeks(weeks),
                p.pool(),
                p.standing(),
                p.lots(),
                p.plants());
    }

    @ParameterizedTest
    @MethodSource("names")
    void twoReadersTakeItWithoutComplaintAndFindTheSame(String name) {
        Plan plan = Planned.of(name, 4).plan();

        String text = calendar(plan).text();

        Map<String, Readers.Read> one = Readers.ical4j(text);
        assertThat(Readers.biweekly(text)).isEqualTo(one);
        assertThat(one.values().stream().map(SeasonCalendarTest::said))
                .containsExactlyElementsOf(Diary.of(plan, plan.season(), Map.of()).stream()
                        .map(SeasonCalendarTest::said)
                        .toList());
    }

    private static String said(Readers.Read read) {
        return read.from() + " " + read.end() + " " + read.summary() + "\n" + read.details();
    }

    private static String said(Entry entry) {
        return entry.from() + " " + entry.end() + " " + entry.summary() + "\n" + String.join("\n", entry.details());
    }

    @Test
    void namesInAnyLettersComeBackAsTheyWere() {
        Plan plan = oddly().plan();

        String text = calendar(plan).text();

        List<String> said = Diary.of(plan, plan.season(), Map.of()).stream()
                .map(SeasonCalendarTest::said)
                .toList();
        assertThat(said)
                .anyMatch(s -> s.contains(ODD))
                .anyMatch(s -> s.contains("🎉"))
                .anyMatch(s -> s.contains("🌸"));
        assertThat(Readers.ical4j(text).values().stream().map(SeasonCalendarTest::said))
                .containsExactlyElementsOf(said);
        assertThat(Readers.biweekly(text).values().stream().map(SeasonCalendarTest::said))
                .containsExactlyElementsOf(said);
    }

    /** RFC 5545, section 3.1: at most 75 octets without the line break, which is CR LF. */
    @Test
    void linesHaveAtMost75OctetsAndAreFoldedBetweenLetters() throws CharacterCodingException {
        String text = calendar(oddly().plan()).text();

        List<String> lines = Arrays.asList(text.split("\r\n"));
        assertThat(text).endsWith("END:VCALENDAR\r\n").doesNotContain("\r\r");
        assertThat(text.replace("\r\n", "")).doesNotContain("\n").doesNotContain("\r");
        int longest = 0;
        for (String line : lines) {
            byte[] octets = line.getBytes(StandardCharsets.UTF_8);
            longest = Math.max(longest, octets.length);
            String back = StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(octets))
                    .toString();
            assertThat(back).isEqualTo(line).doesNotContain("?");
        }
        assertThat(longest).isEqualTo(75);
    }

    @Test
    void theSamePlanWritesTheSameFileOverTheFormer() {
        SeasonCalendar first = calendar(FIRST);

        SeasonCalendar again = calendar(FIRST, first);

        assertThat(again.text()).isEqualTo(first.text());
        assertThat(again.same()).isEqualTo(first.fresh()).isPositive();
    }

    @Test
    void aPlantingThatMovesByAWeekUpdatesItsEntries() {
        SeasonCalendar first = calendar(FIRST);
        Plan plan = with(FIRST, p -> {
            p.set(0, moved(p.getFirst(), 1, p.getFirst().bed()));
            return p;
        });

        SeasonCalendar then = calendar(plan, first);

        Map<String, Readers.Read> before = Readers.ical4j(first.text());
        Map<String, Readers.Read> after = Readers.ical4j(then.text());
        assertThat(after.keySet()).isEqualTo(before.keySet());
        assertThat(then.changed()).isPositive();
        assertThat(then.cancelled()).isZero();
        after.forEach((uid, read) -> {
            Readers.Read was = Objects.requireNonNull(before.get(uid));
            assertThat(read.sequence()).isEqualTo(said(read).equals(said(was)) ? 0 : 1);
        });
    }

    @Test
    void aPlantingThatChangesItsBedUpdatesItsEntries() {
        SeasonCalendar first = calendar(FIRST);
        String other = FIRST.season().allBeds().stream()
                .map(b -> b.name())
                .filter(b -> !b.equals(FIRST.plantings().getFirst().bed()))
                .findFirst()
                .orElseThrow();

        SeasonCalendar then = calendar(
                with(FIRST, p -> {
                    p.set(0, moved(p.getFirst(), 0, other));
                    return p;
                }),
                first);

        assertThat(then.cancelled()).isZero();
        assertThat(then.fresh()).isZero();
        assertThat(then.changed()).isPositive();
    }

    @Test
    void aPlantingThatIsGoneIsCancelledAndStaysSo() {
        SeasonCalendar first = calendar(FIRST);
        Plan plan = with(FIRST, p -> p.subList(1, p.size()));

        SeasonCalendar then = calendar(plan, first);
        SeasonCalendar later = calendar(plan, then);

        List<Readers.Read> gone = Readers.ical4j(then.text()).values().stream()
                .filter(Readers.Read::cancelled)
                .toList();
        assertThat(gone).hasSize(then.cancelled()).isNotEmpty().allMatch(read -> read.sequence() == 1);
        assertThat(then.cancelled() + then.same()).isEqualTo(first.fresh());
        assertThat(later.text()).isEqualTo(then.text());
        assertThat(later.cancelled()).isZero();
    }

    @Test
    void whatWasCancelledComesBackUnderItsUid() {
        SeasonCalendar first = calendar(FIRST);
        SeasonCalendar without = calendar(with(FIRST, p -> p.subList(1, p.size())), first);

        SeasonCalendar back = calendar(FIRST, without);

        Map<String, Readers.Read> entries = Readers.ical4j(back.text());
        assertThat(entries.keySet()).isEqualTo(Readers.ical4j(first.text()).keySet());
        assertThat(entries.values()).noneMatch(Readers.Read::cancelled);
        assertThat(entries.values().stream().filter(read -> read.sequence() == 2))
                .hasSize(without.cancelled());
    }

    /**
     * A calendar program that takes in one file after another, as RFC 5546 (section 2.1.5) asks: of entries with one UID
     * the greater SEQUENCE counts, and what is cancelled is gone. It then shows the last plan and nothing else.
     */
    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10})
    void aProgramThatTakesInEveryFileShowsTheLastPlan(int seed) {
        RandomGenerator random = new SplittableRandom(seed);
        Map<String, Readers.Read> program = new HashMap<>();
        Plan plan = FIRST;
        SeasonCalendar calendar = calendar(plan);
        for (int step = 0; step < 6; step++) {
            Readers.biweekly(calendar.text()).forEach((uid, read) -> {
                Readers.Read has = program.get(uid);
                if (has == null || read.sequence() > has.sequence()) {
                    program.put(uid, read);
                }
            });
            assertThat(program.values().stream()
                            .filter(read -> !read.cancelled())
                            .map(SeasonCalendarTest::said))
                    .containsExactlyInAnyOrderElementsOf(Diary.of(plan, plan.season(), Map.of()).stream()
                            .map(SeasonCalendarTest::said)
                            .toList());
            plan = with(FIRST, all -> changed(all, random));
            calendar = calendar(plan, calendar);
        }
    }

    /** Plantings left out, moved in time or to another bed, and numbered otherwise. */
    private static List<KeptPlanting> changed(List<KeptPlanting> all, RandomGenerator random) {
        List<KeptPlanting> changed = new ArrayList<>();
        List<String> beds = FIRST.season().allBeds().stream().map(b -> b.name()).toList();
        for (KeptPlanting p : all) {
            int what = random.nextInt(5);
            if (what == 0) {
                continue;
            }
            String bed = what == 1 ? beds.get(random.nextInt(beds.size())) : p.bed();
            int weeks = what == 2 && FIRST.season().weekOf(p.sown()) > 0 ? -1 : 0;
            KeptPlanting q = moved(p, weeks, bed);
            changed.add(new KeptPlanting(
                    changed.size() + 1,
                    q.crop(),
                    q.method(),
                    q.bed(),
                    q.sown(),
                    q.pool(),
                    q.standing(),
                    q.lots(),
                    q.plants()));
        }
        return changed;
    }

    @ParameterizedTest
    @ValueSource(strings = {"BED", "JOB"})
    void splitCalendarsHoldAllEntriesOnceUnderUidsOfTheirOwn(SeasonCalendar.Split split) {
        Plan plan = Planned.of("demo-farm.json", 4).plan();

        Map<String, SeasonCalendar> parts = SeasonCalendar.of(plan, split, Map.of());

        List<String> said = new ArrayList<>();
        List<String> uids =
                new ArrayList<>(Readers.ical4j(calendar(plan).text()).keySet());
        parts.values().stream().filter(part -> !part.text().isEmpty()).forEach(part -> {
            Map<String, Readers.Read> entries = Readers.ical4j(part.text());
            assertThat(Readers.biweekly(part.text())).isEqualTo(entries);
            entries.values().forEach(read -> said.add(said(read)));
            uids.addAll(entries.keySet());
        });
        assertThat(said)
                .containsExactlyInAnyOrderElementsOf(Diary.of(plan, plan.season(), Map.of()).stream()
                        .map(SeasonCalendarTest::said)
                        .toList());
        assertThat(uids).doesNotHaveDuplicates();
    }

    @Test
    void lengthsAreSaidAsTheSeasonFileHasThem() {
        Plan feet = new Plan(1, FIRST.season().with(Units.FEET), FIRST.making(), FIRST.score(), FIRST.plantings());

        assertThat(Diary.of(feet, feet.season(), Map.of()).stream().map(SeasonCalendarTest::said))
                .anyMatch(s -> s.contains(" ft of bed") && s.contains(" in apart"))
                .noneMatch(s -> s.contains(" m of ") || s.contains(" cm "));
        assertThat(Diary.of(FIRST, FIRST.season(), Map.of()).stream().map(SeasonCalendarTest::said))
                .anyMatch(s -> s.contains(" m of bed") && s.contains(" cm apart"));
    }

    @Test
    void anEmptyPlanHasNoCalendar() {
        assertThat(calendar(with(FIRST, p -> List.of())).text()).isEmpty();
    }

    @Test
    void aCalendarOfSomebodyElseIsRefused() {
        String foreign = "BEGIN:VCALENDAR\r\nVERSION:2.0\r\nPRODID:-//Somebody//Else//EN\r\nEND:VCALENDAR\r\n";

        assertThatThrownBy(() -> SeasonCalendar.of(FIRST, SeasonCalendar.Split.NONE, Map.of("", foreign)))
                .isInstanceOf(SeasonCalendar.NotOurs.class)
                .hasMessageContaining("-//Somebody//Else//EN");
    }
}
