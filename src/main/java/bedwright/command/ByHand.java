package bedwright.command;

import bedwright.compare.RuleOfThumb;
import bedwright.plan.Outcome;
import bedwright.plan.Outcomes;
import bedwright.plan.PlanFacts;
import bedwright.season.Season;
import java.util.Locale;

/** Sets a plan beside what a good grower would do with pencil and paper, counted by the same rules. */
final class ByHand {
    private ByHand() {}

    static String sentence(PlanFacts facts, Outcome plan) {
        Season season = facts.season();
        Outcome byHand = Outcomes.of(facts, RuleOfThumb.places(facts));
        return String.format(
                Locale.ROOT,
                "By rule of thumb (first sowings by the frost dates, then at gaps that close towards summer)%n"
                        + "the same season would leave %s in the mean, with %,.0f promised stems missing%s;%n"
                        + "this plan leaves %s, with %,.0f missing.",
                Words.money(season, Progress.meanMoney(season, byHand)),
                Progress.shortStems(byHand),
                byHand.broken().isEmpty() ? "" : " and hard rules broken",
                Words.money(season, Progress.meanMoney(season, plan)),
                Progress.shortStems(plan));
    }
}
