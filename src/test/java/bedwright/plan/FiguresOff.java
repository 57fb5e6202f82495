package bedwright.plan;

import bedwright.climate.PossibleSeason;
import bedwright.climate.PossibleSeasons;
import bedwright.file.PlanFile;
import bedwright.season.KindTree;
import bedwright.season.Plan;
import bedwright.season.Sampling;
import bedwright.season.Season;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Random;

/**
 * How far promises fall where the book is wrong: amounts are promised for 9 years of 10 over seasons with and without doubt in
 * the figures, then kept or not in truths in which each crop gives its own share more or less than the book says.
 */
final class FiguresOff {
    private static final int JUDGED = 256;
    private static final double IN_NINE_OF_TEN = 0.9;
    /** Weeks in which less could be promised tell little, stems. */
    private static final int LEAST = 20;

    private static final Sampling.BySureness NONE = new Sampling.BySureness(0, 0, 0);

    private final Plan plan;
    private final Season sure;
    private final int seasons;

    private FiguresOff(Plan plan, int seasons) {
        this.plan = plan;
        this.seasons = seasons;
        Sampling possible = plan.season().possible();
        this.sure = plan.season()
                .with(new Sampling(
                        possible.count(), possible.seed(), new Sampling.Doubt(NONE, NONE), possible.given()));
    }

    private Promises over(Season season, List<PossibleSeason> fresh) {
        PlanFacts facts = PlanFacts.ofPlan(season, fresh, plan.plantings());
        return Promises.of(facts, Outcomes.places(facts, plan.plantings()));
    }

    /** A truth: seasons without doubt in which each crop's stems are off by a factor of its own, the mean factor being 1. */
    private Promises truth(int number, double off) {
        Random random = new Random(number);
        double[] factors = new double[sure.crops().size()];
        for (int c = 0; c < factors.length; c++) {
            factors[c] = Math.exp(off * random.nextGaussian() - off * off / 2);
        }
        List<PossibleSeason> drawn = new ArrayList<>();
        for (PossibleSeason one : PossibleSeasons.fresh(sure, seasons, 1000L + number)) {
            drawn.add(new PossibleSeason(
                    one.normal(),
                    one.deviation(),
                    one.gusts(),
                    one.pestYear(),
                    one.springFrost(),
                    one.autumnFrost(),
                    one.badSeedBed(),
                    one.hardWinter(),
                    one.firstCutFactor(),
                    factors));
        }
        return over(sure, drawn);
    }

    /** In how large a share of a truth's seasons amounts are there, in the mean of all kinds and weeks. */
    private double kept(Promises truth, int[][] promised) {
        double sum = 0;
        int count = 0;
        for (int node = 0; node < promised.length; node++) {
            for (int w = 0; w < promised[node].length; w++) {
                int stems = promised[node][w];
                if (stems >= LEAST) {
                    sum += Arrays.stream(truth.free(node, w))
                                    .filter(free -> free >= 100 * stems)
                                    .count()
                            / (double) seasons;
                    count++;
                }
            }
        }
        return sum / count;
    }

    private int[][] promised(Promises judge) {
        int[][] promised = new int[KindTree.of(sure.roles()).size()][sure.weeks()];
        for (int node = 0; node < promised.length; node++) {
            for (int w = 0; w < promised[node].length; w++) {
                promised[node][w] = Promises.most(judge.free(node, w), IN_NINE_OF_TEN);
            }
        }
        return promised;
    }

    private static long stems(int[][] promised) {
        return Arrays.stream(promised)
                .flatMapToInt(Arrays::stream)
                .asLongStream()
                .sum();
    }

    /** Arguments: a plan's file, how many truths, seasons of each, by how much figures are off (0.2). */
    public static void main(String[] args) {
        FiguresOff study = new FiguresOff(PlanFile.read(Path.of(args[0])), Integer.parseInt(args[2]));
        int truths = Integer.parseInt(args[1]);
        double off = Double.parseDouble(args[3]);
        Season doubted = study.plan.season();
        int[][] with = study.promised(study.over(doubted, PossibleSeasons.fresh(doubted, JUDGED, 1)));
        int[][] without = study.promised(study.over(study.sure, PossibleSeasons.fresh(study.sure, JUDGED, 1)));
        System.out.printf(
                Locale.ROOT,
                "promised over all kinds and weeks: %d stems with doubt, %d without%n",
                stems(with),
                stems(without));
        double[] keptWith = new double[truths];
        double[] keptWithout = new double[truths];
        for (int t = 0; t < truths; t++) {
            Promises truth = study.truth(t, off);
            keptWith[t] = study.kept(truth, with);
            keptWithout[t] = study.kept(truth, without);
            System.out.printf(
                    Locale.ROOT,
                    "truth %d: kept with doubt %.1f %%, without %.1f %%%n",
                    t,
                    100 * keptWith[t],
                    100 * keptWithout[t]);
        }
        Promises book = study.truth(truths, 0);
        System.out.printf(
                Locale.ROOT,
                "as the book says: kept with doubt %.1f %%, without %.1f %%%n",
                100 * study.kept(book, with),
                100 * study.kept(book, without));
        print("with doubt", keptWith);
        print("without doubt", keptWithout);
    }

    private static void print(String which, double[] kept) {
        double[] sorted = kept.clone();
        Arrays.sort(sorted);
        System.out.printf(
                Locale.ROOT,
                "%s: mean %.1f %%, worst truth %.1f %%, best %.1f %%%n",
                which,
                100 * Arrays.stream(kept).average().orElse(0),
                100 * sorted[0],
                100 * sorted[sorted.length - 1]);
    }
}
