package bedwright.sheet;

import bedwright.plan.Outcome;
import bedwright.plan.Rule;
import bedwright.season.Season;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToLongFunction;

/** Which hard rules a plan breaks, and what would mend it. */
final class Mending {
    private static final int NAMED = 3;
    /** The unit in which an outcome counts what there is too little room for. */
    private static final String METRES = "m";

    private final Say say;
    private final Season season;
    private final Outcome outcome;
    private final List<Shown> plantings;

    Mending(Season season, Outcome outcome, List<Shown> plantings) {
        this.say = new Say(season);
        this.season = season;
        this.outcome = outcome;
        this.plantings = plantings;
    }

    /** A sentence for each rule, place and run of weeks. */
    List<String> sentences() {
        return sentences(outcome.broken(), true);
    }

    /** Where rules are broken, without what would mend it. */
    static List<String> places(Season season, Outcome outcome, List<Outcome.Broken> broken) {
        return new Mending(season, outcome, List.of()).sentences(broken, false);
    }

    private List<String> sentences(List<Outcome.Broken> all, boolean mend) {
        Map<List<String>, List<Outcome.Broken>> together = new LinkedHashMap<>();
        for (Outcome.Broken broken : all) {
            together.computeIfAbsent(List.of(broken.rule(), broken.where()), k -> new ArrayList<>())
                    .add(broken);
        }
        List<String> sentences = new ArrayList<>();
        for (List<Outcome.Broken> same : together.values()) {
            double[] by = new double[season.weeks()];
            double always = 0;
            for (Outcome.Broken broken : same) {
                if (broken.week() < 0) {
                    always = Math.max(always, broken.by());
                } else {
                    by[broken.week()] = broken.by();
                }
            }
            if (always > 0) {
                sentences.add(sentence(same.getFirst(), new Run(0, season.weeks() - 1, 1), always, mend));
            }
            for (Run run : Run.of(season.weeks(), w -> by[w] > 0 ? 1 : 0)) {
                double most = 0;
                for (int w = run.from(); w <= run.to(); w++) {
                    most = Math.max(most, by[w]);
                }
                sentences.add(sentence(same.getFirst(), run, most, mend));
            }
        }
        return sentences;
    }

    private String sentence(Outcome.Broken broken, Run run, double most, boolean mend) {
        boolean isLength = broken.unit().equals(METRES);
        double figure = isLength ? say.lengths().of(most) : most;
        String amount = (figure < 0.05 ? "less than 0.1" : Say.tenth(figure)) + " "
                + (isLength ? say.lengths().symbol() : broken.unit());
        String where =
                broken.where() + ", " + say.weeks(run) + ", by " + (run.weeks() > 1 ? "up to " : "") + amount + ".";
        return mend
                ? broken.rule() + " Broken here: " + where + " " + mend(broken, run, amount)
                : broken.rule() + " Broken then: " + where;
    }

    private String mend(Outcome.Broken broken, Run run, String amount) {
        String rule = broken.rule();
        if (rule.equals(Rule.BED_ROOM.sentence())) {
            return "To mend it, move or leave out plantings that take " + amount + " of this bed in these weeks"
                    + named(p -> p.kept().bed().equals(broken.where()) ? held(p, run) * p.millimetres() : 0) + ".";
        } else if (rule.equals(Rule.HOURS.sentence())) {
            return "To mend it, find " + amount + " more a week, hired or own, or leave out work of these weeks"
                    + named(p -> minutes(p, run)) + ".";
        } else if (rule.equals(Rule.CUTTING_HOURS.sentence())) {
            return "To mend it, cut with more hands or on one more morning, or leave out stems of these weeks"
                    + named(p -> stems(p, run)) + ".";
        } else if (rule.equals(Rule.BENCH_ROOM.sentence())) {
            return "To mend it, make room for " + amount + " more, or sow some of it in other weeks"
                    + named(p -> trays(p, run) * p.cells()) + ".";
        } else if (rule.equals(Rule.STOCK_ROOM.sentence())) {
            return "To mend it, get " + amount + " more of it, or leave out plantings that use it in these weeks"
                    + named(p -> broken.where().equals(p.net()) ? held(p, run) * p.netMillimetres() : 0) + ".";
        }
        return "";
    }

    /** The plantings that have the most to do with it, or nothing where none has. */
    private String named(ToLongFunction<Shown> part) {
        List<String> names = plantings.stream()
                .filter(p -> !p.isWritten() && part.applyAsLong(p) > 0)
                .sorted(Comparator.comparingLong(part).reversed().thenComparingInt(Shown::number))
                .limit(NAMED)
                .map(p -> "No. " + p.number() + " (" + p.name() + ")")
                .toList();
        return names.isEmpty() ? "" : ": most of it is " + String.join(", ", names);
    }

    private static long held(Shown planting, Run run) {
        return Math.max(0, Math.min(planting.heldTo(), run.to() + 1) - Math.max(planting.heldFrom(), run.from()));
    }

    private static long trays(Shown planting, Run run) {
        return Math.max(0, Math.min(planting.trayTo(), run.to() + 1) - Math.max(planting.trayFrom(), run.from()));
    }

    private static long minutes(Shown planting, Run run) {
        long sum = 0;
        for (int w = run.from(); w <= run.to(); w++) {
            sum += planting.workMinutes()[w];
        }
        return sum;
    }

    private static long stems(Shown planting, Run run) {
        double sum = 0;
        for (int w = run.from(); w <= run.to(); w++) {
            sum += planting.meanByWeek()[w];
        }
        return (long) sum;
    }
}
