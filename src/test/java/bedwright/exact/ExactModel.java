package bedwright.exact;

import bedwright.growth.ProspectTable;
import bedwright.season.KeptPlanting;
import bedwright.season.KindTree;
import bedwright.season.Lots;
import bedwright.season.Role;
import bedwright.season.Rounding;
import bedwright.season.Season;
import bedwright.season.Standing;
import com.google.ortools.Loader;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearExpr;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.ToLongFunction;
import org.jspecify.annotations.Nullable;

/** The best plan of a small season, proven. Money in grains, work in ticks, stems in hundredths. */
final class ExactModel {
    private static final long TICKS_A_MINUTE = 100_000;

    private final CpModel model = new CpModel();
    private final Season season;
    private final ProspectTable table;
    private final KindTree kinds;
    private final HoursOfWeeks hours;
    private final List<Wanted> wanted;
    private final long[] minutesOfDemand;
    private final Ground ground;
    private final Linear missing = new Linear();
    private final List<Linear> money = new ArrayList<>();
    private final long ownRate;
    private final long hiredRate;
    private final Solving solving;
    /** Weeks and seasons in which stems are filled strictly in order. */
    private final boolean[][] strict;

    private final List<List<Filled>> filled = new ArrayList<>();

    private final @Nullable Known known;

    /** The best there is: its score, and a plan that has it. */
    record Best(long medium, long soft, List<KeptPlanting> plantings) {}

    /**
     * A plan that somebody found. Nothing worse has to be looked at; were its score better than it can be, there would be no
     * solution, so that nothing is taken on trust.
     *
     * @param lots at each place
     */
    record Known(long medium, long soft, int[] lots) {}

    private ExactModel(Season season, ProspectTable table, Solving solving, boolean[][] strict, @Nullable Known known) {
        this.known = known;
        this.solving = solving;
        this.strict = strict;
        this.season = season;
        this.table = table;
        this.kinds = KindTree.of(season.roles());
        this.hours = HoursOfWeeks.of(season);
        this.wanted = Wanted.inOrder(season, kinds);
        this.minutesOfDemand = Wanted.minutes(season);
        this.ownRate =
                Rounding.halfUp(season.labour().ownRate() * season.currency().smallest());
        this.hiredRate =
                Rounding.halfUp(season.labour().hiredRate() * season.currency().smallest());
        this.ground = new Ground(model, season, table);
        for (int k = 0; k < table.seasons(); k++) {
            money.add(new Linear().add(ground.costs, -1));
        }
        for (int week = 0; week < season.weeks(); week++) {
            addWeek(week);
        }
    }

    /**
     * Solves a season by the usual solver.
     *
     * @param table what places give and take, over the seasons that the plan is judged by
     * @throws IllegalStateException if no plan keeps the hard rules, or none is proven best
     */
    static Best solve(Season season, ProspectTable table) {
        return solve(season, table, new ConstraintSolving());
    }

    /** Solves a season by a solver. */
    static Best solve(Season season, ProspectTable table, Solving solving) {
        return solve(season, table, solving, null);
    }

    /** Solves a season by a solver that is told of a plan. */
    static Best solve(Season season, ProspectTable table, Solving solving, @Nullable Known known) {
        Loader.loadNativeLibraries();
        // Where stems may be held back the best is no worse, so where it holds none back it is the best there is.
        boolean[][] strict = new boolean[season.weeks()][table.seasons()];
        for (boolean[] ofWeek : strict) {
            Arrays.fill(ofWeek, !solving.isLoose());
        }
        while (true) {
            Optional<Best> best = new ExactModel(season, table, solving, strict, known).best();
            if (best.isPresent()) {
                return best.get();
            }
        }
    }

    private void addWeek(int week) {
        Linear minutes = ground.work(week).add(minutesOfDemand[week]);
        Linear same = new Linear().add(minutes, TICKS_A_MINUTE).add(hours.chores()[week]);
        Linear allHours = new Linear();
        Linear allCutting = new Linear();
        List<Filled> ofWeek = new ArrayList<>();
        filled.add(ofWeek);
        for (int k = 0; k < table.seasons(); k++) {
            Filled one = new Filled(model, kinds, season.roles().size(), wanted, ground, week, k, !strict[week][k]);
            ofWeek.add(one);
            Linear cutting = new Linear();
            Linear work = new Linear().add(same, 1);
            for (int r = 0; r < season.roles().size(); r++) {
                Role role = season.roles().get(r);
                long clearing = Rounding.halfUp(10 * role.clearing());
                cutting.add(one.cut[r], Rounding.halfUp(10 * role.cutting()));
                work.add(one.came[r], clearing).add(one.cut[r], -clearing);
            }
            work.add(cutting, 1);
            allCutting.add(cutting, 1);
            allHours.add(work, 1);
            pay(work, week, money.get(k));
            take(one, week, money.get(k));
        }
        if (hours.own()[week] != HoursOfWeeks.UNLIMITED) {
            keepTo(allHours, hours.own()[week] + hours.hired()[week]);
        }
        if (hours.cutting()[week] != HoursOfWeeks.UNLIMITED) {
            keepTo(allCutting, hours.cutting()[week]);
        }
    }

    /** The mean over the seasons keeps to a limit of ticks. */
    private void keepTo(Linear ticks, long limit) {
        long divisor = Math.max(1, ticks.commonDivisor());
        long left = Math.floorDiv(table.seasons() * limit - ticks.constant(), divisor);
        model.addLessOrEqual(ticks.variablePart(divisor).expression(), left);
    }

    /** Own hours at the owner's rate, the rest at the hired rate. */
    private void pay(Linear work, int week, Linear balance) {
        balance.add(work, -ownRate);
        long own = hours.own()[week];
        if (own == HoursOfWeeks.UNLIMITED || work.most() <= own) {
            return;
        }
        Linear beyond = new Linear().add(work, 1).add(-own);
        long divisor = BigInteger.valueOf(beyond.commonDivisor())
                .gcd(BigInteger.valueOf(beyond.constant()))
                .longValueExact();
        Linear scaled = beyond.variablePart(divisor).add(beyond.constant() / divisor);
        IntVar hired = model.newIntVar(0, scaled.most(), "hired");
        if (solving.isLoose() && hiredRate >= ownRate) {
            // Less money is never better, so what is hired is no more than it has to be.
            model.addGreaterOrEqual(hired, scaled.expression());
        } else {
            model.addMaxEquality(hired, new LinearExpr[] {scaled.expression(), LinearExpr.constant(0)});
        }
        balance.add(hired, -(hiredRate - ownRate) * divisor);
    }

    private void take(Filled of, int week, Linear balance) {
        for (int i = 0; i < wanted.size(); i++) {
            Wanted one = wanted.get(i);
            balance.add(one.regardless() * one.asked()[week]);
            balance.add(of.served.get(i), one.worth());
            missing.add((long) one.must() * one.asked()[week]).add(of.served.get(i), -one.must());
        }
    }

    /** The best, or nothing if stems are held back somewhere, which then is strict from now on. */
    private Optional<Best> best() {
        long medium = 0;
        hint();
        if (missing.most() > 0) {
            if (known != null) {
                model.addLessOrEqual(missing.expression(), -known.medium());
            }
            model.minimize(missing.expression());
            ToLongFunction<IntVar> values = solving.solved(model);
            if (!isFull(values)) {
                return Optional.empty();
            }
            medium = missing.value(values);
            model.addEquality(missing.expression(), medium);
            model.clearHints();
            for (IntVar lots : ground.lots) {
                model.addHint(lots, values.applyAsLong(lots));
            }
        }
        // A divisor common to all money keeps the solver's numbers small and loses nothing.
        long divisor = money.stream()
                .map(one -> BigInteger.valueOf(one.commonDivisor()))
                .reduce(BigInteger.ZERO, BigInteger::gcd)
                .longValueExact();
        long constant = money.getFirst().constant();
        List<Linear> scaled = new ArrayList<>();
        for (Linear one : money) {
            if (one.constant() != constant) {
                throw new IllegalStateException("What does not depend on the plan differs between seasons");
            }
            scaled.add(one.variablePart(Math.max(1, divisor)));
        }
        int count = money.size();
        int worst = (count + 4) / 5;
        int caution = season.caution().percent();
        Linear weighed = weighed(scaled, worst, caution);
        if (known != null && medium == -known.medium()) {
            BigInteger beyond = BigInteger.valueOf(known.soft())
                    .subtract(BigInteger.valueOf(constant).multiply(BigInteger.valueOf(count)))
                    .multiply(BigInteger.valueOf(100L * worst));
            long least = floor(beyond, BigInteger.valueOf(Math.max(1, divisor)));
            model.addGreaterOrEqual(weighed.expression(), least);
        }
        model.maximize(weighed.expression());
        ToLongFunction<IntVar> values = solving.solved(model);
        if (!isFull(values)) {
            return Optional.empty();
        }
        BigInteger whole = BigInteger.valueOf(weighed.value(values))
                .multiply(BigInteger.valueOf(Math.max(1, divisor)))
                .add(BigInteger.valueOf(constant).multiply(BigInteger.valueOf(100L * worst * count)));
        long soft = floor(whole, BigInteger.valueOf(100L * worst));
        return Optional.of(new Best(-medium, soft, plantings(values)));
    }

    private void hint() {
        for (int place = 0; known != null && place < table.places(); place++) {
            model.addHint(ground.lots[place], known.lots()[place]);
        }
    }

    private boolean isFull(ToLongFunction<IntVar> values) {
        boolean full = true;
        for (int week = 0; week < strict.length; week++) {
            for (int k = 0; k < strict[week].length; k++) {
                if (!strict[week][k] && !filled.get(week).get(k).isFull(values)) {
                    strict[week][k] = true;
                    full = false;
                }
            }
        }
        return full;
    }

    /** (100 − c)·m·S + c·K·T; T = max over z of m·z − Σ max(0, z − v), which whole numbers reach at the m-th worst. */
    private Linear weighed(List<Linear> scaled, int worst, int caution) {
        Linear weighed = new Linear();
        scaled.forEach(one -> weighed.add(one, (100L - caution) * worst));
        if (caution > 0) {
            long least = scaled.stream().mapToLong(Linear::least).min().orElseThrow();
            long most = scaled.stream().mapToLong(Linear::most).max().orElseThrow();
            IntVar bar = model.newIntVar(least, most, "bar");
            long weight = (long) caution * scaled.size();
            weighed.add(bar, weight * worst);
            for (Linear one : scaled) {
                IntVar below = model.newIntVar(0, most - least, "below");
                model.addGreaterOrEqual(
                        new Linear().add(below, 1).add(one, 1).add(bar, -1).expression(), 0);
                weighed.add(below, -weight);
            }
        }
        return weighed;
    }

    private static long floor(BigInteger whole, BigInteger by) {
        BigInteger[] parts = whole.divideAndRemainder(by);
        return parts[0].longValueExact() - (parts[1].signum() < 0 ? 1 : 0);
    }

    private List<KeptPlanting> plantings(ToLongFunction<IntVar> values) {
        List<KeptPlanting> plantings = new ArrayList<>();
        for (int place = 0; place < table.places(); place++) {
            int lots = Math.toIntExact(values.applyAsLong(ground.lots[place]));
            if (lots > 0) {
                plantings.add(planting(plantings.size() + 1, place, lots));
            }
        }
        return plantings;
    }

    private KeptPlanting planting(int number, int place, int lots) {
        int stock = table.stock(place);
        int pool = season.pool().size();
        Lots ofPool = stock < pool ? season.pool().get(stock) : null;
        Standing standing = stock < pool ? null : season.standing().get(stock - pool);
        String crop = ofPool != null ? ofPool.crop() : standing != null ? standing.crop() : "";
        int plants = ofPool != null ? ofPool.plants() * lots : standing != null ? standing.plants() : 0;
        String method = season.crops().stream()
                .filter(c -> c.name().equals(crop))
                .findFirst()
                .orElseThrow()
                .methods()
                .get(table.method(place))
                .name();
        return new KeptPlanting(
                number,
                crop,
                method,
                season.allBeds().get(table.bed(place)).name(),
                season.weekStart(table.sowWeek(place)),
                ofPool != null ? stock + 1 : null,
                standing != null ? stock - pool + 1 : null,
                lots,
                plants);
    }
}
