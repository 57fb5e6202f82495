package bedwright.sheet;

import bedwright.compare.Comparison;
import bedwright.compare.Difference;
import bedwright.compare.FreshSeasons;
import bedwright.compare.Judged;
import bedwright.compare.Way;
import bedwright.season.Role;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;

/** What a comparison comes to, in a grower's words: the same on the page and in a terminal. */
public final class ComparisonWords {
    /** Share of all stems of the first way that is worth a word where two ways differ. */
    private static final double WORTH_A_WORD = 0.002;

    private final Comparison comparison;
    private final Say say;

    ComparisonWords(Comparison comparison) {
        this.comparison = comparison;
        this.say = new Say(comparison.season());
    }

    /** All parts, what matters most first. */
    public static List<Summary.Part> of(Comparison comparison) {
        ComparisonWords words = new ComparisonWords(comparison);
        List<Summary.Part> parts = new ArrayList<>();
        parts.add(new Summary.Part("short", "In short", words.inShort()));
        parts.add(new Summary.Part("against", "Against “" + comparison.first().name() + "”", words.against()));
        parts.add(new Summary.Part("each", "Each way of growing", words.each()));
        parts.add(new Summary.Part("causes", "What may cause it", words.causes()));
        parts.add(new Summary.Part("hopes", "Too hopeful", words.hopes()));
        parts.add(new Summary.Part("reading", "How to read this", words.reading()));
        return parts;
    }

    static Spread money(Way way) {
        double[] money = way.money();
        return Spread.of(money.length, k -> Math.round(money[k]));
    }

    private List<String> inShort() {
        List<String> lines = new ArrayList<>();
        Way best = comparison.ways().stream()
                .max(Comparator.comparingDouble(way -> mean(way.money())))
                .orElseThrow();
        lines.add("In the mean “" + best.name() + "” leaves most: " + say.money(mean(best.money())) + " a season.");
        List<String> alike = comparison.ways().stream()
                .filter(way -> way != best && !Difference.of(best, way).isTold())
                .map(way -> "“" + way.name() + "”")
                .toList();
        if (alike.size() == comparison.ways().size() - 1) {
            lines.add("But there is no telling it from the others: what lies between them may be chance.");
        } else if (!alike.isEmpty()) {
            lines.add("There is no telling it from " + String.join(", ", alike) + ": what lies between may be chance.");
        } else {
            lines.add("That is more than chance would do.");
        }
        for (Way way : comparison.ways()) {
            long broken = way.plans().stream().filter(plan -> plan.broken() > 0).count();
            if (broken > 0) {
                lines.add("“" + way.name() + "”: " + Say.count(broken, "plan", "plans")
                        + " can't be carried out as it stands, since a rule that has to hold is broken; its figures are"
                        + " too good.");
            }
        }
        return lines;
    }

    private static double mean(double[] figures) {
        double sum = 0;
        for (double figure : figures) {
            sum += figure;
        }
        return sum / figures.length;
    }

    private List<String> against() {
        return comparison.ways().stream()
                .skip(1)
                .map(way -> difference(way, Difference.of(way, comparison.first())))
                .toList();
    }

    /** What one brings more or less than the first, and whether that can be told. */
    String difference(Way way, Difference found) {
        if (found.low() == 0 && found.high() == 0) {
            return "“" + way.name() + "” brings the same in every season.";
        }
        String luck = found.luck() == 0
                ? ""
                : " Of that, " + say.money(found.luck()) + " more or less may be the luck of the searches.";
        if (!found.isTold()) {
            return "“" + way.name() + "”: there is no telling. In the mean between "
                    + say.money(Math.abs(found.low())) + " less and " + say.money(found.high()) + " more, and more in "
                    + years(found.won()) + "." + luck;
        }
        boolean more = found.mean() > 0;
        double least = Math.min(Math.abs(found.low()), Math.abs(found.high()));
        double most = Math.max(Math.abs(found.low()), Math.abs(found.high()));
        return "“" + way.name() + "” " + (more ? "earns " : "loses ") + Say.range(say.money(least), say.money(most))
                + (more ? " more" : " against it") + " in the mean; it is better in " + years(found.won()) + "." + luck;
    }

    /** "9 years of 10"; where that would be all or none but is not, in 100. */
    static String years(double share) {
        long tens = Math.round(10 * share);
        if ((tens == 0 && share > 0) || (tens == 10 && share < 1)) {
            long hundreds = Math.clamp(Math.round(100 * share), 1, 99);
            return hundreds + (hundreds == 1 ? " year" : " years") + " of 100";
        }
        return tens == 0 ? "no year" : tens == 10 ? "every year" : tens + (tens == 1 ? " year" : " years") + " of 10";
    }

    private List<String> each() {
        List<String> lines = new ArrayList<>();
        for (Way way : comparison.ways()) {
            Spread money = money(way);
            lines.add("“" + way.name() + "”: " + say.money(money.middle()) + " in a usual year, in a bad one (1 in 10) "
                    + say.money(money.low()) + " or less, in a good one (1 in 10) " + say.money(money.high())
                    + " or more. In the mean " + Say.stems(of(way, Judged::missing)) + " promised stems missing, "
                    + Say.stems(of(way, Judged::leftOver)) + " left over, " + Say.hours(of(way, Judged::work))
                    + " hours" + beyond(way) + ".");
        }
        return lines;
    }

    private static String beyond(Way way) {
        double beyond = of(way, Judged::beyond);
        String hours = Say.hours(beyond);
        return hours.equals("0") ? "" : ", " + hours + " of them in weeks with more work than own and hired hands do";
    }

    interface PerSeason {
        long[] of(Judged plan);
    }

    /** Mean over the plans and seasons of a way. */
    static double of(Way way, PerSeason figure) {
        double sum = 0;
        for (Judged plan : way.plans()) {
            for (long one : figure.of(plan)) {
                sum += (double) one / way.plans().size() / plan.seasons();
            }
        }
        return sum;
    }

    /** Stems of a role in the mean of plans and seasons, 1/100. */
    static double stems(Way way, int role) {
        double sum = 0;
        for (Judged plan : way.plans()) {
            for (double week : plan.stems()[role]) {
                sum += week / way.plans().size();
            }
        }
        return sum;
    }

    /** Stems lost to a cause, likewise. */
    static double lost(Way way, Judged.Cause cause) {
        return way.plans().stream()
                .flatMap(plan -> plan.losses().stream())
                .filter(loss -> loss.cause() == cause)
                .mapToDouble(loss -> loss.stems() / way.plans().size())
                .sum();
    }

    /** What takes stems. */
    static String name(Judged.Cause cause) {
        return switch (cause) {
            case STAND -> "poor coming up";
            case PESTS -> "pests";
            case FROST -> "frost and winter";
            case STORM -> "storm";
        };
    }

    private List<String> causes() {
        List<String> lines = new ArrayList<>();
        Way first = comparison.first();
        List<Role> roles = comparison.season().roles();
        double least = 0;
        for (int r = 0; r < roles.size(); r++) {
            least += WORTH_A_WORD * stems(first, r);
        }
        for (Way way : comparison.ways().subList(1, comparison.ways().size())) {
            List<String> differences = new ArrayList<>();
            for (int r = 0; r < roles.size(); r++) {
                more(
                        differences,
                        least,
                        stems(way, r) - stems(first, r),
                        roles.get(r).name());
            }
            for (Judged.Cause cause : Judged.Cause.values()) {
                more(differences, least, lost(way, cause) - lost(first, cause), "lost to " + name(cause));
            }
            lines.add("“" + way.name() + "”: "
                    + (differences.isEmpty()
                            ? "hardly other stems."
                            : "stems a season against the first: " + String.join("; ", differences) + "."));
        }
        String lost = Arrays.stream(Judged.Cause.values())
                .map(cause -> Say.stems(lost(first, cause)) + " to " + name(cause))
                .collect(Collectors.joining(", "));
        lines.add("“" + first.name() + "” itself loses in the mean " + lost + ".");
        return lines;
    }

    private static void more(List<String> differences, double least, double hundredths, String what) {
        if (Math.abs(hundredths) > least) {
            differences.add(Say.stems(Math.abs(hundredths)) + (hundredths > 0 ? " more " : " fewer ") + what);
        }
    }

    private List<String> hopes() {
        List<String> lines = new ArrayList<>();
        for (Way way : comparison.ways()) {
            double hoped =
                    way.plans().stream().mapToDouble(Judged::hoped).average().orElseThrow();
            double came = mean(way.money());
            String text = say.money(hoped).equals(say.money(came))
                    ? "as much as they bring here."
                    : say.money(Math.abs(hoped - came))
                            + (hoped > came ? " more than they bring here (" : " less than they bring here (")
                            + say.money(came) + ").";
            lines.add("The plans of “" + way.name() + "” say " + say.money(hoped)
                    + " of themselves, in the mean of the seasons that they were made for: " + text);
        }
        return lines;
    }

    private List<String> reading() {
        List<String> lines = new ArrayList<>();
        Comparison.Effort effort = comparison.effort();
        Double seconds = effort.seconds();
        Long moves = effort.moves();
        lines.add("Each way was planned " + effort.searches() + " times, each search with "
                + (seconds != null ? Say.tenth(seconds) + " seconds" : "")
                + (moves != null ? Say.whole(moves) + " moves" : "") + " and a seed of its own (from " + effort.seed()
                + "); a season by rule of thumb is the same every time.");
        lines.add(
                FreshSeasons.areGiven(comparison.season())
                        ? "The season file gives its possible seasons outright, so all plans are judged on these "
                                + comparison.seasons() + ": there are no others."
                        : "All plans are judged on the same " + Say.whole(comparison.seasons())
                                + " possible seasons, for none of which a plan was made.");
        lines.add(
                "A range holds what one way brings more than another in the mean of all seasons and searches, in 95 of"
                        + " 100 such comparisons; of 20 that differ in nothing, one is told apart by chance.");
        lines.add("With so many searches and seasons a true difference of about "
                + say.money(comparison.ways().stream()
                        .skip(1)
                        .mapToDouble(
                                way -> Difference.of(way, comparison.first()).findable())
                        .max()
                        .orElseThrow())
                + " a season from “" + comparison.first().name()
                + "” would be told apart nine times in ten, a smaller one less often.");
        lines.add(
                "With a longer search, or more of them, luck has less to say. All plans of a way were made for the same"
                        + " possible seasons: with others they might differ somewhat more.");
        lines.add("In none of the seasons does a plan react: nothing is sown again or moved. A grower who watches does"
                + " better, with any of these ways.");
        return lines;
    }
}
