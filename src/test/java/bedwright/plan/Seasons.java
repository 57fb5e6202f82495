package bedwright.plan;

import static org.assertj.core.api.Assertions.assertThat;

import bedwright.climate.PossibleSeasons;
import bedwright.file.SeasonFile;
import bedwright.season.Sampling;
import bedwright.season.Season;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Random;

/** The seasons that come with the project, as they are or with a few words of their files put differently. */
final class Seasons {
    static final String FIRST_BED = "first-bed.json";
    static final String FARMERS_PROBLEM = "farmers-problem.json";
    static final String DEMO_FARM = "demo-farm.json";

    private Seasons() {}

    static Season of(String file) {
        return SeasonFile.read(Path.of("problems", file));
    }

    /** A season whose file is changed: each odd text, which has to stand in it, is replaced by the next. */
    static Season edited(String file, String... fromTo) {
        String text = text(file);
        for (int i = 0; i < fromTo.length; i += 2) {
            assertThat(text).contains(fromTo[i]);
            text = text.replace(fromTo[i], fromTo[i + 1]);
        }
        return SeasonFile.parse(file, text.getBytes(StandardCharsets.UTF_8));
    }

    private static String text(String file) {
        try {
            return Files.readString(Path.of("problems", file));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The season over so many possible seasons, sampled. */
    static Season over(int seasons, Season season) {
        return season.with(new Sampling(
                seasons, season.possible().seed(), season.possible().doubt(), List.of()));
    }

    static PlanFacts facts(Season season) {
        return PlanFacts.of(season, PossibleSeasons.of(season));
    }

    /** A plan that puts about a share of the plantings anywhere. */
    static int[] randomPlan(PlanFacts facts, Random random, double share) {
        int[] places = Search.nothingPlaced(facts);
        for (int p = 0; p < places.length; p++) {
            int stock = facts.stock(p);
            int first = facts.table().firstPlace(stock);
            int count = facts.table().firstPlace(stock + 1) - first;
            if (!facts.isFixed(p) && count > 0 && random.nextDouble() < share) {
                places[p] = first + random.nextInt(count);
            }
        }
        return places;
    }

    /** The score measured from a plan. */
    static SeasonScore scoreOf(PlanFacts facts, int[] places) {
        SeasonScore score = new SeasonScore(facts);
        for (int p = 0; p < places.length; p++) {
            score.settle(p, places[p]);
        }
        return score;
    }

    /** Numbers below n, shuffled. */
    static int[] shuffled(int n, Random random) {
        int[] order = new int[n];
        Arrays.setAll(order, i -> i);
        for (int i = n - 1; i > 0; i--) {
            int other = random.nextInt(i + 1);
            int one = order[i];
            order[i] = order[other];
            order[other] = one;
        }
        return order;
    }
}
