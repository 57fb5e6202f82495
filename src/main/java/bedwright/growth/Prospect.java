package bedwright.growth;

import bedwright.season.Job;
import java.util.List;
import java.util.Map;

/**
 * What to expect of one planting: its dates, what it gives in each possible season, what is lost to what, and what it
 * takes. Days and weeks are those of the season; {@link #NONE} where something does not come about.
 *
 * @param plants plants
 * @param millimetres length of bed, mm
 * @param cells tray cells, 0 if none
 * @param sowDay day of sowing, setting or starting in trays
 * @param groundDay day from which it is in the bed
 * @param emergence day of emergence in the normal season
 * @param pinch day of pinching in the normal season
 * @param firstCut day of the first cut in the normal season
 * @param lastCutWeek last week of cutting in the normal season
 * @param heldTo end of the hold: the week after the last held one
 * @param firstCuts day of the first cut in each possible season
 * @param kinds paths of the kinds it gives, in the order of {@code stems}
 * @param stems stems in hundredths: {@code stems[kind][week][season]}
 * @param usual shares surviving in the normal season
 * @param seasons shares surviving in each possible season
 * @param tasks work by job and week
 * @param costs what is paid for it, in main units of the currency: seed, cells, plugs or tubers first, then wear
 */
public record Prospect(
        int plants,
        int millimetres,
        int cells,
        int sowDay,
        int groundDay,
        int emergence,
        int pinch,
        int firstCut,
        int lastCutWeek,
        int heldTo,
        int[] firstCuts,
        List<String> kinds,
        int[][][] stems,
        Surviving usual,
        List<Surviving> seasons,
        List<Task> tasks,
        List<Cost> costs) {
    /** Stands for a day or week that does not come. */
    public static final int NONE = Integer.MIN_VALUE;

    /**
     * Shares surviving each cause, 0 to 1; multiplied they are what is left.
     *
     * @param stand coming up, or taking
     * @param pests each pest by name: seed and seedlings, and blooms as a mean over the cut weeks
     * @param springOrWinter last spring frost, or the winter it stands through; a night before its first cut that was noted
     * @param autumn first autumn frost, or a night in cut that was noted, as a mean over the cut weeks
     * @param storms storms, as a mean over the cut weeks
     */
    public record Surviving(
            double stand, Map<String, Double> pests, double springOrWinter, double autumn, double storms) {
        /** All causes together. */
        public double all() {
            double left = stand * springOrWinter * autumn * storms;
            for (double share : pests.values()) {
                left *= share;
            }
            return left;
        }
    }

    /** One job in one week: minutes for its units, and to set up. */
    public record Task(Job job, int week, double units, double minutes, int setUp) {}

    /** One thing that is paid for. */
    public record Cost(String item, double amount, double money) {}
}
