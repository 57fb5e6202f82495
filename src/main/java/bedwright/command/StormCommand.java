package bedwright.command;

import bedwright.climate.Gust;
import bedwright.climate.Gusts;
import bedwright.climate.PossibleSeason;
import bedwright.climate.PossibleSeasons;
import bedwright.file.PlainJson;
import bedwright.log.Note;
import bedwright.log.SeasonLog;
import bedwright.season.Compass;
import bedwright.season.Plan;
import bedwright.season.Sampling;
import bedwright.season.Season;
import bedwright.season.Site;
import bedwright.season.UnderWay;
import java.io.PrintWriter;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Says where to look first after a storm. */
@Command(
        name = "storm",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description = {
            "After a storm: what was likely laid flat, the most exposed first, as a round to walk with the words to note what"
                    + " you find. By the height of the plants that day, their nets and their lee, and by what was noted"
                    + " so far. It is not a weather warning.",
            "",
            "  target/bedwright plan problems/first-bed.json --time 5",
            "  target/bedwright storm plans/first-bed --from west --on \"12 Jul\" --gust bad",
            "  target/bedwright storm plans/first-bed --from west --on \"12 Jul\" --gust bad --walk"
        })
final class StormCommand implements Callable<Integer> {
    private static final int BETWEEN = 45;
    private static final double FULL_TURN = 360;
    private static final double STRONGEST = 150;
    private static final double USUAL_YEAR = 0.5;
    private static final double ONE_IN_TEN = 0.9;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Mixin
    private PlanNamed named = new PlanNamed();

    @Option(
            names = "--from",
            required = true,
            paramLabel = "SIDE",
            description = "Where it came from: north, north-east, … or degrees clockwise from north.")
    private String from = "";

    @Option(
            names = "--on",
            required = true,
            paramLabel = "DAY",
            description = "The day of the storm, as 12 Jul or 2027-07-12.")
    private String on = "";

    @Option(
            names = "--gust",
            paramLabel = "SPEED",
            description =
                    "Its strongest gust, in m/s (in mph where the season file is in feet); or bad, the strongest of a"
                            + " usual year from that side; or very-bad, the strongest of one year in ten. Left out: bad.")
    private String gust = "bad";

    @Mixin
    private RoundWalked walked = new RoundWalked();

    @Option(names = "--format", paramLabel = "text|json", description = "Words, or JSON.")
    private PlanCommand.Format format = PlanCommand.Format.TEXT;

    @Override
    public Integer call() {
        if (!walked.wrong().isEmpty()) {
            throw usage(walked.wrong());
        }
        PlanFolder plans = named.folder();
        Plan plan = plans.read();
        SeasonLog log = SofarCommand.log(plans, plan);
        double degrees = degrees();
        LocalDate day = SofarCommand.saidDay(plan.season(), on, spec);
        double speed = speed(plan.season(), degrees);
        RoundWalked.About about = RoundWalked.About.of(plans, plan, log, named.typed(), day, Note.Cause.WIND);
        Plan then = about.was().plan();
        Sampling.GivenGust blew = new Sampling.GivenGust(day, degrees, speed);
        PossibleSeason stormy = PossibleSeasons.usualWith(then.season(), List.of(blew));
        // What was noted of that day's wind is known better than what is guessed here.
        Gust known = StormRound.gustOf(stormy, then.season().dayOf(day));
        StormRound round = new StormRound(
                then.season(), named.typed(), day, known.from(), known.speed(), StormRound.of(then, stormy, known));
        PrintWriter out = spec.commandLine().getOut();
        if (format == PlanCommand.Format.JSON) {
            out.print(PlainJson.text(round.json()));
            out.flush();
            return Exit.DONE;
        }
        round.print(out);
        List<Damaged> damaged = round.damaged();
        return walked.follow(
                about,
                new RoundWalked.Round(
                        damaged,
                        isNoted(then.season(), day) ? "likely harmed by the noted gust" : "unharmed",
                        harm -> StormRound.first(out, damaged, harm.gone(), harm.none())),
                out);
    }

    private static boolean isNoted(Season season, LocalDate day) {
        UnderWay underWay = season.underWay();
        return underWay != null
                && underWay.gusts().stream().anyMatch(gust -> gust.on().equals(day));
    }

    private double degrees() {
        return Compass.degrees(from).stream()
                .boxed()
                .findFirst()
                .or(() -> number(from).filter(given -> given >= 0 && given <= FULL_TURN))
                .orElseThrow(() -> usage("--from takes " + String.join(", ", Compass.names())
                        + " or degrees from 0 to 360, not \"" + from + "\""));
    }

    private static Optional<Double> number(String typed) {
        try {
            return Optional.of(new BigDecimal(typed.strip()).doubleValue());
        } catch (NumberFormatException e) {
            return Optional.empty();
        }
    }

    /** Speed of the gust in the open, m/s. */
    private double speed(Season season, double degrees) {
        return switch (gust) {
            case "bad" -> strongest(season, degrees, USUAL_YEAR);
            case "very-bad" -> strongest(season, degrees, ONE_IN_TEN);
            default -> {
                double metric = number(gust)
                        .map(given -> season.units().speed().metric(BigDecimal.valueOf(given)))
                        .orElse(Double.NaN);
                if (!(metric >= 1 && metric <= STRONGEST)) {
                    throw usage("--gust takes bad, very-bad or a speed in "
                            + season.units().speed().symbol() + ", up to "
                            + Words.number(season.units().speed().of(STRONGEST)) + ", not \"" + gust + "\"");
                }
                yield metric;
            }
        };
    }

    private double strongest(Season season, double degrees, double share) {
        Site.StormSide side = season.site().storms().stream()
                .min(Comparator.comparingDouble(one -> apart(one.from(), degrees)))
                .filter(one -> apart(one.from(), degrees) <= BETWEEN)
                .orElseThrow(() -> usage("The season file tells of no storms from that side, so \"" + gust
                        + "\" says nothing of it: give --gust a speed"));
        OptionalDouble strongest = Gusts.strongestOfAYear(side, share);
        return strongest.orElseThrow(() -> usage("Most years have no damaging gust from that side, so \"" + gust
                + "\" says nothing: give --gust a speed"));
    }

    private static double apart(double one, double other) {
        double turn = Math.abs(one - other) % FULL_TURN;
        return Math.min(turn, FULL_TURN - turn);
    }

    private ParameterException usage(String message) {
        return new ParameterException(spec.commandLine(), message);
    }
}
