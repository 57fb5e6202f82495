package bedwright.compare;

import static org.assertj.core.api.Assertions.assertThat;

import bedwright.climate.Gust;
import bedwright.climate.PossibleSeason;
import bedwright.climate.PossibleSeasons;
import bedwright.file.SeasonFile;
import bedwright.plan.Outcome;
import bedwright.plan.Outcomes;
import bedwright.plan.PlanFacts;
import bedwright.plan.Search;
import bedwright.recheck.Recheck;
import bedwright.recheck.Tally;
import bedwright.season.Fact;
import bedwright.season.Plan;
import bedwright.season.Sampling;
import bedwright.season.Season;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Plans judged on seasons that they were not made for. */
class JudgeTest {
    private static final Season FIRST = SeasonFile.read(Path.of("problems/first-bed.json"));

    private static Outcome planned(Season season) {
        PlanFacts facts = PlanFacts.of(season, PossibleSeasons.of(season));
        Search.Limits limits = new Search.Limits(3, null, 2000L);
        return Outcomes.of(
                facts,
                new Search(facts, limits).run(Search.nothingPlaced(facts)).places());
    }

    @Test
    void inItsOwnSeasonsAPlanBringsWhatThePlannerSaidOfIt() {
        Outcome planned = planned(FIRST);

        Outcome judged = Judge.outcome(FIRST, planned.plantings(), PossibleSeasons.of(FIRST));

        assertThat(judged).usingRecursiveComparison().isEqualTo(planned);
    }

    @Test
    void inFreshSeasonsItBringsWhatOtherCodeCountsThere() {
        List<PossibleSeason> fresh = FreshSeasons.of(FIRST, 200);
        Outcome planned = planned(FIRST);

        Outcome judged = Judge.outcome(FIRST, planned.plantings(), fresh);

        Tally tally = Recheck.of(FIRST, fresh, planned.plantings());
        assertThat(judged.score()).isEqualTo(new Plan.Score(tally.hard(), tally.medium(), tally.soft()));
        assertThat(tally.faults()).isEmpty();
    }

    /** Every number that chance gives is looked at: a day's deviation, a gust's speed, a doubt, a pest year, a frost. */
    @ParameterizedTest
    @ValueSource(strings = {"first-bed", "tray-and-bed", "demo-farm"})
    void noFreshSeasonHasANumberInCommonWithOneThatPlansAreMadeFor(String name) {
        Season season = SeasonFile.read(Path.of("problems", name + ".json"));
        Sampling known = season.possible();
        Season many = season.with(new Sampling(64, known.seed(), known.doubt(), List.of()));
        Set<Double> planned = new HashSet<>();
        PossibleSeasons.of(many).forEach(one -> planned.addAll(numbers(one)));

        List<Double> judged = new ArrayList<>();
        FreshSeasons.of(season, 200).forEach(one -> judged.addAll(numbers(one)));

        assertThat(judged).hasSizeGreaterThan(10_000);
        assertThat(judged).noneMatch(planned::contains);
    }

    private static List<Double> numbers(PossibleSeason season) {
        List<Double> numbers = new ArrayList<>();
        Arrays.stream(season.deviation()).forEach(numbers::add);
        Arrays.stream(season.stemsFactor()).forEach(numbers::add);
        Arrays.stream(season.firstCutFactor()).forEach(numbers::add);
        Arrays.stream(season.pestYear()).forEach(numbers::add);
        season.gusts().stream().map(Gust::speed).forEach(numbers::add);
        numbers.add(season.springFrost());
        numbers.add(season.autumnFrost());
        return numbers;
    }

    @Test
    void noSeasonFileCanHaveTheSeedOfFreshSeasons() throws ReflectiveOperationException {
        double greatest = Arrays.stream(Sampling.class.getRecordComponents())
                .filter(component -> component.getName().equals("seed"))
                .findFirst()
                .orElseThrow()
                .getAnnotation(Fact.class)
                .max();

        assertThat((double) FreshSeasons.seed(FIRST)).isGreaterThan(greatest);
    }

    @Test
    void whatIsLostIsWhatSurvivalLeaves() {
        Outcome planned = planned(FIRST);
        List<PossibleSeason> fresh = FreshSeasons.of(FIRST, 200);

        Judged judged = Judge.of(FIRST, planned.plantings(), PossibleSeasons.of(FIRST), fresh);

        assertThat(judged.losses()).extracting(Judged.Loss::cause).containsExactly(Judged.Cause.values());
        assertThat(judged.losses()).allSatisfy(loss -> assertThat(loss.stems()).isNotNegative());
        assertThat(judged.hoped()).isEqualTo(Means.of(planned.money().season()));
    }
}
