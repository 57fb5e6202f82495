package bedwright.command;

import bedwright.season.KeptPlanting;

/**
 * A planting to look at on a round after a storm or an attack.
 *
 * @param planting the planting
 * @param likely share of what stands that is likely lost for good, 0 to 1
 * @param lies share of what stands that likely lies, 0 to 1; 0 after an attack
 * @param standsUp whether some of what lies stands up again
 * @param toCome stems that were still to come of it
 * @param isCut whether it is in cut
 */
record Damaged(KeptPlanting planting, double likely, double lies, boolean standsUp, double toCome, boolean isCut) {
    String named() {
        return planting.number() + " " + planting.crop();
    }
}
