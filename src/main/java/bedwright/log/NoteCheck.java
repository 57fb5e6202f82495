package bedwright.log;

import bedwright.log.Note.Stage;
import bedwright.season.KeptPlanting;
import bedwright.season.Plan;
import bedwright.season.Season;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Whether notes can be true of a plan, each by itself and all together. */
final class NoteCheck {
    private final Season season;
    private final Map<Integer, KeptPlanting> plantings = new HashMap<>();

    NoteCheck(Plan plan) {
        season = plan.season();
        plan.plantings().forEach(planting -> plantings.put(planting.number(), planting));
    }

    /**
     * What is wrong with a note after those before it, if anything is.
     *
     * @param before notes that were taken, by number
     */
    Optional<String> trouble(List<Entry> before, Entry entry) {
        String alone = alone(before, entry);
        if (alone != null) {
            return Optional.of(alone);
        }
        List<Entry> all = new ArrayList<>(before);
        all.add(entry);
        List<Entry> inForce = InForce.of(all);
        String together = weeks(inForce);
        if (together != null) {
            return Optional.of(together);
        }
        Map<Integer, List<Entry>> byPlanting = new LinkedHashMap<>();
        for (Entry each : inForce) {
            if (each.note() instanceof Note.OfPlanting note) {
                byPlanting
                        .computeIfAbsent(note.planting(), number -> new ArrayList<>())
                        .add(each);
            }
        }
        return byPlanting.entrySet().stream()
                .flatMap(of -> Optional.ofNullable(course(of.getKey(), of.getValue())).stream())
                .findFirst();
    }

    private @Nullable String alone(List<Entry> before, Entry entry) {
        String day = outside(entry.on());
        if (day != null) {
            return day;
        }
        return switch (entry.note()) {
            case Note.Moved moved when plantings.containsKey(moved.planting()) -> outside(moved.to());
            case Note.OfPlanting of -> unknown(of.planting());
            case Note.WeekDone done -> week(done);
            case Note.TakenBack back -> takenBack(before, back.number());
            case Note.Said said -> null;
        };
    }

    private @Nullable String outside(LocalDate date) {
        LocalDate last = season.starts().plusDays(season.days() - 1L);
        return date.isBefore(season.starts()) || date.isAfter(last)
                ? date + " is outside the season. Write a day from " + season.starts() + " to " + last + "."
                : null;
    }

    private @Nullable String unknown(int number) {
        if (plantings.containsKey(number)) {
            return null;
        }
        return plantings.isEmpty()
                ? "There is no planting " + number + ", nor any other: the plan is empty."
                : "There is no planting " + number + ". Write a number that the season sheet shows, up to "
                        + plantings.keySet().stream()
                                .max(Comparator.naturalOrder())
                                .orElseThrow() + ".";
    }

    private @Nullable String week(Note.WeekDone done) {
        String day = outside(done.week());
        if (day != null) {
            return day;
        }
        long into = ChronoUnit.DAYS.between(season.starts(), done.week()) % 7;
        if (into != 0) {
            return done.week() + " is not the first day of a week. Write "
                    + done.week().minusDays(into) + ".";
        }
        for (int number : done.except()) {
            String unknown = unknown(number);
            if (unknown != null) {
                return unknown;
            }
        }
        return null;
    }

    private static @Nullable String takenBack(List<Entry> before, int number) {
        if (before.stream().noneMatch(entry -> entry.number() == number)) {
            return "There is no earlier note " + number
                    + " to take back. Write the number of a note that --list shows.";
        }
        return InForce.of(before).stream().noneMatch(entry -> entry.number() == number)
                ? "Note " + number + " was taken back already. Leave this out."
                : null;
    }

    private static @Nullable String weeks(List<Entry> inForce) {
        Map<LocalDate, Entry> done = new HashMap<>();
        for (Entry entry : inForce) {
            if (entry.note() instanceof Note.WeekDone week) {
                Entry other = done.putIfAbsent(week.week(), entry);
                if (other != null) {
                    return "Note " + other.number() + " says already what was done in the week of " + week.week() + ". "
                            + instead(other);
                }
            }
        }
        return null;
    }

    /** Follows one planting through its notes by day; what contradicts what came before is told. */
    private @Nullable String course(int number, List<Entry> notes) {
        List<Entry> byDay = notes.stream()
                .sorted(Comparator.comparing(Entry::on).thenComparing(Entry::number))
                .toList();
        int plants = Objects.requireNonNull(plantings.get(number)).plants();
        long standing = plants;
        Map<Stage, Entry> seen = new EnumMap<>(Stage.class);
        Entry cleared = null;
        Entry counted = null;
        for (Entry entry : byDay) {
            if (cleared != null) {
                return "Planting " + number + " was cleared or left out on " + cleared.on() + " by note "
                        + cleared.number() + ", so nothing can be noted of it on " + entry.on() + ". "
                        + instead(cleared);
            }
            switch (entry.note()) {
                case Note.Seen stage -> {
                    for (Entry other : seen.values()) {
                        Stage former = ((Note.Seen) other.note()).stage();
                        if (former.compareTo(stage.stage()) >= 0) {
                            return "Of planting " + number + " note " + other.number() + " says \"" + former.word()
                                    + "\" on " + other.on() + ", so it can't be at \""
                                    + stage.stage().word() + "\" on " + entry.on() + ". " + instead(other);
                        }
                    }
                    seen.put(stage.stage(), entry);
                }
                case Note.Counted count -> {
                    long stands = count.stands().of(plants);
                    if (stands > plants) {
                        return "Planting " + number + " has " + plants + " plants, so " + stands
                                + " can't stand. Write a number up to " + plants + ".";
                    }
                    if (counted != null && counted.on().equals(entry.on())) {
                        return "The stand of planting " + number + " on " + entry.on() + " is in note "
                                + counted.number() + " already. " + instead(counted);
                    }
                    counted = entry;
                    standing = stands;
                }
                case Note.Lost lost -> {
                    long gone = lost.lost().of(standing);
                    if (gone > standing) {
                        return "Of planting " + number + " no more than " + standing + " plants stood on "
                                + entry.on() + ", so " + gone + " can't be lost. Write a number up to " + standing
                                + ".";
                    }
                    standing -= gone;
                }
                case Note.Pulled pulled -> cleared = entry;
                case Note.NotDone notDone -> {
                    if (byDay.size() > 1) {
                        Entry other = byDay.getFirst() == entry ? byDay.get(1) : byDay.getFirst();
                        return "Planting " + number + " can't be left out: note " + other.number() + " speaks of it. "
                                + instead(other);
                    }
                }
                case Note.Cut cut -> {
                    if (standing == 0 && cut.stems() > 0) {
                        return "Nothing of planting " + number + " stood on " + entry.on() + ", so " + cut.stems()
                                + " stems can't be cut. Count the stand first: " + number + " stands and the plants.";
                    }
                }
                case Note.Moved moved -> {}
                default -> throw new IllegalStateException("not of a planting: " + entry.line());
            }
        }
        return null;
    }

    private static String instead(Entry other) {
        return "If that note is wrong, take it back first: take-back " + other.number() + ".";
    }
}
