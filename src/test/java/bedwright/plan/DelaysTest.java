package bedwright.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bedwright.climate.PossibleSeasons;
import bedwright.growth.Courses;
import bedwright.growth.Late;
import bedwright.growth.Prospect;
import bedwright.season.Job;
import bedwright.season.KeptPlanting;
import bedwright.season.Season;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/** What it costs to leave a job for a week is what the plan loses with it done a week later. */
class DelaysTest {
    private static Delays delays(Season season, List<KeptPlanting> plan) {
        PlanFacts facts = Delays.facts(season, PossibleSeasons.of(season), plan, -1);
        return Delays.of(facts, Outcomes.places(facts, plan));
    }

    private static KeptPlanting first(Season season) {
        return new KeptPlanting(1, "zinnia", "plain", "Bed", season.starts(), 1, null, 1, 10);
    }

    private static double left(Season season, Job... jobs) {
        KeptPlanting planting = first(season);
        Delays.Delay delay = delays(season, List.of(planting)).left(planting, Set.of(jobs));
        assertThat(delay.isLeftOut()).isFalse();
        return delay.grains() / Grains.ofThing(season, 1);
    }

    /** Ten plants give five stems in week 3, the only week that anybody pays for, 2 apiece. */
    @Test
    void pinchedAWeekLaterItIsCutAWeekLater() {
        Season season = new HandSeason()
                .with("\"firstCut\": 220", "\"pinch\": 100, \"firstCut\": 220")
                .with("\"cutDays\": 14, \"stems\": 1", "\"cutDays\": 14, \"stems\": 1, \"pinched\": true")
                .outlet(2, 100, "")
                .build();

        assertThat(left(season, Job.PINCH)).isEqualTo(10);
    }

    /** Slugs take a share 1 − e⁻ᵖ of 0.1 a day from what is bare and half of that through the cover. */
    @Test
    void leftBareForAWeekItIsEatenInThatWeekAsWithoutCover() {
        Season season = new HandSeason()
                .with("\"stock\": {}", """
                        "pests": [{"name": "slugs", "takes": ["seed", "seedlings"], "pressure":
                          [{"from": "01-01", "to": "12-31", "aDay": 0.1}]}],
                        "stock": {"cover": {"metres": 100, "letsThrough": 0.5}}""")
                .with("\"height\": 1", "\"height\": 1, \"tender\": 90, \"appeal\": {\"slugs\": 1}")
                .with("\"stems\": 1}", "\"stems\": 1000, \"cover\": {\"weeks\": 2}}")
                .outlet(2, 100_000, "")
                .build();

        double covered = Math.exp(-0.05 * 14);
        double late = Math.exp(-0.1 * 7 - 0.05 * 7);
        assertThat(left(season, Job.COVER_ON)).isCloseTo(2 * 5000 * (covered - late), within(0.03));
    }

    /** Net that doubles the standing speed: v50 is 24 or 48 m/s full grown, 1.5 times that at two thirds of the height. */
    @Test
    void leftWithoutNetForAWeekAGustOfThatWeekMeetsItUnheld() {
        Season season = new HandSeason()
                .with("\"stock\": {}", """
                        "stock": {"nets": [{"name": "mesh", "metres": 100, "strengthens": 2}]}""")
                .with("\"emergence\": 50", "\"emergence\": 10")
                .with("\"height\": 1", "\"height\": 1, \"stand\": {\"gust\": 24, \"spread\": 3, \"standsUp\": 0}")
                .with("\"stems\": 1}", "\"stems\": 1000, \"net\": {\"net\": \"mesh\"}}")
                .with("{\"name\": \"still\"}", """
                        {"name": "gusty", "gusts": [{"on": "2027-03-07", "from": 0, "speed": 90}]}""")
                .outlet(2, 100_000, "")
                .build();

        // On day 6 the clock stands at 70, so it has 60 of its 210 °C·d of growing.
        double netted = 1 - 1 / (1 + Math.exp(-(90 - 48 * 3.5) / 3));
        double bare = 1 - 1 / (1 + Math.exp(-(90 - 24 * 3.5) / 3));
        assertThat(left(season, Job.NET_UP)).isCloseTo(2 * 5000 * (netted - bare), within(0.03));
    }

    /** Ten metres of net are owned; the second lot's goes up in the week in which the first one's should be down. */
    @Test
    void netLeftUpForAWeekIsMissingWhereItIsNeeded() {
        Season season = new HandSeason()
                .with("\"stock\": {}", """
                        "stock": {"nets": [{"name": "mesh", "metres": 10, "buy": 3}]}""")
                .with("\"stems\": 1}", "\"stems\": 1, \"clearing\": 1, \"net\": {\"net\": \"mesh\"}}")
                .outlet(2, 100, "")
                .build();
        KeptPlanting first = first(season);
        KeptPlanting next = new KeptPlanting(2, "zinnia", "plain", "Bed", season.weekStart(6), 1, null, 1, 10);

        Delays.Delay delay = delays(season, List.of(first, next)).left(first, Set.of(Job.NET_DOWN));

        assertThat(delay.grains() / Grains.ofThing(season, 1)).isEqualTo(30);
    }

    @Test
    void whatCannotBeBoughtStopsIt() {
        Season season = new HandSeason()
                .with("\"stock\": {}", """
                        "stock": {"nets": [{"name": "mesh", "metres": 10}]}""")
                .with("\"stems\": 1}", "\"stems\": 1, \"clearing\": 1, \"net\": {\"net\": \"mesh\"}}")
                .build();
        KeptPlanting first = first(season);
        KeptPlanting next = new KeptPlanting(2, "zinnia", "plain", "Bed", season.weekStart(6), 1, null, 1, 10);

        assertThat(delays(season, List.of(first, next))
                        .left(first, Set.of(Job.NET_DOWN))
                        .stopped())
                .isEqualTo(Rule.STOCK_ROOM);
    }

    /** Of the frosts it is only those on the uncovered days that count more: the last one falls on day 5. */
    @Test
    void aFrostOnTheUncoveredDaysKillsWhatTheCoverWouldHaveKept() {
        Season season = frosty("03-06");

        assertThat(left(season, Job.COVER_ON)).isEqualTo(2 * 5000);
    }

    @Test
    void aFrostAfterTheCoverIsLaidDoesNot() {
        Season season = frosty("03-09");

        assertThat(left(season, Job.COVER_ON)).isZero();
    }

    /** Plugs set on 1 March, whose last frost is on a given day; the cover keeps five degrees of frost off. */
    private static Season frosty(String last) {
        String date = "{\"early\": \"" + last + "\", \"usual\": \"" + last + "\", \"late\": \"" + last + "\"}";
        return new HandSeason()
                .with(
                        "\"latitude\": 45,",
                        "\"latitude\": 45, \"frost\": {\"lastSpring\": " + date
                                + ", \"firstAutumn\": {\"early\": \"11-01\", \"usual\": \"11-01\", \"late\": \"11-01\"}},")
                .with("\"stock\": {}", "\"stock\": {\"cover\": {\"metres\": 100, \"protects\": 5}}")
                .with("\"height\": 1", "\"height\": 1, \"killing\": {\"young\": 0, \"grown\": -5}")
                .with("\"start\": \"sown\"", "\"start\": \"plugs\"")
                .with("\"stems\": 1}", "\"stems\": 1000, \"cover\": {\"weeks\": 3}}")
                .outlet(2, 100_000, "")
                .build();
    }

    @Test
    void whatLeavingAJobCostsIsTheDifferenceOfTheTwoPlans() {
        Season season = Seasons.over(3, Seasons.of(Seasons.DEMO_FARM));
        PlanFacts all = Seasons.facts(season);
        List<KeptPlanting> plan =
                Outcomes.of(all, Seasons.randomPlan(all, new Random(5), 0.1)).plantings();
        PlanFacts facts = Delays.facts(season, PossibleSeasons.of(season), plan, -1);
        int[] places = Outcomes.places(facts, plan);
        double before = Outcomes.of(facts, places).score().soft();
        Delays delays = Delays.of(facts, places);
        Courses courses = Courses.of(season);
        Set<Job> tried = EnumSet.noneOf(Job.class);
        for (KeptPlanting planting : plan) {
            Map<Integer, Set<Job>> weeks = new TreeMap<>();
            for (Prospect.Task task :
                    courses.course(Outcomes.spot(season, planting)).tasks()) {
                weeks.computeIfAbsent(task.week(), w -> EnumSet.noneOf(Job.class))
                        .add(task.job());
            }
            for (Set<Job> jobs : weeks.values()) {
                for (Set<Job> some : Delays.alone(jobs)) {
                    Delays.Delay delay = delays.left(planting, some);
                    int[] changed = places.clone();
                    int from = Outcomes.placeOf(facts, planting);
                    int to = facts.table().find(new Late(Outcomes.spot(season, planting), some));
                    int lots = planting.lots();
                    for (int p = 0; p < changed.length && lots > 0; p++) {
                        if (places[p] == from) {
                            changed[p] = to;
                            lots--;
                        }
                    }
                    Outcome after = Outcomes.exactly(facts, changed);
                    assertThat(delay.grains())
                            .as("planting %d without %s", planting.number(), some)
                            .isEqualTo((before - after.score().soft()) / facts.seasonCount);
                    tried.addAll(some);
                }
            }
        }
        assertThat(tried).contains(Job.NET_UP, Job.COVER_ON, Job.COVER_OFF, Job.PINCH);
    }
}
