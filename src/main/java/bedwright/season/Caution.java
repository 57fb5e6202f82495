package bedwright.season;

import java.util.Locale;
import java.util.Optional;

/**
 * Weight of the bad seasons, in whole per cent: 0 looks only at the mean, 100 only at the worst fifth.
 *
 * @param percent 0 to 100
 */
public record Caution(int percent) {
    /** The mean alone. */
    public static final Caution BOLD = new Caution(0);
    /** A third on the bad seasons. */
    public static final Caution STEADY = new Caution(33);
    /** Two thirds on the bad seasons. */
    public static final Caution CAREFUL = new Caution(67);

    public Caution {
        if (percent < 0 || percent > 100) {
            throw new IllegalArgumentException("Caution is 0 to 100 per cent, not " + percent);
        }
    }

    /** The caution of a word (bold, steady, careful) or of a whole number from 0 to 100, if it is one. */
    public static Optional<Caution> of(String text) {
        switch (text.toLowerCase(Locale.ROOT)) {
            case "bold":
                return Optional.of(BOLD);
            case "steady":
                return Optional.of(STEADY);
            case "careful":
                return Optional.of(CAREFUL);
            default:
                try {
                    int percent = Integer.parseInt(text);
                    return percent < 0 || percent > 100 ? Optional.empty() : Optional.of(new Caution(percent));
                } catch (NumberFormatException e) {
                    return Optional.empty();
                }
        }
    }
}
