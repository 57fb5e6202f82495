package bedwright.season;

/** A danger of handling a crop. */
public enum Hazard {
    /** Sap irritates skin or eyes. */
    SAP,
    /** Sap makes skin burn in sunlight. */
    SUN_AND_SAP,
    /** The plant is poisonous to eat. */
    POISONOUS,
    /** The seed is poisonous to eat. */
    POISONOUS_SEED,
    /** The seed is often sold treated. */
    TREATED_SEED,
    /** Pollen or dust troubles people with allergies. */
    ALLERGY,
    /** Thorns or stiff hairs. */
    PRICKLY
}
