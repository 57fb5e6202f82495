package bedwright.recheck;

import bedwright.climate.Gust;
import bedwright.climate.PossibleSeason;
import bedwright.climate.PossibleSeasons;
import bedwright.season.BedBlock;
import bedwright.season.Crop;
import bedwright.season.Family;
import bedwright.season.Job;
import bedwright.season.Labour;
import bedwright.season.Lots;
import bedwright.season.Method;
import bedwright.season.Past;
import bedwright.season.Pest;
import bedwright.season.Point;
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
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.DoubleStream;
import org.jspecify.annotations.Nullable;

/**
 * A season with something of all that a planting's growth can hang on, drawn from a seed: the same seed draws the same
 * season. Three beds (open, in a tunnel, and one that is not always free), three crops with up to two methods each, and
 * plantings that stand; over three possible seasons. In one season of three weather was noted.
 */
final class DrawnSeason {
    private static final int POSSIBLE = 3;
    private static final LocalDate START = TestSeason.START;

    final Season season;
    final List<PossibleSeason> possible;

    private final Random random;
    private final TestSeason drawn = new TestSeason();

    DrawnSeason(long seed) {
        this(seed, false);
    }

    /** @param isUnderWay whether it has begun, with plantings that carry their past */
    DrawnSeason(long seed, boolean isUnderWay) {
        random = new Random(seed);
        // Now and then long enough for a winter.
        drawn.weeks = oneIn(4) ? between(46, 60) : between(12, 26);
        drawn.temperature = 13 + 8 * random.nextDouble();
        site();
        beds();
        stock();
        drawn.families.add(new Family("daisies", between(1, 4), random.nextBoolean()));
        drawn.roles.add(TestSeason.role("filler", 0, 0, TestSeason.kind("fine", null)));
        drawn.crops.add(crop("zinnia", "focal"));
        drawn.crops.add(crop("dill", "filler/fine"));
        drawn.crops.add(crop("statice", "filler"));
        drawn.crops.forEach(crop -> drawn.pool.add(new Lots(crop.name(), between(8, 60), 3)));
        int today = isUnderWay ? between(5, 7 * drawn.weeks - 20) : 0;
        if (isUnderWay) {
            begun(today);
        } else {
            standing();
            if (seed % 3 == 0) {
                notes(new Random(~seed));
            }
        }
        Season built = drawn.build();
        season = isUnderWay
                ? built.with(new UnderWay(START.plusDays(today), List.of(), List.of(), List.of(), List.of(), 1))
                : built;
        possible = possible();
    }

    private boolean oneIn(int n) {
        return random.nextInt(n) == 0;
    }

    /** A whole number from one to another, both included. */
    private int between(int least, int most) {
        return least + random.nextInt(most - least + 1);
    }

    private double share() {
        return random.nextDouble();
    }

    private void site() {
        if (!oneIn(5)) {
            drawn.frost = new Site.Frost(
                    frostDate(between(-30, 40)),
                    frostDate(between(60, 7 * drawn.weeks)),
                    3 + 4 * share(),
                    3 + 4 * share());
        }
        drawn.badSeedBed = new Site.BadSeedBed(0.3, share());
        drawn.hardWinter = new Site.HardWinter(0.4, share());
        for (int side = between(0, 2); side > 0; side--) {
            List<Double> gusts = DoubleStream.generate(() -> oneIn(3) ? 0 : 0.4 * share())
                    .limit(12)
                    .boxed()
                    .toList();
            drawn.storms.add(new Site.StormSide(30 * between(0, 11), gusts, 14 + 8 * share(), 1 + 2 * share()));
        }
        drawn.roughGrass.add(new RoughGrass(new Point(-15, 0), new Point(-15, 80)));
        drawn.windbreaks.add(new Windbreak(
                "hedge",
                new Point(-25, -40),
                new Point(-25, 120),
                2 + 4 * share(),
                Windbreak.Density.values()[between(0, 3)]));
        drawn.pests.add(pest("slugs", 30.0, Pest.Takes.SEED, Pest.Takes.SEEDLINGS));
        drawn.pests.add(pest("beetles", null, Pest.Takes.BLOOMS));
        drawn.pests.add(pest("mice", null, random.nextBoolean() ? Pest.Takes.SEED : Pest.Takes.SEEDLINGS));
    }

    private Site.FrostDate frostDate(int day) {
        LocalDate usual = START.plusDays(day);
        return new Site.FrostDate(
                MonthDay.from(usual.minusDays(between(2, 9))),
                MonthDay.from(usual),
                MonthDay.from(usual.plusDays(between(2, 9))));
    }

    private Pest pest(String name, @Nullable Double range, Pest.Takes... takes) {
        List<Pest.Pressure> pressure = List.of(
                new Pest.Pressure(MonthDay.of(between(1, 12), 1), MonthDay.of(between(1, 12), 28), 0.02 * share()),
                new Pest.Pressure(MonthDay.of(4, 1), MonthDay.of(between(5, 9), 10), 0.02 * share()));
        return new Pest(name, List.of(takes), pressure, range, 0.5);
    }

    private void beds() {
        drawn.beds.clear();
        drawn.beds.add(bed("Open", 0, null, null, List.of(), List.of()));
        drawn.beds.add(
                bed("House", 12, new BedBlock.Tunnel(3 * share(), 3 * share(), share()), null, List.of(), List.of()));
        int first = between(0, 7 * drawn.weeks - 1);
        drawn.beds.add(bed(
                "Shared",
                24,
                null,
                oneIn(3) ? null : START.plusDays(between(-9, 40)),
                oneIn(3)
                        ? List.of()
                        : List.of(new BedBlock.Taken(
                                START.plusDays(first), START.plusDays(first + between(0, 20)), null)),
                List.of(new BedBlock.Grown("daisies", between(2021, 2027), null))));
    }

    private static BedBlock bed(
            String name,
            double east,
            BedBlock.@Nullable Tunnel tunnel,
            @Nullable LocalDate workable,
            List<BedBlock.Taken> taken,
            List<BedBlock.Grown> history) {
        return new BedBlock(name, 1, new Point(east, 0), 0, 100, 1.2, 0.5, tunnel, workable, taken, history);
    }

    private void stock() {
        drawn.bench = 1000;
        drawn.nets.add(new Stock.Net("mesh", 1000, null, share(), 1.1 + share()));
        drawn.nets.add(new Stock.Net("string", 1000, null, share(), 1.1 + share()));
        drawn.cover = new Stock.Cover(1000, null, share(), 3 * share(), share());
        drawn.jobs = rates(0.6);
    }

    /** Rates of some of the jobs. */
    private Map<Job, Labour.JobRate> rates(double how) {
        Map<Job, Labour.JobRate> rates = new EnumMap<>(Job.class);
        for (Job job : Job.values()) {
            if (share() < how) {
                rates.put(job, new Labour.JobRate(between(0, 9), 5 * share()));
            }
        }
        return rates;
    }

    private Crop crop(String name, String kind) {
        TestCrop crop = new TestCrop();
        crop.name = name;
        crop.family = oneIn(3) ? null : "daisies";
        crop.kinds = oneIn(2)
                ? List.of(new Crop.KindShare(kind, 1))
                : List.of(new Crop.KindShare("filler", 0.3), new Crop.KindShare("focal", 0.7));
        crop.convention = Crop.Convention.values()[between(0, 2)];
        crop.base = 3 + 6 * share();
        crop.upper = oneIn(2) ? null : Double.valueOf(24 + 4 * share());
        crop.emergence = between(20, 130);
        crop.firstCut = oneIn(5) ? between(1000, 4000) : between(150, 900);
        crop.pinch = oneIn(2) ? null : Double.valueOf(crop.emergence + share() * (crop.firstCut - crop.emergence));
        crop.pinchDelay = 100 * share();
        crop.leastDayLength = oneIn(2) ? 0 : 9 + 3 * share();
        crop.dayLength = oneIn(3)
                ? new Crop.DayLengthAnswer(
                        11 + share(), 0.8 + 0.6 * share(), 13 + share(), 0.8 + 0.6 * share(), between(5, 40))
                : null;
        crop.heat = oneIn(3)
                ? new Crop.Heat(drawn.temperature + 4 * share() - 1, Crop.Heat.Answer.values()[between(0, 1)])
                : null;
        crop.killing = new Crop.Killing(-4 * share(), -4 * share());
        crop.tender = oneIn(3) ? 0 : 200 * share();
        crop.appeal.put("slugs", share());
        crop.appeal.put("beetles", oneIn(3) ? 0 : share());
        if (oneIn(2)) {
            crop.appeal.put("mice", share());
        }
        crop.height = 0.3 + share();
        crop.stand = new Crop.Stand(
                16 + 10 * share(), oneIn(2) ? null : Double.valueOf(0.4 + share()), 1 + 3 * share(), share());
        crop.cropJobs.putAll(rates(0.2));
        List<Method> methods = new ArrayList<>();
        for (int m = between(1, 2); m > 0; m--) {
            method(crop, "way " + m);
            methods.add(crop.build().methods().getFirst());
        }
        Crop whole = crop.build();
        return whole.with(whole.kinds(), whole.appeal(), whole.figures(), methods);
    }

    private void method(TestCrop crop, String name) {
        crop.methodName = name;
        crop.start = Method.Start.values()[between(0, Method.Start.values().length - 1)];
        boolean isRaised = crop.start == Method.Start.TRAY;
        crop.trayWeeks = isRaised ? between(1, 5) : 0;
        crop.hardeningWeeks = isRaised ? between(0, crop.trayWeeks) : 0;
        crop.headStart = isRaised || crop.start == Method.Start.PLUGS ? 200 * share() : 0;
        crop.check = 40 * share();
        crop.seedTemperature = oneIn(3)
                ? new Method.SeedTemperature(
                        oneIn(2) ? null : Double.valueOf(drawn.temperature + 2 * share() - 1),
                        oneIn(2) ? null : Double.valueOf(drawn.temperature + 3 * share()))
                : null;
        crop.sowFrom = oneIn(3) ? MonthDay.of(between(1, 12), between(1, 28)) : null;
        crop.sowTo = oneIn(3) ? MonthDay.of(between(1, 12), between(1, 28)) : null;
        crop.pinched = crop.pinch != null && oneIn(2);
        crop.emergenceShare = 0.4 + 0.6 * share();
        crop.seedsAPlace = between(1, 3);
        crop.rows = between(1, 4);
        crop.spacing = 0.05 + 0.3 * share();
        crop.methodHeight = oneIn(2) ? null : Double.valueOf(0.3 + share());
        crop.methodGust = oneIn(3) ? Double.valueOf(15 + 10 * share()) : null;
        crop.net = oneIn(2) ? null : new Method.NetUse(oneIn(2) ? "mesh" : "string", between(1, 2));
        crop.cover = oneIn(2) ? null : new Method.CoverUse(oneIn(2) ? null : Integer.valueOf(between(1, 6)));
        crop.cutDays = oneIn(4) ? between(40, 120) : between(1, 30);
        crop.cutShares = oneIn(2) ? List.of(1.0) : List.of(0.5, 0.2, 0.3);
        crop.stems = 0.3 + 6 * share();
        crop.saleable = 0.5 + 0.5 * share();
        crop.methodKinds = oneIn(4) ? List.of(new Crop.KindShare("filler/fine", 1)) : null;
        crop.grace = between(0, 3);
        crop.clearing = between(0, 2);
        crop.weedings = between(0, 6);
        crop.winterShare = share();
        crop.price = share();
        crop.methodJobs.clear();
        crop.methodJobs.putAll(rates(0.2));
    }

    private void standing() {
        for (int n = between(0, 3); n > 0; n--) {
            Crop crop = drawn.crops.get(random.nextInt(drawn.crops.size()));
            Method method = crop.methods().get(random.nextInt(crop.methods().size()));
            int kind = between(0, 3);
            boolean isClocked = kind == 1;
            drawn.standing.add(new Standing(
                    null,
                    crop.name(),
                    between(3, 40),
                    kind == 3 ? null : method.name(),
                    kind == 2 ? null : List.of("Open", "House", "Shared").get(between(0, 2)),
                    kind == 0 || kind == 2 ? START.plusWeeks(between(-12, 8)) : null,
                    isClocked ? new Standing.ClockReading(START.plusDays(between(-40, 5)), 400 * share()) : null,
                    kind == 3
                            ? List.of(new Standing.WrittenStems(START.plusWeeks(between(0, 9)), null, 90 * share()))
                            : List.of(),
                    kind == 3 && oneIn(2) ? START.plusDays(between(0, 60)) : null));
        }
    }

    /** Weather that was noted: runs of nights, one in ten of them cold, and some gusts. */
    private void notes(Random chance) {
        int day = chance.nextInt(20);
        while (day < 7 * drawn.weeks) {
            for (int run = 1 + chance.nextInt(12); run > 0; run--) {
                double least = chance.nextInt(10) == 0 ? -9 + 10 * chance.nextDouble() : 2 + 9 * chance.nextDouble();
                drawn.noted.add(new UnderWay.DaySeen(
                        START.plusDays(day++), 8 * chance.nextDouble() - 4, chance.nextInt(9) == 0 ? null : least));
            }
            day += chance.nextInt(40);
        }
        for (int more = chance.nextInt(6); more > 0; more--) {
            drawn.notedGusts.add(new Sampling.GivenGust(
                    START.plusDays(chance.nextInt(7 * drawn.weeks)),
                    30 * chance.nextInt(12),
                    8 + 15 * chance.nextDouble()));
        }
    }

    /** Plantings that were begun before a day, with something of all that can have been seen of them. */
    private void begun(int today) {
        for (int n = between(3, 6); n > 0; n--) {
            Crop crop = drawn.crops.get(random.nextInt(drawn.crops.size()));
            Method method = crop.methods().get(random.nextInt(crop.methods().size()));
            int sown = between(-40, today - 1);
            boolean isRaised = method.start() == Method.Start.TRAY;
            int out = isRaised ? sown + 7 * method.trayWeeks() + between(0, 10) : sown;
            boolean isInTray = isRaised && out >= today;
            List<String> ways = crop.methods().size() > 1 && !isInTray && oneIn(4)
                    ? crop.methods().stream()
                            .filter(other -> other.start() == method.start())
                            .map(Method::name)
                            .toList()
                    : List.of();
            int week = Math.floorDiv(sown, 7);
            drawn.standing.add(new Standing(
                    null,
                    crop.name(),
                    between(3, 40),
                    ways.size() > 1 ? null : method.name(),
                    isInTray ? null : List.of("Open", "House", "Shared").get(between(0, 2)),
                    START.plusWeeks(week),
                    null,
                    List.of(),
                    null,
                    new Past(
                            START.plusDays(sown),
                            isRaised && !isInTray ? START.plusDays(out) : null,
                            ways.size() > 1 ? ways : List.of(),
                            isInTray ? List.of() : stages(crop, out, today),
                            since(sown, today),
                            oneIn(2) ? 1 : share(),
                            since(sown, today),
                            since(sown, today),
                            since(sown, today),
                            0.5 + share(),
                            !isInTray && oneIn(6) ? START.plusDays(between(out, today)) : null,
                            null,
                            1)));
        }
    }

    /** A day from one up to the day before today, or nothing. */
    private @Nullable LocalDate since(int day, int today) {
        return oneIn(2) ? null : START.plusDays(between(day, today - 1));
    }

    /** Stages in their order, on days one after the other. */
    private List<Past.StageSeen> stages(Crop crop, int ground, int today) {
        List<Past.StageSeen> seen = new ArrayList<>();
        int day = ground;
        for (Past.Stage stage : Past.Stage.values()) {
            if (day + 1 < today
                    && oneIn(3)
                    && (stage != Past.Stage.PINCH || crop.clock().pinch() != null)) {
                day = between(day + 1, today - 1);
                seen.add(new Past.StageSeen(START.plusDays(day), stage));
            }
        }
        return seen;
    }

    private List<PossibleSeason> possible() {
        List<PossibleSeason> all = new ArrayList<>();
        for (PossibleSeason sampled : PossibleSeasons.sample(season, POSSIBLE, random.nextLong(1000))) {
            List<Gust> gusts = new ArrayList<>(sampled.gusts());
            for (int more = between(0, 2); more > 0; more--) {
                gusts.add(new Gust(between(0, season.days() - 1), -1, 45 * between(0, 7), 15 + 15 * share()));
            }
            gusts.sort(Comparator.comparingInt(Gust::day));
            all.add(new PossibleSeason(
                    false,
                    sampled.deviation(),
                    gusts,
                    sampled.pestYear(),
                    sampled.springFrost(),
                    sampled.autumnFrost(),
                    sampled.badSeedBed(),
                    sampled.hardWinter(),
                    factors(),
                    factors()));
        }
        return all;
    }

    private double[] factors() {
        double[] factors = new double[season.crops().size()];
        Arrays.setAll(factors, i -> 0.8 + 0.4 * share());
        return factors;
    }
}
