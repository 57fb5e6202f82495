package bedwright.command;

import bedwright.compare.RuleOfThumb;
import bedwright.plan.Grains;
import bedwright.plan.Outcome;
import bedwright.plan.Outcomes;
import bedwright.plan.PlanFacts;
import bedwright.season.Season;
import java.util.Arrays;
import java.util.Locale;

/** Sets a plan beside what a good grower would do with pencil and paper, counted by the same rules. */
final class ByHand {
    private ByHand() {}

    static String sentence(PlanFacts facts, Outcome plan) {
        Outcome byHand = Outcomes.of(facts, RuleOfThumb.places(facts));
        return String.format(
                Locale.ROOT,
                "By rule of thumb (first sowings by the frost dates, then at gaps that close towards summer)%n"
                        + "the same season would leave %s in the mean, with %,.0f promised stems missing%s;%n"
                        + "this plan leaves %s, with %,.0f missing.",
                money(facts.season(), byHand),
                Progress.shortStems(byHand),
                byHand.broken().isEmpty() ? "" : " and hard rules broken",
                money(facts.season(), plan),
                Progress.shortStems(plan));
    }

    private static String money(Season season, Outcome outcome) {
        double mean = Arrays.stream(outcome.money().season()).average().orElse(0);
        return Words.money(season, Grains.toMoney(season, mean));
    }
}
