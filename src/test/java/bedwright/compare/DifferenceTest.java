package bedwright.compare;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;

/** The interval of a difference, against figures worked out by hand and against chance made to measure. */
class DifferenceTest {
    /**
     * Two plans each and four seasons, by hand. Means of the plans: 10, 14 and 7, 9. S/R: 8/2 = 4 and 2/2 = 1. Nothing but
     * a constant lies between plans of a way, so there is no interaction. D = 4, 4, 4, 4: no variance of seasons. Degrees
     * of freedom 25 / (16 + 1) = 1.4706; t at 97.5 % with them lies between those of 1 (12.706) and of 2 (4.303).
     */
    @Test
    void luckOfTheSearchesAloneGivesTheIntervalByHand() {
        Difference found = Difference.of(
                new double[][] {{9, 11, 9, 11}, {13, 15, 13, 15}}, new double[][] {{6, 8, 6, 8}, {8, 10, 8, 10}});

        assertThat(found.mean()).isEqualTo(4);
        assertThat(found.luck()).isBetween(4.303 * Math.sqrt(5), 12.706 * Math.sqrt(5));
        assertThat(found.high() - found.mean()).isCloseTo(found.luck(), within(1e-9));
        assertThat(found.won()).isEqualTo(1);
        assertThat(found.isTold()).isFalse();
    }

    /** One plan each: only the seasons are left. D = 1, 2, 3: mean 2, variance 1, t at 2 degrees of freedom 4.30265. */
    @Test
    void seasonsAloneGiveStudentsPairedInterval() {
        Difference found = Difference.of(new double[][] {{11, 22, 33}}, new double[][] {{10, 20, 30}});

        assertThat(found.mean()).isEqualTo(2);
        assertThat(found.high() - 2).isCloseTo(4.30265 / Math.sqrt(3), within(1e-4));
        assertThat(found.luck()).isZero();
    }

    @Test
    void waysThatDifferInNothingAreNotTold() {
        double[][] same = {{1, 2, 3}, {1, 2, 3}};

        assertThat(Difference.of(same, same)).isEqualTo(new Difference(0, 0, 0, 0, 0, 0.5));
    }

    /**
     * Of 2,000 comparisons of two ways that differ in nothing, each with five plans whose luck is normal, in 100 seasons
     * that do more to one plan than to another, one in twenty is told apart: 100, give or take four standard deviations
     * (39). Fewer may be, since with unequal estimates the degrees of freedom are somewhat too few.
     */
    @Test
    void oneInTwentyIsToldByChance() {
        Random random = new Random(20270305);
        int told = 0;
        for (int i = 0; i < 2000; i++) {
            double[] seasons = random.doubles(100).map(x -> 50 * x).toArray();
            told += Difference.of(way(random, seasons), way(random, seasons)).isTold() ? 1 : 0;
        }
        assertThat(told).isBetween(50, 139);
    }

    /**
     * Of 2,000 such comparisons of ways that truly differ by what the first 200 said would be found nine times in ten,
     * about nine in ten are told apart: 1,800, give or take four standard deviations (54) and what is uncertain in the
     * mean of the 200 (its own scatter is a fifth; 1.4 per cent of it is left, which is 1 per cent of the share).
     */
    @Test
    void whatIsSaidToBeFoundNineTimesInTenIs() {
        Random random = new Random(20270306);
        double findable = 0;
        for (int i = 0; i < 200; i++) {
            double[] seasons = random.doubles(100).map(x -> 50 * x).toArray();
            findable +=
                    Difference.of(way(random, seasons), way(random, seasons)).findable() / 200;
        }
        int told = 0;
        for (int i = 0; i < 2000; i++) {
            double[] seasons = random.doubles(100).map(x -> 50 * x).toArray();
            double[] better = new double[100];
            for (int k = 0; k < better.length; k++) {
                better[k] = seasons[k] + findable;
            }
            told += Difference.of(way(random, better), way(random, seasons)).low() > 0 ? 1 : 0;
        }
        assertThat(told).isBetween(1726, 1874);
    }

    private static double[][] way(Random random, double[] seasons) {
        double[][] money = new double[5][seasons.length];
        for (double[] plan : money) {
            double luck = random.nextGaussian();
            for (int k = 0; k < plan.length; k++) {
                plan[k] = seasons[k] + luck + 3 * random.nextGaussian();
            }
        }
        return money;
    }
}
