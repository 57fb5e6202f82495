package bedwright.log;

import bedwright.season.Bed;
import bedwright.season.KeptPlanting;
import bedwright.season.Nearest;
import bedwright.season.Plan;
import bedwright.season.Season;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/** Whether notes can be true of a plan, each by itself and all together. */
final class NoteCheck {
    private final Season season;
    private final FarmCheck farm;
    private final Map<Integer, KeptPlanting> plantings = new HashMap<>();
    /** Numbers of plantings that the plan in force has no more. */
    private final Set<Integer> gone = new HashSet<>();
    /** Number of the last note that was known when the plan in force was made. */
    private final int takenIn;

    private final List<Entry> taken;
    /** Those of them that count. */
    private List<Entry> inForce;

    /** @param taken notes that were taken already, by number */
    NoteCheck(Plan plan, List<Entry> taken) {
        this.season = plan.began();
        this.takenIn = plan.notesTakenIn();
        this.farm = new FarmCheck(season);
        this.taken = new ArrayList<>(taken);
        this.inForce = new ArrayList<>(InForce.of(taken));
        plan.everyPlanting().forEach(planting -> plantings.put(planting.number(), planting));
        plan.everyPlanting().stream()
                .map(KeptPlanting::number)
                .filter(number -> !plan.has(number))
                .forEach(gone::add);
    }

    /** Takes one note more, or says what is wrong with it after those before it. */
    Optional<String> take(Entry entry) {
        // What was taken before the plan was changed was checked against the plan of its time.
        boolean isOfBefore = entry.number() <= takenIn;
        String alone = isOfBefore ? null : alone(taken, entry);
        if (alone != null) {
            return Optional.of(alone);
        }
        List<Entry> before = inForce;
        taken.add(entry);
        if (entry.note() instanceof Note.TakenBack) {
            inForce = new ArrayList<>(InForce.of(taken));
        } else {
            inForce.add(entry);
        }
        Optional<String> trouble = isOfBefore ? Optional.empty() : trouble(entry);
        if (trouble.isPresent()) {
            taken.removeLast();
            if (!(entry.note() instanceof Note.TakenBack)) {
                inForce.removeLast();
            }
            inForce = before;
        }
        return trouble;
    }

    /** All notes taken, by number. */
    List<Entry> taken() {
        return List.copyOf(taken);
    }

    /** Notes but for those that say how something was done and stand in the plan by now. */
    private List<Entry> notInThePlan() {
        return inForce.stream()
                .filter(entry -> entry.number() > takenIn || !entry.note().isOfHow())
                .toList();
    }

    private Optional<String> trouble(Entry entry) {
        return switch (entry.note()) {
            case Note.OfPlanting of -> courses(Set.of(of.planting()));
            case Note.WeekDone done ->
                Optional.ofNullable(weeks(inForce)).or(() -> courses(new TreeSet<>(done.except())));
            case Note.TakenBack back ->
                Optional.ofNullable(weeks(inForce))
                        .or(() -> farm.trouble(inForce))
                        .or(() -> courses(plantings.keySet()));
            case Note.Said said -> Optional.empty();
            case Note.Weather day -> farm.trouble(entry, day, inForce);
            default -> farm.trouble(inForce);
        };
    }

    private Optional<String> courses(Set<Integer> of) {
        List<Entry> counting = notInThePlan();
        return of.stream()
                .filter(number -> !gone.contains(number))
                .sorted()
                .map(plantings::get)
                .filter(Objects::nonNull)
                .flatMap(planting -> new Course(season, planting, counting).trouble().stream())
                .findFirst();
    }

    private @Nullable String alone(List<Entry> before, Entry entry) {
        String day = outside(entry.on());
        if (day != null) {
            return day;
        }
        return switch (entry.note()) {
            case Note.InBed other when unknown(other.planting()) == null -> bed(other.bed());
            case Note.OfPlants many
            when unknown(many.planting()) == null && many.plants() == 0 ->
                "A planting of no plants was not done. Write: " + many.planting() + " not-done";
            case Note.OfPlanting of -> unknown(of.planting());
            case Note.BedGone gone -> bed(gone.bed());
            case Note.WeekDone done -> week(done);
            case Note.TakenBack back -> takenBack(before, back.number());
            default -> null;
        };
    }

    private @Nullable String outside(LocalDate date) {
        LocalDate last = season.starts().plusDays(season.days() - 1L);
        return date.isBefore(season.starts()) || date.isAfter(last)
                ? date + " is outside the season. Write a day from " + season.starts() + " to " + last + "."
                : null;
    }

    private @Nullable String unknown(int number) {
        if (gone.contains(number)) {
            return "Planting " + number
                    + " is no longer in the plan since it was changed. Write a number that the season"
                    + " sheet shows.";
        }
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

    private @Nullable String bed(String name) {
        List<String> names = season.allBeds().stream().map(Bed::name).toList();
        return names.contains(name)
                ? null
                : "There is no bed \"" + name + "\"."
                        + Nearest.of(name, names)
                                .map(near -> " Did you mean \"" + near + "\"?")
                                .orElse(" Write a name that the season sheet shows, like " + names.getFirst() + ".");
    }

    private @Nullable String week(Note.WeekDone done) {
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

    private @Nullable String takenBack(List<Entry> before, int number) {
        Optional<Entry> meant =
                before.stream().filter(entry -> entry.number() == number).findFirst();
        if (number <= takenIn && meant.isPresent() && meant.get().note().isOfHow()) {
            return "What note " + number
                    + " says is part of the plan since it was changed, so it can't be taken back. Note"
                    + " when it was really done instead: moved and the day.";
        }
        if (meant.isEmpty()) {
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
                            + Course.instead(other);
                }
            }
        }
        return null;
    }
}
