package bedwright.underway;

import bedwright.growth.Prospect;
import bedwright.season.Season;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What was cut against what was expected: the mean after the fact of a Gamma-Poisson model, (cut + left + k) / (expected so
 * far + k), with k one week's expected stems (season model, section 9).
 */
final class Cuts {
    /** Days after which stems left standing are taken to have gone over. */
    private static final int GONE_OVER = 7;

    private final Season season;
    private final Prospect expected;

    Cuts(Season season, Prospect expected) {
        this.season = season;
        this.expected = expected;
    }

    /** The factor on the stems still to come. */
    double factor(List<Told.CutNoted> cuts) {
        double week = aWeek();
        if (cuts.isEmpty() || week == 0) {
            return 1;
        }
        double factor = 1;
        double ready = 0;
        int leftBefore = 0;
        @Nullable LocalDate before = null;
        for (Told.CutNoted cut : cuts) {
            Integer left = cut.left();
            boolean isStillThere = before != null && before.plusDays(GONE_OVER).isAfter(cut.on());
            int came = cut.stems() + (left == null ? 0 : left);
            ready += came - (isStillThere ? Math.min(leftBefore, came) : 0);
            double now = (ready + week) / (soFar(cut.on()) + week);
            factor = left == null ? Math.max(factor, now) : now;
            leftBefore = left == null ? 0 : left;
            before = cut.on();
        }
        return factor;
    }

    /** Stems of all kinds in a week of a season. */
    private double stems(int week, int k) {
        double sum = 0;
        for (int[][] kind : expected.stems()) {
            sum += kind[week][k] / 100.0;
        }
        return sum;
    }

    private int seasons() {
        return expected.firstCuts().length;
    }

    /** One week's expected stems, over the weeks that give any. */
    private double aWeek() {
        double sum = 0;
        int weeks = 0;
        for (int w = 0; w < season.weeks(); w++) {
            double mean = mean(w);
            sum += mean;
            weeks += mean > 0 ? 1 : 0;
        }
        return weeks == 0 ? 0 : sum / weeks;
    }

    private double mean(int week) {
        double sum = 0;
        for (int k = 0; k < seasons(); k++) {
            sum += stems(week, k);
        }
        return sum / seasons();
    }

    /** What was expected up to the end of a day, in the mean of the seasons. */
    double soFar(LocalDate on) {
        int day = season.dayOf(on);
        double sum = 0;
        for (int k = 0; k < seasons(); k++) {
            int first = expected.firstCuts()[k];
            for (int w = 0; w < season.weeks() && 7 * w <= day; w++) {
                int from = first == Prospect.NONE ? 7 * w : Math.max(7 * w, first);
                int days = 7 * w + 7 - from;
                if (days > 0) {
                    sum += stems(w, k) * Math.clamp((day + 1.0 - from) / days, 0, 1);
                }
            }
        }
        return sum / seasons();
    }
}
