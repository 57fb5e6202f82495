package bedwright.sheet;

import bedwright.season.Hazard;
import bedwright.season.Job;
import bedwright.season.Season;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/** Cautions for the line that they belong to. Common practice; local rules and labels come first. */
final class Cautions {
    private static final Set<Hazard> SEED = EnumSet.of(Hazard.POISONOUS_SEED, Hazard.TREATED_SEED);
    private static final Set<Hazard> PLANT =
            EnumSet.of(Hazard.SAP, Hazard.SUN_AND_SAP, Hazard.PRICKLY, Hazard.POISONOUS, Hazard.ALLERGY);
    private static final Set<Job> HANDLING = EnumSet.of(Job.PLANT_OUT, Job.PINCH, Job.WEED, Job.NET_DOWN, Job.CLEAR);

    /** What to take care of, a word on the line; what it means stands once on the page. */
    enum Mark {
        SAP("sap", "gloves, wash it off"),
        BURNING_SAP("burning sap", "burns skin in the sun, days later too: cover up, wash off at once"),
        POISONOUS("poisonous", "away from children, animals and food"),
        POISONOUS_SEED("poisonous seed", "lock it away from children, animals and food"),
        TREATED_SEED("treated seed", "it may be: read the label, gloves"),
        DUST("dust", "pollen and dust: mask"),
        THORNS("thorns", "or stiff hairs: gloves"),
        FROST("frost", "in again on nights of frost"),
        WIND("wind", "no nets and covers in strong wind"),
        LIFT("lift", "trays by twos"),
        TUNNEL("tunnel", "air it first, work there early");

        private final String word;
        private final String meaning;

        Mark(String word, String meaning) {
            this.word = word;
            this.meaning = meaning;
        }

        String word() {
            return word;
        }

        private static Mark of(Hazard hazard) {
            return switch (hazard) {
                case SAP -> SAP;
                case SUN_AND_SAP -> BURNING_SAP;
                case POISONOUS -> POISONOUS;
                case POISONOUS_SEED -> POISONOUS_SEED;
                case TREATED_SEED -> TREATED_SEED;
                case ALLERGY -> DUST;
                case PRICKLY -> THORNS;
            };
        }
    }

    private final Season season;

    Cautions(Season season) {
        this.season = season;
    }

    /** For jobs on a planting. */
    List<Mark> of(Shown planting, Set<Job> jobs, boolean isHardened) {
        List<Mark> cautions = new ArrayList<>();
        boolean seed = jobs.contains(Job.SOW) || jobs.contains(Job.FILL_TRAYS);
        boolean plants = jobs.stream().anyMatch(HANDLING::contains);
        for (Hazard hazard : planting.crop().hazards()) {
            if ((seed && SEED.contains(hazard)) || (plants && PLANT.contains(hazard))) {
                cautions.add(Mark.of(hazard));
            }
        }
        if (isHardened) {
            cautions.add(Mark.FROST);
        }
        boolean sails = jobs.contains(Job.NET_UP)
                || jobs.contains(Job.NET_DOWN)
                || jobs.contains(Job.COVER_ON)
                || jobs.contains(Job.COVER_OFF);
        if (sails && !season.site().storms().isEmpty()) {
            cautions.add(Mark.WIND);
        }
        boolean trays = planting.trayFrom() < planting.trayTo()
                && (isHardened || jobs.contains(Job.FILL_TRAYS) || jobs.contains(Job.PLANT_OUT));
        if (trays) {
            cautions.add(Mark.LIFT);
        }
        boolean inTheBed = !jobs.isEmpty() && !jobs.equals(Set.of(Job.FILL_TRAYS));
        if (inTheBed && season.allBeds().get(planting.bed()).block().tunnel() != null) {
            cautions.add(Mark.TUNNEL);
        }
        return cautions;
    }

    /** The words of cautions as the end of a line, or nothing. */
    static String words(List<String> cautions) {
        return cautions.isEmpty() ? "" : " CARE: " + String.join(", ", cautions) + ".";
    }

    /** What the marks on a page mean; empty where there are none. */
    static String key(Set<Mark> seen) {
        return seen.isEmpty()
                ? ""
                : "CARE: "
                        + String.join(
                                "; ",
                                new TreeSet<>(seen)
                                        .stream()
                                                .map(mark -> mark.word + " = " + mark.meaning)
                                                .toList())
                        + ".";
    }

    /** For cutting a planting. */
    List<Mark> cutting(Shown planting) {
        return planting.crop().hazards().stream()
                .filter(PLANT::contains)
                .map(Mark::of)
                .toList();
    }
}
