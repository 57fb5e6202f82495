package bedwright.plan;

import bedwright.climate.PossibleSeason;
import bedwright.climate.PossibleSeasons;
import bedwright.season.Sampling;
import bedwright.season.Season;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Arguments of a benchmark, each {@code name=value}; one that the benchmark does not know is refused. */
public final class BenchArgs {
    private final Map<String, String> values = new HashMap<>();

    /**
     * @param args what stands on the command line
     * @param known names that the benchmark knows
     * @throws IllegalArgumentException for any other
     */
    public BenchArgs(String[] args, String... known) {
        for (String arg : args) {
            int equals = arg.indexOf('=');
            String name = equals < 0 ? arg : arg.substring(0, equals);
            if (equals < 0 || !Arrays.asList(known).contains(name)) {
                throw new IllegalArgumentException(
                        "Argument " + arg + ": expected name=value with a name of " + String.join(", ", known));
            }
            values.put(name, arg.substring(equals + 1));
        }
    }

    public String text(String name, String byDefault) {
        return values.getOrDefault(name, byDefault);
    }

    public int number(String name, int byDefault) {
        return Integer.parseInt(text(name, Integer.toString(byDefault)));
    }

    /** Texts with commas between them. */
    List<String> list(String name, String byDefault) {
        List<String> all = new ArrayList<>();
        for (String one : text(name, byDefault).split(",", -1)) {
            if (!one.isBlank()) {
                all.add(one.strip());
            }
        }
        return List.copyOf(all);
    }

    /** A problem over so many sampled seasons, or over its own with 0; ready to be planned. */
    static PlanFacts facts(String problem, int seasons) {
        Season season = ProblemFamily.named(problem);
        Sampling possible = season.possible();
        if (seasons > 0) {
            season = season.with(new Sampling(seasons, possible.seed(), possible.doubt(), List.of()));
        }
        List<PossibleSeason> drawn = PossibleSeasons.of(season);
        return PlanFacts.of(season, drawn);
    }
}
