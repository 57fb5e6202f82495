package bedwright.plan;

import bedwright.file.PlanFile;
import bedwright.season.Plan;
import bedwright.season.Season;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/** The best plan of a problem that anybody found, kept as a file beside the results: a plan as {@code plan} writes it. */
final class BestKnown {
    private BestKnown() {}

    static Path file(Path folder, String problem) {
        return folder.resolve("best-" + ProblemName.plain(problem) + ".json");
    }

    /**
     * The plan with its score, counted afresh; empty if none is kept.
     *
     * @throws IllegalStateException if it is a plan of another season, as the problem was before it changed
     */
    static Optional<Search.Found> of(Path folder, String problem, Season season, PlanFacts facts) {
        Path file = file(folder, problem);
        if (!Files.exists(file)) {
            return Optional.empty();
        }
        Plan plan = PlanFile.read(file);
        if (!plan.season().equals(season)) {
            throw new IllegalStateException(file + " is a plan of another season than " + problem
                    + " is now. Make one anew, or take the file away.");
        }
        return Optional.of(Search.Found.of(facts, Outcomes.places(facts, plan.plantings())));
    }
}
