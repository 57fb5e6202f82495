package bedwright.growth;

import bedwright.climate.Gust;
import bedwright.climate.PossibleSeason;
import bedwright.climate.PossibleSeasons;
import bedwright.season.BedBlock;
import bedwright.season.Caution;
import bedwright.season.Currency;
import bedwright.season.Family;
import bedwright.season.Job;
import bedwright.season.Labour;
import bedwright.season.Lots;
import bedwright.season.Pest;
import bedwright.season.Point;
import bedwright.season.Role;
import bedwright.season.Rotation;
import bedwright.season.RoughGrass;
import bedwright.season.Sampling;
import bedwright.season.Season;
import bedwright.season.Site;
import bedwright.season.Standing;
import bedwright.season.Stock;
import bedwright.season.UnderWay;
import bedwright.season.Windbreak;
import java.time.LocalDate;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * A season small enough to reckon by hand: from Monday 1 March 2027 ten weeks of 10 °C by night and 20 °C by day, one bed
 * of 100 m, no frost, storms or pests, one {@link SmallCrop}, and one possible season in which nothing strays, until a
 * test says otherwise. What is not said of a possible season is neutral too.
 */
final class SmallSeason {
    LocalDate starts = LocalDate.of(2027, 3, 1);
    int weeks = 10;
    double latitude = 45;
    double min = 10;
    double max = 20;
    Site.@Nullable Frost frost;
    Site.BadSeedBed badSeedBed = new Site.BadSeedBed(0, 1);
    Site.HardWinter hardWinter = new Site.HardWinter(0, 1);
    List<Site.StormSide> storms = new ArrayList<>();
    List<BedBlock> beds = new ArrayList<>(List.of(bed("Bed", 0)));
    List<Windbreak> windbreaks = new ArrayList<>();
    List<RoughGrass> roughGrass = new ArrayList<>();
    List<Pest> pests = new ArrayList<>();
    List<Stock.Net> nets = new ArrayList<>();
    Stock.@Nullable Cover cover;
    Map<Job, Labour.JobRate> jobs = new LinkedHashMap<>();
    List<Family> families = new ArrayList<>();
    List<Role> roles = new ArrayList<>(List.of(new Role("focal", 0, 0, null, List.of())));
    SmallCrop crop = new SmallCrop();
    List<SmallCrop> more = new ArrayList<>();
    int plants = 10;
    List<Standing> standing = new ArrayList<>();
    /** Weather that was noted; where there is none the season has not begun. */
    List<UnderWay.DaySeen> noted = new ArrayList<>();

    List<Sampling.GivenGust> notedGusts = new ArrayList<>();

    double[] deviation = {};
    List<Gust> gusts = List.of();
    double pestYear = 1;
    double springFrost;
    double autumnFrost;
    boolean badSeedBeds;
    boolean isHardWinter;
    double firstCutFactor = 1;
    double stemsFactor = 1;

    Season build() {
        Site site = new Site(
                latitude,
                Collections.nCopies(12, min),
                Collections.nCopies(12, max),
                new Site.TemperatureSpread(0.8, 3.2, 0.8),
                frost,
                badSeedBed,
                hardWinter,
                storms);
        List<SmallCrop> crops = new ArrayList<>(List.of(crop));
        crops.addAll(more);
        Sampling.BySureness doubt = new Sampling.BySureness(0.03, 0.06, 0.1);
        Season season = new Season(
                "Made up",
                null,
                starts,
                weeks,
                new Currency("€", 2),
                site,
                beds,
                windbreaks,
                roughGrass,
                pests,
                new Stock(0, null, nets, cover),
                new Labour(0, 0, List.of(), List.of(), List.of(), List.of(), jobs),
                roles,
                families,
                new Rotation(0, 0),
                crops.stream().map(SmallCrop::build).toList(),
                crops.stream().map(c -> new Lots(c.name, plants, 3)).toList(),
                standing,
                List.of(),
                List.of(),
                List.of(),
                new Caution(0),
                new Sampling(1, 1, new Sampling.Doubt(doubt, doubt), List.of()));
        return noted.isEmpty() && notedGusts.isEmpty()
                ? season
                : season.with(new UnderWay(starts, noted, notedGusts, List.of(), List.of(), 1));
    }

    /** Notes the minimum of the night of a day, which was as warm as usual in the mean. */
    void night(int day, double least) {
        noted.add(new UnderWay.DaySeen(starts.plusDays(day), 0, least));
    }

    /** The possible season that the fields describe. */
    PossibleSeason possible() {
        boolean[] bad = new boolean[weeks];
        Arrays.fill(bad, badSeedBeds);
        return new PossibleSeason(
                false,
                Arrays.copyOf(deviation, 7 * weeks),
                gusts,
                filled(pests.size(), pestYear),
                springFrost,
                autumnFrost,
                bad,
                isHardWinter,
                filled(1 + more.size(), firstCutFactor),
                filled(1 + more.size(), stemsFactor));
    }

    PossibleSeason normal() {
        return PossibleSeasons.normal(build());
    }

    /** The crop sown in a week, in the first bed. */
    Grown grown(int sowWeek) {
        World world = new World(build(), List.of(possible()));
        double warmth = world.ground.classes().getFirst().warmth();
        return Grown.of(world, 0, world.season.crops().getFirst().methods().getFirst(), sowWeek, null, warmth);
    }

    /** How it comes on in the normal season. */
    Development development(int sowWeek) {
        return grown(sowWeek).normal;
    }

    Calendar calendar(int sowWeek) {
        return grown(sowWeek).calendar;
    }

    Losses losses(int sowWeek) {
        Grown grown = grown(sowWeek);
        return new Losses(grown, grown.world.ground.classes().getFirst());
    }

    Needs needs(int sowWeek) {
        Grown grown = grown(sowWeek);
        return new Needs(grown.world.season, grown.crop, grown.method, grown.calendar, plants, false);
    }

    /** Stems by week, unrounded, in the possible season. */
    double[] stems(int sowWeek) {
        Grown grown = grown(sowWeek);
        return Row.stemsByWeek(grown, grown.world.ground.classes().getFirst(), plants, 0);
    }

    ProspectTable table() {
        return ProspectTable.of(build(), List.of(possible()));
    }

    /** Deviations of so many °C in the days of one week, none in others. */
    static double[] warmWeek(int week, double degrees) {
        double[] deviation = new double[7 * week + 7];
        Arrays.fill(deviation, 7 * week, 7 * week + 7, degrees);
        return deviation;
    }

    static double[] filled(int length, double value) {
        double[] array = new double[length];
        Arrays.fill(array, value);
        return array;
    }

    /** Ten zinnias stand in the bed, of which is known what their clock read, or which stems they give. */
    void stands(Standing.@Nullable ClockReading clock, Standing.WrittenStems... stems) {
        standing.add(new Standing(null, "zinnia", 10, "plain", "Bed", null, clock, List.of(stems), null));
    }

    /** A bed of 100 m that runs north from a point so many metres east. */
    static BedBlock bed(String name, double east) {
        return bed(name, east, null, null, List.of(), List.of());
    }

    static BedBlock bed(
            String name,
            double east,
            BedBlock.@Nullable Tunnel tunnel,
            @Nullable LocalDate workableFrom,
            List<BedBlock.Taken> taken,
            List<BedBlock.Grown> history) {
        return new BedBlock(name, 1, new Point(east, 0), 0, 100, 1.2, 0.5, tunnel, workableFrom, taken, history);
    }

    /** Frosts whose early and late dates lie so many days from the usual ones; 5 days for each °C, both ways. */
    static Site.Frost frost(LocalDate spring, LocalDate autumn, int width) {
        return new Site.Frost(frostDate(spring, width), frostDate(autumn, width), 5, 5);
    }

    private static Site.FrostDate frostDate(LocalDate usual, int width) {
        return new Site.FrostDate(
                MonthDay.from(usual.minusDays(width)), MonthDay.from(usual), MonthDay.from(usual.plusDays(width)));
    }

    /** A pest with the same pressure all the year, that takes these. */
    static Pest pest(double aDay, @Nullable Double range, Pest.Takes... takes) {
        List<Pest.Pressure> all = List.of(new Pest.Pressure(MonthDay.of(1, 1), MonthDay.of(12, 31), aDay));
        return new Pest("slugs", List.of(takes), all, range, 0.5);
    }
}
