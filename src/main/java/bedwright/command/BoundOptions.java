package bedwright.command;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Whether, and for how long, the best possible is looked for. */
final class BoundOptions {
    /** How long prices are looked for where nothing else is said, s. */
    private static final double USUAL_SECONDS = 30;
    /** How many steps where a plan's moves are counted. */
    private static final long USUAL_STEPS = 3000;

    @Spec(Spec.Target.MIXEE)
    private CommandSpec spec = CommandSpec.create();

    @Option(
            names = "--bound",
            description =
                    "Say, too, how close the plan comes to the best possible, and what one more metre of bed, hour or"
                            + " net would be worth; it is worked out after the plan, in at most 30 seconds, and"
                            + " prices.json written beside it proves it.")
    private boolean wanted;

    @Option(
            names = "--bound-for",
            paramLabel = "SECONDS",
            description = "Look so long for what is the best possible: the longer, the closer.")
    private @Nullable Double seconds;

    @Option(
            names = "--bound-steps",
            paramLabel = "N",
            description =
                    "Take so many steps for it: with --moves the outcome then depends on nothing but the season and"
                            + " the seed. Left out, with --moves: 3000.")
    private @Nullable Long steps;

    /**
     * How long to look.
     *
     * @param seconds at most, or null
     * @param steps at most, or null
     * @param settles whether it ends before that when it hardly improves any more
     */
    record Limits(@Nullable Double seconds, @Nullable Long steps, boolean settles) {}

    /**
     * The limits, if it is wanted.
     *
     * @param isCounted whether the plan depends on counted moves alone
     */
    Optional<Limits> limits(boolean isCounted) {
        if (seconds != null && !(seconds > 0 && seconds <= 1e6)) {
            throw usage("--bound-for takes seconds, more than 0, not " + seconds);
        }
        if (steps != null && steps < 1) {
            throw usage("--bound-steps takes a number of steps, at least 1, not " + steps);
        }
        if (seconds != null && steps != null) {
            throw usage("--bound-for and --bound-steps are two limits of the same search: keep one of them");
        }
        if (seconds != null && isCounted) {
            throw usage("--bound-for " + seconds + " depends on the machine, but with --moves nothing may: give"
                    + " --bound-steps in its stead");
        }
        if (seconds != null || steps != null) {
            return Optional.of(new Limits(seconds, steps, false));
        }
        if (!wanted) {
            return Optional.empty();
        }
        return Optional.of(isCounted ? new Limits(null, USUAL_STEPS, true) : new Limits(USUAL_SECONDS, null, true));
    }

    private ParameterException usage(String message) {
        return new ParameterException(spec.commandLine(), message);
    }
}
