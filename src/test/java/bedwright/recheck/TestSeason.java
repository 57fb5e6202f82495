package bedwright.recheck;

import bedwright.climate.Gust;
import bedwright.climate.PossibleSeason;
import bedwright.season.BedBlock;
import bedwright.season.Caution;
import bedwright.season.Crop;
import bedwright.season.Currency;
import bedwright.season.Family;
import bedwright.season.Job;
import bedwright.season.KeptPlanting;
import bedwright.season.Labour;
import bedwright.season.Lots;
import bedwright.season.Order;
import bedwright.season.Outlet;
import bedwright.season.Pest;
import bedwright.season.Point;
import bedwright.season.Promise;
import bedwright.season.Recipe;
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
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * A season small enough to reckon by hand. It starts on Monday 1 March 2027 and has ten weeks of 20 °C by day and night,
 * one bed of 100 m, no frost, storms or pests, and jobs that take no time, until a test says otherwise.
 */
final class TestSeason {
    static final LocalDate START = LocalDate.of(2027, 3, 1);

    int weeks = 10;
    double temperature = 20;
    int digits = 2;
    Site.@Nullable Frost frost;
    Site.BadSeedBed badSeedBed = new Site.BadSeedBed(0, 1);
    Site.HardWinter hardWinter = new Site.HardWinter(0, 1);
    List<Site.StormSide> storms = new ArrayList<>();
    List<BedBlock> beds = new ArrayList<>(List.of(bed("Bed", 100)));
    List<Windbreak> windbreaks = new ArrayList<>();
    List<RoughGrass> roughGrass = new ArrayList<>();
    List<Pest> pests = new ArrayList<>();
    int bench;
    Stock.@Nullable Trays trays;
    List<Stock.Net> nets = new ArrayList<>();
    Stock.@Nullable Cover cover;
    double ownRate;
    double hiredRate;
    List<Labour.Hours> own = new ArrayList<>();
    List<Labour.Hours> hired = new ArrayList<>();
    List<Labour.CuttingHours> cutting = new ArrayList<>();
    List<Labour.Chore> chores = new ArrayList<>();
    Map<Job, Labour.JobRate> jobs = noWork();
    List<Role> roles = new ArrayList<>(List.of(role("focal", 0, 0)));
    List<Family> families = new ArrayList<>();
    Rotation rotation = new Rotation(0, 0);
    List<Crop> crops = new ArrayList<>();
    List<Lots> pool = new ArrayList<>();
    List<Standing> standing = new ArrayList<>();
    List<Outlet> outlets = new ArrayList<>();
    List<Recipe> recipes = new ArrayList<>();
    List<Order> orders = new ArrayList<>();
    int caution;
    List<UnderWay.DaySeen> noted = new ArrayList<>();
    List<Sampling.GivenGust> notedGusts = new ArrayList<>();

    TestSeason() {}

    /** A season of one crop, with a pool of 100 lots of so many plants. */
    TestSeason(Crop crop, int plants) {
        crops.add(crop);
        pool.add(new Lots(crop.name(), plants, 100));
    }

    Season build() {
        List<Double> normals = Collections.nCopies(12, temperature);
        Site site = new Site(
                45, normals, normals, new Site.TemperatureSpread(0.8, 3.2, 0.8), frost, badSeedBed, hardWinter, storms);
        Sampling.BySureness sure = new Sampling.BySureness(0, 0, 0);
        Season season = new Season(
                "Made up",
                null,
                START,
                weeks,
                new Currency("€", digits),
                site,
                beds,
                windbreaks,
                roughGrass,
                pests,
                new Stock(bench, trays, nets, cover),
                new Labour(ownRate, hiredRate, own, hired, cutting, chores, jobs),
                roles,
                families,
                rotation,
                crops,
                pool,
                standing,
                outlets,
                recipes,
                orders,
                new Caution(caution),
                new Sampling(1, 1, new Sampling.Doubt(sure, sure), List.of()));
        return noted.isEmpty() && notedGusts.isEmpty()
                ? season
                : season.with(new UnderWay(START, noted, notedGusts, List.of(), List.of(), 1));
    }

    /** Notes the minimum of the night of a day, which was as warm as usual in the mean. */
    void night(int day, double least) {
        noted.add(new UnderWay.DaySeen(START.plusDays(day), 0, least));
    }

    Facts facts() {
        return new Facts(build());
    }

    /** The first day of a week. */
    static LocalDate week(int week) {
        return START.plusWeeks(week);
    }

    /** Lots of the first entry of the pool in the first bed by the crop's first method. */
    KeptPlanting lots(int number, int lots, int sowWeek) {
        return lots(number, 1, lots, sowWeek, beds.get(0).name());
    }

    KeptPlanting lots(int number, int pool, int lots, int sowWeek, String bed) {
        Lots entry = this.pool.get(pool - 1);
        Crop crop = crop(entry.crop());
        return new KeptPlanting(
                number,
                crop.name(),
                crop.methods().get(0).name(),
                bed,
                week(sowWeek),
                pool,
                null,
                lots,
                lots * entry.plants());
    }

    /** The standing planting of an entry, where the method, the bed and the day are as given or the first there are. */
    KeptPlanting stands(int number, int entry) {
        Standing planting = standing.get(entry - 1);
        String method = planting.method();
        String bed = planting.bed();
        LocalDate sown = planting.sown();
        return new KeptPlanting(
                number,
                planting.crop(),
                method == null ? crop(planting.crop()).methods().get(0).name() : method,
                bed == null ? beds.get(0).name() : bed,
                sown == null ? START : sown,
                null,
                entry,
                1,
                planting.plants());
    }

    private Crop crop(String name) {
        return crops.stream().filter(c -> c.name().equals(name)).findFirst().orElseThrow();
    }

    /** One lot of the first crop by its first method in the first bed. */
    Placed placed(int plants, int sowWeek) {
        Facts facts = facts();
        Crop crop = crops.get(0);
        return new Placed(1, 0, crop, crop.methods().get(0), facts.beds.get(0), sowWeek, null, 1, plants);
    }

    /** The first standing planting, of the first crop by its first method in the first bed. */
    Placed standing() {
        Facts facts = facts();
        Crop crop = crops.get(0);
        Standing planting = standing.get(0);
        int week = planting.sown() == null ? 0 : facts.season.weekOf(planting.sown());
        return new Placed(1, 0, crop, crop.methods().get(0), facts.beds.get(0), week, planting, 1, planting.plants());
    }

    /** A season in which nothing strays, told apart from the normal season by having its frosts and gusts as dates. */
    PossibleSeason still() {
        return still(List.of());
    }

    PossibleSeason still(List<Gust> gusts) {
        return possible(gusts, 0, 0, false, false, 1, 1);
    }

    PossibleSeason possible(
            List<Gust> gusts,
            double springFrost,
            double autumnFrost,
            boolean badSeedBeds,
            boolean hardWinter,
            double firstCut,
            double stems) {
        boolean[] bad = new boolean[weeks];
        Arrays.fill(bad, badSeedBeds);
        return new PossibleSeason(
                false,
                new double[7 * weeks],
                gusts,
                filled(pests.size(), 1),
                springFrost,
                autumnFrost,
                bad,
                hardWinter,
                filled(crops.size(), firstCut),
                filled(crops.size(), stems));
    }

    private static double[] filled(int length, double value) {
        double[] array = new double[length];
        Arrays.fill(array, value);
        return array;
    }

    static BedBlock bed(String name, double length) {
        return bed(name, length, null, null, List.of(), List.of());
    }

    static BedBlock bed(
            String name,
            double length,
            BedBlock.@Nullable Tunnel tunnel,
            @Nullable LocalDate workableFrom,
            List<BedBlock.Taken> taken,
            List<BedBlock.Grown> history) {
        return new BedBlock(name, 1, new Point(0, 0), 0, length, 1.2, 0.5, tunnel, workableFrom, taken, history);
    }

    static Role role(String name, double cutting, double clearing, Role.Kind... kinds) {
        return new Role(name, cutting, clearing, null, List.of(kinds));
    }

    static Role.Kind kind(String name, @Nullable Integer mostAWeek, Role.Kind... kinds) {
        return new Role.Kind(name, mostAWeek, List.of(kinds));
    }

    /** An outlet that asks for stems in every week of a run. */
    static Outlet outlet(
            String name, String kind, double price, double stems, int from, int to, @Nullable Promise promise) {
        return new Outlet(name, kind, price, List.of(new Outlet.Ask(week(from), week(to), stems)), promise, 0);
    }

    static Map<Job, Labour.JobRate> noWork() {
        Map<Job, Labour.JobRate> jobs = new EnumMap<>(Job.class);
        for (Job job : Job.values()) {
            jobs.put(job, new Labour.JobRate(0, 0));
        }
        return jobs;
    }
}
