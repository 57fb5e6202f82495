package bedwright.command;

import static org.assertj.core.api.Assertions.assertThat;

import bedwright.file.PlanFile;
import bedwright.season.KeptPlanting;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Predicate;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Buying list, tags and calendar go by what was noted. */
class NotedSeasonTest {
    @TempDir
    private Path folder;

    private List<KeptPlanting> plantings = List.of();

    @BeforeEach
    void plan() {
        assertThat(Ran.of("plan", "problems/first-bed.json", "--moves", 500, "--out", folder)
                        .code())
                .isZero();
        plantings = PlanFile.read(folder.resolve("plan.json")).plantings().stream()
                .sorted(Comparator.comparing(KeptPlanting::sown))
                .toList();
    }

    private void note(LocalDate on, Object... words) {
        List<Object> all = new ArrayList<>(List.of("note", folder));
        all.addAll(List.of(words));
        all.addAll(List.of("--on", on, "--yes"));
        Ran ran = Ran.of(all.toArray());
        assertThat(ran.code()).as(ran.err()).isZero();
    }

    private String buying(LocalDate on) {
        Ran ran = Ran.of("buying", folder, "--on", on);
        assertThat(ran.code()).as(ran.err()).isZero();
        return ran.out();
    }

    private String tags(LocalDate on) throws IOException {
        Ran ran = Ran.of("tags", folder, "--on", on);
        assertThat(ran.code()).as(ran.err()).isZero();
        return Files.readString(folder.resolve("tags.html"));
    }

    /** One by the planting's number and what is to be done. */
    private record Event(String summary, String starts, int sequence, boolean isCancelled) {}

    private Map<String, Event> calendar(LocalDate on) throws IOException {
        Ran ran = Ran.of("calendar", folder, "--on", on);
        assertThat(ran.code()).as(ran.err()).isZero();
        Map<String, Event> events = new LinkedHashMap<>();
        String unfolded = Files.readString(folder.resolve("calendar.ics")).replace("\r\n ", "");
        for (String part : unfolded.split("BEGIN:VEVENT")) {
            if (part.contains("UID:")) {
                events.put(
                        value(part, "UID"),
                        new Event(
                                value(part, "SUMMARY"),
                                value(part, "DTSTART;VALUE=DATE"),
                                Integer.parseInt(value(part, "SEQUENCE")),
                                value(part, "STATUS").equals("CANCELLED")));
            }
        }
        return events;
    }

    private static String value(String event, String name) {
        int from = event.indexOf("\r\n" + name + ":") + name.length() + 3;
        return event.substring(from, event.indexOf("\r\n", from));
    }

    private static String numbered(KeptPlanting planting) {
        return "(" + planting.number() + ")";
    }

    private KeptPlanting some(Predicate<KeptPlanting> which) {
        return plantings.stream().filter(which).findFirst().orElseThrow();
    }

    @Test
    void whatIsDoneIsNotBoughtAgain() {
        KeptPlanting last = plantings.getLast();

        String before = buying(plantings.getFirst().sown());
        String after = buying(last.sown().plusDays(1));

        assertThat(before).contains(last.crop()).contains("at once");
        assertThat(after).contains("To buy for the plantings: €0").doesNotContain(last.crop());
    }

    @Test
    void whatIsNotDoneIsNotBought() {
        String crop = plantings.getLast().crop();
        List<KeptPlanting> its = plantings.stream()
                .filter(planting -> planting.crop().equals(crop))
                .toList();
        LocalDate on = its.getFirst().sown();
        assertThat(buying(on)).contains(crop);

        its.forEach(planting -> note(on, planting.number(), "not-done"));

        assertThat(buying(on)).doesNotContain(crop);
    }

    @Test
    void whatIsGoneHasNoTag() throws IOException {
        KeptPlanting lost = plantings.getFirst();
        LocalDate on = lost.sown().plusWeeks(2);
        String tag = "<p class=\"number\">" + lost.number() + "</p>";
        assertThat(tags(on)).contains(tag);

        note(on, lost.number(), "lost", "all", "pest");

        assertThat(tags(on)).doesNotContain(tag);
    }

    @Test
    void whatWasDoneInAnotherBedHasItsTagThere() throws IOException {
        KeptPlanting moved = some(planting -> planting.bed().equals("Fence bed"));

        note(moved.sown(), moved.number(), "in-bed", "Open bed");

        String html = tags(moved.sown().plusDays(1));
        int at = html.indexOf("<p class=\"number\">" + moved.number() + "</p>");
        assertThat(html.substring(at, html.indexOf("</li>", at)))
                .contains("Open bed")
                .doesNotContain("Fence bed");
    }

    @Test
    void whatWasDoneInAnotherWeekIsThereUnderTheSameIdentity() throws IOException {
        KeptPlanting moved = some(planting -> planting.method().equals("sown"));
        Map<String, Event> before = calendar(moved.sown());

        note(moved.sown().plusWeeks(1), moved.number(), "moved", moved.sown().plusWeeks(1));

        Map<String, Event> after = calendar(moved.sown().plusWeeks(2));
        int seen = 0;
        for (Map.Entry<String, Event> entry : before.entrySet()) {
            Event was = entry.getValue();
            if (was.summary().startsWith("Sow ") && was.summary().contains(numbered(moved))) {
                Event now = Objects.requireNonNull(after.get(entry.getKey()));
                assertThat(now.starts()).isNotEqualTo(was.starts());
                assertThat(now.sequence()).isEqualTo(was.sequence() + 1);
                assertThat(now.isCancelled()).isFalse();
                seen++;
            }
        }
        assertThat(seen).isEqualTo(1);
    }

    @Test
    void whatWasLostKeepsWhatWasDoneAndItsOtherJobsAreCancelled() throws IOException {
        KeptPlanting lost = plantings.getFirst();
        LocalDate on = lost.sown().plusWeeks(3);
        Map<String, Event> before = calendar(on);
        note(on, lost.number(), "lost", "all", "pest");

        Map<String, Event> after = calendar(on);
        Map<String, Event> later = calendar(on.plusWeeks(4));

        int cancelled = 0;
        for (Map.Entry<String, Event> entry : before.entrySet()) {
            Event was = entry.getValue();
            if (!was.summary().contains(numbered(lost))) {
                continue;
            }
            Event now = Objects.requireNonNull(after.get(entry.getKey()));
            boolean isDone = LocalDate.parse(was.starts(), java.time.format.DateTimeFormatter.BASIC_ISO_DATE)
                    .isBefore(on);
            assertThat(now.isCancelled() && isDone).as(was.summary()).isFalse();
            assertThat(now.isCancelled() || isDone || now.summary().startsWith("Clear"))
                    .as(was.summary())
                    .isTrue();
            cancelled += now.isCancelled() ? 1 : 0;
            assertThat(later.get(entry.getKey())).as("four weeks later").isEqualTo(now);
        }
        assertThat(cancelled).isPositive();
    }

    @Test
    void whatWasNeverSownIsCancelled() throws IOException {
        KeptPlanting left = plantings.getLast();
        Map<String, Event> before = calendar(left.sown());
        note(left.sown(), left.number(), "not-done");

        Map<String, Event> after = calendar(left.sown());

        before.forEach((uid, was) -> {
            if (was.summary().contains(numbered(left))) {
                Event now = Objects.requireNonNull(after.get(uid));
                assertThat(now.isCancelled()).as(was.summary()).isTrue();
                assertThat(now.sequence()).isEqualTo(was.sequence() + 1);
            }
        });
    }
}
