package bedwright.season;

import java.util.Collection;
import java.util.Locale;
import java.util.Optional;

/** The word that was probably meant by a mistyped one. */
public final class Nearest {
    private static final int MOST_WRONG = 3;

    private Nearest() {}

    /** The word most like a mistyped one, if any is near enough to be meant; hyphens, blanks and capitals don't count. */
    public static Optional<String> of(String typed, Collection<String> words) {
        String best = null;
        int least = Integer.MAX_VALUE;
        for (String word : words) {
            int distance = distance(plain(typed), plain(word));
            if (distance < least) {
                least = distance;
                best = word;
            }
        }
        int enough = Math.max(1, Math.min(MOST_WRONG, typed.length() / MOST_WRONG));
        return best != null && least <= enough ? Optional.of(best) : Optional.empty();
    }

    private static String plain(String word) {
        return word.toLowerCase(Locale.ROOT).replace("-", "").replace("_", "").replace(" ", "");
    }

    /** Least number of letters put in, left out, changed or swapped with their neighbour. */
    private static int distance(String a, String b) {
        int[][] steps = new int[a.length() + 1][b.length() + 1];
        for (int i = 0; i <= a.length(); i++) {
            for (int j = 0; j <= b.length(); j++) {
                if (i == 0 || j == 0) {
                    steps[i][j] = i + j;
                    continue;
                }
                int change = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
                int step = Math.min(steps[i - 1][j - 1] + change, 1 + Math.min(steps[i - 1][j], steps[i][j - 1]));
                if (i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1)) {
                    step = Math.min(step, steps[i - 2][j - 2] + 1);
                }
                steps[i][j] = step;
            }
        }
        return steps[a.length()][b.length()];
    }
}
