package bedwright.sheet;

import bedwright.season.Hazard;
import bedwright.season.Job;
import bedwright.season.Season;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/** Cautions for the line that they belong to. Common practice; local rules and labels come first. */
final class Cautions {
    private static final Set<Hazard> SEED = EnumSet.of(Hazard.POISONOUS_SEED, Hazard.TREATED_SEED);
    private static final Set<Hazard> PLANT =
            EnumSet.of(Hazard.SAP, Hazard.SUN_AND_SAP, Hazard.PRICKLY, Hazard.POISONOUS, Hazard.ALLERGY);
    private static final Set<Job> HANDLING = EnumSet.of(Job.PLANT_OUT, Job.PINCH, Job.WEED, Job.NET_DOWN, Job.CLEAR);

    private final Season season;

    Cautions(Season season) {
        this.season = season;
    }

    /** For jobs on a planting. */
    List<String> of(Shown planting, Set<Job> jobs, boolean isHardened) {
        List<String> cautions = new ArrayList<>();
        boolean seed = jobs.contains(Job.SOW) || jobs.contains(Job.FILL_TRAYS);
        boolean plants = jobs.stream().anyMatch(HANDLING::contains);
        for (Hazard hazard : planting.crop().hazards()) {
            if ((seed && SEED.contains(hazard)) || (plants && PLANT.contains(hazard))) {
                cautions.add(Care.brief(hazard));
            }
        }
        boolean sails = jobs.contains(Job.NET_UP)
                || jobs.contains(Job.NET_DOWN)
                || jobs.contains(Job.COVER_ON)
                || jobs.contains(Job.COVER_OFF);
        if (sails && !season.site().storms().isEmpty()) {
            cautions.add("not in strong wind");
        }
        boolean trays = planting.trayFrom() < planting.trayTo()
                && (isHardened || jobs.contains(Job.FILL_TRAYS) || jobs.contains(Job.PLANT_OUT));
        if (trays) {
            cautions.add("lift trays by twos");
        }
        boolean inTheBed = !jobs.isEmpty() && !jobs.equals(Set.of(Job.FILL_TRAYS));
        if (inTheBed && season.allBeds().get(planting.bed()).block().tunnel() != null) {
            cautions.add("air the tunnel first, work there early");
        }
        return cautions;
    }

    /** Cautions as the end of a line, or nothing. */
    static String words(List<String> cautions) {
        return cautions.isEmpty() ? "" : " CARE: " + String.join("; ", cautions) + ".";
    }

    /** For cutting a planting. */
    List<String> cutting(Shown planting) {
        return planting.crop().hazards().stream()
                .filter(PLANT::contains)
                .map(Care::brief)
                .toList();
    }
}
