package bedwright.sheet;

import bedwright.season.Hazard;
import bedwright.season.Season;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;

/** What can hurt in the work that a plan asks for. Short, and no more than common practice: others decide. */
public final class Care {
    private Care() {}

    static List<String> sentences(Season season, List<Shown> plantings) {
        List<String> sentences = new ArrayList<>();
        for (Hazard hazard : Hazard.values()) {
            TreeSet<String> crops = new TreeSet<>();
            for (Shown planting : plantings) {
                if (planting.crop().hazards().contains(hazard)) {
                    crops.add(planting.crop().name());
                }
            }
            if (!crops.isEmpty()) {
                sentences.add(sentence(hazard) + " Here: " + String.join(", ", crops) + ".");
            }
        }
        boolean tunnel = season.beds().stream().anyMatch(block -> block.tunnel() != null);
        if (!season.site().storms().isEmpty()) {
            sentences.add("In strong wind stay away from old trees and windbreaks, where limbs fall, and"
                    + (tunnel
                            ? " out of tunnels, whose covers can tear and frames give way."
                            : " leave covers and nets alone."));
        }
        if (tunnel) {
            sentences.add("A closed tunnel grows hot quickly: open it first, and do heavy work there early.");
        }
        sentences.add("Heat: cut and lift in the cool hours, drink, rest in the shade, and don't work alone on the"
                + " hottest days.");
        sentences.add("Lift full buckets, trays and rolls of net by twos or on wheels.");
        sentences.add("Sprays, treated seed and machines: the label, local rules and people licensed for it decide, not"
                + " this sheet.");
        return sentences;
    }

    /** The usual caution against a danger, short enough for the line of a job. */
    static String brief(Hazard hazard) {
        return switch (hazard) {
            case SAP -> "sap: gloves, wash off";
            case SUN_AND_SAP -> "sap burns skin in the sun: cover up, wash off at once";
            case POISONOUS -> "poisonous: away from children, animals, food";
            case POISONOUS_SEED -> "poisonous seed: lock it away";
            case TREATED_SEED -> "seed may be treated: read the label, gloves";
            case ALLERGY -> "pollen, dust: mask";
            case PRICKLY -> "thorns or stiff hairs: gloves";
        };
    }

    /** The usual caution against a danger. */
    public static String sentence(Hazard hazard) {
        return switch (hazard) {
            case SAP -> "The sap irritates skin and eyes: gloves, long sleeves, wash off.";
            case SUN_AND_SAP ->
                "Sap on the skin makes it burn in sunlight, days later too: cover the skin, wash off sap"
                        + " at once and keep out of the sun.";
            case POISONOUS -> "Poisonous to eat: keep children and animals away, never beside food.";
            case POISONOUS_SEED -> "The seed is poisonous to eat: lock it away from children, animals and food.";
            case TREATED_SEED ->
                "The seed is often sold treated: read its label, wear gloves, don't eat or feed it, keep"
                        + " dust down.";
            case ALLERGY -> "Pollen or dust can trouble people with allergies: cut it in the open, wear a mask.";
            case PRICKLY -> "Thorns or stiff hairs: gloves and long sleeves.";
        };
    }
}
