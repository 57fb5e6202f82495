package bedwright.growth;

import bedwright.climate.PossibleSeason;
import bedwright.growth.ProspectTable.Offer;
import bedwright.season.Bed;
import bedwright.season.BedBlock;
import bedwright.season.Crop;
import bedwright.season.Family;
import bedwright.season.Method;
import bedwright.season.Past;
import bedwright.season.Season;
import bedwright.season.Standing;
import bedwright.season.UnderWay;
import java.time.LocalDate;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/** Finds the places that a season offers its plantings, with their prospects. */
final class Offers {
    private final Season season;
    private final World world;
    private final List<Bed> beds;
    private final Map<String, Integer> crops = new HashMap<>();
    /** All that is looked at, or null if everything is. */
    private final @Nullable Set<Spot> only;

    Offers(Season season, List<PossibleSeason> seasons) {
        this(season, seasons, null);
    }

    /** @param only what is looked at; null for everything */
    Offers(Season season, List<PossibleSeason> seasons, @Nullable Set<Spot> only) {
        this.season = season;
        this.only = only;
        this.world = new World(season, seasons);
        this.beds = season.allBeds();
        for (int c = 0; c < season.crops().size(); c++) {
            crops.put(season.crops().get(c).name(), c);
        }
    }

    /** One stock with one method and sow week, to be looked at in all beds. */
    private record Task(
            int stock,
            int crop,
            int method,
            int sowWeek,
            int plants,
            @Nullable Standing standing) {}

    ProspectTable table() {
        return table(List.of());
    }

    /** @param late plantings some of whose jobs are left for a week, to be there besides */
    ProspectTable table(List<Late> late) {
        List<Task> tasks = new ArrayList<>();
        int pool = season.pool().size();
        for (int i = 0; i < pool; i++) {
            var lots = season.pool().get(i);
            addTasks(tasks, i, lots.crop(), lots.plants(), null);
        }
        for (int j = 0; j < season.standing().size(); j++) {
            Standing standing = season.standing().get(j);
            addTasks(tasks, pool + j, standing.crop(), standing.plants(), standing);
        }
        Set<Spot> ways = ways();
        tasks.removeIf(task -> !isWanted(ways, task));
        List<List<Offer>> offers = new ArrayList<>(Collections.nCopies(tasks.size(), List.of()));
        IntStream.range(0, tasks.size()).parallel().forEach(t -> offers.set(t, offersOf(tasks.get(t))));
        List<List<Offer>> byStock = new ArrayList<>();
        for (int s = 0; s < pool + season.standing().size(); s++) {
            byStock.add(new ArrayList<>());
        }
        for (int t = 0; t < tasks.size(); t++) {
            for (Offer offer : offers.get(t)) {
                if (offer.beds().length > 0) {
                    byStock.get(tasks.get(t).stock()).add(offer);
                }
            }
        }
        List<Offer> more = late.parallelStream().map(this::late).toList();
        for (int i = 0; i < more.size(); i++) {
            byStock.get(late.get(i).spot().stock()).add(more.get(i));
        }
        return new ProspectTable(world.seasons.size(), beds.size(), byStock);
    }

    private Offer late(Late late) {
        Spot spot = late.spot();
        int pool = season.pool().size();
        Standing standing = spot.stock() < pool ? null : season.standing().get(spot.stock() - pool);
        int plants = standing == null ? season.pool().get(spot.stock()).plants() : standing.plants();
        String name = standing == null ? season.pool().get(spot.stock()).crop() : standing.crop();
        Integer crop = crops.get(name);
        if (crop == null || (standing != null && (standing.isWritten() || standing.isPulled()))) {
            throw new IllegalArgumentException("Nothing can be late of " + name);
        }
        int until = ProspectTable.untilOf(spot.method());
        Method method = season.crops().get(crop).methods().get(ProspectTable.methodOf(spot.method()));
        Ground.BedClass kind = world.ground.classes().get(world.ground.classOf(spot.bed()));
        Grown grown = Grown.late(world, crop, method, spot.sowWeek(), standing, kind.warmth(), until, late.jobs());
        Needs needs = new Needs(season, grown.crop, method, grown.calendar, plants, standing != null);
        boolean inTheGround = standing != null && standing.clock() != null;
        Row.Stems stems = Row.Stems.of(grown, kind, plants);
        Row row = new Row(
                season,
                needs,
                grown.calendar,
                inTheGround,
                until == ProspectTable.TO_ITS_END ? stems : stems.upTo(grown.calendar.lastGrace()));
        return new Offer(
                ProspectTable.methodOf(spot.method()),
                spot.sowWeek(),
                until,
                new int[] {spot.bed()},
                new int[] {0},
                List.of(row),
                late.jobs());
    }

    /** What is looked at, in whichever bed. */
    private Set<Spot> ways() {
        Set<Spot> ways = new HashSet<>();
        if (only != null) {
            only.forEach(spot -> ways.add(new Spot(spot.stock(), 0, spot.sowWeek(), spot.method())));
        }
        return ways;
    }

    private boolean isWanted(Set<Spot> ways, Task task) {
        return only == null
                || isWhole(task.standing())
                || ways.contains(new Spot(task.stock(), 0, task.sowWeek(), task.method()));
    }

    private boolean isWanted(Task task, Bed bed) {
        return only == null
                || isWhole(task.standing())
                || only.contains(new Spot(task.stock(), bed.index(), task.sowWeek(), task.method()));
    }

    private void addTasks(List<Task> tasks, int stock, String cropName, int plants, @Nullable Standing standing) {
        Integer crop = crops.get(cropName);
        if (crop == null) {
            throw new IllegalArgumentException("No crop named " + cropName);
        }
        List<Method> methods = season.crops().get(crop).methods();
        for (int m = 0; m < methods.size(); m++) {
            if (standing != null && standing.past() != null && !standing.isWritten()) {
                if (mayStillBe(standing, standing.past(), methods.get(m))) {
                    addUnderWay(tasks, new Task(stock, crop, m, weekOf(standing), plants, standing), methods.get(m));
                }
                continue;
            }
            if (standing != null
                    && standing.method() != null
                    && !standing.method().equals(methods.get(m).name())) {
                continue;
            }
            if (standing != null && (isInTheGround(standing) || standing.sown() != null)) {
                tasks.add(new Task(stock, crop, m, weekOf(standing), plants, standing));
                if (standing.isWritten()) {
                    return;
                }
                continue;
            }
            for (int w = firstOpenWeek(season); w < season.weeks(); w++) {
                if (sowsIn(methods.get(m), w)) {
                    tasks.add(new Task(stock, crop, m, w, plants, standing));
                }
            }
        }
    }

    private static boolean mayStillBe(Standing standing, Past past, Method method) {
        return past.ways().isEmpty()
                ? standing.method() == null || method.name().equals(standing.method())
                : past.ways().contains(method.name());
    }

    /** The first week on whose first day something can still be begun. */
    static int firstOpenWeek(Season season) {
        UnderWay underWay = season.underWay();
        return underWay == null ? 0 : Math.max(0, Math.ceilDiv(season.dayOf(underWay.on()), 7));
    }

    /** What stands in its bed has one sow week; what is in trays may be planted out on its day or wait for a while. */
    private void addUnderWay(List<Task> tasks, Task task, Method method) {
        Standing standing = task.standing();
        if (standing == null || !standing.isInTray()) {
            tasks.add(task);
            return;
        }
        int due = task.sowWeek() + method.trayWeeks();
        int first = Math.max(due, firstOpenWeek(season));
        int last = Math.max(first, due + method.holds());
        for (int out = first; out <= last && out < season.weeks(); out++) {
            tasks.add(new Task(
                    task.stock(), task.crop(), task.method(), out - method.trayWeeks(), task.plants(), standing));
        }
    }

    private static boolean isInTheGround(Standing standing) {
        return standing.isWritten() || standing.clock() != null;
    }

    /** Whether everything is decided, so that it has its one place whatever else is said. */
    private static boolean isWhole(@Nullable Standing standing) {
        return standing != null
                && (standing.isWritten()
                        || (standing.bed() != null && standing.past() != null)
                        || (standing.bed() != null
                                && standing.method() != null
                                && (standing.sown() != null || standing.clock() != null)));
    }

    private int weekOf(Standing standing) {
        LocalDate sown = standing.sown();
        if (sown != null) {
            return season.weekOf(sown);
        }
        Standing.ClockReading clock = standing.clock();
        return clock == null ? 0 : Math.min(0, season.weekOf(clock.on()));
    }

    private boolean sowsIn(Method method, int week) {
        MonthDay from = method.sowFrom();
        MonthDay to = method.sowTo();
        if (from == null && to == null) {
            return true;
        }
        return World.isWithin(
                MonthDay.from(season.weekStart(week)),
                from == null ? MonthDay.of(1, 1) : from,
                to == null ? MonthDay.of(12, 31) : to);
    }

    private List<Offer> offersOf(Task task) {
        Standing standing = task.standing();
        return standing == null || standing.past() == null || standing.isWritten() || standing.isInTray()
                ? List.of(offer(task))
                : untilEachWeek(task, standing);
    }

    /** What stands in its bed may be kept as long as it is cut, or be pulled in any week before. */
    private List<Offer> untilEachWeek(Task task, Standing standing) {
        Crop crop = season.crops().get(task.crop());
        Method method = crop.methods().get(task.method());
        Bed bed = beds.stream()
                .filter(one -> one.name().equals(standing.bed()))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("No bed named " + standing.bed()));
        Ground.BedClass kind = world.ground.classes().get(world.ground.classOf(bed.index()));
        Grown grown = Grown.of(world, task.crop(), method, task.sowWeek(), standing, kind.warmth());
        boolean pulled = standing.isPulled();
        Row.Stems stems = pulled ? Row.Stems.none() : Row.Stems.of(grown, kind, task.plants());
        List<Offer> offers = new ArrayList<>();
        int last = grown.calendar.heldTo() - 1;
        if (pulled) {
            int week = Math.floorDiv(grown.noted.pulled(), 7);
            offers.add(until(task, bed, grown.until(Math.min(week, last)), stems, ProspectTable.TO_ITS_END));
            return offers;
        }
        offers.add(until(task, bed, grown, stems, ProspectTable.TO_ITS_END));
        for (int week = season.firstWeek(); week < last; week++) {
            Spot spot = new Spot(task.stock(), bed.index(), task.sowWeek(), ProspectTable.way(task.method(), week));
            if (only != null && !only.contains(spot)) {
                continue;
            }
            Grown shorter = grown.until(week);
            // Cover that is taken off for it keeps nothing off in its last week.
            Row.Stems some = grown.calendar.isCoveredOn(7 * week)
                    ? Row.Stems.of(shorter, kind, task.plants())
                    : stems.upTo(shorter.calendar.lastGrace());
            offers.add(until(task, bed, shorter, some, week));
        }
        return offers;
    }

    private Offer until(Task task, Bed bed, Grown grown, Row.Stems stems, int until) {
        Needs needs = new Needs(season, grown.crop, grown.method, grown.calendar, task.plants(), true);
        Standing standing = task.standing();
        boolean inTheGround = standing != null && (standing.clock() != null || standing.isPulled());
        Row row = new Row(season, needs, grown.calendar, inTheGround, stems);
        return new Offer(task.method(), task.sowWeek(), until, new int[] {bed.index()}, new int[] {0}, List.of(row));
    }

    private Offer offer(Task task) {
        Crop crop = season.crops().get(task.crop());
        Method method = crop.methods().get(task.method());
        Standing standing = task.standing();
        List<Row> rows = new ArrayList<>();
        Map<Ground.BedClass, Integer> rowOfClass = new HashMap<>();
        Map<Double, Grown> byWarmth = new HashMap<>();
        int[] offered = new int[beds.size()];
        int[] rowOfBed = new int[beds.size()];
        int count = 0;
        for (Bed bed : beds) {
            if ((standing != null && standing.bed() != null && !standing.bed().equals(bed.name()))
                    || !isWanted(task, bed)) {
                continue;
            }
            Ground.BedClass kind = world.ground.classes().get(world.ground.classOf(bed.index()));
            Integer row = rowOfClass.get(kind);
            if (row == null) {
                row = makeRow(task, crop, method, kind, byWarmth, rows);
                rowOfClass.put(kind, row);
            }
            if (row >= 0 && (isWhole(standing) || isFree(bed, crop, rows.get(row), standing))) {
                offered[count] = bed.index();
                rowOfBed[count] = row;
                count++;
            }
        }
        return new Offer(
                task.method(),
                task.sowWeek(),
                ProspectTable.TO_ITS_END,
                Arrays.copyOf(offered, count),
                Arrays.copyOf(rowOfBed, count),
                rows);
    }

    /** Makes the row of a bed class and says where it stands in the list; −1 if such a planting is not offered there. */
    private int makeRow(
            Task task, Crop crop, Method method, Ground.BedClass kind, Map<Double, Grown> byWarmth, List<Row> rows) {
        Standing standing = task.standing();
        boolean whole = isWhole(standing);
        Row row;
        if (standing != null && standing.isWritten()) {
            LocalDate until = standing.until();
            Calendar calendar = Calendar.written(standing, until == null ? 0 : season.weekOf(until), season.weeks());
            Needs needs = new Needs(season, crop, method, calendar, task.plants(), true);
            row = new Row(season, needs, calendar, true, Row.Stems.written(world, crop, standing));
        } else {
            if (!whole && !bearsSeed(method, task.sowWeek(), kind)) {
                return -1;
            }
            Grown grown = byWarmth.computeIfAbsent(
                    kind.warmth(), w -> Grown.of(world, task.crop(), method, task.sowWeek(), standing, w));
            if (!whole && grown.calendar.groundWeek() >= season.weeks()) {
                return -1;
            }
            Needs needs = new Needs(season, crop, method, grown.calendar, task.plants(), standing != null);
            boolean inTheGround = standing != null && standing.clock() != null;
            row = new Row(season, needs, grown.calendar, inTheGround, Row.Stems.of(grown, kind, task.plants()));
        }
        if (!whole && only == null && !row.gives()) {
            return -1;
        }
        rows.add(row);
        return rows.size() - 1;
    }

    private boolean bearsSeed(Method method, int sowWeek, Ground.BedClass kind) {
        Method.SeedTemperature bears = method.seedTemperature();
        if (bears == null || method.start() != Method.Start.SOWN || sowWeek < 0) {
            return true;
        }
        double mean = world.weather(kind.warmth()).get(world.seasons.size()).weekMean(sowWeek);
        Double coldest = bears.coldest();
        Double warmest = bears.warmest();
        return (coldest == null || mean >= coldest) && (warmest == null || mean <= warmest);
    }

    private boolean isFree(Bed bed, Crop crop, Row row, @Nullable Standing standing) {
        return whyNotFree(bed, crop, row, standing) == null;
    }

    private @Nullable Barred whyNotFree(Bed bed, Crop crop, Row row, @Nullable Standing standing) {
        LocalDate workable = bed.block().workableFrom();
        if (workable != null && season.weekStart(row.heldFrom).isBefore(workable)) {
            return Barred.NOT_WORKABLE;
        }
        for (BedBlock.Taken taken : bed.taken()) {
            if (season.weekOf(taken.from()) < row.heldTo && season.weekOf(taken.to()) >= row.heldFrom) {
                return Barred.TAKEN;
            }
        }
        // Whoever says the bed of what they planted knows what grew there before.
        boolean isGiven = standing != null && standing.bed() != null;
        return isGiven || !comesBackTooSoon(bed, crop, row) ? null : Barred.REST_YEARS;
    }

    /** Why a spot is not offered, or null if it is. */
    @Nullable
    Barred whyNot(Spot spot) {
        int pool = season.pool().size();
        Standing standing = spot.stock() < pool ? null : season.standing().get(spot.stock() - pool);
        String cropName = standing != null
                ? standing.crop()
                : season.pool().get(spot.stock()).crop();
        Integer number = crops.get(cropName);
        if (number == null) {
            throw new IllegalArgumentException("No crop named " + cropName);
        }
        Crop crop = season.crops().get(number);
        Method method = crop.methods().get(ProspectTable.methodOf(spot.method()));
        Bed bed = beds.get(spot.bed());
        if (standing != null && isDecidedOtherwise(standing, method, bed, spot.sowWeek())) {
            return Barred.DECIDED;
        }
        boolean sown = standing != null && (isInTheGround(standing) || standing.sown() != null);
        if (!sown && (spot.sowWeek() < 0 || spot.sowWeek() >= season.weeks())) {
            return Barred.OUTSIDE_SEASON;
        }
        if (!sown && !sowsIn(method, spot.sowWeek())) {
            return Barred.SOW_DATES;
        }
        Ground.BedClass kind = world.ground.classes().get(world.ground.classOf(bed.index()));
        if (isWhole(standing)) {
            return null;
        }
        if (!bearsSeed(method, spot.sowWeek(), kind)) {
            return Barred.SEED_TEMPERATURE;
        }
        int plants = standing != null
                ? standing.plants()
                : season.pool().get(spot.stock()).plants();
        Task task =
                new Task(spot.stock(), number, ProspectTable.methodOf(spot.method()), spot.sowWeek(), plants, standing);
        List<Row> rows = new ArrayList<>();
        if (makeRow(task, crop, method, kind, new HashMap<>(), rows) < 0) {
            return Barred.TOO_LATE;
        }
        Barred taken = whyNotFree(bed, crop, rows.getFirst(), standing);
        return taken == null && !rows.getFirst().gives() ? Barred.GIVES_NOTHING : taken;
    }

    private boolean isDecidedOtherwise(Standing standing, Method method, Bed bed, int week) {
        return (standing.method() != null && !standing.method().equals(method.name()))
                || (standing.bed() != null && !standing.bed().equals(bed.name()))
                || ((isInTheGround(standing) || standing.sown() != null) && week != weekOf(standing));
    }

    private boolean comesBackTooSoon(Bed bed, Crop crop, Row row) {
        for (Family family : season.families()) {
            if (!family.never() || !family.name().equals(crop.family())) {
                continue;
            }
            int year = season.weekStart(row.heldFrom).getYear();
            for (BedBlock.Grown grown : bed.history()) {
                if (grown.family().equals(family.name())
                        && grown.year() <= year
                        && year - grown.year() - 1 < family.restYears()) {
                    return true;
                }
            }
        }
        return false;
    }
}
