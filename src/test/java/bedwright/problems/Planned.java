package bedwright.problems;

import bedwright.climate.PossibleSeasons;
import bedwright.compare.RuleOfThumb;
import bedwright.file.SeasonFile;
import bedwright.plan.Outcome;
import bedwright.plan.Outcomes;
import bedwright.plan.PlanFacts;
import bedwright.season.Plan;
import bedwright.season.Sampling;
import bedwright.season.Season;
import bedwright.sheet.SheetFacts;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.UnaryOperator;

/**
 * A season of the project's with a plan that is quickly made: the rule of thumb's.
 *
 * @param facts the season's facts
 * @param plan the plan
 * @param outcome what it brings
 */
public record Planned(PlanFacts facts, Plan plan, Outcome outcome) {
    private static final Plan.Making MAKING = new Plan.Making(1, null, 1L, false, false);

    private static final Map<String, Planned> MADE = new ConcurrentHashMap<>();

    /** Of a file in problems/, over so many possible seasons; made but once. */
    public static Planned of(String name, int seasons) {
        return MADE.computeIfAbsent(name + " " + seasons, n -> of(name, seasons, text -> text));
    }

    /** Likewise, of the file's text as it is after a change. */
    public static Planned of(String name, int seasons, UnaryOperator<String> change) {
        byte[] bytes = change.apply(ProblemFiles.text(name)).getBytes(StandardCharsets.UTF_8);
        Season season = SeasonFile.parse(name, bytes);
        Sampling known = season.possible();
        if (known.given().isEmpty()) {
            season = season.with(new Sampling(seasons, known.seed(), known.doubt(), List.of()));
        }
        PlanFacts facts = PlanFacts.of(season, PossibleSeasons.of(season));
        Outcome outcome = Outcomes.of(facts, RuleOfThumb.places(facts));
        return new Planned(facts, new Plan(1, season, MAKING, outcome.score(), outcome.plantings()), outcome);
    }

    /** The names of all season files. */
    public static List<String> names() {
        return ProblemFiles.names();
    }

    /** All that a sheet is made from. */
    public SheetFacts sheetFacts() {
        return new SheetFacts(plan.season(), outcome, facts.seasons(), facts.table(), MAKING);
    }
}
