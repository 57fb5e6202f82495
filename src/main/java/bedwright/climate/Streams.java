package bedwright.climate;

import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.simple.RandomSource;

/**
 * Random numbers from one seed, in a stream of its own for each cause, part of it and possible season.
 *
 * <p>The name of a stream (the seed, then a word for the cause, then numbers) is folded, item by item, with the mixing
 * function of SplitMix64 (G. L. Steele, D. Lea and C. H. Flood, Fast splittable pseudorandom number generators, OOPSLA
 * 2014); the result seeds, by four steps of that generator, an L64X128Mix generator of Commons RNG. Both are fixed
 * algorithms on whole numbers: the JDK's own generators are not used, and what is made of the numbers with exp and log
 * is made with {@link StrictMath}, so that a seed gives the same seasons on every machine and JVM.
 */
record Streams(long seed) {
    private static final long GOLDEN = 0x9e3779b97f4a7c15L;

    /** The stream of a cause and of numbers that tell its parts apart. */
    UniformRandomProvider of(String cause, long... parts) {
        long name = fold(seed, nameOf(cause));
        for (long part : parts) {
            name = fold(name, part);
        }
        long[] state = new long[4];
        for (int i = 0; i < state.length; i++) {
            name += GOLDEN;
            state[i] = mix(name);
        }
        return RandomSource.L64_X128_MIX.create(state);
    }

    /** A number that stands for a word. */
    static long nameOf(String word) {
        long name = word.length();
        for (int i = 0; i < word.length(); i++) {
            name = fold(name, word.charAt(i));
        }
        return name;
    }

    private static long fold(long name, long item) {
        return mix(mix(name + GOLDEN) ^ item);
    }

    /** The mixing function of SplitMix64. */
    static long mix(long z) {
        z = (z ^ (z >>> 30)) * 0xbf58476d1ce4e5b9L;
        z = (z ^ (z >>> 27)) * 0x94d049bb133111ebL;
        return z ^ (z >>> 31);
    }
}
