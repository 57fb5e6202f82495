package bedwright.sheet;

import bedwright.plan.Outcome;
import bedwright.season.Bed;
import bedwright.season.Season;
import java.util.ArrayList;
import java.util.List;
import java.util.function.IntToDoubleFunction;

/** Where hours, beds, bench, nets and cover are full. */
final class Fullness {
    /** From this share on something is full. */
    private static final double FULL = 0.95;

    private static final long NO_LIMIT = Long.MAX_VALUE / 4;

    private final Say say;
    private final Season season;
    private final Outcome outcome;

    Fullness(Season season, Outcome outcome) {
        this.say = new Say(season);
        this.season = season;
        this.outcome = outcome;
    }

    List<String> sentences() {
        List<String> sentences = new ArrayList<>();
        sentences.add(hours());
        sentences.add(cutting());
        sentences.add(beds());
        for (Outcome.StockUse stock : outcome.stocks()) {
            sentences.add(stock(stock));
        }
        sentences.removeIf(String::isEmpty);
        return sentences;
    }

    private double mean(int week) {
        return Spread.of(outcome.seasons(), k -> outcome.work().all(week, k)).mean();
    }

    private String hours() {
        Outcome.Work work = outcome.work();
        double hired = 0;
        int peak = 0;
        for (int w = 0; w < season.weeks(); w++) {
            peak = mean(w) > mean(peak) ? w : peak;
            int week = w;
            hired += work.own()[w] >= NO_LIMIT
                    ? 0
                    : Spread.of(outcome.seasons(), k -> Math.max(0, work.all(week, k) - work.own()[week]))
                            .mean();
        }
        List<String> full =
                runs(w -> work.own()[w] >= NO_LIMIT ? 0 : mean(w) / Math.max(1, work.own()[w] + work.hired()[w]));
        String sentence = "Hours: most in the week of " + say.week(peak) + ", " + Say.hours(mean(peak))
                + " in the mean; beyond own hands " + Say.hours(hired) + " in the season. ";
        return sentence + (full.isEmpty() ? "Never full." : "Full, own and hired, in the " + join(full) + ".");
    }

    private String cutting() {
        Outcome.Work work = outcome.work();
        List<String> full = runs(w -> work.cuttingLimit()[w] >= NO_LIMIT
                ? 0
                : Spread.of(work.cutting()[w]).mean() / Math.max(1, work.cuttingLimit()[w]));
        return full.isEmpty() ? "" : "Hours fit for cutting: full in the " + join(full) + ".";
    }

    private String beds() {
        int weeks = season.weeks();
        long length = 0;
        long[] use = new long[weeks];
        int[] fullBeds = new int[weeks];
        List<Bed> beds = season.allBeds();
        for (Bed bed : beds) {
            double metres = 1000 * bed.block().length();
            length += Math.round(metres);
            for (int w = 0; w < weeks; w++) {
                use[w] += outcome.bedUse()[bed.index()][w];
                fullBeds[w] += outcome.bedUse()[bed.index()][w] >= FULL * metres ? 1 : 0;
            }
        }
        int peak = 0;
        for (int w = 0; w < weeks; w++) {
            peak = use[w] > use[peak] ? w : peak;
        }
        String sentence = "Beds: fullest in the week of " + say.week(peak) + ", " + say.length(use[peak]) + " of "
                + say.lengthWithUnit(length) + "; " + fullBeds[peak] + " of " + Say.count(beds.size(), "bed", "beds")
                + " full then.";
        long allOfThem = length;
        List<String> full = runs(w -> (double) use[w] / allOfThem);
        return sentence + (full.isEmpty() ? "" : " All together full in the " + join(full) + ".");
    }

    private String stock(Outcome.StockUse stock) {
        int peak = 0;
        for (int w = 0; w < season.weeks(); w++) {
            peak = stock.use()[w] > stock.use()[peak] ? w : peak;
        }
        long most = stock.use()[peak];
        if (most == 0) {
            return "";
        }
        String head = StockBand.name(stock) + ": most in the week of " + say.week(peak) + ", "
                + StockBand.amount(say, stock, most) + " of " + StockBand.amount(say, stock, stock.owned()) + ".";
        String named = Character.toUpperCase(head.charAt(0)) + head.substring(1);
        if (most > stock.owned()) {
            String more = StockBand.amount(say, stock, most - stock.owned());
            return named
                    + (stock.canBuy()
                            ? " To buy: " + more + ", " + say.money(stock.extra()) + "."
                            : " Missing: " + more + ".");
        }
        List<String> full = runs(w -> (double) stock.use()[w] / Math.max(1, stock.owned()));
        return full.isEmpty() ? named : named + " Full in the " + join(full) + ".";
    }

    private List<String> runs(IntToDoubleFunction share) {
        List<String> runs = new ArrayList<>();
        for (Run run : Run.of(season.weeks(), w -> share.applyAsDouble(w) >= FULL ? 1 : 0)) {
            runs.add(say.weeks(run));
        }
        return runs;
    }

    private static String join(List<String> runs) {
        return String.join(", ", runs);
    }
}
