package bedwright.exact;

import bedwright.file.SeasonFile;
import bedwright.season.Season;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.stream.Stream;

/** The season {@code first-bed.json} and variants of it, in each of which something is short or dear that is not else. */
enum SmallSeason {
    AS_IT_IS,
    TIGHT_BEDS("\"length\": 12", "\"length\": 6"),
    FEW_HOURS(
            "\"own\": [{\"hours\": 6}]",
            "\"own\": [{\"hours\": 3}]",
            "\"hired\": [{\"hours\": 2}]",
            "\"hired\": [{\"hours\": 0}]"),
    FEW_CUTTING_HOURS("\"coolHours\": 1.5", "\"coolHours\": 0.5"),
    SMALL_BENCH("\"bench\": 150", "\"bench\": 20"),
    SHORT_NET("\"metres\": 6", "\"metres\": 3"),
    NET_THAT_CAN_BE_BOUGHT("\"metres\": 6", "\"metres\": 1, \"buy\": 15"),
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
    FOLLOW_ON(
            "\"weeks\": 10",
            "\"weeks\": 16",
            "\"to\": \"2027-07-12\", \"stems\": 60",
            "\"to\": \"2027-08-23\", \"stems\": 60",
            "\"killing\"",
            "\"family\": \"all of them\", \"killing\"",
            "\"crops\": [",
            "\"families\": [{\"name\": \"all of them\"}], \"rotation\": {\"followOn\": 25}, \"crops\": ["),
    DEAR_PLUGS("\"price\": 0.35,\n      \"figures\"", "\"price\": 2.5,\n      \"figures\""),
    CLEARING_COSTS("\"cutting\": 40", "\"cutting\": 40, \"clearing\": 30");

    private static final Path FILE = Path.of("problems/first-bed.json");

    private final String[] edits;

    /** @param edits by twos: a text that stands in the file, and what stands there instead */
    SmallSeason(String... edits) {
        this.edits = edits;
    }

    /**
     * The season, judged over the possible seasons and with the caution of the file.
     *
     * @param further edits of the variant's text, by twos
     */
    Season season(String... further) {
        try {
            String text = Files.readString(FILE);
            String[] all =
                    Stream.concat(Arrays.stream(edits), Arrays.stream(further)).toArray(String[]::new);
            for (int i = 0; i < all.length; i += 2) {
                if (!text.contains(all[i])) {
                    throw new IllegalStateException(FILE + " no longer holds " + all[i]);
                }
                text = text.replace(all[i], all[i + 1]);
            }
            return SeasonFile.parse(FILE.toString(), text.getBytes(StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
