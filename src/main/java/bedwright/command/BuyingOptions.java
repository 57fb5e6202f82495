package bedwright.command;

import bedwright.season.Crop;
import bedwright.season.Season;
import bedwright.sheet.Buying;
import java.util.List;
import java.util.Map;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** What a plan does not know of buying: mixed into the commands that tell what to buy. */
final class BuyingOptions {
    private static final int MOST_PER_CENT = 1000;
    private static final int MOST_WEEKS = 104;
    private static final int MOST_MILLILITRES = 100_000;

    @Spec(Spec.Target.MIXEE)
    private CommandSpec spec = CommandSpec.create();

    @Option(
            names = "--have",
            paramLabel = "CROP=N",
            description = "Seeds, plugs or tubers of a crop that are in stock; once for each crop.")
    private Map<String, Integer> have = Map.of();

    @Option(
            names = "--packet",
            paramLabel = "CROP=N",
            description = "How many a packet of a crop holds; once for each crop.")
    private Map<String, Integer> packets = Map.of();

    @Option(
            names = "--margin",
            paramLabel = "PERCENT",
            defaultValue = "10",
            description = "Seed beyond what is sown, for gaps and spilling (${DEFAULT-VALUE}).")
    private Integer margin = 10;

    @Option(
            names = "--seed-weeks",
            paramLabel = "N",
            defaultValue = "6",
            description = "Weeks from ordering seed to sowing it (${DEFAULT-VALUE}).")
    private Integer seedWeeks = 6;

    @Option(
            names = "--plug-weeks",
            paramLabel = "N",
            defaultValue = "16",
            description = "The same for plugs (${DEFAULT-VALUE}).")
    private Integer plugWeeks = 16;

    @Option(
            names = "--tuber-weeks",
            paramLabel = "N",
            defaultValue = "20",
            description = "The same for tubers, corms and bulbs (${DEFAULT-VALUE}).")
    private Integer tuberWeeks = 20;

    @Option(
            names = "--mix",
            paramLabel = "ML",
            defaultValue = "40",
            description = "Potting mix for a tray cell, millilitres (${DEFAULT-VALUE}).")
    private Integer mix = 40;

    /** Refuses what is out of range, before anything is read. */
    void mustBeInRange() {
        within("--margin", margin, MOST_PER_CENT);
        within("--seed-weeks", seedWeeks, MOST_WEEKS);
        within("--plug-weeks", plugWeeks, MOST_WEEKS);
        within("--tuber-weeks", tuberWeeks, MOST_WEEKS);
        within("--mix", mix, MOST_MILLILITRES);
    }

    /**
     * What was said, for a plan of a season.
     *
     * @throws ParameterException if it speaks of a crop that the season has not
     */
    Buying.Wishes of(Season season) {
        known("--have", have, 0, season);
        known("--packet", packets, 1, season);
        return new Buying.Wishes(margin, have, packets, seedWeeks, plugWeeks, tuberWeeks, mix);
    }

    private void within(String option, int value, int most) {
        if (value < 0 || value > most) {
            throw new ParameterException(
                    spec.commandLine(), option + " takes a whole number from 0 to " + most + ", not " + value);
        }
    }

    private void known(String option, Map<String, Integer> amounts, int least, Season season) {
        List<String> crops = season.crops().stream().map(Crop::name).toList();
        amounts.forEach((crop, amount) -> {
            if (!crops.contains(crop)) {
                throw new ParameterException(
                        spec.commandLine(),
                        option + " names \"" + crop + "\", which is no crop of this season; there are: \""
                                + String.join("\", \"", crops) + "\"");
            }
            if (amount < least) {
                throw new ParameterException(
                        spec.commandLine(),
                        option + " " + crop + " takes a whole number of at least " + least + ", not " + amount);
            }
        });
    }
}
