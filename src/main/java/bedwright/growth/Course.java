package bedwright.growth;

import bedwright.season.Method;
import java.util.Arrays;
import java.util.List;

/**
 * A lot's way through the normal season: its days, its work and what is bought for it. Days and weeks are those of the
 * season; {@link Prospect#NONE} where something does not come about. Work that falls outside the season is not here.
 *
 * @param method how it is grown
 * @param sowDay day of sowing, setting or starting in trays
 * @param groundDay day from which it is in the bed
 * @param hardenWeek week from which it stands outside in its trays, if it is hardened
 * @param emergence day on which it comes up
 * @param pinch day of the pinching stage, if it is pinched
 * @param firstCut day of the first cut
 * @param tasks work by job and week, of one lot
 * @param costs what is paid for, of one lot, in main units of the currency
 */
public record Course(
        Method method,
        int sowDay,
        int groundDay,
        int hardenWeek,
        int emergence,
        int pinch,
        int firstCut,
        List<Prospect.Task> tasks,
        List<Prospect.Cost> costs) {

    public Course {
        tasks = List.copyOf(tasks);
        costs = List.copyOf(costs);
    }

    /**
     * How a week's stems spread over equal parts of it.
     *
     * @param parts at least 1
     * @return shares that add up to 1
     */
    public double[] spread(int week, int parts) {
        double[] shares = new double[parts];
        double all = firstCut == Prospect.NONE ? 0 : Cutting.shareIn(method, firstCut, week);
        if (all <= 0) {
            Arrays.fill(shares, 1.0 / parts);
            return shares;
        }
        // Parts may end within a day, of which they take their part.
        double before = Cutting.shareBy(method, 7 * week - firstCut);
        double at = before;
        for (int i = 0; i < parts; i++) {
            double end = 7.0 * (i + 1) / parts;
            int day = (int) Math.floor(end);
            double whole = Cutting.shareBy(method, 7 * week + day - firstCut);
            double next = Cutting.shareBy(method, 7 * week + day + 1 - firstCut);
            double by = i == parts - 1 ? before + all : whole + (end - day) * (next - whole);
            shares[i] = (by - at) / all;
            at = by;
        }
        return shares;
    }
}
