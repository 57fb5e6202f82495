package bedwright.log;

import bedwright.log.Note.Stage;
import bedwright.season.Crop;
import bedwright.season.KeptPlanting;
import bedwright.season.Method;
import bedwright.season.Season;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Follows one planting through its notes by day; what contradicts what came before is told. */
final class Course {
    /** So many times the stems that a plant is expected to give are a slip of the pen. */
    private static final int TIMES_TOO_MANY = 5;

    private final Season season;
    private final KeptPlanting planting;
    private final List<Entry> byDay;
    private final LocalDate sown;
    private final int newest;
    private final int plants;
    private final Map<Stage, Entry> seen = new EnumMap<>(Stage.class);
    private long standing;
    private long cutSoFar;
    private @Nullable Entry cleared;
    private @Nullable Entry counted;

    /**
     * @param planting as planned
     * @param inForce notes of all plantings that count, by number
     */
    Course(Season season, KeptPlanting planting, List<Entry> inForce) {
        this.season = season;
        this.planting = planting;
        this.byDay = inForce.stream()
                .filter(entry -> entry.note() instanceof Note.OfPlanting note && note.planting() == planting.number())
                .sorted(Comparator.comparing(Entry::on).thenComparing(Entry::number))
                .toList();
        Beginning beginning = Beginning.of(season, planting);
        int said = planting.plants();
        for (Entry entry : inForce.stream()
                .sorted(Comparator.comparing(Entry::on).thenComparing(Entry::number))
                .toList()) {
            beginning = beginning.after(planting.number(), entry.note());
            said = entry.note() instanceof Note.OfPlants note && note.planting() == planting.number()
                    ? note.plants()
                    : said;
        }
        this.sown = beginning.sown();
        this.newest = inForce.isEmpty() ? 0 : inForce.getLast().number();
        this.plants = said;
        this.standing = said;
    }

    /** What is wrong first, if anything is. */
    Optional<String> trouble() {
        for (Entry entry : byDay) {
            String wrong = wrong(entry);
            if (wrong != null) {
                return Optional.of(wrong);
            }
        }
        return Optional.empty();
    }

    private @Nullable String wrong(Entry entry) {
        if (cleared != null) {
            return named() + " was cleared on " + cleared.on() + " by note " + cleared.number()
                    + ", so nothing can be noted of it on " + entry.on() + ". " + instead(cleared);
        }
        String once = saidOnce(entry);
        if (once != null) {
            return once;
        }
        return switch (entry.note()) {
            case Note.Moved moved -> null;
            case Note.InBed other -> null;
            case Note.NotDone none -> leftOut(entry);
            default -> entry.on().isBefore(sown) ? tooEarly(entry) : ofWhatIsThere(entry);
        };
    }

    private @Nullable String ofWhatIsThere(Entry entry) {
        switch (entry.note()) {
            case Note.Seen stage -> {
                return seen(entry, stage.stage());
            }
            case Note.CameUp up -> {
                String wrong = seen(entry, Stage.UP);
                return wrong == null ? count(entry, up.share()) : wrong;
            }
            case Note.Counted count -> {
                return count(entry, count.stands());
            }
            case Note.Lost lost -> {
                return lost(entry, lost.lost());
            }
            case Note.Cut cut -> {
                return cut(entry, cut);
            }
            case Note.OfPlants many -> {
                return null;
            }
            case Note.Pulled pulled -> {
                cleared = entry;
                return null;
            }
            default -> throw new IllegalStateException("not of a planting: " + entry.line());
        }
    }

    /** Bed and amount are noted once: two such notes contradict one another. */
    private @Nullable String saidOnce(Entry entry) {
        if (!(entry.note() instanceof Note.InBed) && !(entry.note() instanceof Note.OfPlants)) {
            return null;
        }
        for (Entry other : byDay) {
            if (other != entry && other.note().getClass().equals(entry.note().getClass())) {
                Entry first = other.number() < entry.number() ? other : entry;
                return named() + ": note " + first.number() + " says already "
                        + (entry.note() instanceof Note.InBed ? "which bed it is in" : "how many plants it is of")
                        + ". " + instead(first);
            }
        }
        return null;
    }

    private @Nullable String leftOut(Entry entry) {
        if (byDay.size() == 1) {
            cleared = entry;
            return null;
        }
        Entry other = byDay.getFirst() == entry ? byDay.get(1) : byDay.getFirst();
        return named() + " can't be left out: note " + other.number() + " speaks of it. " + instead(other);
    }

    private String tooEarly(Entry entry) {
        if (entry.number() < newest) {
            return named() + " would be begun on " + sown + ", but note " + entry.number() + " speaks of it on "
                    + entry.on() + ". " + instead(entry);
        }
        return named() + " is begun on " + sown + ", so there is nothing to note of it on " + entry.on()
                + ". If it was begun sooner, note that first: " + planting.number() + " moved and the day.";
    }

    private @Nullable String seen(Entry entry, Stage stage) {
        for (Map.Entry<Stage, Entry> other : seen.entrySet()) {
            if (other.getKey().compareTo(stage) >= 0) {
                return "Of planting " + planting.number() + " note "
                        + other.getValue().number() + " says \""
                        + other.getKey().word() + "\" on "
                        + other.getValue().on() + ", so it can't be at \"" + stage.word() + "\" on " + entry.on() + ". "
                        + instead(other.getValue());
            }
        }
        seen.put(stage, entry);
        return null;
    }

    private @Nullable String count(Entry entry, Amount amount) {
        long stands = amount.of(plants);
        if (stands > plants) {
            return named() + " has " + plants + " plants, so " + stands + " can't stand. Write a number up to " + plants
                    + ".";
        }
        Entry before = counted;
        if (before != null && before.on().equals(entry.on())) {
            return "The stand of planting " + planting.number() + " on " + entry.on() + " is in note " + before.number()
                    + " already. " + instead(before);
        }
        counted = entry;
        standing = stands;
        return null;
    }

    private @Nullable String lost(Entry entry, Amount amount) {
        long gone = amount.of(standing);
        if (gone > standing) {
            return "Of planting " + planting.number() + " no more than " + standing + " plants stood on " + entry.on()
                    + ", so " + gone + " can't be lost. Write a number up to " + standing + ".";
        }
        standing -= gone;
        return null;
    }

    private @Nullable String cut(Entry entry, Note.Cut cut) {
        Integer left = cut.left();
        long there = cut.stems() + (left == null ? 0L : left);
        if (standing == 0 && there > 0) {
            return "Nothing of planting " + planting.number() + " stood on " + entry.on() + ", so " + cut.stems()
                    + " stems can't be cut. Count the stand first: " + planting.number() + " stands and the plants.";
        }
        cutSoFar += cut.stems();
        long most = mostStems();
        long all = cutSoFar + (left == null ? 0L : left);
        if (all > most) {
            return "Of planting " + planting.number() + " " + all + " stems can't have been there by " + entry.on()
                    + ": " + plants + " plants give " + most + " at the very most. Write the stems of that day only, or"
                    + " note first how many plants it is of: " + planting.number() + " plants and the number.";
        }
        return null;
    }

    /** One a plant where that is all it gives; else far more than is expected. */
    private long mostStems() {
        for (Crop crop : season.crops()) {
            for (Method method : crop.methods()) {
                if (crop.name().equals(planting.crop()) && method.name().equals(planting.method())) {
                    return method.stems() <= 1 ? plants : (long) Math.ceil(TIMES_TOO_MANY * method.stems() * plants);
                }
            }
        }
        return Long.MAX_VALUE;
    }

    private String named() {
        return "Planting " + planting.number();
    }

    static String instead(Entry other) {
        return "If that note is wrong, take it back first: take-back " + other.number() + ".";
    }
}
