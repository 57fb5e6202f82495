package bedwright.recheck;

import bedwright.season.Bed;
import bedwright.season.BedBlock;
import bedwright.season.Family;
import java.util.List;
import java.util.Optional;

/** The rotation of families in a bed (season model, section 8; rest years and follow-on). */
final class Families {
    private final Facts facts;

    Families(Facts facts) {
        this.facts = facts;
    }

    /** A planting with its calendar. */
    record Held(Placed placed, Calendar calendar) {}

    /** The family of a planting's crop, if it has one that the season speaks of. */
    Optional<Family> family(Placed placed) {
        return facts.season.families().stream()
                .filter(family -> family.name().equals(placed.crop().family()))
                .findFirst();
    }

    /** Whether a planting comes into its bed before its family's rest years are over. */
    boolean breaksRest(Placed placed, Calendar calendar) {
        Optional<Family> family = family(placed);
        if (family.isEmpty()) {
            return false;
        }
        int year = facts.season.weekStart(calendar.firstHeld).getYear();
        int last = lastYear(placed.bed(), family.get().name(), year);
        return last != Integer.MIN_VALUE && year - last - 1 < family.get().restYears();
    }

    /** The last year, up to a year, with a family in a bed's record; the least number if there is none. */
    private static int lastYear(Bed bed, String family, int upTo) {
        int last = Integer.MIN_VALUE;
        for (BedBlock.Grown grown : bed.history()) {
            if (grown.family().equals(family) && grown.year() <= upTo) {
                last = Math.max(last, grown.year());
            }
        }
        return last;
    }

    /** Whether a planting starts after another of its family in its bed has ended. */
    boolean followsOn(Held one, List<Held> all) {
        String family = one.placed.crop().family();
        if (family == null || one.calendar.lastHeld < one.calendar.firstHeld) {
            return false;
        }
        for (Held other : all) {
            boolean same = family.equals(other.placed.crop().family())
                    && other.placed.bed().index() == one.placed.bed().index();
            boolean held = other.calendar.firstHeld <= other.calendar.lastHeld;
            if (same && held && one.calendar.firstHeld > other.calendar.lastHeld) {
                return true;
            }
        }
        return false;
    }
}
