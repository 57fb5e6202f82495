package bedwright.sheet;

import bedwright.climate.PossibleSeason;
import bedwright.climate.PossibleSeasons;
import bedwright.file.SeasonFile;
import bedwright.plan.DemandLine;
import bedwright.plan.Draft;
import bedwright.plan.Outcome;
import bedwright.plan.Outcomes;
import bedwright.plan.PlanFacts;
import bedwright.season.Plan;
import bedwright.season.Plan.Worth.Thing;
import bedwright.season.Season;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;

/** An invented farm of three beds to make sheets of, and outcomes written by hand. */
final class SmallFarm {
    /** Put before the names of the hostile farm. */
    static final String HOSTILE = "<script>alert(\"x\")</script>&amp;'";
    /** Likewise for roles, whose names can hold no slash. */
    static final String HOSTILE_ROLE = "<img onerror=\"x\">&'";

    private static final List<String> NAMES = List.of(
            "Small farm",
            "Invented: no such farm exists.",
            "Boards",
            "hoppers",
            "mesh",
            "Watering",
            "carrots",
            "sunflower",
            "dill",
            "old shrub",
            "sown",
            "raised",
            "stands",
            "Shrub row",
            "Stall",
            "Cafe",
            "Posy",
            "Porch",
            "Feast",
            "Fence",
            "House");

    private SmallFarm() {}

    private static String text() {
        try (InputStream in = SmallFarm.class.getResourceAsStream("small-season.json")) {
            return new String(Objects.requireNonNull(in).readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static Season season() {
        return SeasonFile.parse("small-season.json", text().getBytes(StandardCharsets.UTF_8));
    }

    /** The same farm with marks in every name that would do harm if they were not escaped. */
    static Season hostileSeason() {
        String text = text();
        String hostile = HOSTILE.replace("\"", "\\\"");
        for (String name : NAMES) {
            // A start of "sown" is a word of the file, not a name.
            text = text.replace("\"" + name + "\"", "\"" + hostile + name + "\"");
        }
        text = text.replace("\"start\": \"" + hostile + "sown\"", "\"start\": \"sown\"");
        text = text.replace("\"hoppers\":", "\"" + hostile + "hoppers\":");
        String role = HOSTILE_ROLE.replace("\"", "\\\"");
        for (String name : List.of("focal", "filler")) {
            text = text.replace("\"" + name, "\"" + role + name);
        }
        text = text.replace("\"sign\": \"K\"", "\"sign\": \"" + role + "\"");
        return SeasonFile.parse("hostile.json", text.getBytes(StandardCharsets.UTF_8));
    }

    /** A plan of no merit that has a bit of everything: lots are put by turns at an early and a late place that fits. */
    private static int[] aBitOfEverything(PlanFacts facts) {
        Draft draft = new Draft(facts);
        for (int s = 0; s < facts.table().stocks(); s++) {
            int first = facts.table().firstPlace(s);
            int count = facts.table().firstPlace(s + 1) - first;
            int stride = Math.max(1, count / 40);
            for (int i = 0; i < count; i += stride) {
                int lot = draft.leftOut(s);
                if (lot < 0) {
                    break;
                }
                int place = i / stride % 2 == 0 ? first + i : first + count - 1 - i;
                draft.putIfItFits(lot, place);
            }
        }
        return draft.places();
    }

    /** A sheet's facts by such a plan of a season. */
    static SheetFacts facts(Season season) {
        List<PossibleSeason> seasons = PossibleSeasons.of(season);
        PlanFacts facts = PlanFacts.of(season, seasons);
        Outcome outcome = Outcomes.of(facts, aBitOfEverything(facts));
        Plan.Making making = new Plan.Making(42, null, 1000L, true, false);
        return new SheetFacts(season, outcome, seasons, facts.table(), making, closeness(season, outcome));
    }

    /** Figures of no meaning: a bed, own hours and a net are worth something in some weeks. */
    private static Plan.Closeness closeness(Season season, Outcome outcome) {
        List<Plan.Worth> worths = new ArrayList<>();
        worths.add(new Plan.Worth(Thing.BED, season.beds().getFirst().name(), weeks(season, 2.5)));
        worths.add(new Plan.Worth(Thing.HOUR, "", weeks(season, 120.4)));
        if (!season.stock().nets().isEmpty()) {
            worths.add(
                    new Plan.Worth(Thing.NET, season.stock().nets().getFirst().name(), weeks(season, 0.25)));
        }
        long soft = outcome.score().soft();
        return new Plan.Closeness(12.3, soft + 6_000_000_000L, soft - 40_000_000_000L, 500, 30.0, worths);
    }

    /** So much in the third and fifth week. */
    private static List<Double> weeks(Season season, double each) {
        return IntStream.range(0, season.weeks())
                .mapToObj(w -> w == 2 || w == 4 ? each : 0)
                .toList();
    }

    static SheetFacts facts() {
        return facts(season());
    }

    static SheetFacts demo() {
        return facts(SeasonFile.read(Path.of("problems", "demo-farm.json")));
    }

    /** The same outcome with other stems served. */
    static Outcome served(Outcome outcome, int[][][] served) {
        return new Outcome(
                outcome.seasons(),
                outcome.score(),
                outcome.plantings(),
                outcome.demand(),
                served,
                outcome.stems(),
                outcome.leftOver(),
                outcome.work(),
                outcome.stocks(),
                outcome.bedUse(),
                outcome.money(),
                outcome.broken());
    }

    /** The same outcome with other rules broken. */
    static Outcome broken(Outcome outcome, List<Outcome.Broken> broken) {
        return new Outcome(
                outcome.seasons(),
                outcome.score(),
                outcome.plantings(),
                outcome.demand(),
                outcome.served(),
                outcome.stems(),
                outcome.leftOver(),
                outcome.work(),
                outcome.stocks(),
                outcome.bedUse(),
                outcome.money(),
                broken);
    }

    /** Everything asked for is served, in every season. */
    static int[][][] allServed(Outcome outcome) {
        int[][][] served = new int[outcome.demand().size()][][];
        for (DemandLine line : outcome.demand()) {
            served[line.index()] = new int[line.asked().length][outcome.seasons()];
            for (int w = 0; w < line.asked().length; w++) {
                for (int k = 0; k < outcome.seasons(); k++) {
                    served[line.index()][w][k] = Math.toIntExact(line.asked()[w]);
                }
            }
        }
        return served;
    }

    /** The line of an order's recipe, or an outlet (line −1), by its name. */
    static DemandLine line(Outcome outcome, String name, int line) {
        return outcome.demand().stream()
                .filter(l -> l.name().equals(name) && l.line() == line)
                .findFirst()
                .orElseThrow();
    }
}
