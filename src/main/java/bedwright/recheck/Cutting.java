package bedwright.recheck;

import static bedwright.recheck.Facts.NEVER;

import bedwright.climate.PossibleSeason;
import bedwright.season.Crop;
import java.util.List;

/** How the stems of a planting fall on the weeks of one possible season (season model, section 3: cutting, heat). */
final class Cutting {
    private Cutting() {}

    /** What the temperature of a week does to the cutting. */
    enum Heat {
        NOTHING,
        ENDS,
        PAUSES
    }

    static Heat heat(Facts facts, Placed placed, PossibleSeason possible, int week) {
        Crop.Heat heat = placed.crop().heat();
        if (heat == null || facts.mean(possible, placed.bed(), week) <= heat.limit()) {
            return Heat.NOTHING;
        }
        return heat.then() == Crop.Heat.Answer.ENDS ? Heat.ENDS : Heat.PAUSES;
    }

    /** Share of a plant's stems that each week of the season gives. */
    static double[] shares(Facts facts, Placed placed, PossibleSeason possible, Course course) {
        double[] shares = new double[facts.weeks()];
        if (course.firstCut == NEVER) {
            return shares;
        }
        int lastWeek = Calendar.lastCutWeek(facts, placed, possible, course);
        for (int j = 0; j < placed.method().cutDays(); j++) {
            int week = Math.floorDiv(course.firstCut + j, 7);
            if (week >= 0 && week < facts.weeks() && week <= lastWeek) {
                shares[week] +=
                        ofDay(j, placed.method().cutDays(), placed.method().cutShares());
            }
        }
        for (int week = 0; week < facts.weeks(); week++) {
            if (shares[week] > 0 && heat(facts, placed, possible, week) == Heat.PAUSES) {
                shares[week] = 0;
            }
        }
        return shares;
    }

    /** Share of cutting day j, which covers [j, j + 1), of equal stretches of all days. */
    static double ofDay(int j, int days, List<Double> stretches) {
        double length = (double) days / stretches.size();
        double share = 0;
        for (int i = 0; i < stretches.size(); i++) {
            double overlap = Math.min(j + 1, (i + 1) * length) - Math.max(j, i * length);
            if (overlap > 0) {
                share += stretches.get(i) * overlap / length;
            }
        }
        return share;
    }
}
