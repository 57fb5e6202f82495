package bedwright.command;

import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;

/** What {@code --time}, {@code --moves} and {@code --seed} may be, wherever something is searched for. */
final class SearchOptions {
    private static final double LONGEST = 1e6;
    private static final long LARGEST_SEED = (1L << 53) - 2;

    private SearchOptions() {}

    /** @throws ParameterException if one of them can't be meant */
    static void check(@Nullable Double seconds, @Nullable Long moves, long seed, CommandSpec spec) {
        if (seconds != null && !(seconds > 0 && seconds <= LONGEST)) {
            throw usage(spec, "--time takes seconds, more than 0, not " + seconds);
        }
        if (moves != null && moves < 1) {
            throw usage(spec, "--moves takes a number of moves, at least 1, not " + moves);
        }
        if (seed < 0 || seed > LARGEST_SEED) {
            throw usage(spec, "--seed takes a whole number from 0 to " + LARGEST_SEED + ", not " + seed);
        }
    }

    private static ParameterException usage(CommandSpec spec, String message) {
        return new ParameterException(spec.commandLine(), message);
    }
}
