package bedwright.recheck;

import java.math.BigInteger;
import java.util.Arrays;

/** The caution formula (season model, section 8). */
final class Score {
    private Score() {}

    /**
     * floor(((100 − c)·m·S + c·K·T) / (100·m)): K seasons' money, S its sum, T the sum of the m = ⌈K/5⌉ worst.
     *
     * @param caution c, per cent
     */
    static long soft(long[] money, int caution) {
        int seasons = money.length;
        int worst = (seasons + 4) / 5;
        long[] ascending = money.clone();
        Arrays.sort(ascending);
        BigInteger sum = BigInteger.ZERO;
        BigInteger sumOfWorst = BigInteger.ZERO;
        for (int k = 0; k < seasons; k++) {
            sum = sum.add(BigInteger.valueOf(ascending[k]));
            if (k < worst) {
                sumOfWorst = sumOfWorst.add(BigInteger.valueOf(ascending[k]));
            }
        }
        BigInteger numerator = sum.multiply(BigInteger.valueOf((100L - caution) * worst))
                .add(sumOfWorst.multiply(BigInteger.valueOf((long) caution * seasons)));
        BigInteger[] parts = numerator.divideAndRemainder(BigInteger.valueOf(100L * worst));
        // Division goes towards zero; the floor of a negative broken number lies one below.
        long quotient = parts[0].longValueExact();
        return parts[1].signum() < 0 ? quotient - 1 : quotient;
    }
}
