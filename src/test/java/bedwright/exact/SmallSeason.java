package bedwright.exact;

import bedwright.climate.PossibleSeasons;
import bedwright.file.SeasonFile;
import bedwright.plan.PlanFacts;
import bedwright.season.Season;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;

/** The season {@code first-bed.json} and variants of it, in each of which some rule is felt that is not felt else. */
enum SmallSeason {
    AS_IT_IS,
    TIGHT_BEDS("\"length\": 12", "\"length\": 6"),
    FEW_HOURS("\"own\": [{\"hours\": 6}]", "\"own\": [{\"hours\": 3.5}]"),
    FEW_CUTTING_HOURS("\"coolHours\": 1.5", "\"coolHours\": 0.5"),
    SMALL_BENCH("\"bench\": 150", "\"bench\": 20"),
    SHORT_NET("\"metres\": 6", "\"metres\": 3"),
    NET_THAT_CAN_BE_BOUGHT("\"metres\": 6", "\"metres\": 1, \"buy\": 1.5"),
    MUST_BE_OURS("\"promise\": {\"buyIn\": 1.6}", "\"promise\": {\"must\": 3}"),
    BUY_IN_BY_LINE("\"price\": 0.6}", "\"price\": 0.6, \"buyIn\": 0.2}"),
    SHORTAGE_PRICE("\"promise\": {\"buyIn\": 1.6}", "\"promise\": {\"shortage\": 2.5}"),
    FEW_LARGE_A_WEEK("\"mostAWeek\": 150", "\"mostAWeek\": 40"),
    REST_YEARS(
            "\"height\": 1.5,",
            "\"height\": 1.5, \"family\": \"daisies\",",
            "\"at\": {\"x\": 20, \"y\": 0}, ",
            "\"at\": {\"x\": 20, \"y\": 0}, \"history\": [{\"family\": \"daisies\", \"year\": 2025}], ",
            "\"crops\": [",
            "\"families\": [{\"name\": \"daisies\", \"restYears\": 2}], \"rotation\": {\"restBroken\": 6}, \"crops\": ["),
    LONGER(
            "\"weeks\": 10",
            "\"weeks\": 16",
            "\"to\": \"2027-07-12\", \"stems\": 60",
            "\"to\": \"2027-08-23\", \"stems\": 60"),
    FOLLOW_ON(
            "\"weeks\": 10",
            "\"weeks\": 16",
            "\"to\": \"2027-07-12\", \"stems\": 60",
            "\"to\": \"2027-08-23\", \"stems\": 60",
            "\"killing\"",
            "\"family\": \"all of them\", \"killing\"",
            "\"crops\": [",
            "\"families\": [{\"name\": \"all of them\"}], \"rotation\": {\"followOn\": 4}, \"crops\": ["),
    CAREFUL_OVER_SIX("\"possible\": {\"count\": 4", "\"caution\": \"careful\", \"possible\": {\"count\": 6"),
    NORMAL_SEASON_ALONE("\"count\": 4", "\"count\": 1"),
    CLEARING_COSTS("\"cutting\": 40", "\"cutting\": 40, \"clearing\": 30");

    private static final Path FILE = Path.of("problems/first-bed.json");

    private final String[] edits;
    private @Nullable Season season;
    private @Nullable PlanFacts facts;
    private ExactModel.@Nullable Best best;

    /** @param edits by twos: a text that stands in the file, and what stands there instead */
    SmallSeason(String... edits) {
        this.edits = edits;
    }

    synchronized Season season() {
        Season known = season;
        if (known == null) {
            known = edited(edits);
            season = known;
        }
        return known;
    }

    /** The season of the file with other texts in it, given by twos like those of the constants. */
    static Season edited(String... edits) {
        try {
            String text = Files.readString(FILE);
            for (int i = 0; i < edits.length; i += 2) {
                if (!text.contains(edits[i])) {
                    throw new IllegalStateException(FILE + " no longer holds " + edits[i]);
                }
                text = text.replace(edits[i], edits[i + 1]);
            }
            return SeasonFile.parse(FILE.toString(), text.getBytes(StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    synchronized PlanFacts facts() {
        PlanFacts known = facts;
        if (known == null) {
            known = PlanFacts.of(season(), PossibleSeasons.of(season()));
            facts = known;
        }
        return known;
    }

    /** The best plan, computed when first asked for. */
    synchronized ExactModel.Best best() {
        ExactModel.Best known = best;
        if (known == null) {
            known = ExactModel.solve(season(), facts().table());
            best = known;
        }
        return known;
    }
}
