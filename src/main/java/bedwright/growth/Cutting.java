package bedwright.growth;

import bedwright.season.Crop;
import bedwright.season.Method;
import org.jspecify.annotations.Nullable;

/** How the stems of a planting spread over the weeks from its first cut on (season model, section 3). */
final class Cutting {
    private Cutting() {}

    /** Share of the stems that comes on the first {@code days} of the cutting days: 0 to 1. */
    static double shareBy(Method method, int days) {
        int all = method.cutDays();
        if (days <= 0) {
            return 0;
        }
        int stretches = method.cutShares().size();
        double sum = 0;
        for (int i = 0; i < stretches; i++) {
            double from = (double) i * all / stretches;
            double to = (double) (i + 1) * all / stretches;
            double covered = Math.clamp((Math.min(days, all) - from) / (to - from), 0, 1);
            sum += covered * method.cutShares().get(i);
        }
        return sum;
    }

    /** Share of the stems that comes in a week, heat aside. */
    static double shareIn(Method method, int firstCut, int week) {
        return shareBy(method, 7 * week + 7 - firstCut) - shareBy(method, 7 * week - firstCut);
    }

    /** The last week with cutting: that of the last cutting day, or the week in which heat ends it; at most {@code weeks} − 1. */
    static int lastWeek(Method method, @Nullable Heat heat, int firstCut, int weeks) {
        int last = Math.min(Math.floorDiv(firstCut + method.cutDays() - 1, 7), weeks - 1);
        if (heat != null && heat.ends()) {
            for (int w = Math.max(0, Math.floorDiv(firstCut, 7)); w < last; w++) {
                if (heat.isTooMuch(w)) {
                    return w;
                }
            }
        }
        return last;
    }

    /** What a crop does in the hot weeks of one season. */
    record Heat(Crop.Heat limit, BedWeather weather) {
        static @Nullable Heat of(Crop crop, BedWeather weather) {
            Crop.Heat heat = crop.heat();
            return heat == null ? null : new Heat(heat, weather);
        }

        boolean isTooMuch(int week) {
            return weather.weekMean(week) > limit.limit();
        }

        boolean ends() {
            return limit.then() == Crop.Heat.Answer.ENDS;
        }

        boolean pauses(int week) {
            return limit.then() == Crop.Heat.Answer.PAUSES && isTooMuch(week);
        }
    }
}
